import { CellError } from "../../edge/host";
import type { HostFunction } from "./customFunctions";
import { sheetName } from "./metadata";
import type { FunctionMeta, ParameterMeta } from "./metadata";

export type CellValue = number | string | boolean | null | CellError;
/** A value, a reference or a range as rows of cells; null when the argument was left out. */
export type Given = CellValue[][] | null;

/** Calls a function as Excel would: arguments shaped by the metadata, whatever comes back as rows of cells. */
export function callFunction(
  meta: FunctionMeta,
  fn: HostFunction,
  given: readonly Given[],
  takesErrors: boolean,
): CellValue[][] {
  try {
    const refused = takesErrors ? undefined : firstError(given);
    if (refused) return [[refused]];
    return rowsOf(fn(...shaped(meta, given))).map((row, r) =>
      row.map((cell, c) => madeBy(meta, withMessage(toCell(cell), given, r, c))),
    );
  } catch (thrown) {
    return [[madeBy(meta, thrown instanceof CellError ? thrown : new CellError("#VALUE!", String(thrown)))]];
  }
}

/** An error with a message that no other function made is this one's. */
const madeBy = ({ id }: FunctionMeta, cell: CellValue): CellValue =>
  cell instanceof CellError && cell.message && !cell.by ? new CellError(cell.code, cell.message, id) : cell;

/** A host hands errors only to functions that ask for them; otherwise the first one is the answer. */
const firstError = (given: readonly Given[]): CellError | undefined =>
  given.flatMap((arg) => arg?.flat() ?? []).find((cell) => cell instanceof CellError);

function shaped(meta: FunctionMeta, given: readonly Given[]): unknown[] {
  const last = meta.parameters[meta.parameters.length - 1];
  const single = last?.repeating ? meta.parameters.slice(0, -1) : meta.parameters;
  const args: unknown[] = single.map((parameter, i) => shapedOne(parameter, given[i] ?? null));
  const rest = given.slice(single.length);
  if (last?.repeating) return [...args, rest.map((arg) => shapedOne(last, arg))];
  if (rest.length > 0) throw new CellError("#VALUE!", `${sheetName(meta)} takes ${single.length} arguments at most`);
  return args;
}

function shapedOne(parameter: ParameterMeta, arg: Given): unknown {
  if (arg === null || parameter.dimensionality === "matrix") return arg;
  if (arg.length > 1 || (arg[0]?.length ?? 0) > 1)
    throw new CellError("#VALUE!", `${parameter.name} takes one cell, not a range`);
  return arg[0]?.[0] ?? null;
}

function rowsOf(result: unknown): unknown[][] {
  if (!Array.isArray(result)) return [[result]];
  return result.map((row: unknown) => (Array.isArray(row) ? row : [row]));
}

function toCell(raw: unknown): CellValue {
  if (raw instanceof CellError || typeof raw === "string" || typeof raw === "boolean") return raw;
  if (typeof raw === "number") return Number.isFinite(raw) ? raw : new CellError("#NUM!");
  if (raw === null || raw === undefined) return 0; // as Excel shows it
  return new CellError("#VALUE!", "the function answered something that no cell can hold");
}

/** An error that passed through keeps the message with which it came in, if it stood at the same place. */
function withMessage(cell: CellValue, given: readonly Given[], row: number, col: number): CellValue {
  if (!(cell instanceof CellError) || cell.message) return cell;
  for (const arg of given) {
    const line = arg?.[arg.length > 1 ? row : 0];
    const from = line?.[line.length > 1 ? col : 0];
    if (from instanceof CellError && from.code === cell.code && from.message) return from;
  }
  return cell;
}
