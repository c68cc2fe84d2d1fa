import { limitsOf } from "../../core/domain";
import type { NumberArg } from "../../core/formula";
import type { Kind, System } from "../../core/kinds";
import { scaleIn } from "../../core/units/scale";
import { isOneCell, literal, numberText } from "./given";
import type { Given } from "./given";

/** What was given, in a cell of its own; a blank stays one. */
export function givenCell({ text, value }: Given): { readonly value: number | string; readonly formula?: string } {
  const plain = typeof value === "number" || typeof value === "string" ? value : "";
  if (text === String(value) || text === literal(plain)) return { value: plain };
  return { value: plain, formula: isOneCell(text) ? `=IF(ISBLANK(${text}),"",${text})` : `=${text}` };
}

export interface NumberInput {
  readonly arg: NumberArg;
  /** What was given: a number, or text with a unit. */
  readonly given: unknown;
  /** In working units. */
  readonly working: number;
  readonly system: System;
  /** Whether what follows holds for this value alone. */
  readonly isFixed: boolean;
}

/** The number in working units out of what was given at an address, refused where the function refuses it. */
export function numberFormula({ arg, given, working, system, isFixed }: NumberInput, at: string): string {
  const x = inWorking(arg.kind, at, system);
  const tests = [`ISNUMBER(${at})`, ...bounds(arg, x), ...(isFixed ? [isNear(x, working)] : [])];
  const number = `IF(AND(${tests.join(",")}),${x},NA())`;
  const { default: taken } = arg;
  const orDefault =
    taken === undefined || (isFixed && taken !== working) ? number : `IF(${at}="",${numberText(taken)},${number})`;
  // a text with its unit, as it was read
  return typeof given === "string" && given !== ""
    ? `=IF(${at}=${literal(given)},${numberText(working)},${orDefault})`
    : `=${orDefault}`;
}

/** What was given while it stays as it was. */
export const wordFormula = (given: unknown, at: string): string => {
  const was = typeof given === "number" || typeof given === "string" ? literal(given) : '""';
  return `=IF(${at}=${was},${at},NA())`;
};

/** The same number but for what a computation before it may round. */
export const isNear = (x: string, value: number): string =>
  value === 0 ? `${x}=0` : `ABS(${x}-${literalIn(value)})<=1E-12*ABS(${literalIn(value)})`;
const literalIn = (value: number): string => (value < 0 ? `(${numberText(value)})` : numberText(value));

function inWorking(kind: Kind, at: string, system: System): string {
  const { offset, factor } = scaleIn(kind, system);
  const from = offset === 0 ? at : `(${at}-${numberText(offset)})`;
  return factor === 1 ? from : `${from}*${numberText(factor)}`;
}

/** A number in working units as an answer in the sheet's. */
export function inSystem(kind: Kind, at: string, system: System): string {
  const { offset, factor } = scaleIn(kind, system);
  return `${at}${factor === 1 ? "" : `/${numberText(factor)}`}${offset === 0 ? "" : `+${numberText(offset)}`}`;
}

function bounds(arg: NumberArg, x: string): string[] {
  const { least, most, withLeast, withMost } = limitsOf(arg);
  return [
    ...(least > -Number.MAX_VALUE ? [`${x}${withLeast ? ">=" : ">"}${numberText(least)}`] : []),
    ...(most < Number.MAX_VALUE ? [`${x}${withMost ? "<=" : "<"}${numberText(most)}`] : []),
    ...(arg.whole ? [`${x}=INT(${x})`] : []),
  ];
}
