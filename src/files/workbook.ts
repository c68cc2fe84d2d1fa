import { checkSize, headingRow, knownIn, most, Unreadable } from "./list";
import type { Knows, List, ListCell } from "./list";

interface Merge {
  readonly startRow: number;
  readonly startCol: number;
  readonly endRow: number;
  readonly endCol: number;
}

/** Unpacked, a workbook is far larger than its file. */
const mostUnpacked = 300_000_000;

/** The sheet of a workbook whose headings are known best; formulas give the values stored with them. */
export async function readWorkbook(data: Uint8Array, knows: Knows): Promise<List> {
  const size = unpackedSize(data);
  if (size > mostUnpacked)
    throw new Unreadable(
      `Unpacked it would hold ${Math.round(size / 1e6)} MB, at most ${mostUnpacked / 1e6} MB are read.`,
    );
  const { readXlsx } = await import("hucre/xlsx");
  const { sheets } = await readXlsx(data, { maxRows: most.rows + 100 }).catch((error: Error) => {
    throw new Unreadable(`The workbook cannot be read: ${error.message}`);
  });
  const lists = sheets.map(({ name, rows, merges }) => ({
    name,
    list: listOf(
      rows.map((row) => row.map(plain)),
      merges,
      knows,
    ),
  }));
  const filled = lists.filter(({ list }) => list.rows.some((row) => row.some((cell) => cell !== null)));
  if (filled.length === 0) throw new Unreadable("No sheet of the workbook holds anything.");
  const score = ({ list }: (typeof filled)[number]): number => knownIn(list.rows[list.top] ?? [], knows);
  const best = filled.reduce((a, b) => (score(b) > score(a) ? b : a));
  checkSize(best.list);
  const others = filled.filter((other) => other !== best).map(({ name }) => name);
  if (others.length === 0) return best.list;
  return { ...best.list, remarks: [`read from the sheet "${best.name}"; not read: ${others.join(", ")}`] };
}

function listOf(rows: ListCell[][], merges: readonly Merge[] | undefined, knows: Knows): List {
  const top = headingRow(rows, knows);
  const merged = withMerged(rows, merges ?? [], top);
  return { rows: merged, lines: merged.map((_, i) => i + 1), top, remarks: [] };
}

/** A heading that spans cells below it stands in front of each: "price" over "from 1", "from 100"; one that spans rows stands in the last. */
function withMerged(rows: ListCell[][], merges: readonly Merge[], top: number): ListCell[][] {
  const row = [...(rows[top] ?? [])];
  for (const { startRow, startCol, endRow, endCol } of merges) {
    const text = rows[startRow]?.[startCol];
    if (startRow >= top || startRow < top - 2 || typeof text !== "string") continue;
    const reachesDown = endRow >= top;
    // a title over the whole table is no heading of its columns
    const isTitle = endCol - startCol + 1 >= row.filter((cell) => cell !== null).length;
    if (!reachesDown && (endRow !== top - 1 || isTitle)) continue;
    for (let col = startCol; col <= endCol; col++) row[col] = reachesDown ? text : behind(text, row[col]);
  }
  return rows.map((cells, i) => (i === top ? row.map((cell) => cell ?? null) : cells));
}

const behind = (text: string, own: ListCell | undefined): string =>
  own === null || own === undefined ? text : `${text} ${String(own)}`;

function plain(cell: unknown): ListCell {
  if (cell === null || cell === undefined || cell === "") return null;
  if (typeof cell === "number") return cell;
  if (cell instanceof Date) return cell.toISOString().slice(0, 10);
  return String(cell).trim() || null;
}

/** What the directory at a zip file's end says of its parts (PKWARE APPNOTE, 4.3.12 and 4.3.16, memory). */
function unpackedSize(data: Uint8Array): number {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const longestComment = 65_535;
  let end = data.length - 22;
  while (end >= 0 && end >= data.length - 22 - longestComment && view.getUint32(end, true) !== 0x06054b50) end--;
  if (end < 0 || view.getUint32(end, true) !== 0x06054b50)
    throw new Unreadable("The workbook is broken: its end is missing.");
  let sum = 0;
  let at = view.getUint32(end + 16, true);
  for (let i = view.getUint16(end + 10, true); i > 0 && at + 46 <= data.length; i--) {
    sum += view.getUint32(at + 24, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return sum;
}
