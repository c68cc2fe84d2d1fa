import Papa from "papaparse";

/** A list as rows of texts, numbers and blanks, whatever it came as. */
export type Rows = (string | number | null)[][];

/** CSV, TSV, or cells as a spreadsheet copies them. */
export function readText(text: string): Rows {
  const list = text.replace(/^\uFEFF/, "").trimStart();
  const { data } = Papa.parse<string[]>(list, { skipEmptyLines: "greedy", delimiter: delimiterOf(list) });
  return squared(data.map((row) => row.map((cell) => (cell.trim() === "" ? null : cell.trim()))));
}

/** By the heading row; a comma comes last, since it also stands inside numbers and headings. */
function delimiterOf(list: string): string {
  const headings = (/^.*/.exec(list)?.[0] ?? "").replace(/"[^"]*"/g, "");
  return ["\t", ";", "|"].find((mark) => headings.includes(mark)) ?? ",";
}

/** The first sheet of a workbook file that holds something; formulas give the values stored with them. */
export async function readWorkbook(data: ArrayBuffer): Promise<Rows> {
  const { readXlsx } = await import(/* webpackChunkName: "xlsx" */ "hucre/xlsx");
  const { sheets } = await readXlsx(new Uint8Array(data));
  const filled = sheets.map(({ rows }) => squared(rows.map((row) => row.map(plain)))).find((rows) => rows.length > 0);
  return filled ?? [];
}

function plain(cell: unknown): string | number | null {
  if (cell === null || cell === undefined || cell === "") return null;
  if (typeof cell === "number") return cell;
  if (cell instanceof Date) return cell.toISOString().slice(0, 10);
  return String(cell).trim() || null;
}

/** Equal widths, without blank rows. */
export function squared(rows: Rows): Rows {
  const kept = rows.filter((row) => row.some((cell) => cell !== null));
  const width = Math.max(0, ...kept.map((row) => row.length));
  return kept.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null));
}

export async function readFile(file: File): Promise<Rows> {
  if (/\.xls[xm]$/i.test(file.name)) return readWorkbook(await file.arrayBuffer());
  if (/\.(csv|tsv|tab|txt)$/i.test(file.name)) return readText(await file.text());
  throw new Error(`${file.name}: only .csv, .tsv, .txt and .xlsx can be opened`);
}
