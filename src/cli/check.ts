import { BushError } from "../core/errors";
import { assess, findGrade, verdictOf, verdictText } from "../core/grade";
import type { Library } from "../core/grade";
import { kinds } from "../core/kinds";
import type { Kind, System } from "../core/kinds";
import { pressureSpeed } from "../core/pv/pv";
import { fromWorking } from "../core/units";
import { dutyOf, gradeOf } from "./duties";
import type { DutyRows } from "./duties";

export type Cell = string | number;
export interface Checked {
  readonly heading: readonly string[];
  readonly lines: readonly (readonly Cell[])[];
  /** Whether every row fits. */
  readonly holds: boolean;
}

const columns = [
  ["pressure", "pressure"],
  ["speed", "speed"],
  ["PV", "pv"],
] as const satisfies readonly (readonly [string, Kind])[];

/** Each duty with pressure, speed, PV, use and verdict; a row that cannot be read says why and stays in its place. */
export function check({ rows }: DutyRows, library: Library, system: System): Checked {
  let holds = true;
  const lines = rows.map(({ line, row }) => {
    const start = [line, row.get("duty")?.text ?? "", row.get("grade")?.text ?? ""];
    try {
      const duty = dutyOf(row, system);
      const verdict = verdictOf(assess(findGrade(gradeOf(row), library), duty));
      holds &&= verdict.word === "fits";
      const values = { ...duty, pv: pressureSpeed(duty) };
      const numbers = columns.map(([, kind]) => rounded(fromWorking(kind, values[kind], system)));
      return [
        ...start,
        ...numbers,
        verdict.use === undefined ? "" : rounded(verdict.use),
        verdictText(verdict, system),
      ];
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      holds = false;
      return [...start, ...columns.map(() => ""), "", `cannot be read: ${error.message}`];
    }
  });
  const headed = columns.map(([name, kind]) => `${name} [${kinds[kind][system]}]`);
  return { heading: ["line", "duty", "grade", ...headed, "use", "verdict"], lines, holds };
}

const digits = 6;
const rounded = (value: number): number => Number(value.toPrecision(digits));
