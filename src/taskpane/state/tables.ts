import type { NamedTable, SheetPort } from "../../port/sheet";

/** Tables of the workbook whose headings are of one sort. */
export async function tablesWith(
  port: SheetPort,
  isSuch: (headings: readonly string[]) => boolean,
): Promise<NamedTable[]> {
  const found: NamedTable[] = [];
  for (const table of await port.tables()) {
    const [headings = []] = await port.read({ ...table.place, rows: 1 });
    if (isSuch(headings.flatMap(({ value }) => (typeof value === "string" ? [value] : [])))) found.push(table);
  }
  return found;
}
