import { present } from "../present";
import { expression } from "./expression";
import type { Expression } from "./expression";
import { bases, prefixes, withoutPrefix, withSymbols, withWords } from "./definitions";

/** A product of powers of units. */
export interface Unit {
  /** In the coherent unit of the SI. */
  readonly value: number;
  /** Of the base units, in their order. */
  readonly powers: readonly number[];
}

/** a·bⁿ */
const times = (a: Unit, b: Unit, power = 1): Unit => ({
  value: a.value * b.value ** power,
  powers: a.powers.map((n, i) => n + power * present(b.powers[i])),
});
const one: Unit = { value: 1, powers: bases.map(() => 0) };

/** One of the unit, or `undefined` where the text is none. "N m" is a product, "/K" counts per kelvin. */
export function parseUnit(text: string): Unit | undefined {
  const written = text.trim().replace(/^(?=\/)/, "1");
  // a space is a product where it stands between units
  const joined = written.replace(/(\w)\s+(?=\w)|([\w)])\s*(?=\()|(\))\s*(?=\w)/g, "$1$2$3*");
  try {
    return unitOf(expression(joined));
  } catch {
    return undefined;
  }
}

/** How many of the one unit make one of the other; both are one of their unit. */
export const ratioOf = (from: Unit, to: Unit): number => from.value / to.value;

export const isOfSameDimension = (a: Unit, b: Unit): boolean =>
  times(a, b, -1).powers.every((power) => Math.abs(power) < 1e-12);

function unitOf(node: Expression): Unit {
  if (node.type === "Identifier") return unitNamed(node.name as string);
  const [left, right] = [node.left as Expression, node.right as Expression];
  switch (node.operator) {
    case "^":
      return times(one, unitOf(left), numberOf(right));
    case "*":
      return times(unitOf(left), unitOf(right));
    case "/":
      return times(left.type === "Literal" && left.value === 1 ? one : unitOf(left), unitOf(right), -1);
    default:
      throw new Error(`no unit is a ${node.type}`);
  }
}

function numberOf({ operator, argument, value }: Expression): number {
  if (typeof value === "number") return value;
  if (operator === "-" && argument) return -numberOf(argument as Expression);
  throw new Error("no power of a unit");
}

/** Of each name its definition, and which form of a prefix may stand before it: a symbol, 0, or a word, 1. */
const definitions = new Map(
  [withSymbols, withWords, withoutPrefix].flatMap((group, form) =>
    Object.entries(group).flatMap(([names, definition]) =>
      names.split(" ").map((name) => [name, { definition, form }] as const),
    ),
  ),
);
const known = new Map<string, Unit>(
  bases.map((base, i) => [base, { value: 1, powers: bases.map((_, k) => Number(i === k)) }]),
);

function unitNamed(name: string): Unit {
  const found = known.get(name) ?? defined(name) ?? prefixed(name);
  if (!found) throw new Error(`no unit is named ${name}`);
  known.set(name, found);
  return found;
}

function defined(name: string): Unit | undefined {
  const found = definitions.get(name);
  if (!found) return undefined;
  const [size, unit] = found.definition.split(" ") as [string, string];
  return sized(Number(size), unitOf(expression(unit)));
}

function prefixed(name: string): Unit | undefined {
  for (const [size, ...forms] of prefixes)
    for (const form of [0, 1] as const) {
      const unit = name.slice(forms[form].length);
      if (name === forms[form] + unit && definitions.get(unit)?.form === form) return sized(size, unitNamed(unit));
    }
  return undefined;
}

const sized = (size: number, { value, powers }: Unit): Unit => ({ value: size * value, powers });
