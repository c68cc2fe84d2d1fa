import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import { readCells } from "../../book/native/cells";
import { handOver } from "../../book/native/handOver";
import type { NamedTable, ReadCell } from "../../port/sheet";
import { snapshotOf } from "../grid/snapshot";
import { writeFile } from "./write";
import type { Written } from "./write";

export interface HandedFile extends Written {
  /** How many formulas of the add-in calculate without it, and how many stay values. */
  readonly natives: number;
  readonly values: number;
}

/** The grid's record as an .xlsx file that calculates without the add-in; `read` gives what the cells of a sheet answer. */
export async function writeHandedOver(
  record: IWorkbookData,
  read: (sheet: string) => ReadCell[][],
  tables: readonly NamedTable[],
): Promise<HandedFile> {
  const ordered = record.sheetOrder.flatMap((id) => record.sheets[id] ?? []) as IWorksheetData[];
  const { sheets, added, entries } = handOver(
    ordered.map(({ name }) => ({ name, cells: read(name) })),
    tables,
  );
  const more = snapshotOf({ name: record.name, tables: [], sheets: added });
  const cells = new Map([
    ...sheets.map((sheet) => [sheet.name, sheet.cells] as const),
    ...added.map((sheet) => [sheet.name, readCells(sheet)] as const),
  ]);
  const whole: IWorkbookData = {
    ...record,
    styles: { ...more.styles, ...record.styles },
    sheets: { ...record.sheets, ...more.sheets },
    sheetOrder: [...record.sheetOrder, ...(more.sheetOrder ?? [])],
  };
  const written = await writeFile(whole, (name) => cells.get(name) ?? []);
  const natives = entries.filter(({ became }) => became === "native").length;
  return { ...written, natives, values: entries.length - natives };
}
