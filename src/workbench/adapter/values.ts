import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/preset-sheets-core";
import type { BaseValueObject } from "@univerjs/preset-sheets-core";
import type { CellValue, Given } from "./call";
import type { ErrorNote } from "../grid/notes";
import { CellError } from "../../edge/host";

const gridCodes: ReadonlySet<string> = new Set(Object.values(ErrorType));

/** An argument of the grid; one that was left out arrives as an empty value object or not at all. */
export function givenOf(variant: BaseValueObject): Given {
  if (variant.isArray())
    return (variant as ArrayValueObject).getArrayValue().map((row) => Array.from(row, (cell) => plain(cell)));
  return variant.isNull() ? null : [[plain(variant)]];
}

function plain(cell: BaseValueObject | null | undefined | void): CellValue {
  if (!cell || cell.isNull()) return null;
  if (cell.isError()) {
    const error = cell as ErrorValueObject;
    const note = error.getCustomData()?.["note"] as ErrorNote | undefined;
    return new CellError(error.getErrorType(), error.getErrorContent() || undefined, note?.by);
  }
  return cell.getValue();
}

/** Rows of cells as the grid wants them; more than one cell spills. */
export function gridValue(rows: readonly CellValue[][]): BaseValueObject {
  const first = rows[0]?.[0] ?? "";
  const columnCount = rows[0]?.length ?? 0;
  if (rows.length <= 1 && columnCount <= 1) return gridCell(first);
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(gridCell)),
    rowCount: rows.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function gridCell(value: CellValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (value instanceof CellError) return gridError(value);
  return StringValueObject.create(value ?? "");
}

/** Not from the grid's cache: its error objects are shared, the note belongs to this one. */
function gridError(error: CellError): ErrorValueObject {
  const code = gridCodes.has(error.code) ? (error.code as ErrorType) : ErrorType.VALUE;
  const note: ErrorNote = { code, message: error.message ?? "", by: error.by };
  const value = new ErrorValueObject(code, note.message);
  value.withCustomData({ note });
  return value;
}
