// Written by `npm run sync` from the specs in src/core; edits here are lost.

import { unitOf as UNIT_, versionOf as VERSION_ } from "../core";

import { answer } from "../edge/sheet";

/**
 * Converts a number from one unit to another of the same dimension; absolute temperatures with their offset
 * @customfunction UNIT
 * @param value The number, or text with its unit ("250 lbf"), which then must agree with from
 * @param from Unit of the number: "psi", "lbf/in²", "ft/min", "°F" …
 * @param to Unit wanted
 * @returns
 */
export function UNIT(value: any[][], from: any[][], to: any[][]): any[][] {
  return answer(UNIT_, [value, from, to]);
}

/**
 * Version of the add-in and edition of its grade library: a self-test that needs no argument. Answers version and edition
 * @customfunction VERSION
 * @returns Version and edition
 */
export function VERSION(): any[][] {
  return answer(VERSION_, []);
}
