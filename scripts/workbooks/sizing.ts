import list from "../../data/greenhouse/duties.json";
import { motions } from "../../src/core/grade";
import type { FileBook, FileSheet, FileTable } from "./book";
import { cautionLines, titled } from "../../src/workbench/greenhouse/parts";

type Field = "load" | "bore" | "length" | "inner" | "outer" | "rpm" | "swing" | "cycles" | "stroke";
type Duty = Partial<Record<Field, string | number>> &
  Record<"name" | "part" | "grade" | "motion" | "temperature", string> & { wet?: boolean };

const headings = [
  "duty",
  "part",
  "grade",
  "load N",
  "bore mm",
  "length mm",
  "inner mm",
  "outer mm",
  "motion",
  "rpm",
  "swing °",
  "cycles",
  "stroke mm",
  "temperature °C",
  "water",
];
const duties: FileTable = {
  name: "Duties",
  at: "A5",
  headings,
  rows: (list as Duty[]).map((d) => [
    d.name,
    d.part,
    d.grade,
    d.load ?? null,
    d.bore ?? null,
    d.length ?? null,
    d.inner ?? null,
    d.outer ?? null,
    d.motion,
    d.rpm ?? null,
    d.swing ?? null,
    d.cycles ?? null,
    d.stroke ?? null,
    d.temperature,
    d.wet ? "wet" : "dry",
  ]),
};
const first = 6;
const last = first + duties.rows.length - 1;
/** Rows below the table that the looks and rules already reach, so that a grown table looks the same. */
const room = last + 40;
const D = (heading: string) => `Duties[${heading}]`;

const dutySheet: FileSheet = {
  name: "Duties",
  widths: [34, 8, 15, 10, 9, 9, 9, 9, 10, 7, 8, 8, 10, 14, 7, 2, 11, 11, 13, 8, 40],
  frozen: { rows: 5, columns: 1 },
  heights: { 1: 1.5, 5: 2 },
  tables: [duties],
  cells: {
    ...titled(
      "Duties of the rooftop greenhouse",
      "An invented example. Type over a value or add rows to the table; each result column is one spilled formula and grows with it.",
    ),
    A3: {
      value:
        "Plain numbers are in the unit of their heading; text such as 55 lbf keeps its own unit. Rows fill only the columns of their part and motion.",
      look: "quiet",
    },
    Q5: { value: "pressure MPa", look: "heading" },
    R5: { value: "speed m/s", look: "heading" },
    S5: { value: "PV MPa·m/s", look: "heading" },
    T5: { value: "use", look: "heading" },
    U5: { value: "verdict", look: "heading" },
    Q6: {
      formula: `=IF(${D("part")}="washer",BUSH.WASHERPRESSURE(${D("load N")},${D("inner mm")},${D("outer mm")}),BUSH.PRESSURE(${D("load N")},${D("bore mm")},${D("length mm")}))`,
    },
    R6: {
      formula: `=IF(${D("motion")}="static",0,IF(${D("motion")}="swinging",BUSH.SWINGSPEED(${D("bore mm")},${D("swing °")},${D("cycles")}),IF(${D("motion")}="linear",BUSH.STROKESPEED(${D("stroke mm")},${D("cycles")}),IF(${D("part")}="washer",BUSH.WASHERSPEED(${D("inner mm")},${D("outer mm")},${D("rpm")}),BUSH.SPEED(${D("bore mm")},${D("rpm")})))))`,
    },
    S6: { formula: "=BUSH.PVVALUE(Q6#,R6#)" },
    T6: { formula: `=BUSH.USE(${D("grade")},Q6#,R6#,${D("temperature °C")},${D("motion")},OwnGrades[#All])` },
    U6: { formula: `=BUSH.VERDICT(${D("grade")},Q6#,R6#,${D("temperature °C")},${D("motion")},OwnGrades[#All])` },
  },
  areas: [
    { range: `Q${first}:Q${room}`, look: "result", format: "0.00" },
    { range: `R${first}:S${room}`, look: "result", format: "[=0]0;[<0.001]0.0E+0;0.0000" },
    { range: `T${first}:T${room}`, look: "result", format: "0 %" },
    { range: `U${first}:U${room}`, look: "answer" },
  ],
  marks: [
    { range: `T${first}:U${room}`, when: `=LEFT($U${first},5)="fails"`, as: "fails" },
    { range: `T${first}:U${room}`, when: `=LEFT($U${first},7)="no data"`, as: "unknown" },
    { range: `Q${first}:U${room}`, when: `=ISERROR(Q${first})`, as: "unknown" },
  ],
  picks: [
    { at: `B${first}:B${last}`, from: ["sleeve", "washer"] },
    { at: `I${first}:I${last}`, from: motions },
    { at: `O${first}:O${last}`, from: ["dry", "wet"] },
  ],
};

