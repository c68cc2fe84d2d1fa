import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { clash, mustBe } from "../errors";
import { splitNumber } from "../numbers";

/** Pieces from which, and up to which, a price holds. */
export interface Pieces {
  readonly from: number;
  readonly to?: number;
}
export interface PriceBreak<P> extends Pieces {
  readonly price: P;
}

const span = /^(?:from\s+)?([\d.,'\u2019 ]+?)\s*(?:-|\u2013|\u2014|\.\.\.?|…|to|bis|à|a)\s*([\d.,'\u2019 ]+)$/i;
const open = /^(?:(?:from|ab|>=|≥)\s*([\d.,'\u2019 ]+)|([\d.,'\u2019 ]+)\+)$/i;
const unit = /\s*(?:pcs?|pieces?)\.?$/i;

/** "100-499", "100 to 499", "500+", "from 500", "500 pcs" or a plain number, which is neither of them. */
export function readPieces(name: string, bounds: Bounds, cell: number | string): number | Pieces {
  const number = (given: number | string): number => {
    const found = typeof given === "number" ? { value: given, rest: "" } : splitNumber(given.trim());
    if (!found || found.rest !== "" || "isFraction" in found)
      throw mustBe(name, 'pieces like "100" or "100-499"', cell);
    checkDomain(name, bounds, found.value, "metric", cell);
    return found.value;
  };
  if (typeof cell === "number") return number(cell);
  const text = cell.trim().replace(unit, "");
  const [, first, second] = span.exec(text) ?? [];
  if (first !== undefined && second !== undefined) {
    const pieces = { from: number(first), to: number(second) };
    if (pieces.from > pieces.to) throw mustBe(name, "lower end first", cell);
    return pieces;
  }
  const [, above, plus] = open.exec(text) ?? [];
  const from = above ?? plus;
  return from === undefined ? number(text) : { from: number(from) };
}

/** The break of the greatest quantity not above the order; nothing where no price was quoted for it. */
export function breakAt<P>(breaks: readonly PriceBreak<P>[], quantity: number): PriceBreak<P> | undefined {
  const reached = breaks.filter(({ from }) => from <= quantity).pop();
  return reached?.to !== undefined && reached.to < quantity ? undefined : reached;
}

/** Least quantity first; two prices for one quantity are an error. */
export function inOrder<P>(
  name: string,
  breaks: readonly PriceBreak<P>[],
  textOf: (price: P) => string,
): PriceBreak<P>[] {
  const sorted = [...breaks].sort((a, b) => a.from - b.from);
  sorted.forEach(({ from, price }, i) => {
    const next = sorted[i + 1];
    if (next?.from === from && textOf(price) !== textOf(next.price))
      throw clash(name, `${name} gives two prices for quantity ${from}: ${textOf(price)} and ${textOf(next.price)}`);
  });
  return sorted;
}
