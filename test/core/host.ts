import { answer } from "../../src/edge/sheet";
import type { Formula } from "../../src/core/formula";
import { textHost } from "../support";

/** A formula called as a sheet calls it; an error reads "#N/A message". */
export const call = (f: Formula, ...given: unknown[]): unknown[][] => answer(f, given, textHost);
export const one = (f: Formula, ...given: unknown[]): unknown => call(f, ...given)[0]![0];
