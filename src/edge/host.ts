import type { BushError } from "../core/errors";

/** What a spreadsheet host needs from us to show an error. Excel and the local sheet share one; Google Sheets has its own. */
export interface Host {
  error(code: string, message?: string): unknown;
  /** An argument as the host hands it over; what is no argument at all comes out as null, left out. */
  argument?(raw: unknown): unknown;
}

/** An error as a cell of our own hosts holds it, and as a function returns it. */
export class CellError {
  constructor(
    readonly code: string,
    readonly message?: string,
    /** The id of the function that made it, where the host says it. */
    readonly by?: string,
  ) {}

  /** "#N/A why" */
  toString(): string {
    return this.message === undefined ? this.code : `${this.code} ${this.message}`;
  }
}

/** A host whose errors are such objects. */
export const plainHost: Host = { error: (code, message) => new CellError(code, message) };

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

/**
 * Excel, and every host that supplies `CustomFunctions`. A function of Excel can answer five error codes; another that
 * came in goes on as #N/A and says what it was.
 */
export const office: Host = {
  error: (code, message) =>
    officeCodes.has(code)
      ? new CustomFunctions.Error(code, message)
      : new CustomFunctions.Error("#N/A", message ?? `a cell that this needs holds ${code}`),
  argument: (raw) => (isInvocation(raw) ? null : raw),
};
const officeCodes: ReadonlySet<string> = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"]);

/** Arguments come as rows of cells. Behind the last one Excel hands over the call itself, which takes the place of one that was left out. */
const isInvocation = (raw: unknown): boolean => typeof raw === "object" && raw !== null && !Array.isArray(raw);
