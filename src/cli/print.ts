import Papa from "papaparse";
import { present } from "../core/present";
import type { Shown } from "../edge/shown";

/** A heading row and lines below it. */
export interface Printed {
  readonly heading: readonly string[];
  readonly lines: readonly (readonly Shown[])[];
}

/** Comma-separated, in the form that spreadsheets open. */
export const asCsv = ({ heading, lines }: Printed): string =>
  `${Papa.unparse([heading, ...lines.map((line) => line.map(guarded))], { newline: "\n" })}\n`;

/** A text that a spreadsheet would take for a formula gets an apostrophe in front. */
const guarded = (cell: Shown): Shown => (typeof cell === "string" && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell);

/** Columns one below the other for the eye, headings a word to a line, numbers to three digits and to the right. */
export function asTable({ heading, lines }: Printed): string {
  const words = heading.map((text) => text.split(" "));
  const tallest = greatest(words.map(({ length }) => length));
  const top = Array.from({ length: tallest }, (_, i) => words.map((own) => own[own.length - tallest + i] ?? ""));
  const rows = [...top, ...lines.map((line) => line.map(printed))];
  const columns = heading.map((_, i) => ({
    width: greatest(rows.map((row) => present(row[i]).length)),
    isNumber: lines.every((line) => typeof line[i] === "number" || line[i] === ""),
  }));
  const laid = rows.map((row) =>
    row
      .map((text, i) => {
        const { width, isNumber } = present(columns[i]);
        return isNumber ? text.padStart(width) : text.padEnd(width);
      })
      .join("  ")
      .trimEnd(),
  );
  return `${laid.join("\n")}\n`;
}

/** Of any number of values: a call takes only so many arguments. */
const greatest = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), 0);

/** Control characters of a file must not reach the terminal. */
const printed = (cell: Shown, i: number): string =>
  typeof cell === "string"
    ? cell.replace(/\p{Cc}/gu, " ")
    : i === 0
      ? String(cell)
      : String(Number(cell.toPrecision(3)));

/** The same of a message of several lines. */
export const withoutControls = (text: string): string => text.replace(/(?!\n)\p{Cc}/gu, " ");
