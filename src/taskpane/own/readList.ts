import { readDelimited } from "../../files/delimited";
import { knows } from "../../files/kinds";
import { tableFrom } from "../../files/list";
import type { List } from "../../files/list";
import { readFile as readListFile } from "../../files/readFile";
import { readWorkbook as readListWorkbook } from "../../files/workbook";

/** A list as rows of texts, numbers and blanks, whatever it came as: its headings first. */
export type Rows = (string | number | null)[][];

function rowsOf(list: List): Rows {
  const { headings, rows } = tableFrom(list, list.top);
  return [headings, ...rows].map((row) => [...row]);
}

/** CSV, TSV, or cells as a spreadsheet copies them. */
export const readText = (text: string): Rows => rowsOf(readDelimited(text, knows.grades));

/** The sheet of a workbook file whose headings are known best; formulas give the values stored with them. */
export const readWorkbook = async (data: ArrayBuffer): Promise<Rows> =>
  rowsOf(await readListWorkbook(new Uint8Array(data), knows.grades));

/** Equal widths, without blank rows. */
export function squared(rows: Rows): Rows {
  const kept = rows.filter((row) => row.some((cell) => cell !== null));
  const width = kept.reduce((most, row) => Math.max(most, row.length), 0);
  return kept.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null));
}

/** A file by what it holds, not by its name. */
export const readFile = async (file: Blob): Promise<Rows> =>
  rowsOf(await readListFile(file, knows.grades, { report: () => undefined, signal: new AbortController().signal }));
