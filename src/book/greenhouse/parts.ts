import { standingCautions } from "../../core/grades/cautionsOf";
import type { BookCell, BookSheet } from "../book";

export const titled = (title: string, text: string): BookSheet["cells"] => ({
  A1: { value: title, look: "title" },
  A2: { value: text, look: "quiet" },
});

/** Cells side by side from an address's column letters on, all with one look. */
export const across = (
  columns: readonly string[],
  row: number,
  values: readonly string[],
  look: BookCell["look"],
): BookSheet["cells"] =>
  Object.fromEntries(values.map((value, i): [string, BookCell] => [`${columns[i]}${row}`, { value, look }]));

const texts = [...standingCautions, "Duties, suppliers and grades named Demo or Own are invented."];

/** The cautions that every verdict carries, below a heading, each over the columns A to `last`. */
export const cautionLines = (top: number, last: string) => ({
  cells: Object.fromEntries<BookCell>([
    [`A${top}`, { value: "Cautions", look: "heading" }],
    ...texts.map((value, i): [string, BookCell] => [`A${top + 1 + i}`, { value, look: "caution" }]),
  ]),
  merged: last === "A" ? [] : texts.map((_, i) => `A${top + 1 + i}:${last}${top + 1 + i}`),
});
