import { answers, dutyLooks, firstDuty, firstInput, marksBy } from "../../src/book/greenhouse/duties";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import { gradeHeadings, gradeRows, gradeWidths } from "../../src/book/greenhouse/ownGrades";
import { cautionLines, titled } from "../../src/book/greenhouse/parts";
import type { FileBook, FileSheet } from "./book";

const top = 5;
/** Rows below the table that the looks and rules already reach, so that a grown table looks the same. */
const last = top + dutyCells.length + 40;
const verdictColumn = Object.keys(answers).indexOf("verdict");

const dutySheet: FileSheet = {
  name: "Duties",
  ...dutyLooks(top, last),
  heights: { 1: 1.5, [top]: 3 },
  tables: [{ name: "Duties", at: `${firstInput}${top}`, headings: dutyHeadings, rows: dutyCells }],
  cells: {
    ...titled(
      "Duties of the rooftop greenhouse",
      `An invented example. One formula in A${top} judges the table to its right: type over a value there or add rows, and the answer grows with it.`,
    ),
    A3: {
      value:
        "A plain number is in its heading's unit; text such as 55 lbf keeps its own. A row without a name is a further step of the duty above it. Use is the governing value over its limit.",
      look: "quiet",
    },
    [`A${top}`]: { formula: "=BUSH.DUTIES(Duties[#All],OwnGrades[#All])" },
  },
};

/** The chosen duty, and what the sheet Duties answers on it. */
const ofDuty = (column: number): string =>
  `=INDEX(Duties!A${top}#,MATCH($B$4,Duties!A${top}:A${last},0),${column + 1})`;
const chosenCells: FileSheet["cells"] = {
  A4: { value: "Duty", look: "label" },
  B4: { value: firstDuty, look: "words" },
  A5: { value: "Grade it has", look: "label" },
  B5: { formula: ofDuty(1), look: "answer" },
  A6: { value: "Its verdict", look: "label" },
  B6: { formula: ofDuty(verdictColumn), look: "answer" },
};
const pick = { at: "B4", from: `Duties!$${firstInput}$${top + 1}:$${firstInput}$${top + dutyCells.length}` };

const checks: FileSheet = {
  name: "Checks",
  widths: [24, 14, 14, 12, 10, 12, 90],
  frozen: { rows: 8, columns: 0 },
  heights: { 1: 1.5 },
  cells: {
    ...titled("One duty, criterion by criterion", "Choose a duty of the sheet Duties in the shaded cell."),
    ...chosenCells,
    A8: { formula: "=BUSH.DUTYCHECKS(Duties[#All],B4,,OwnGrades[#All])" },
    ...cautionLines(40, "G").cells,
  },
  merged: cautionLines(40, "G").merged,
  areas: [
    { range: "A8:G8", look: "heading" },
    { range: "A9:A38", look: "answer" },
    { range: "B9:C38", look: "result" },
    { range: "D9:D38", look: "answer" },
    { range: "E9:E38", look: "result", format: "0 %" },
    { range: "F9:F38", look: "answer" },
    { range: "G9:G38", look: "text" },
  ],
  marks: marksBy("A9:F38", "F"),
  picks: [pick],
};

const shortlist: FileSheet = {
  name: "Shortlist",
  widths: [24, 24, 10, 12, 70, 14],
  frozen: { rows: 10, columns: 1 },
  heights: { 1: 1.5 },
  cells: {
    ...titled(
      "Which grade for a duty?",
      "Choose a duty in the shaded cell: grades are ranked for it, the best first, each with its reason.",
    ),
    ...chosenCells,
    A8: { value: "Grades looked at", look: "label" },
    B8: { value: "demo", look: "words" },
    C8: {
      value: "demo: the invented ones; own: the sheet Grades; generic: the families of the library",
      look: "quiet",
    },
    A10: {
      formula:
        '=IF(B8="own",BUSH.DUTYRANK(Duties[#All],B4,OwnGrades[#All]),BUSH.DUTYRANK(Duties[#All],B4,IF(B8="demo","demo","")))',
    },
  },
  areas: [
    { range: "A10:F10", look: "heading" },
    { range: "A11:B60", look: "answer" },
    { range: "C11:C60", look: "result", format: "0 %" },
    { range: "D11:D60", look: "result", format: "0" },
    { range: "E11:F60", look: "answer" },
  ],
  marks: marksBy("A11:F60", "E"),
  picks: [pick, { at: "B8", from: ["demo", "own", "generic"] }],
};

const grades: FileSheet = {
  name: "Grades",
  widths: gradeWidths,
  frozen: { rows: 5, columns: 1 },
  heights: { 1: 1.5, 5: 3 },
  tables: [{ name: "OwnGrades", at: "A5", headings: gradeHeadings, rows: gradeRows }],
  cells: titled(
    "Grades of your own",
    "Invented rows: type a supplier's figures over them. A heading carries its unit in brackets; an empty cell is no data, never a pass.",
  ),
};

const start: FileSheet = {
  name: "Start here",
  widths: [110],
  plain: true,
  heights: { 1: 1.5 },
  cells: {
    ...titled(
      "Sizing polymer plain bearings",
      "The duties of an invented rooftop greenhouse, judged by the add-in Bushcell.",
    ),
    A4: {
      value:
        "Duties: a table of loads, sizes, motions and surroundings; verdict, governing criterion, use and life beside it.",
    },
    A5: {
      value: "Checks: one duty, criterion by criterion.   Shortlist: grades ranked for one duty.   Grades: your own.",
    },
    A6: {
      value:
        "Without the add-in the answers stand as they were computed when the file was written; with it they follow every change.",
    },
    ...cautionLines(8, "A").cells,
  },
};

export const sizing: FileBook = {
  file: "sizing",
  title: "Sizing polymer plain bearings: greenhouse duties",
  sheets: [start, dutySheet, checks, shortlist, grades],
};
