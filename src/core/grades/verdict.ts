import { assess } from "../duties/judging/assess";
import { statedDuty } from "../duties/model/duty";
import { verdictText } from "../duties/judging/verdict";
import { formula } from "../formula";
import { findGrade } from "./model/find";
import { gradeArg } from "./grade";
import { gradesArg } from "./model/table";
import { dutyArgs } from "./dutyArgs";

export const VERDICT = formula(
  {
    id: "VERDICT",
    text: 'Whether a grade holds a duty, with the criterion that governs: "fits, PV 62 %". A preliminary estimate: see CAUTIONS; a described duty is judged by DUTIES',
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: { kind: "text", text: '"fits", "care", "no data" or "fails", and why' },
    source: { key: "own", at: "criteria: see DUTYCHECKS" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["USE", "CHECKS", "CAUTIONS", "DUTIES"],
  },
  // named one by one: gathering the rest into an object is a third of the cost of a row
  ({ grade, grades, pressure, speed, temperature, motion }, system = "metric") =>
    verdictText(assess(findGrade(grade, grades).values, statedDuty({ pressure, speed, temperature, motion })), system),
);
