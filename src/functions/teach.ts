// Written by `npm run sync` from the specs in src/core; edits here are lost.
/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */

import { functions } from "../core";
import { answer } from "../edge/sheet";

/**
 * Converts a number from one unit to another of the same dimension; absolute temperatures with their offset. Answers number in the unit wanted
 * @customfunction UNIT
 * @param value The number, or text with its unit ("250 lbf"), which then must agree with from
 * @param from Unit of the number: "psi", "lbf/in²", "ft/min", "°F" …
 * @param to Unit wanted
 */
export function UNIT(value: any[][], from: any[][], to: any[][]): any[][] {
  return answer(functions.UNIT, [value, from, to]);
}
/**
 * Version of the add-in and edition of its grade library: a self-test that needs no argument. Answers version and edition
 * @customfunction VERSION
 */
export function VERSION(): any[][] {
  return answer(functions.VERSION, []);
}
/**
 * Worked lines of a calculation: inputs, formula, the numbers put in with their units, result, source; in inch units where asked, and where a formula has no plain form in them converted in lines of their own. Answers the working, line by line; the calculation's own error where it has no answer
 * @customfunction STEPS
 * @param calculation Name of a function of this add-in that answers a number: "PRESSURE"
 * @param argument Its arguments in its own order, one value each
 */
export function STEPS(calculation: any[][], argument: any[][][]): any[][] {
  return answer(functions.STEPS, [calculation, argument]);
}
