import { excludesZero } from "../core/domain";
import { isNumberArg, isWhole } from "../core/formula";
import type { Arg, ChoiceArg, Formula, ListArg, RestArg, TableArg } from "../core/formula";
import { systems } from "../core/kinds";
import type { System } from "../core/kinds";
import { plainCell } from "./cells";
import { rawCell, combinedShape, element, isRange } from "./element";
import type { Element } from "./element";

const unitsArg: ChoiceArg = {
  kind: "choice",
  choices: systems,
  default: "metric",
  optional: true,
  text: "Unit system",
};

/** An argument read as a whole, once for each unit system that a row asks for; `read` holds what came of it, a fault too. */
export interface Whole {
  readonly name: string;
  readonly arg: ListArg | TableArg | RestArg;
  readonly raw: unknown;
  readonly read: Partial<Record<System, unknown>>;
}

/** The arguments of a call by the way they are read, and the rows and columns that they combine to. */
export interface Shape {
  readonly elements: readonly Element[];
  readonly units: Element | undefined;
  readonly wholes: readonly Whole[];
  readonly rows: number;
  readonly cols: number;
  /** Arguments whose blanks make a row blank: the ranges among the required ones, or all of them where none is a range. */
  readonly deciding: readonly Element[];
}

/** Places the arguments of a call as the host handed them over; throws where their ranges do not combine. */
export function shapeOf(f: Formula, given: readonly unknown[]): Shape {
  const args = Object.entries<Arg>(f.spec.args);
  const elements: Element[] = [];
  const wholes: Whole[] = [];
  args.forEach(([name, arg], i) => {
    if (isWhole(arg)) wholes.push({ name, arg, raw: given[i], read: {} });
    else elements.push(element(name, arg, given[i]));
  });
  const units = f.spec.units ? element("units", unitsArg, given[args.length]) : undefined;
  const [rows, cols] = combinedShape(units ? [...elements, units] : elements);
  const required = elements.filter((e) => !e.arg.optional);
  const ranged = required.filter(isRange);
  return { elements, units, wholes, rows, cols, deciding: ranged.length > 0 ? ranged : required };
}

/** Whether the unit system differs from row to row. */
export const hasManySystems = ({ units }: Shape): boolean => units !== undefined && isRange(units);

/** The argument that makes the shape what it must not be. */
export function firstWhere({ elements, units }: Shape, is: (e: Element) => boolean): string {
  const found = [...elements, ...(units ? [units] : [])].find(is);
  return found?.name ?? "argument";
}

/** All deciding cells blank, or 0 with at least one 0 that cannot be a value: some hosts hand a blank cell over as 0. */
export function isBlankRow({ deciding }: Shape, row: number, col: number): boolean {
  if (deciding.length === 0) return false;
  let zeros = 0;
  let impossible = false;
  for (const e of deciding) {
    const cell = rawCell(e, row, col);
    if (cell === 0) {
      zeros++;
      impossible ||= isNumberArg(e.arg) && excludesZero(e.arg);
    } else if (plainCell(cell) !== null) return false;
  }
  return zeros === 0 || impossible;
}
