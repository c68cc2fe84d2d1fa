import { noDatum, orList } from "../errors";
import { formula, Measure } from "../formula";
import { allowed } from "./allowed";
import { findGrade, findProperty } from "./find";
import { gradeArg } from "./grade";
import { limitKind } from "./limits";
import type { LimitKey } from "./limits";
import { property as propertyOf } from "./properties";
import type { PropertyKey } from "./properties";
import { gradesArg } from "./table";

const limits: readonly LimitKey[] = [
  "staticPressure",
  "runningPressure",
  "speedTurning",
  "speedSwinging",
  "speedLinear",
  "pvLimit",
];
const isLimit = (key: PropertyKey): key is LimitKey => (limits as readonly PropertyKey[]).includes(key);

export const allowable = formula(
  {
    id: "ALLOWABLE",
    family: "Grades, limits, verdicts",
    text: "A grade's limit at a temperature, or the least over a range: the limit, capped by its curve where there is one",
    args: {
      grade: gradeArg,
      property: { kind: "text", text: 'Heading of a limit of pressure, speed or PV: "PV limit"' },
      temperature: { kind: "span", text: "Temperature of the duty" },
      grades: gradesArg,
    },
    units: true,
    result: { kind: "measure", text: "The limit; #N/A beyond the grade's temperatures or its curve" },
    source: { key: "own" },
    example: ["Demo Sorrel", "PV limit", 60],
    see: ["GRADE", "CHECKS"],
  },
  ({ grade, property, temperature, grades }, system = "metric") => {
    const found = findGrade(grade, grades);
    const { key } = findProperty(property);
    if (!isLimit(key))
      throw noDatum(
        "property",
        `property must be one of the limits: ${orList(limits.map((l) => propertyOf(l).heading.replace(" limit", "")))}`,
      );
    return new Measure(allowed(found, key, temperature, system), limitKind(key));
  },
);
