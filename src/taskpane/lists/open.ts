import { readDelimitedInParts } from "../../files/delimited";
import type { Progress } from "../../files/delimited";
import { knows } from "../../files/kinds";
import type { ListKind } from "../../files/kinds";
import { checkBytes, checkSize, headingRow } from "../../files/list";
import type { List, ListCell } from "../../files/list";
import { readFile as readListFile } from "../../files/readFile";
import type { ReadCell } from "../../port/sheet";

/** CSV, TSV, or cells as a spreadsheet copies them. */
export function readText(text: string, kind: ListKind, progress: Progress): Promise<List> {
  checkBytes(text.length);
  return readDelimitedInParts(text, knows[kind], progress);
}

/** A file by what it holds, not by its name. */
export const readFile = (file: Blob, kind: ListKind, progress: Progress): Promise<List> =>
  readListFile(file, knows[kind], progress);

/** Cells of the sheet; `top` is the row of the first, counted from 0. */
export function readCells(cells: readonly (readonly ReadCell[])[], top: number, kind: ListKind): List {
  const rows = cells.map((row) =>
    row.map(({ value }): ListCell => (typeof value === "boolean" ? String(value) : value)),
  );
  const list = { rows, lines: rows.map((_, i) => top + i + 1), top: headingRow(rows, knows[kind]), remarks: [] };
  checkSize(list);
  return list;
}