/** One value of the chosen duty's row. */
const chosen = (range: string): string => `=INDEX(${range},MATCH($B$4,${D("duty")},0))`;
const chosenCells = (): FileSheet["cells"] => ({
  A4: { value: "Duty", look: "label" },
  B4: { value: duties.rows[0]![0] as string, look: "words" },
  A5: { value: "Grade", look: "label" },
  B5: { formula: chosen(D("grade")), look: "answer" },
  A6: { value: "Pressure, MPa", look: "label" },
  B6: { formula: chosen("Duties!Q6#"), look: "answer", format: "0.00" },
  A7: { value: "Speed, m/s", look: "label" },
  B7: { formula: chosen("Duties!R6#"), look: "answer", format: "0.0E+0" },
  A8: { value: "Temperature, °C", look: "label" },
  B8: { formula: chosen(D("temperature °C")), look: "answer" },
  A9: { value: "Motion", look: "label" },
  B9: { formula: chosen(D("motion")), look: "answer" },
  A10: { value: "Water", look: "label" },
  B10: { formula: chosen(D("water")), look: "answer" },
});
const pick = { at: "B4", from: `Duties!$A$${first}:$A$${last}` };

const checks: FileSheet = {
  name: "Checks",
  widths: [24, 34, 12, 12, 10, 12, 2, 70],
  frozen: { rows: 12, columns: 0 },
  heights: { 1: 1.5 },
  cells: {
    ...titled("One duty, criterion by criterion", "Choose a duty of the sheet Duties in the shaded cell."),
    ...chosenCells(),
    A12: { formula: "=BUSH.CHECKS(B5,B6,B7,B8,B9,OwnGrades[#All])" },
    H12: { formula: "=BUSH.CAUTIONS(B5,B6,B7,B8,B9,B10,,,OwnGrades[#All])" },
  },
  areas: [
    { range: "A12:F12", look: "heading" },
    { range: "H12:H12", look: "heading" },
    { range: "A13:A30", look: "answer" },
    { range: "B13:C30", look: "result" },
    { range: "D13:D30", look: "answer" },
    { range: "E13:E30", look: "result", format: "0 %" },
    { range: "F13:F30", look: "answer" },
    { range: "H13:H30", look: "caution" },
  ],
  marks: [
    { range: "A13:F30", when: '=$F13="fails"', as: "fails" },
    { range: "A13:F30", when: '=$F13="no data"', as: "unknown" },
  ],
  picks: [pick],
};

const shortlist: FileSheet = {
  name: "Shortlist",
  widths: [24, 34, 12, 12, 70],
  frozen: { rows: 12, columns: 1 },
  heights: { 1: 1.5 },
  cells: {
    ...titled(
      "Which grade for a duty?",
      "Choose a duty in the shaded cell: every grade is ranked for it, the least use first.",
    ),
    ...chosenCells(),
    A12: { formula: "=BUSH.SHORTLIST(B6,B7,B8,B9,B10,OwnGrades[#All])" },
  },
  areas: [
    { range: "A12:E12", look: "heading" },
    { range: "A13:C60", look: "answer" },
    { range: "D13:D60", look: "result", format: "0 %" },
    { range: "E13:E60", look: "answer" },
  ],
  marks: [
    { range: "A13:E60", when: '=LEFT($C13,5)="fails"', as: "fails" },
    { range: "A13:E60", when: '=LEFT($C13,7)="no data"', as: "unknown" },
  ],
  picks: [pick],
};

const grades: FileSheet = {
  name: "Grades",
  widths: [20, 36, 13, 13, 13, 13, 13, 14, 14, 14, 30],
  frozen: { rows: 5, columns: 1 },
  heights: { 1: 1.5, 5: 3 },
  tables: [
    {
      name: "OwnGrades",
      at: "A5",
      headings: [
        "grade",
        "family",
        "static pressure limit [MPa]",
        "running pressure limit [MPa]",
        "speed limit turning [m/s]",
        "speed limit swinging [m/s]",
        "speed limit linear [m/s]",
        "PV limit [psi*ft/min]",
        "lowest temperature [°C]",
        "highest temperature [°C]",
        "notes",
      ],
      rows: [
        ["Own loft mix", "acetal (POM), oil filled", 60, 30, 1.2, 0.8, 2.5, 4000, -40, 80, "invented for the demo"],
        [
          "Own gutter mix",
          "polyethylene (UHMWPE), glass beads",
          28,
          12,
          0.9,
          0.6,
          2,
          2600,
          -100,
          70,
          "invented for the demo",
        ],
      ],
    },
  ],
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
    A4: { value: "Duties: a table of loads, sizes and motions; pressure, speed, PV, use and verdict beside it." },
    A5: {
      value:
        "Checks: one duty, criterion by criterion, with its cautions.   Shortlist: every grade ranked for one duty.   Grades: your own.",
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
