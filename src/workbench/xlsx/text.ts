import { CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData } from "@univerjs/core";
import { readAsTyped } from "../../files/asTyped";
import type { ReadFile } from "./read";
import { least } from "./read";

/** A list as text (.csv) as a record of the grid. */
export function readText(name: string, data: Uint8Array): ReadFile {
  const { rows, remarks } = readAsTyped(data);
  const sheet = sheetNameOf(name);
  const columns = Math.max(...rows.map((row) => row.length));
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
          columnCount: Math.max(least.columns, columns + 10),
          cellData: Object.fromEntries(rows.map((row, r) => [r, Object.fromEntries(row.flatMap(cellAt))])),
        },
      },
    },
    left: remarks,
  };
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
