import { noDatum } from "../errors";
import { formula, Measure } from "../formula";
import { assess } from "./assess";
import type { Criterion } from "./assess";
import { dutyArgs } from "./duty";
import { findGrade } from "./find";
import { gradeArg, lacks } from "./grade";
import { limitText } from "./limitText";
import { gradesArg } from "./table";
import { missingText, reasonOf, verdictOf } from "./verdict";

export const limitUse = formula(
  {
    id: "USE",
    family: "Grades, limits, verdicts",
    text: "The largest of value over limit among pressure, speed and PV: 1 is just held. #N/A where the temperature fails or a datum is missing",
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: { kind: "ratio", symbol: "u", text: "Governing use as a ratio; format the cell as a percentage" },
    working: ({ motion }) => [motion === "static" ? "u = p / p_a" : "u = max(p / p_a, v / v_a, p * v / PV_a)"],
    lookups: ({ grade, grades, ...duty }) =>
      Object.fromEntries(
        assess(findGrade(grade, grades), duty).flatMap(({ criterion, limit, kind, use, property }) =>
          use === undefined || limit === undefined
            ? []
            : [[limitSymbol(criterion), { value: new Measure(limit, kind), text: limitText(criterion, property) }]],
        ),
      ),
    source: { key: "own" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["VERDICT", "CHECKS", "SHORTLIST"],
  },
  ({ grade, grades, ...duty }, system = "metric") => {
    const found = findGrade(grade, grades);
    const checks = assess(found, duty);
    const { governing, use, word } = verdictOf(checks);
    if (use !== undefined) return use;
    if (word === "fails" && governing.use === undefined) throw noDatum("temperature", reasonOf(governing, system));
    throw lacks(found, missingText(checks.find((c) => c.verdict === "no data")!));
  },
);

const limitSymbol = (criterion: Criterion): string =>
  criterion === "PV" ? "PV_a" : criterion === "speed" ? "v_a" : "p_a";
