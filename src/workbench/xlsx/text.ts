import { CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData } from "@univerjs/core";
import { decode } from "../../files/decode";
import { readDelimited } from "../../files/delimited";
import { knows } from "../../files/kinds";
import type { ReadFile } from "./read";
import { least } from "./read";

const anyHeading = (heading: string): boolean => Object.values(knows).some((known) => known(heading));

/** A list as text (.csv) as a record of the grid; only what reads the same as a number is one, all else stays as it is written. */
export function readText(name: string, data: Uint8Array): ReadFile {
  const { text, remarks } = decode(data);
  const { rows } = readDelimited(text, anyHeading, remarks);
  const sheet =
    name
      .replace(/\.\w+$/, "")
      .replace(/[[\]:*?/\\']/g, " ")
      .slice(0, 31)
      .trim() || "List";
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
          cellData: Object.fromEntries(
            rows.map((row, r) => [
              r,
              Object.fromEntries(row.flatMap((cell, c) => (cell === null ? [] : [[c, cellOf(cell)]]))),
            ]),
          ),
        },
      },
    },
    left: [...remarks],
  };
}

function cellOf(cell: string | number | boolean): ICellData {
  const isNumber = String(Number(cell)) === String(cell) && Number.isFinite(Number(cell));
  return isNumber ? { v: Number(cell), t: CellValueType.NUMBER } : { v: String(cell), t: CellValueType.STRING };
}
