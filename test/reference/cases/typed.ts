import { familyOf } from "../../../src/core";
import type { Formula } from "../../../src/core/formula";
import type { System } from "../../../src/core/kinds";
import { answered } from "../../../scripts/lib/functionPages";
import { call } from "../../support";
import type { ReferenceCase } from "../case";

/** A formula as a reader of the source would type it, and what becomes of its answer. */
export interface Typed {
  readonly f: Formula;
  readonly given: readonly unknown[];
  readonly units?: System;
  /** Which column of a row; the first where left out. */
  readonly column?: number;
  /** What the source does with the answer: times a speed, say; beside it in words. */
  readonly then?: readonly [words: string, (answer: number) => number];
}

/** The formula and what is done with its answer, as the report names it. */
function nameOf({ f, given, units = "metric", column, then }: Typed): string {
  const formula = /^`=BUSH\.(.*?)`/.exec(answered(f, given, units))![1]!;
  const of = column === undefined ? "" : `, column ${column + 1}`;
  return `${formula}${of}${then ? `, ${then[0]}` : ""}`;
}

export function answerOf({ f, given, units, column = 0, then }: Typed): number | string {
  const answer = call(f, given, units)[0]![column] as number | string;
  return then ? then[1](answer as number) : answer;
}

/** A printed example computed by the formula that its reader would type. */
export const printed = (
  source: string,
  expected: string,
  unit: string,
  typed: Typed,
  more: Pick<ReferenceCase, "within" | "misprint"> = {},
): ReferenceCase => ({
  family: familyOf(typed.f.spec.id),
  what: nameOf(typed),
  source,
  kind: "printed example",
  unit,
  expected,
  compute: () => answerOf(typed),
  ...more,
});
