import {
  assess,
  found,
  judge,
  NamedDuty,
  reasonOf,
  statedDuty,
  stepValues,
  verdictOf,
  verdictText,
} from "../../../src/core/duties";
import type { Check, Duty, FieldValues } from "../../../src/core/duties";
import type { StepValues } from "../../../src/core/duties/model/stepValues";
import { readCurve, readGrades } from "../../../src/core/grades/model";
import type { Grade, Values } from "../../../src/core/grades/model";

/** A grade at figures that are easy to reckon with, and that holds every duty below. */
export const full: Values = {
  staticPressure: 60,
  runningPressure: 20,
  speedTurning: 1,
  speedSwinging: 0.5,
  speedLinear: 2,
  pvLimit: 0.2,
  lowestTemperature: -40,
  highestTemperature: 90,
  shortTermTemperature: 120,
  wearLow: 5e-7,
  wearHigh: 2e-6,
  wearFrom: "bush",
  compressiveStrength: 80,
  swelling50: 0.003,
  swellingSaturated: 0.01,
  shock: "good",
  edgeLoad: "good",
  dirt: "good",
  damping: "good",
  softShaft: "good",
  roughShaft: "good",
  vacuum: "good",
  media: [
    { medium: "water", rating: "resistant" },
    { medium: "fuels", rating: "limited" },
    { medium: "alcohols", rating: "limited" },
    { medium: "strong acids", rating: "attacked" },
  ],
  shafts: ["hardened steel", "stainless steel"],
  shaftHardness: 200,
};
export const grade = (values: Values, origins: Grade["origins"] = {}): Grade => ({
  name: "T",
  kind: "own",
  values,
  origins,
  extra: [],
});
export const without = (...keys: (keyof Values)[]): Values =>
  Object.fromEntries(Object.entries(full).filter(([key]) => !keys.includes(key as keyof Values)));
export const curve = (text: string, kind: "pressure" | "pv") =>
  readCurve("c", kind === "pv" ? { kind, from: 0 } : { kind, above: 0 }, text, undefined, "metric");

/** 600 N on 20 × 15 mm: F/(d·L) = 2 MPa; 100 mm there and back 15 times a minute: 2·100·15/60000 = 0.05 m/s. */
export const sleeve: FieldValues = {
  load: 600,
  bore: 20,
  length: 15,
  stroke: 100,
  cycles: 15,
  temperature: { low: 23, high: 23 },
};
/** The same at rest. */
export const resting: FieldValues = {
  load: 600,
  bore: 20,
  length: 15,
  motion: "static",
  temperature: { low: 23, high: 23 },
};

/** A duty as its rows say it. */
export function described(...rows: readonly FieldValues[]): NamedDuty {
  let above: FieldValues = {};
  const steps = rows.map((row, i): StepValues => {
    const step = stepValues(row, above, i > 0, rows.length > 1);
    above = step.values;
    return step;
  });
  return new NamedDuty("T", steps);
}

/** The sleeve above with other or further fields. */
export const on = (more: FieldValues, base: FieldValues = sleeve): NamedDuty => described({ ...base, ...more });

type Judged = Duty | NamedDuty;
export const checksOf = (values: Values, duty: Judged): Check[] =>
  duty instanceof NamedDuty ? judge(grade(values), duty) : assess(values, duty);

/** What one criterion finds; an error where it is not asked. */
export function finding(id: string, values: Values, duty: Judged): Check {
  const check = found(checksOf(values, duty), id);
  if (!check) throw new Error(`${id} is not asked`);
  return check;
}
export const isAsked = (id: string, duty: Judged): boolean => found(checksOf(full, duty), id) !== undefined;
/** "fails, running pressure 110 %": the word and the reason of one criterion. */
export function said(id: string, values: Values, duty: Judged): string {
  const check = finding(id, values, duty);
  return `${check.word}, ${reasonOf(check, "metric")}`;
}
/** The verdict's line. */
export const line = (values: Values, duty: Judged): string => verdictText(checksOf(values, duty), "metric");
export const verdict = (values: Values, duty: Judged) => verdictOf(checksOf(values, duty));

/** Pressure and speed alone, as the positional functions have them. */
export const stated = (more: Partial<Parameters<typeof statedDuty>[0]> = {}): Duty =>
  statedDuty({ pressure: 2, speed: 0.05, temperature: { low: 23, high: 23 }, motion: "turning", ...more });
export const between = (low: number, high = low) => ({ temperature: { low, high } });

/** The grade of a table's one row, as a user would type it. */
export const typed = (row: Readonly<Record<string, unknown>>): Grade =>
  readGrades(
    [
      ["grade", ...Object.keys(row)],
      ["Own", ...Object.values(row)],
    ] as never,
    "metric",
    "grades",
  ).grades[0]!;
