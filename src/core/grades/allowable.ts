import { highestTemperature } from "../duties/criteria/highestTemperature";
import { lowestTemperature } from "../duties/criteria/lowestTemperature";
import { statedDuty } from "../duties/model/duty";
import { missingText, reasonOf } from "../duties/judging/verdict";
import { noDatum, orList } from "../errors";
import { formula, Measure } from "../formula";
import type { Span } from "../formula";
import { findGrade, findProperty } from "./model/find";
import { gradeArg, lacks } from "./grade";
import type { Grade } from "./model/library";
import { motions, pressureLimit, pvLimit, speedKey, speedLimit } from "./model/limits";
import type { Limit } from "./model/limits";
import { property as propertyOf } from "./model/properties";
import type { PropertyKey } from "./model/properties";
import { gradesArg } from "./model/table";
import type { System } from "../kinds";
import { measureText } from "../measure";

/** How each limit is found at a temperature. */
const limits: ReadonlyMap<PropertyKey, (values: Grade["values"], span: Span) => Limit> = new Map<
  PropertyKey,
  (values: Grade["values"], span: Span) => Limit
>([
  ...(["staticPressure", "runningPressure"] as const).map(
    (key) => [key, (values: Grade["values"], span: Span) => pressureLimit(values, key, span)] as const,
  ),
  ...motions.flatMap((motion) =>
    motion === "static" ? [] : [[speedKey(motion), (values: Grade["values"]) => speedLimit(values, motion)] as const],
  ),
  ["pvLimit", pvLimit],
]);

/** Throws unless the span lies within the temperatures that the grade is known to bear. */
export function requireTemperature(grade: Grade, temperature: Span, system: System): void {
  const duty = statedDuty({ pressure: 0, speed: 0, temperature, motion: "static" });
  for (const criterion of [highestTemperature, lowestTemperature]) {
    if (!criterion.asks(duty)) continue;
    const check = { ...criterion.check(grade.values, duty, []), criterion, duty };
    if (check.word === "no data") throw lacks(grade, missingText(check));
    if (check.word === "fails") throw noDatum("temperature", reasonOf(check, system));
  }
}

/** A limit as one number, or the error that says why there is none. */
export function numberOf(limit: Limit, grade: Grade, system: System): number {
  switch (limit.state) {
    case "known":
      return limit.value;
    case "missing":
      throw lacks(grade, propertyOf(limit.key).heading);
    case "hot":
      return 0;
    case "beyond":
      throw noDatum(
        "temperature",
        `temperature is beyond the curve "${propertyOf(limit.key).heading}", which ends at ${measureText("temperature", limit.ends.high, system)}`,
      );
  }
}

export const ALLOWABLE = formula(
  {
    id: "ALLOWABLE",
    text: "A grade's limit at a temperature, or the least over a range: pressures capped by their curve, PV by its curve or derated for the surroundings as DERATEDPV does",
    args: {
      grade: gradeArg,
      property: { kind: "text", text: 'Heading of a limit of pressure, speed or PV: "PV limit"' },
      temperature: {
        kind: "span",
        text: "Temperature: for PV that of the surroundings, for pressures that of the bore",
      },
      grades: gradesArg,
    },
    units: true,
    result: { kind: "measure", text: "The limit; #N/A beyond the grade's temperatures or its curve" },
    source: { key: "own", at: "steady heat balance" },
    example: ["Demo Sorrel", "PV limit", 60],
    see: ["GRADE", "CHECKS", "DERATEDPV"],
  },
  ({ grade, property, temperature, grades }, system = "metric") => {
    const found = findGrade(grade, grades);
    const { key } = findProperty(property);
    const limitAt = limits.get(key);
    if (!limitAt)
      throw noDatum(
        "property",
        `property must be one of the limits: ${orList([...limits.keys()].map((k) => propertyOf(k).heading.replace(" limit", "")))}`,
      );
    requireTemperature(found, temperature, system);
    const { kind } = propertyOf(key);
    return new Measure(
      numberOf(limitAt(found.values, temperature), found, system),
      kind as Parameters<typeof measureText>[0],
    );
  },
);
