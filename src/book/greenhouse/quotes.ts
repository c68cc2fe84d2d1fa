import given from "../../../data/greenhouse/quotes.json";
import { motions } from "../../core/grades/model";
import { columnName } from "../../port/address";
import type { BookCell, BookSheet, Scalar } from "../book";
import { marksBy } from "./duties";
import { dutyRows } from "./dutyRows";
import { ownGrades } from "./ownGrades";
import { across, cautionLines, titled } from "./parts";

const [first, ...others] = given.rows as readonly (readonly (Scalar | null)[])[];

/** The invented quotes as they came: sizes in two systems, prices per piece and per hundred, one without a price. */
export const quoteHeadings = first as readonly string[];
export const quoteRows = others;

const duty = dutyRows.find(({ id }) => id === given.duty) as Record<
  "duty" | "load" | "bore" | "length" | "rpm" | "temperature" | "motion",
  Scalar
>;

const asked: readonly (readonly [string, Scalar])[] = [
  ["load [N]", duty.load],
  ["bore [mm]", duty.bore],
  ["length [mm]", duty.length],
  ["shaft [rpm]", duty.rpm],
  ["temp. [°C]", duty.temperature],
  ["motion", duty.motion],
];
const dutyTop = 4;
const dutyRow = dutyTop + 1;
const columns = [...asked, 0, 0].map((_, i) => columnName(i + 1));
const [load, bore, length, rpm, temperature, motion, pressure, speed] = columns.map((c) => `${c}${dutyRow}`);

/** The duty of every quote, side by side; pressure and speed once more by plain formulas. */
const dutyCells: BookSheet["cells"] = {
  [`A${dutyTop}`]: { value: "Duty", look: "heading" },
  [`A${dutyRow}`]: { value: "all quotes", look: "label" },
  ...across(columns, dutyTop, [...asked.map(([label]) => label), "pressure [MPa]", "speed [m/s]"], "heading"),
  ...Object.fromEntries(
    asked.map(([, value], i): [string, BookCell] => [
      `${columns[i]}${dutyRow}`,
      { value, look: typeof value === "number" ? "input" : "words" },
    ]),
  ),
  [pressure!]: { formula: `=BUSH.PRESSURE(${load},${bore},${length})`, look: "result", format: "0.000" },
  [speed!]: { formula: `=BUSH.SPEED(${bore},${rpm})`, look: "result", format: "0.0000" },
  [`A${dutyRow + 1}`]: { value: "All amounts are in the currency of the quotes; nothing is converted.", look: "quiet" },
  [`G${dutyRow + 1}`]: { value: "by plain sums", look: "caption" },
  [`H${dutyRow + 1}`]: { formula: `=${load}/(${bore}*${length})`, look: "result", format: "0.000" },
  [`I${dutyRow + 1}`]: { formula: `=PI()*${bore}*${rpm}/60000`, look: "result", format: "0.0000" },
};

const room = 20;
/** Widths that the ranking and the quotes, one column to the right, have in common. */
export const rankingWidths = [12, 12, 12, 14, 11, 10, 10, 11, 9, 9, 9, 9, 10, 9, 24, 12, 17];

/** The ranking from a row on: what fits by cost per 1000 hours, and below it the rest with the reason. */
export function ranking(top: number, table: string, grades = "") {
  const below = `A${top + 1}:P${top + room}`;
  const column = (from: string, to = from): string => `${from}${top + 1}:${to}${top + room}`;
  const given = [table, pressure, speed, temperature, motion, grades].filter(Boolean).join(",");
  const cautions = cautionLines(top + room + 2, "H");
  return {
    cells: { ...dutyCells, [`A${top}`]: { formula: `=BUSH.QUOTES(${given})` }, ...cautions.cells },
    merged: cautions.merged,
    areas: [
      { range: `A${top}:P${top}`, look: "heading" },
      { range: column("A", "D"), look: "answer" },
      { range: column("E", "G"), look: "result", format: "0.00" },
      { range: column("H"), look: "result", format: "0" },
      { range: column("I", "J"), look: "result", format: "0.000" },
      { range: column("K"), look: "answer" },
      { range: column("L"), look: "result", format: "0" },
      { range: column("M"), look: "result", format: "0.00" },
      { range: column("N"), look: "result", format: "0" },
      { range: column("O", "P"), look: "answer" },
    ],
    marks: [
      ...marksBy(below, "O"),
      { range: below, when: `=AND($A${top + 1}="not ranked",LEFT($O${top + 1},4)="fits")`, as: "unknown" },
    ],
    picks: [{ at: motion!, from: motions }],
  } as const satisfies Partial<BookSheet>;
}

export const story = `For the duty: ${String(duty.duty)}. Quotes that fit come first, by cost per 1000 running hours; the rest follow with the reason.`;

const spareRows = 4;
const captionRow = dutyRow + 3;
const quoteTop = captionRow + 1;
const quoteLast = quoteTop + quoteRows.length + spareRows;
const quoteColumns = quoteHeadings.map((_, i) => columnName(i + 1));
const lastColumn = quoteColumns[quoteColumns.length - 1];
const rankingTop = quoteLast + 3;
const ranked = ranking(rankingTop, `B${quoteTop}:${lastColumn}${quoteLast}`, ownGrades);

export const quotes: BookSheet = {
  name: "Quotes",
  widths: rankingWidths,
  frozen: { rows: 1, columns: 3 },
  heights: { 1: 1.6, [dutyTop]: 2, [quoteTop]: 2, [rankingTop]: 2 },
  cells: {
    ...titled("Which quote costs least to run?", story),
    [`A${captionRow - 1}`]: {
      value: "Type over the quotes or add rows below them. A heading carries its unit in brackets, or a cell its own.",
      look: "quiet",
    },
    [`A${captionRow}`]: {
      value: "Quotes as they came: suppliers, parts, prices and terms are invented",
      look: "group",
    },
    ...across(quoteColumns, quoteTop, quoteHeadings, "heading"),
    ...Object.fromEntries(
      quoteRows.flatMap((row, r) =>
        row.flatMap((value, c): [string, BookCell][] =>
          value === null ? [] : [[`${quoteColumns[c]}${quoteTop + 1 + r}`, { value }]],
        ),
      ),
    ),
    [`A${rankingTop - 1}`]: { value: "The same quotes checked and ranked", look: "group" },
    ...ranked.cells,
  },
  merged: ranked.merged,
  areas: [
    { range: `A${captionRow}:${lastColumn}${captionRow}`, look: "group" },
    { range: `B${quoteTop + 1}:D${quoteLast}`, look: "words" },
    { range: `E${quoteTop + 1}:${lastColumn}${quoteLast}`, look: "input" },
    { range: `A${rankingTop - 1}:P${rankingTop - 1}`, look: "group" },
    ...ranked.areas,
  ],
  marks: ranked.marks,
  picks: ranked.picks,
};
