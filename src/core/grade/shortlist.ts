import { formula } from "../formula";
import type { Answer } from "../formula";
import { assess } from "./assess";
import type { Check, Duty } from "./assess";
import { dutyArgs, wetArg } from "./duty";
import { kindText, standardLibrary } from "./library";
import type { Grade, Library } from "./library";
import { gradesArg } from "./table";
import { reasonOf, verdictOf } from "./verdict";
import type { Verdict } from "./verdict";

export interface Ranked extends Verdict {
  readonly grade: Grade;
  readonly checks: readonly Check[];
}

const order = { fits: 0, fails: 1, "no data": 2 } as const;

/** All grades: those that fit by rising use, then those that fail, then those without the data; equals keep their order. */
export function rank(duty: Duty, { grades }: Library = standardLibrary()): Ranked[] {
  const useOf = ({ governing }: Ranked) => governing.use ?? Infinity;
  return grades
    .map((grade) => {
      const checks = assess(grade, duty);
      return { grade, checks, ...verdictOf(checks) };
    })
    .sort((a, b) => order[a.word] - order[b.word] || useOf(a) - useOf(b) || 0);
}

export const shortlist = formula(
  {
    id: "SHORTLIST",
    family: "Grades, limits, verdicts",
    text: "Every grade ranked for a duty: least governing use first, failures below with the reason, then grades without the data. Where it is wet, a grade of unknown swelling has no data",
    args: { ...dutyArgs, wet: wetArg, grades: gradesArg },
    units: true,
    result: {
      shape: "table",
      text: "One grade per row",
      columns: [
        { name: "grade", kind: "text" },
        { name: "kind", kind: "text" },
        { name: "verdict", kind: "text" },
        { name: "use", kind: "ratio" },
        { name: "reason", kind: "text" },
      ],
    },
    source: { key: "own" },
    example: [2, 0.06, "5 to 45", "turning"],
    see: ["VERDICT", "CHECKS", "GRADES"],
  },
  ({ wet, grades, ...duty }, system = "metric") =>
    rank({ ...duty, wet: wet === "wet" }, grades).map(({ grade, word, governing }): Answer[] => [
      grade.name,
      kindText[grade.kind],
      word,
      governing.use ?? "",
      reasonOf(governing, system),
    ]),
);
