import { formula } from "../formula";
import { assess } from "./assess";
import { dutyArgs } from "./duty";
import { findGrade } from "./find";
import { gradeArg } from "./grade";
import { gradesArg } from "./table";
import { verdictOf, verdictText } from "./verdict";

export const verdictLine = formula(
  {
    id: "VERDICT",
    family: "Grades, limits, verdicts",
    text: 'Whether a grade holds a duty, with the criterion that governs: "fits, PV 62 %". A preliminary estimate: see CAUTIONS',
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: { kind: "text", text: '"fits", "fails" or "no data", and why' },
    source: { key: "own" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["USE", "CHECKS", "CAUTIONS"],
  },
  ({ grade, grades, ...duty }, system = "metric") =>
    verdictText(verdictOf(assess(findGrade(grade, grades), duty)), system),
);
