import { kinds } from "../kinds";
import type { Kind } from "../kinds";
import { present } from "../present";
import { convert } from "../units/conversion";
import { productOf } from "./working";
import type { Product, Step, Tree } from "./working";

/**
 * Units through a working: which numbers of a line only turn one unit into another, as 60 000 in v = π·d·n/60 000 does
 * with mm/min, and which numbers stand there instead in other units.
 */

/** Simple units to their powers. */
type Unit = ReadonlyMap<string, number>;
export type UnitsOf = (symbol: string) => Unit | undefined;

/** The units that workings use, small ones first, by what they measure. */
const simple = [
  ["mm", "in", "ft", "m", "km", "mi"],
  ["s", "min", "h", "d"],
  ["N", "lbf"],
  ["K"],
  ["°F"],
] as const satisfies readonly (readonly string[])[];
const compounds: Readonly<Record<string, string>> = { MPa: "N/mm²", psi: "lbf/in²", W: "N·m/s", J: "N·m", "°C": "K" };
/** Signs of plain numbers. */
const bare: ReadonlySet<string> = new Set(["", "1", "%", "°", "rad"]);

const none: Unit = new Map();
const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A unit as kinds write it, "mm³/(N·m)", taken apart; `undefined` where workings do not use it. */
export function readUnit(text: string): Unit | undefined {
  const [over = "", under = ""] = text.split("/");
  const powers = (list: string, sign: 1 | -1) =>
    list
      .replace(/[()]/g, "")
      .split("·")
      .map((one) => {
        const name = one.replace(/[⁰¹²³⁴-⁹]+$/, "");
        const digits = [...one.slice(name.length)].map((digit) => superscripts.indexOf(digit)).join("");
        const unit = unitNamed(name);
        return unit && powerOf(unit, sign * Number(digits || 1));
      });
  return [...powers(over, 1), ...powers(under, -1)].reduce((a, b) => a && b && times(a, b), none as Unit | undefined);
}

function unitNamed(name: string): Unit | undefined {
  if (bare.has(name)) return none;
  const compound = compounds[name];
  if (compound) return readUnit(compound);
  return simple.some((names) => (names as readonly string[]).includes(name)) ? new Map([[name, 1]]) : undefined;
}

function times(a: Unit, b: Unit): Unit {
  const both = new Map(a);
  for (const [name, power] of b) both.set(name, (both.get(name) ?? 0) + power);
  return new Map([...both].filter(([, power]) => power !== 0));
}
const powerOf = (unit: Unit, power: number): Unit => new Map([...unit].map(([name, p]) => [name, p * power]));
const over = (a: Unit, b: Unit): Unit => times(a, powerOf(b, -1));

const inchNames: Readonly<Record<string, string>> = {
  mm: "in",
  m: "ft",
  km: "mi",
  N: "lbf",
  MPa: "psi",
  K: "°F",
  "°C": "°F",
};

/** The inch unit that stands for a metric one: that of its kind, or each of its parts exchanged. */
export function inchUnit(metric: string): string {
  const kind = (Object.keys(kinds) as Kind[]).find((k) => kinds[k].metric === metric);
  return kind ? kinds[kind].inch : metric.replace(/°?\p{L}+/gu, (name) => inchNames[name] ?? name);
}

/** Zero is zero in every unit. */
const anyUnit = Symbol("any unit");
type Found = Unit | typeof anyUnit | undefined;

/** The unit of an expression as its symbols' units make it; `undefined` where they do not go together. */
function unitOf(tree: Tree, units: UnitsOf): Found {
  switch (tree.type) {
    case "number":
      return tree.value === 0 ? anyUnit : none;
    case "symbol":
      return tree.name === "pi" ? none : units(tree.name);
    case "sum":
      return common(
        tree.terms.map((term) => term.tree),
        units,
      );
    case "product":
      return unitOfProduct(tree, units);
    case "power":
      return unitOfPower(tree, units);
    case "call":
      return unitOfCall(tree, units);
  }
}

type TreeOf<T extends Tree["type"]> = Extract<Tree, { type: T }>;

function unitOfProduct(tree: TreeOf<"product">, units: UnitsOf): Found {
  const powers = [...tree.over, ...tree.under].map((part, i) => {
    const unit = unitOf(part, units);
    return unit === anyUnit ? none : unit && powerOf(unit, i < tree.over.length ? 1 : -1);
  });
  return powers.reduce((a, b) => a && b && times(a, b), none as Unit | undefined);
}

function unitOfPower({ base, exponent }: TreeOf<"power">, units: UnitsOf): Found {
  const unit = unitOf(base, units);
  if (unit === undefined || unit === anyUnit || unit.size === 0) return unit;
  return exponent.type === "number" ? powerOf(unit, exponent.value) : undefined;
}

