import { answer } from "../../src/edge/sheet";
import type { Formula } from "../../src/core/formula";

const host = { error: (code: string, message?: string) => `${code} ${message ?? ""}`.trim() };

/** A formula called as a sheet calls it; an error reads "#N/A message". */
export const call = (f: Formula, ...given: unknown[]): unknown[][] => answer(f, given, host);
export const one = (f: Formula, ...given: unknown[]): unknown => call(f, ...given)[0]![0];
