/** What stands in a cell of the emulated workbook; an error has its code and, from a function of the add-in, its message. */
export interface CellError {
  readonly error: string;
  readonly message?: string;
}
export type CellValue = number | string | boolean | CellError;

export const isError = (value: unknown): value is CellError =>
  typeof value === "object" && value !== null && "error" in value;

const errorTypes: Readonly<Record<string, string>> = {
  "#DIV/0!": "Div0",
  "#N/A": "NotAvailable",
  "#NAME?": "Name",
  "#NULL!": "Null",
  "#NUM!": "Num",
  "#REF!": "Ref",
  "#VALUE!": "Value",
};

/** A cell as Excel hands it over where it knows data types: plain, or an object's JSON in an object. */
export const onTheWire = (value: unknown): unknown =>
  isError(value)
    ? rich({ type: "Error", basicType: "Error", basicValue: value.error, errorType: errorTypes[value.error] })
    : value;

export const rich = (cell: object): { value: string } => ({ value: JSON.stringify(cell) });

/** A cell that a function answered: errors come as what its JSON says of them. */
export function answered(cell: unknown): CellValue {
  if (typeof cell !== "object" || cell === null) return cell as CellValue;
  const { code, message } = cell as { code?: string; message?: string };
  if (code === undefined) throw new Error(`no cell can hold ${JSON.stringify(cell)}`);
  return message === undefined ? { error: code } : { error: code, message };
}
