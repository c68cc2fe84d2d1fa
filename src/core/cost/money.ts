import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { mustBe } from "../errors";
import { splitNumber } from "../numbers";

/** An amount and the user's label for its currency, which is shown and compared but never converted. */
export interface Money {
  readonly amount: number;
  readonly label?: string;
}

const label = /^[\p{L}\p{Sc}]{1,3}$/u;
const before = /^([\p{L}\p{Sc}]{1,3})\s*(?=[\d.,])/u;

export const isLabel = (text: string): boolean => label.test(text);

/** "EUR 1,250.50", "3,20 €" or a plain number; `fallback` is the heading's label. */
export function readMoney(name: string, bounds: Bounds, cell: number | string, fallback: string | undefined): Money {
  const money = typeof cell === "number" ? { amount: cell } : parse(cell);
  if (!money) throw mustBe(name, "an amount with at most a currency label", cell);
  checkDomain(name, bounds, money.amount, "metric", cell);
  return { label: fallback, ...money };
}

function parse(text: string): Money | undefined {
  const leading = before.exec(text);
  const found = splitNumber(leading ? text.slice(leading[0].length) : text);
  if (!found) return undefined;
  if (found.rest === "") return leading ? { amount: found.value, label: leading[1]! } : { amount: found.value };
  return leading || !isLabel(found.rest) ? undefined : { amount: found.value, label: found.rest };
}

/** Labels differ in more than case. */
export const differ = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && a.toUpperCase() !== b.toUpperCase();
