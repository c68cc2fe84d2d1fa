import Papa from "papaparse";
import type { Checked, Shown } from "./check";

/** Comma-separated, in the form that spreadsheets open. */
export const asCsv = ({ heading, lines }: Checked): string =>
  `${Papa.unparse([heading, ...lines.map((line) => line.map(guarded))], { newline: "\n" })}\n`;

/** A text that a spreadsheet would take for a formula gets an apostrophe in front. */
const guarded = (cell: Shown): Shown => (typeof cell === "string" && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell);

/** Columns one below the other for the eye, headings a word to a line, numbers to three digits and to the right. */
export function asTable({ heading, lines }: Checked): string {
  const words = heading.map((text) => text.split(" "));
  const tallest = Math.max(...words.map(({ length }) => length));
  const top = Array.from({ length: tallest }, (_, i) => words.map((own) => own[own.length - tallest + i] ?? ""));
  const rows = [...top, ...lines.map((line) => line.map(printed))];
  const widths = heading.map((_, i) => Math.max(...rows.map((row) => row[i]!.length)));
  const isNumber = heading.map((_, i) => lines.every((line) => typeof line[i] === "number" || line[i] === ""));
  const laid = rows.map((row) =>
    row
      .map((text, i) => (isNumber[i] ? text.padStart(widths[i]!) : text.padEnd(widths[i]!)))
      .join("  ")
      .trimEnd(),
  );
  return `${laid.join("\n")}\n`;
}

/** Control characters of a file must not reach the terminal. */
const printed = (cell: Shown, i: number): string =>
  typeof cell === "string"
    ? cell.replace(/\p{Cc}/gu, " ")
    : i === 0
      ? String(cell)
      : String(Number(cell.toPrecision(3)));
