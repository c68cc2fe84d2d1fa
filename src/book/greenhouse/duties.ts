import { field, fieldHeading, fields } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { kinds } from "../../core/kinds";
import { areaOf, columnName } from "../../port/address";
import type { BookCell, BookSheet, Look, Mark, PickList } from "../book";
import { dutyCells, dutyColumns, dutyHeadings, dutyRows } from "./dutyRows";
import { ownGrades } from "./ownGrades";
import { across } from "./parts";
import { present } from "../../core/present";

interface Column {
  readonly width: number;
  readonly look: Look;
  readonly format?: string;
}

/** A slow swing has a speed far below a millimetre a second, which fixed decimals would show as zero. */
const smallFormat = "[=0]0;[<0.001]0.0E+0;0.0000";

/** The columns of DUTIES in their order. */
export const answers = {
  duty: { width: 20, look: "text" },
  grade: { width: 14, look: "answer" },
  pressure: { width: 11, look: "result", format: "0.00" },
  speed: { width: 9, look: "result", format: smallFormat },
  PV: { width: 14, look: "result", format: smallFormat },
  "upper bore temperature": { width: 14, look: "result", format: "0" },
  governing: { width: 14, look: "text" },
  use: { width: 6, look: "result", format: "0 %" },
  life: { width: 9, look: "result", format: "0" },
  verdict: { width: 42, look: "text" },
  data: { width: 10, look: "text" },
  "not asked": { width: 42, look: "text" },
} as const satisfies Record<string, Column>;

const answered = Object.entries<Column>(answers);
const letterOf = (name: keyof typeof answers): string => columnName(Object.keys(answers).indexOf(name));
/** The duties stand to the right of what is answered. */
const inputAt = (i: number): string => columnName(answered.length + i);
export const firstInput = inputAt(0);
const lastInput = inputAt(dutyColumns.length - 1);
const noteColumn = inputAt(dutyColumns.length);

const isNumber = (key: FieldKey): boolean => field(key).kind in kinds;
const leastWidth = (key: FieldKey): number =>
  key === "duty" ? 32 : key === "media" ? 22 : key === "shaft" ? 27 : key === "housing" ? 17 : isNumber(key) ? 8 : 14;
/** No word of a heading is broken; the grid breaks a unit at its slash unless it fits behind its name. */
const widthOf = (key: FieldKey): number =>
  Math.max(
    leastWidth(key),
    ...fieldHeading(key, "metric")
      .split(/ (?!\[[^\]]*\/)/)
      .map((word) => word.length + 3),
  );

const marks: readonly (readonly [when: (verdict: string) => string, as: Mark["as"]])[] = [
  // an answer that is an error is marked like one that fails
  [(verdict) => `IFERROR(LEFT(${verdict},5)="fails",TRUE)`, "fails"],
  [(verdict) => `LEFT(${verdict},7)="no data"`, "unknown"],
  [(verdict) => `LEFT(${verdict},4)="care"`, "care"],
];
/**
 * Marks of a range by the verdicts in a column, from its own first row or another one on. They read the whole column: the grid would not look again at
 * cells that a shorter answer leaves.
 */
export function marksBy(range: string, column: string, top = areaOf(range).row + 1): readonly Mark[] {
  const all = `$${column}$${top}:$${column}$${top + areaOf(range).rows - 1}`;
  return marks.map(([when, as]) => ({ range, when: `=AND(COUNTA(${all})>0,${when(`$${column}${top}`)})`, as }));
}

/** Looks of a table of duties and of DUTIES' answer to its left, both with their headings in row `top`. */
export function dutyLooks(top: number, last: number) {
  const below = (letter: string, to = letter): string => `${letter}${top + 1}:${to}${last}`;
  const governing = letterOf("governing");
  const verdict = letterOf("verdict");
  return {
    widths: [...answered.map(([, { width }]) => width), ...dutyColumns.map(widthOf)],
    frozen: { rows: top, columns: 1 },
    growing: ["A", governing, verdict, letterOf("not asked")].map((letter) => below(letter)),
    areas: [
      { range: `A${top}:${columnName(answered.length - 1)}${top}`, look: "heading" },
      ...answered.map(([, { look, format }], i) => ({ range: below(columnName(i)), look, format })),
      ...dutyColumns.map((key, i) => ({ range: below(inputAt(i)), look: isNumber(key) ? "input" : "words" }) as const),
    ],
    marks: marksBy(below(governing, letterOf("data")), verdict),
    picks: dutyColumns.flatMap((key, i): PickList[] => {
      const entry = fields[key];
      return entry.kind === "choice" ? [{ at: below(inputAt(i)), from: entry.words }] : [];
    }),
  } as const satisfies Partial<BookSheet>;
}

export const dutySheet = "Duties";
const top = 4;
const spareRows = 8;
const last = top + dutyRows.length + spareRows;

/** The table with its heading row and room for more duties, and DUTIES' answer, as formulas on any sheet write them. */
export const dutyRange = `${dutySheet}!$${firstInput}$${top}:$${lastInput}$${last}`;
export const answerRange = (name: keyof typeof answers): string =>
  `${dutySheet}!$${letterOf(name)}$${top}:$${letterOf(name)}$${last}`;
export const nameRange = `${dutySheet}!${firstInput}${top + 1}:${firstInput}${last}`;
export const firstDuty = String(present(dutyRows[0]?.duty));

const inputCells = (): [string, BookCell][] =>
  dutyCells.flatMap((row, r) =>
    row.flatMap((value, c): [string, BookCell][] =>
      value === null ? [] : [[`${inputAt(c)}${top + 1 + r}`, { value }]],
    ),
  );

const looks = dutyLooks(top, last);
export const duties: BookSheet = {
  name: dutySheet,
  ...looks,
  widths: [...looks.widths, 60],
  heights: { 1: 1.3, [top]: 3 },
  cells: {
    // in a column that scrolls away, so that the frozen one cuts no text
    A1: { value: "Duties", look: "title" },
    B2: {
      value: `Bearings of a rooftop greenhouse, invented. One formula in A${top} judges them all; they stand to its right, from column ${firstInput} on: type over a load, a size, a temperature or a grade.`,
      look: "quiet",
    },
    B3: {
      value:
        "A plain number is in its heading's unit; text such as 55 lbf keeps its own. A row without a name is a further step of the duty above it. Use is the governing value over its limit.",
      look: "quiet",
    },
    [`A${top}`]: { formula: `=BUSH.DUTIES(${firstInput}${top}:${lastInput}${last},${ownGrades})` },
    ...across(
      [...dutyColumns.map((_, i) => inputAt(i)), noteColumn],
      top,
      [...dutyHeadings, "note, not read"],
      "heading",
    ),
    ...Object.fromEntries(inputCells()),
    ...Object.fromEntries(
      dutyRows.flatMap(({ note }, r): [string, BookCell][] =>
        note === undefined ? [] : [[`${noteColumn}${top + 1 + r}`, { value: note, look: "quiet" }]],
      ),
    ),
  },
};
