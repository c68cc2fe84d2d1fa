import { CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData } from "@univerjs/core";
import { readAsTyped } from "../../files/asTyped";
import { Unreadable } from "../../files/list";
import type { ReadFile } from "./read";
import { least } from "./read";
import { checkCells, widest } from "./size";

/** A list as text (.csv) as a record of the grid. */
export function readText(name: string, data: Uint8Array): ReadFile {
  const { rows, remarks } = listIn(name, data);
  if (rows.length === 0) throw new Error(`${name} holds no cell`);
  checkCells(name, rows);
  const sheet = sheetNameOf(name);
  return {
    record: {
      id: "bushcell",
      name: sheet,
      appVersion: "",
      locale: LocaleType.EN_US,
      styles: {},
      sheetOrder: ["sheet1"],
      sheets: {
        sheet1: {
          id: "sheet1",
          name: sheet,
          rowCount: Math.max(least.rows, rows.length + 100),
          columnCount: Math.max(least.columns, widest(rows) + 10),
          cellData: Object.fromEntries(rows.map((row, r) => [r, Object.fromEntries(row.flatMap(cellAt))])),
        },
      },
    },
    left: [],
    remarks,
  };
}

function listIn(name: string, data: Uint8Array): ReturnType<typeof readAsTyped> {
  try {
    return readAsTyped(data);
  } catch (error) {
    throw error instanceof Unreadable ? new Error(`${name} is not opened. ${error.message}`) : error;
  }
}

/** No sheet is named by more, or by these signs. */
const sheetNameOf = (file: string): string =>
  file
    .replace(/\.\w+$/, "")
    .replace(/[[\]:*?/\\']/g, " ")
    .slice(0, 31)
    .trim() || "List";

const cellAt = (cell: string | number | null, col: number): [number, ICellData][] =>
  cell === null ? [] : [[col, { v: cell, t: typeof cell === "number" ? CellValueType.NUMBER : CellValueType.STRING }]];
