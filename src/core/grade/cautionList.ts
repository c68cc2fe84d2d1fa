import { formula } from "../formula";
import { cautionsOf, shafts } from "./cautions";
import { dutyArgs, wetArg } from "./duty";
import { findGrade } from "./find";
import { gradeArg } from "./grade";
import { gradesArg } from "./table";

export const cautionList = formula(
  {
    id: "CAUTIONS",
    family: "Grades, limits, verdicts",
    text: "What to bear in mind with a grade in a duty: missing or remembered data, limits not derated, moisture, shock, shaft, and the standing cautions",
    args: {
      grade: gradeArg,
      ...dutyArgs,
      wet: wetArg,
      shock: {
        kind: "choice",
        choices: ["steady", "shock"],
        default: "steady",
        optional: true,
        text: "Whether the load comes in blows",
      },
      shaft: { kind: "choice", choices: shafts, optional: true, text: "Shaft material; not looked at unless given" },
      grades: gradesArg,
    },
    units: true,
    result: { shape: "table", columns: [{ name: "caution", kind: "text" }], text: "One caution per row" },
    source: [{ key: "own" }, { key: "practice", at: "suitability of shafts and shock" }],
    example: ["PA66", 2, 0.06, "5 to 45", "turning", "wet", "shock", "stainless steel"],
    see: ["VERDICT", "CHECKS"],
  },
  ({ grade, grades, wet, shock, shaft, ...duty }, system = "metric") => {
    const stated = { ...duty, wet: wet === "wet", shock: shock === "shock", ...(shaft ? { shaft } : {}) };
    return cautionsOf(findGrade(grade, grades), stated, system, grades).map((caution) => [caution]);
  },
);
