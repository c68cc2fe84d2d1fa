import { formula, Measure, UnitLabel } from "../formula";
import type { Answer } from "../formula";
import type { Grade } from "../grades/model/library";
import { originText } from "../grades/source";
import type { System } from "../kinds";
import { chooseDuty, chooseGrade, exampleDuty, oneDutyArgs } from "./judging/choose";
import { criteria } from "./criteria";
import type { Check } from "./judging/criterion";
import { judge } from "./judging/judge";
import { dutiesArg } from "./model/readDuties";
import { reasonOf } from "./judging/verdict";

export const checkColumns = [
  { name: "criterion", kind: "text" },
  { name: "value", kind: "measure" },
  { name: "limit", kind: "measure" },
  { name: "unit", kind: "text" },
  { name: "use", kind: "ratio" },
  { name: "verdict", kind: "text" },
] as const;

/** A check under these columns. */
export function figuresOf({ criterion: { heading, kind }, value, limit, use, word }: Check): Answer[] {
  const number = (x: number | undefined): Answer => (x === undefined ? "" : new Measure(x, kind));
  const unit = value === undefined && limit === undefined ? "" : new UnitLabel(kind);
  return [heading, number(value), number(limit), unit, use ?? "", word];
}

/** Where the limit comes from, what was said, and what else should be known. */
export function originOf(grade: Grade, check: Check, system: System): string {
  const { property, say, notes, word } = check;
  return [
    ...(say || word === "no data" ? [reasonOf(check, system)] : []),
    ...(property && grade.values[property as keyof Grade["values"]] !== undefined ? [originText(grade, property)] : []),
    ...(notes?.(system, check) ?? []),
  ].join("; ");
}

export const DUTYCHECKS = formula(
  {
    id: "DUTYCHECKS",
    text: "Every criterion of one duty with value, limit, use, verdict and where the limit comes from; below it what was not asked, and columns that were not read",
    args: { duties: dutiesArg, ...oneDutyArgs },
    units: true,
    result: {
      shape: "table",
      text: "One criterion per row; a cell is empty where there is no number",
      columns: [...checkColumns, { name: "from where", kind: "text" }],
    },
    source: { key: "own", at: "each criterion names its own" },
    example: [exampleDuty, "", "Demo Medlar"],
    see: ["DUTIES", "DUTYRANK", "CHECKS"],
  },
  ({ duties, duty, grade, grades }, system = "metric"): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    const judged = chooseGrade(chosen, grade, grades);
    const checks = judge(judged, chosen);
    const asked = new Set(checks.map(({ criterion }) => criterion.id));
    return [
      ...checks.map((check) => [...figuresOf(check), originOf(judged, check, system)]),
      ...criteria
        .filter(({ id }) => !asked.has(id))
        .map(({ heading, asked: when }) => [heading, "", "", "", "", "not asked", `asked ${when}`]),
      ...duties.unknownColumns.map((heading) => [heading, "", "", "", "", "not read", "column of no known heading"]),
    ];
  },
);
