import { assess } from "../duties/judging/assess";
import { statedDuty } from "../duties/model/duty";
import { formula } from "../formula";
import { findGrade } from "./model/find";
import { gradeArg } from "./grade";
import { shafts } from "./model/shafts";
import { gradesArg } from "./model/table";
import { cautionsOf } from "./cautionsOf";
import { dutyArgs, wetArg } from "./dutyArgs";

export const CAUTIONS = formula(
  {
    id: "CAUTIONS",
    text: "What to bear in mind with a grade in a duty: missing or remembered data, limits derated or not, moisture, shock, shaft, and the standing cautions",
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
  ({ grade, grades, wet, shock, shaft, ...stated }, system = "metric") => {
    const found = findGrade(grade, grades);
    const given = { ...(wet === "wet" ? { moisture: "wet" as const } : {}), ...(shaft ? { shaft } : {}) };
    const duty = { ...statedDuty(stated, given), hasBlows: shock === "shock" };
    return cautionsOf(found, duty, assess(found.values, duty), system, grades).map((caution) => [caution]);
  },
);
