import type { BookCell, BookSheet } from "../book";
import { columnRange, dutySheet, firstDuty, smallFormat } from "./duties";
import type { ColumnKey } from "./duties";
import { ownGrades } from "./ownGrades";

const chosen = "B3";
const firstOfList = 10;
const roomForList = 40;

/** What the chosen duty hands to the ranking, in the order of its arguments. */
const taken: readonly { readonly label: string; readonly from: ColumnKey; readonly format?: string }[] = [
  { label: "Pressure [MPa]", from: "pressure", format: "0.00" },
  { label: "Speed [m/s]", from: "speed", format: smallFormat },
  { label: "Temperature [°C]", from: "temperature" },
  { label: "Motion", from: "motion" },
  { label: "Wet or dry", from: "wet" },
];
const takenRow = (i: number): number => 4 + i;

const lookup = (from: ColumnKey): string =>
  `=INDEX(${dutySheet}!${columnRange(from)},MATCH($B$3,${dutySheet}!${columnRange("name")},0))`;

const list = `A${firstOfList}:E${firstOfList + roomForList}`;
const below = `A${firstOfList + 1}:E${firstOfList + roomForList}`;

export const shortlist: BookSheet = {
  name: "Shortlist",
  widths: [30, 34, 10, 8, 52],
  frozen: { rows: firstOfList, columns: 1 },
  heights: { 1: 1.3 },
  cells: {
    A1: { value: "Which grade for a duty?", look: "title" },
    A2: { value: "Choose a duty of the sheet Duties in the shaded cell: every grade is ranked for it.", look: "quiet" },
    A3: { value: "Duty", look: "label" },
    [chosen]: { value: firstDuty, look: "words" },
    ...Object.fromEntries(
      taken.flatMap(({ label, from, format }, i): [string, BookCell][] => [
        [`A${takenRow(i)}`, { value: label, look: "label" }],
        [`B${takenRow(i)}`, { formula: lookup(from), look: "answer", format }],
      ]),
    ),
    [`A${firstOfList}`]: {
      formula: `=BUSH.SHORTLIST(${taken.map((_, i) => `B${takenRow(i)}`).join(",")},${ownGrades})`,
    },
  },
  areas: [
    { range: list, look: "answer" },
    { range: `D${firstOfList}:D${firstOfList + roomForList}`, look: "result", format: "0 %" },
    { range: `A${firstOfList}:E${firstOfList}`, look: "heading" },
  ],
  marks: [
    { range: below, when: `=LEFT($C${firstOfList + 1},5)="fails"`, as: "fails" },
    { range: below, when: `=LEFT($C${firstOfList + 1},7)="no data"`, as: "unknown" },
  ],
  picks: [{ at: chosen, from: `${dutySheet}!${columnRange("name")}` }],
};
