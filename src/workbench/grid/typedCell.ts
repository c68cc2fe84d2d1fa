import { CellValueType, getNumfmtParseValueFilter, willLoseNumericPrecision } from "@univerjs/core";

const plain = /^[+-]?(?:[1-9]\d{0,2}(?:,\d{3})+|0|[1-9]\d*)?(?:\.\d+)?(?:e[+-]?\d+)?$/i;

/**
 * What a typed text becomes in a cell without a number format. A plain number is shown as it is read, without grouping
 * or rounding; "$0.60", "4.5 %", "007" and "3/4" stay texts, so that functions read currency and unit, and no part number
 * or fraction of an inch becomes another number. Undefined where the grid's own reading stands.
 */
export function typedCell(text: string): { v: string | number; t: CellValueType } | undefined {
  const typed = text.trim();
  const isPlain = /\d/.test(typed) && plain.test(typed) && !willLoseNumericPrecision(typed);
  if (isPlain) return { v: Number(typed.replaceAll(",", "")), t: CellValueType.NUMBER };
  return getNumfmtParseValueFilter(typed) ? { v: text, t: CellValueType.STRING } : undefined;
}
