/** What a function file sees of its host: the same three names that Excel supplies. */
import { CellError } from "../../edge/host";

const ErrorCode = {
  divisionByZero: "#DIV/0!",
  invalidName: "#NAME?",
  invalidNumber: "#NUM!",
  invalidReference: "#REF!",
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  nullReference: "#NULL!",
} as const;

export type HostFunction = (...given: unknown[]) => unknown;

export interface CustomFunctionsHost {
  readonly associate: (id: string, fn: HostFunction) => void;
  readonly Error: typeof CellError;
  readonly ErrorCode: typeof ErrorCode;
}

/** Supplies `CustomFunctions` to the page and answers the map that a function file, loaded afterwards, fills. */
export function supplyCustomFunctions(page: { CustomFunctions?: unknown }): Map<string, HostFunction> {
  const functions = new Map<string, HostFunction>();
  const host: CustomFunctionsHost = {
    associate: (id, fn) => functions.set(id.toUpperCase(), fn),
    Error: CellError,
    ErrorCode,
  };
  page.CustomFunctions = host;
  return functions;
}
