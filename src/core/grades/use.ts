import { assess } from "../duties/judging/assess";
import type { Check, Working } from "../duties/judging/criterion";
import { statedDuty } from "../duties/model/duty";
import type { Stated } from "../duties/model/duty";
import { missingText, reasonOf, verdictOf } from "../duties/judging/verdict";
import { noDatum } from "../errors";
import { formula } from "../formula";
import { findGrade } from "./model/find";
import { gradeArg, lacks } from "./grade";
import type { Library } from "./model/library";
import { gradesArg } from "./model/table";
import { kinds } from "../kinds";
import type { Kind } from "../kinds";
import { present } from "../present";
import { dutyArgs } from "./dutyArgs";

interface Asked extends Stated {
  readonly grade: string;
  readonly grades?: Library | undefined;
}

/** The criterion that governs and its lines. */
function workingOf({ grade, grades, ...stated }: Asked): Working & { readonly kind: Kind } {
  const { values } = findGrade(grade, grades);
  const duty = statedDuty(stated);
  const checks = assess(values, duty);
  const { governing, next } = verdictOf(checks);
  const of: Check = governing.use === undefined ? (next ?? governing) : governing;
  const { kind, working } = of.criterion;
  return { kind, ...(working?.(values, duty) ?? { lines: [], known: {} }) };
}

export const USE = formula(
  {
    id: "USE",
    text: "The governing use, value over limit: 1 is just held. #N/A where a datum is missing or the surroundings are outside the grade's temperatures",
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: {
      kind: "ratio",
      symbol: "u",
      label: "Governing use",
      text: "Governing use as a ratio; format the cell as a percentage",
    },
    working: (values) => workingOf(values).lines,
    lookups: (values) => workingOf(values).known,
    between: (values) => {
      const { kind, between } = workingOf(values);
      const unit = kinds[kind].metric;
      return {
        ...between,
        V: { unit, text: "What the duty asks" },
        Z: { unit, text: "What the grade bears" },
      };
    },
    source: { key: "own", at: "the criterion that governs: see DUTYCHECKS" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["VERDICT", "CHECKS", "SHORTLIST"],
  },
  ({ grade, grades, pressure, speed, temperature, motion }, system = "metric") => {
    const found = findGrade(grade, grades);
    const checks = assess(found.values, statedDuty({ pressure, speed, temperature, motion }));
    const { governing, use } = verdictOf(checks);
    if (use !== undefined) return use;
    const missing = checks.find(({ word }) => word === "no data");
    if (governing.word === "fails" && governing.use === undefined)
      throw noDatum("temperature", reasonOf(governing, system));
    throw lacks(found, missingText(present(missing)));
  },
);
