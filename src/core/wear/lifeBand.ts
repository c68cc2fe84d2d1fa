import { assess } from "../duties/judging/assess";
import { beyondLimits } from "../duties/criteria/wearLife";
import { statedDuty } from "../duties/model/duty";
import { missingText, reasonOf } from "../duties/judging/verdict";
import { noDatum } from "../errors";
import type { BushError } from "../errors";
import type { Answer } from "../formula";
import { formula } from "../formula";
import { findGrade } from "../grades/model/find";
import { gradeArg, lacks } from "../grades/grade";
import type { Grade } from "../grades/model/library";
import { property } from "../grades/model/properties";
import { gradesArg } from "../grades/model/table";
import { statedAt } from "../heat/derating";
import type { System } from "../kinds";
import { LIFE } from "./life";

/** Throws where pressure, speed or PV are beyond the grade's limits at 23 °C, or a limit is not known. */
function requireLimits(grade: Grade, pressure: number, speed: number, system: System): void {
  const temperature = { low: statedAt, high: statedAt };
  const checks = assess(grade.values, statedDuty({ pressure, speed, temperature, motion: "turning" }));
  const beyond = beyondLimits(checks, ["fails", "no data"]);
  if (!beyond) return;
  if (beyond.word === "no data") throw lacks(grade, missingText(beyond));
  throw noDatum("pressure", `${reasonOf(beyond, system)}: the law of wear is not valid beyond the grade's limits`);
}

/** Hours and km by the greatest and the least wear rate of a grade; a rate that the grade's data lack is no datum. */
export const LIFEBAND = formula(
  {
    id: "LIFEBAND",
    text: "Shortest and longest life of a grade by its greatest and least wear rate, in hours, then in sliding distance; #N/A where pressure, speed or PV are beyond its limits at 23 °C",
    args: {
      grade: gradeArg,
      pressure: LIFE.spec.args.pressure,
      speed: LIFE.spec.args.speed,
      allowance: LIFE.spec.args.allowance,
      clearance: {
        ...LIFE.spec.args.clearance,
        text: "Diametral clearance when new; needed unless the grade's wear rates are known to come from bush tests, and else not used",
      },
      grades: gradesArg,
    },
    units: true,
    result: {
      shape: "table",
      text: "One row: shortest and longest life, and the sliding distance of each",
      columns: [
        { name: "shortest life", kind: "time" },
        { name: "longest life", kind: "time" },
        { name: "shortest distance", kind: "distance" },
        { name: "longest distance", kind: "distance" },
      ],
    },
    source: { key: "archard", at: "linear wear law, solved for the time" },
    example: ["Demo Sorrel", 1.2, 0.08, 0.5],
    see: ["LIFE", "WEAR", "QUOTES"],
  },
  ({ grade: name, pressure, speed, allowance, clearance, grades }, system = "metric"): Answer[][] => {
    const grade = findGrade(name, grades);
    requireLimits(grade, pressure, speed, system);
    const from = grade.values.wearFrom === "bush" ? "bush" : "flat";
    if (from === "flat" && clearance === undefined)
      throw noDatum("clearance", `clearance is missing: the wear rates of "${grade.name}" may come from flat tests`);
    const hours = (["wearHigh", "wearLow"] as const).map((key): number | BushError => {
      const wearrate = grade.values[key];
      if (wearrate === undefined) return lacks(grade, property(key).heading);
      return LIFE.calc({ wearrate, pressure, speed, allowance, clearance, from });
    });
    return [[...hours, ...hours.map((life) => (typeof life === "number" ? life * speed * 3.6 : life))]];
  },
);
