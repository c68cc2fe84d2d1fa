import { assess } from "../duties/judging/assess";
import { statedDuty } from "../duties/model/duty";
import { checkColumns, figuresOf } from "../duties/dutyChecks";
import { formula } from "../formula";
import { findGrade } from "./model/find";
import { gradeArg } from "./grade";
import { gradesArg } from "./model/table";
import { dutyArgs } from "./dutyArgs";

export const CHECKS = formula(
  {
    id: "CHECKS",
    text: "Every criterion of a duty with value, limit, use and verdict; a lowest temperature counts where the duty is colder than 20 °C",
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: {
      shape: "table",
      text: "One criterion per row; a cell is empty where there is no number",
      columns: checkColumns,
    },
    source: { key: "own", at: "criteria: see DUTYCHECKS" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["VERDICT", "USE", "DUTYCHECKS"],
  },
  ({ grade, grades, ...duty }) => assess(findGrade(grade, grades).values, statedDuty(duty)).map(figuresOf),
);
