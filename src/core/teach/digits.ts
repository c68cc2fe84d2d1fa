import { present } from "../present";
import { leastDigits, roundedTo } from "./notation";
import { evaluate, symbolsOf } from "./working";
import type { Tree } from "./working";

/** A line with the value that it comes to. */
export interface Worked {
  readonly symbol: string;
  readonly tree: Tree;
  readonly value: number;
}

export const fewestDigits = 4;
export const mostDigits = 15;

/**
 * How many digits each symbol is shown with: as few as will do for the numbers shown in each line to come to the number
 * shown behind it.
 */
export function digitsFor(lines: readonly Worked[], values: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  const digits = new Map<string, number>([...values.keys()].map((symbol) => [symbol, fewestDigits]));
  for (const line of lines) digits.set(line.symbol, digitsOfSum(line, values));
  const count = (symbol: string) => present(digits.get(symbol));
  const shown = (symbol: string) => roundedTo(present(values.get(symbol)), count(symbol));
  for (let isSettled = false; !isSettled;) {
    isSettled = true;
    for (const { symbol, tree } of lines) {
      if (agrees(evaluate(tree, shown), shown(symbol), count(symbol))) continue;
      for (const part of symbolsOf(tree)) {
        if (shown(part) === values.get(part) || count(part) === mostDigits) continue;
        digits.set(part, count(part) + 1);
        isSettled = false;
      }
    }
  }
  return digits;
}

/** A sum shows a small term beside a large one: 25 mm + 0.0137 mm = 25.0137 mm. */
function digitsOfSum({ tree, value }: Worked, values: ReadonlyMap<string, number>): number {
  if (tree.type !== "sum") return fewestDigits;
  const sizes = tree.terms.map((term) => Math.abs(evaluate(term.tree, (symbol) => values.get(symbol))));
  // a term that happens to be zero may be a small one
  const extra = placeOf(Math.abs(value)) - Math.min(...sizes.map(placeOf));
  return value === 0 || Number.isNaN(extra)
    ? fewestDigits
    : Math.min(2 * fewestDigits, fewestDigits + Math.max(0, extra));
}
const placeOf = (size: number): number => Math.floor(Math.log10(size));

/** Whether a number rounds to the one shown, whose zeros at the end are not written but count. */
export function agrees(value: number, shown: number, digits: number): boolean {
  if (!Number.isFinite(value)) return true; // nothing is shown of it
  const written = shown.toExponential().replace(/e.*|[-.]/g, "").length;
  if (shown === 0) return Math.abs(value) < 1e-12;
  return Number(value.toPrecision(leastDigits(value, Math.max(digits, written)))) === shown;
}
