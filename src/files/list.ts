import { present } from "../core/present";

/** A list of any origin as rows of cells: what a supplier sends, a buyer pastes, a command line is given. */
export type ListCell = string | number | null;

export interface List {
  readonly rows: readonly (readonly ListCell[])[];
  /** Where each row stands: the line of a text file, the row of a sheet. */
  readonly lines: readonly number[];
  /** The row that holds the headings, as far as can be told: its place in `rows`. */
  readonly top: number;
  /** What should be known about how it was read. */
  readonly remarks: readonly string[];
}

/** Whether a heading is one that the reader of the list knows. */
export type Knows = (heading: string) => boolean;

/** A list that cannot be read as it is; the message says where and why. */
export class Unreadable extends Error {}

/** Said before anything hangs. A sheet has no longer cell, no list of parts more rows or columns. */
export const most = { bytes: 50_000_000, rows: 200_000, columns: 500, cell: 32_767 } as const;

export function checkBytes(bytes: number): void {
  if (bytes > most.bytes)
    throw new Unreadable(`It holds ${Math.round(bytes / 1e6)} MB, at most ${most.bytes / 1e6} MB are read.`);
}

/** Rows below the headings and headings themselves, and no cell longer than a sheet's. */
export function checkSize({ rows, lines, top }: List): void {
  if (rows.length - top - 1 > most.rows)
    throw new Unreadable(`It holds ${rows.length - top - 1} rows, at most ${most.rows} are read at a time: split it.`);
  const headings = (rows[top] ?? []).filter((cell) => cell !== null).length;
  if (headings > most.columns)
    throw new Unreadable(`Line ${lines[top]} holds ${headings} headings, at most ${most.columns} are read.`);
  for (const [i, row] of rows.entries()) {
    const width = row.length > most.columns ? filledWidth(row) : 0;
    if (width > most.columns)
      throw new Unreadable(`Line ${lines[i]} holds ${width} cells, at most ${most.columns} are read.`);
    for (const cell of row)
      if (typeof cell === "string" && cell.length > most.cell)
        throw new Unreadable(
          `Line ${lines[i]} holds a cell of ${cell.length} characters, at most ${most.cell} are read.`,
        );
  }
}

/** Cells of a row up to the last that is filled. */
const filledWidth = (row: readonly ListCell[]): number =>
  row.reduce<number>((width, cell, i) => (cell === null ? width : i + 1), 0);

/** Among these first rows the headings are looked for. */
const searched = 30;

/** The row with the most headings that are known; without any, the first that is not blank. */
export function headingRow(rows: List["rows"], knows: Knows): number {
  let [best, at] = [0, -1];
  for (const [i, row] of rows.slice(0, searched).entries()) {
    const found = knownIn(row, knows);
    if (found > best) [best, at] = [found, i];
  }
  return at >= 0
    ? at
    : Math.max(
        0,
        rows.findIndex((row) => row.some((cell) => cell !== null)),
      );
}

/** Known headings of a row; each counts once, and a heading is short. */
export const knownIn = (row: readonly ListCell[], knows: Knows): number =>
  new Set(row.filter((cell) => typeof cell === "string" && cell.length <= 300 && knows(cell))).size;

export interface ListTable {
  readonly headings: readonly ListCell[];
  readonly rows: readonly (readonly ListCell[])[];
  /** Line of the headings, and of each row. */
  readonly line: number;
  readonly lines: readonly number[];
}

/** The list from a row of headings on; blank rows are left out unless asked for, and a row that is wider than its headings is refused. */
export function tableFrom({ rows, lines }: List, top: number, withBlanks = false): ListTable {
  const headings = rows[top] ?? [];
  const below = rows.map((row, i) => ({ row, line: present(lines[i]) })).slice(top + 1);
  const filled = withBlanks ? below : below.filter(({ row }) => row.some((cell) => cell !== null));
  for (const { row, line } of filled) {
    const width = filledWidth(row);
    if (width > headings.length)
      throw new Unreadable(
        `Line ${line} has ${width} cells under ${headings.length} headings (the last is ${quoted(present(row[width - 1]))}): ` +
          "is a comma inside a number or a text without quotes?",
      );
  }
  const width = headings.length;
  return {
    headings,
    line: lines[top] ?? 1,
    rows: filled.map(({ row }) =>
      row.length === width ? row : Array.from({ length: width }, (_, i) => row[i] ?? null),
    ),
    lines: filled.map(({ line }) => line),
  };
}

export const quoted = (cell: ListCell): string => {
  const text = String(cell);
  return `"${text.length > 40 ? `${text.slice(0, 39)}…` : text}"`;
};
