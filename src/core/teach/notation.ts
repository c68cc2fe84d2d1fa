import { readLine } from "./working";
import type { Product, Step, Tree } from "./working";

/** Expressions as the trade writes them: π·d·n / 60 000, (40 mm)², 2 × 10⁻⁶. */

/** How tightly a written part holds together: what stands around it decides whether it needs brackets. */
type Hold = "sum" | "product" | "measure" | "whole";
interface Written {
  readonly text: string;
  readonly hold: Hold;
}
const holds: readonly Hold[] = ["sum", "product", "measure", "whole"];
const inside = ({ text, hold }: Written, least: Hold): string =>
  holds.indexOf(hold) < holds.indexOf(least) ? `(${text})` : text;

/** A symbol by its name, or the number that is put in for it, and the sign between factors. */
export interface Style {
  readonly times: string;
  symbol(name: string): Written;
}

const symbolic: Style = { times: "·", symbol: (text) => ({ text, hold: "whole" }) };

/** The numbers of a line put in; `shown` gives each symbol's number with its unit. */
export const numeric = (shown: (symbol: string) => Quantity): Style => ({
  times: " × ",
  symbol: (name) => quantity(shown(name)),
});

/** A number as it is shown, and its unit. */
export interface Quantity {
  readonly value: number;
  readonly digits: number;
  readonly unit: string;
}

function quantity({ value, digits, unit }: Quantity): Written {
  const number = numberText(value, digits);
  const hold = value < 0 ? "sum" : number.includes("×") ? "product" : unit === "" ? "whole" : "measure";
  return { text: withUnit(number, unit), hold };
}

export const quantityText = (shown: Quantity): string => quantity(shown).text;

const withUnit = (number: string, unit: string): string =>
  unit === "°" ? `${number}°` : `${number} ${unitText(unit)}`.trim();

/** "min⁻¹" for "1/min", which would read as one more division. */
export const unitText = (unit: string): string => (/^1\/[^·/()]+$/.test(unit) ? `${unit.slice(2)}⁻¹` : unit);

/** "p = F / (d·L)" */
export const formulaText = (symbol: string, tree: Tree): string => `${symbol} = ${written(tree, symbolic)}`;

/** A line of a working as the trade writes it. */
export function tradeLine(line: string): string {
  const { symbol, tree } = readLine(line);
  return formulaText(symbol, tree);
}

/** An expression in a style. */
export const written = (tree: Tree, style: Style): string => write(tree, style).text;

function write(tree: Tree, style: Style): Written {
  switch (tree.type) {
    case "number":
      return quantity({ value: tree.value, digits: 12, unit: "" });
    case "symbol":
      return tree.name === "pi" ? { text: "π", hold: "whole" } : style.symbol(tree.name);
    case "sum": {
      const text = tree.terms
        .map(({ isMinus, tree: term }, i) => {
          const sign = isMinus ? (i === 0 ? "−" : " − ") : i === 0 ? "" : " + ";
          const part = write(term, style);
          return sign + (i === 0 && !isMinus ? part.text : inside(part, "product"));
        })
        .join("");
      return { text, hold: "sum" };
    }
    case "product":
      return fraction(tree, style);
    case "power":
      return power(tree, style);
    case "call":
      return call(
        tree.name,
        tree.args.map((arg) => written(arg, style)),
      );
  }
}

function fraction({ over, under }: Product, style: Style): Written {
  const inStyle = (part: Tree): Written => write(part, style);
  const [bottom, ...bottoms] = under.map(inStyle);
  const numerator = over
    .map(inStyle)
    .map((part, i) => (i === 0 && /^−[\p{L}\d_.]+( [^ ]+)?$/u.test(part.text) ? part.text : inside(part, "product")));
  const text = numerator.length === 0 ? "1" : numerator.join(style.times);
  if (bottom === undefined) return { text, hold: "product" };
  const below =
    bottoms.length === 0
      ? inside(bottom, "measure")
      : `(${[bottom, ...bottoms].map((part) => inside(part, "product")).join(style.times)})`;
  return { text: `${text} / ${below}`, hold: "product" };
}

/** "d⁴", "xᵐ"; an exponent that has no such signs as in a cell: "x^1.25", "x^(1 / m)". */
function power({ base, exponent }: Extract<Tree, { type: "power" }>, style: Style): Written {
  const foot = inside(write(base, style), "whole");
  const top = write(exponent, style);
  return { text: foot + (raised(top.text) ?? `^${inside(top, "whole")}`), hold: "whole" };
}

function call(name: string, args: readonly string[]): Written {
  const list = args.join(", ");
  const text = name === "sqrt" ? `√(${list})` : name === "abs" ? `|${list}|` : `${name}(${list})`;
  return { text, hold: "whole" };
}

/** Figures beyond these are written with a power of ten; rounded ones from `large` on, where zeros would stand for digits. */
const [tiny, large, huge] = [1e-4, 1e6, 1e7];
/** A number that ends within so many digits is shown whole. */
const exactDigits = 7;
const isExact = (value: number): boolean =>
  Math.abs(Number(value.toPrecision(exactDigits)) - value) <= 1e-12 * Math.abs(value);

/** "0.1257", "60 000", "2 × 10⁻⁶": so many digits, or all of them where they are few. */
export function numberText(value: number, digits: number): string {
  const rounded = roundedTo(value, digits);
  const size = Math.abs(rounded);
  if (size !== 0 && (size < tiny || size >= (isExact(value) ? huge : large))) {
    const [mantissa, exponent] = size.toExponential().split("e") as [string, string];
    return `${signOf(rounded)}${mantissa} × 10${raised(String(Number(exponent)))}`;
  }
  const [whole, rest] = String(size).split(".") as [string, string?];
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thinSpace) : whole;
  return `${signOf(rounded)}${grouped}${rest === undefined ? "" : `.${rest}`}`;
}
const thinSpace = "\u202f";
const signOf = (value: number): string => (value < 0 ? "−" : "");

/** What a number shown in so many digits is worth. */
export const roundedTo = (value: number, digits: number): number =>
  isExact(value) ? Number(value.toPrecision(exactDigits)) : Number(value.toPrecision(leastDigits(value, digits)));

/** So many digits, but all those before the point. */
export function leastDigits(value: number, digits: number): number {
  const whole = Math.abs(value) < large ? String(Math.trunc(Math.abs(value))).length : 0;
  return Math.max(digits, whole);
}

/** In small raised signs; nothing where one of them has none. */
function raised(text: string): string | undefined {
  const signs = [...text].map((sign) => "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁻ᵏᵐⁿ"["0123456789-−kmn".indexOf(sign)]);
  return signs.includes(undefined) ? undefined : signs.join("");
}

/** What a factor between units is made of: "60 s/min × 1000 mm/m". */
export function stepsText(steps: readonly Step[]): string {
  const text = (step: Step): string => {
    const one = `${numberText(step.count, 12)} ${step.unit}`;
    const exponent = Math.abs(step.power);
    return exponent === 1 ? one : `(${one})${raised(String(exponent))}`;
  };
  const texts = (sign: 1 | -1) => steps.filter((step) => step.power * sign > 0).map(text);
  return [texts(1).join(" × "), ...texts(-1)].join(" ÷ ");
}
