import { BooleanNumber, CellValueType } from "@univerjs/core";
import type { ICellData, Nullable } from "@univerjs/core";
import { ErrorType } from "@univerjs/preset-sheets-core";
import { palette } from "../../book/looks";
import { richCell } from "../../port/sheet";
import type { ReadCell, Written } from "../../port/sheet";
import { noteOf } from "./notes";

const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/** Not the cell as the grid shows it: where it has a number format, the value there is its formatted text. */
export function contentOf(cell: Nullable<ICellData>, shown: () => string): ReadCell {
  const held = cell?.v ?? null;
  if (held === null) return { value: null, text: "" };
  if (cell?.t === CellValueType.BOOLEAN) return { value: Boolean(held), text: shown() };
  if (!errorCodes.has(held)) return { value: held, text: shown() };
  const note = noteOf(cell);
  const code = String(held);
  if (note?.code !== code || !note.message) return { value: code, text: code, error: { code } };
  const { message, by } = note;
  return { value: code, text: code, error: { code, message, by } };
}

const headingStyle = { bl: BooleanNumber.TRUE, bg: { rgb: palette.headingFill } };

export function gridContent(written: Written): ICellData {
  const { value = null, formula, heading, format } = richCell(written);
  const style =
    heading || format ? { s: { ...(heading && headingStyle), ...(format && { n: { pattern: format } }) } } : {};
  if (formula) return { f: formula, si: null, v: null, t: null, ...style };
  if (value === null) return { v: null, f: null, si: null, t: null, ...style };
  return {
    v: value,
    t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING,
    f: null,
    si: null,
    ...style,
  };
}
