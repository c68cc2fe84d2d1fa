import { formula, Measure, UnitLabel } from "../formula";
import type { Answer } from "../formula";
import { assess } from "./assess";
import type { Check } from "./assess";
import { dutyArgs } from "./duty";
import { findGrade } from "./find";
import { gradeArg } from "./grade";
import { gradesArg } from "./table";

export const checkTable = formula(
  {
    id: "CHECKS",
    family: "Grades, limits, verdicts",
    text: "Every criterion of a duty with value, limit, use and verdict; a lowest temperature counts where the grade has one or the duty is colder than 20 °C",
    args: { grade: gradeArg, ...dutyArgs, grades: gradesArg },
    units: true,
    result: {
      shape: "table",
      text: "One criterion per row; a cell is empty where there is no number",
      columns: [
        { name: "criterion", kind: "text" },
        { name: "value", kind: "measure" },
        { name: "limit", kind: "measure" },
        { name: "unit", kind: "text" },
        { name: "use", kind: "ratio" },
        { name: "verdict", kind: "text" },
      ],
    },
    source: { key: "own" },
    example: ["Demo Medlar", 2, 0.06, "5 to 45"],
    see: ["VERDICT", "USE", "CAUTIONS"],
  },
  ({ grade, grades, ...duty }) => assess(findGrade(grade, grades), duty).map(line),
);

const line = ({ criterion, kind, value, limit, use, verdict }: Check): Answer[] => [
  criterion,
  number(value, kind),
  number(limit, kind),
  new UnitLabel(kind),
  use ?? "",
  verdict,
];
const number = (value: number | undefined, kind: Check["kind"]): Answer =>
  value === undefined ? "" : new Measure(value, kind);
