import { functions } from "../../core";
import { parametersOf } from "../../core/describe";
import { BushError } from "../../core/errors";
import type { Formula } from "../../core/formula";
import type { System } from "../../core/kinds";
import { answer } from "../../edge/sheet";
import type { Scalar } from "../book";
import type { RecordLine } from "../record/page";

/** The system that a hand-out's figures stand in: a function that takes any one unit is given metric ones. */
export const systemOf = ({ spec }: Formula, wanted: System): System => (spec.units ? wanted : "metric");

/** Behind the inputs what is left out, and inch units where they are asked for. */
function rest({ spec }: Formula, given: number, system: System): (string | null)[] {
  if (system === "metric") return [];
  return parametersOf(spec)
    .slice(given)
    .map(({ name }) => (name === "units" ? system : null));
}

const refuse = (code: string, message = code): never => {
  throw new BushError("value", "calculation", message);
};

/** What the function answers, in its results' order; throws what it refuses. */
export const answersOf = (formula: Formula, inputs: readonly Scalar[], system: System): readonly Scalar[] =>
  answer(formula, [...inputs, ...rest(formula, inputs.length, system)], { error: refuse })[0] as Scalar[];

/** The lines of STEPS without their heading. */
export function workingOf(formula: Formula, inputs: readonly Scalar[], system: System): readonly RecordLine[] {
  const call = [...inputs, ...rest(formula, inputs.length, system)].map((value) => [[value]]);
  return (answer(functions.STEPS, [formula.spec.id, call], { error: refuse }) as RecordLine[]).slice(1);
}

/** The working as a formula of a sheet, its inputs in cells. */
export function stepsFormula(formula: Formula, cells: readonly string[], system: System): string {
  const more = rest(formula, cells.length, system).map((word) => (word === null ? "" : `"${word}"`));
  return `=BUSH.STEPS(${[`"${formula.spec.id}"`, ...cells, ...more].join(",")})`;
}