function unitOfCall({ name, args }: TreeOf<"call">, units: UnitsOf): Found {
  const unit = common(args, units);
  if (unit === undefined || unit === anyUnit || selections.has(name)) return unit;
  if (name === "sqrt") return powerOf(unit, 0.5);
  return unit.size === 0 ? none : undefined;
}
/** Functions that answer one of their arguments, in its unit. */
const selections: ReadonlySet<string> = new Set(["max", "min", "abs"]);

const common = (parts: readonly Tree[], units: UnitsOf): Found =>
  parts
    .map((part) => unitOf(part, units))
    .reduce((a, b) => {
      if (a === anyUnit || b === anyUnit) return a === anyUnit ? b : a;
      return a && b && over(a, b).size === 0 ? a : undefined;
    }, anyUnit);

/** What happens to a product that is in its place only after these steps. */
type Change = (product: Product, steps: readonly Step[]) => Tree | undefined;

/** The expression with `change` done to each of its terms; `undefined` where its units do not lead to the target's. */
export function changed(tree: Tree, target: Unit, units: UnitsOf, change: Change): Tree | undefined {
  if (tree.type === "sum") {
    const terms = tree.terms.map((term) => ({ ...term, tree: changed(term.tree, target, units, change) }));
    return terms.every((term) => term.tree !== undefined) ? { ...tree, terms: terms as typeof tree.terms } : undefined;
  }
  if (tree.type === "call" && selections.has(tree.name)) {
    const args = tree.args.map((arg) => changed(arg, target, units, change));
    return args.every((arg) => arg !== undefined) ? { ...tree, args } : undefined;
  }
  const own = unitOf(tree, units);
  if (own === anyUnit) return tree;
  const steps = own && stepsBetween(over(own, target));
  if (!steps) return undefined;
  return steps.length === 0 ? tree : change(productOf(tree), steps);
}

/** The changes of unit that a quotient of units leaves to be done; `undefined` where it is more than that. */
function stepsBetween(quotient: Unit): Step[] | undefined {
  const steps = simple.flatMap((names) => {
    const held = names.flatMap((name) => {
      const power = quotient.get(name);
      return power === undefined ? [] : [{ name, power }];
    });
    const [smallest, ...larger] = held;
    if (smallest === undefined) return [];
    if (Math.abs(held.reduce((sum, { power }) => sum + power, 0)) > 1e-9) return [undefined];
    return larger.map(({ name, power }) => ({
      count: Number(convert(1, name, smallest.name).toPrecision(12)),
      unit: `${smallest.name}/${name}`,
      power,
    }));
  });
  return steps.every((step) => step !== undefined) ? steps : undefined;
}

const factorOf = (steps: readonly Step[]): number => steps.reduce((f, { count, power }) => f * count ** power, 1);
const isWhole = (x: number): boolean => Math.abs(x - Math.round(x)) <= 1e-9 * x;

/** Takes a factor out of the number that carries it, which may carry a small whole number besides: 4 000 000 in mm²/m². */
export const withoutFactor: Change = (product, steps) => {
  const factor = factorOf(steps);
  const sides = [
    ["over", factor],
    ["under", 1 / factor],
  ] as const;
  for (const most of [1, 12])
    for (const [side, carried] of sides) {
      const rests = product[side].map((part) => (part.type === "number" ? part.value / carried : NaN));
      const at = rests.findIndex((rest) => rest >= 1 - 1e-9 && rest <= most + 1e-9 && isWhole(rest));
      if (at < 0) continue;
      const value = Math.round(present(rests[at]));
      const kept = value === 1 ? [] : [{ type: "number", value } as const];
      return { ...product, [side]: [...product[side].slice(0, at), ...kept, ...product[side].slice(at + 1)] };
    }
  return undefined;
};

/** Puts a factor in behind the other numbers, as a whole one over or under the stroke; `undefined` where it is none. */
export const withFactor: Change = (product, steps) => {
  const factor = factorOf(steps);
  const [side, sign, value] = factor >= 1 ? (["over", 1, factor] as const) : (["under", -1, 1 / factor] as const);
  if (!isWhole(value)) return undefined;
  const turned = steps.map((step) => ({ ...step, power: sign * step.power }));
  const number = { type: "number", value: Math.round(value), steps: turned } as const;
  const isNumber = ({ type }: Tree): boolean => type === "number";
  const [numbers, others] = [product[side].filter(isNumber), product[side].filter((part) => !isNumber(part))];
  return { ...product, [side]: [...numbers, number, ...others] };
};
