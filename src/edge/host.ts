import type { BushError } from "../core/errors";

/** What a spreadsheet host needs from us to show an error. Excel and the local sheet share one; Google Sheets has its own. */
export interface Host {
  error(code: string, message?: string): unknown;
}

const codes = { value: "#VALUE!", missing: "#N/A" } as const;

/** Error texts of spreadsheets: a cell that holds one is an error that came in. */
export const hostCodes: ReadonlySet<string> = new Set([
  "#VALUE!",
  "#N/A",
  "#DIV/0!",
  "#NUM!",
  "#NULL!",
  "#REF!",
  "#NAME?",
  "#SPILL!",
  "#CALC!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#BUSY!",
  "#GETTING_DATA",
  "#ERROR!",
]);

/** An error of the core, or one that passes through, as the host wants it. */
export const toHostError = (host: Host, error: BushError): unknown =>
  error.code === "passed" ? host.error(error.argument) : host.error(codes[error.code], error.message);

declare const CustomFunctions: { Error: new (code: string, message?: string) => unknown };

/** Excel, and every host that supplies `CustomFunctions`. Excel refuses codes it does not list, so those pass as #N/A. */
export const office: Host = {
  error: (code, message) => new CustomFunctions.Error(officeCodes.has(code) ? code : "#N/A", message),
};
const officeCodes: ReadonlySet<string> = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!", "#REF!", "#NAME?"]);
