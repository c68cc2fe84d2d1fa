import { assess } from "../duties/judging/assess";
import { statedDuty } from "../duties/model/duty";
import { ranked } from "../duties/judging/rank";
import { verdictText } from "../duties/judging/verdict";
import { formula } from "../formula";
import type { Answer } from "../formula";
import { kindText, standardLibrary } from "./model/library";
import { gradesArg } from "./model/table";
import { dutyArgs, wetArg } from "./dutyArgs";

export const SHORTLIST = formula(
  {
    id: "SHORTLIST",
    text: "Every grade ranked for a duty: by verdict, then by use, each with its reason; invented grades last, marked. Where it is wet, the swelling is told, and a grade of unknown swelling has no data",
    args: { ...dutyArgs, wet: wetArg, grades: gradesArg },
    units: true,
    result: {
      shape: "table",
      text: "One grade per row",
      columns: [
        { name: "grade", kind: "text" },
        { name: "kind", kind: "text" },
        { name: "verdict", kind: "text" },
        { name: "use", kind: "ratio" },
        { name: "reason", kind: "text" },
      ],
    },
    source: { key: "own", at: "criteria: see DUTYCHECKS" },
    example: [2, 0.06, "5 to 45", "turning"],
    see: ["VERDICT", "DUTYRANK", "GRADES"],
  },
  ({ wet, grades: library = standardLibrary(), ...stated }, system = "metric"): Answer[][] => {
    const duty = statedDuty(stated, wet === "wet" ? { moisture: "wet" } : {});
    const isInvented = library.grades.filter(({ kind }) => kind === "demo");
    const others = library.grades.filter(({ kind }) => kind !== "demo");
    return [others, isInvented].flatMap((grades) =>
      ranked(grades, ({ values }) => assess(values, duty)).map(({ grade, checks, ...verdict }) => [
        grade.name,
        kindText[grade.kind],
        verdict.word,
        verdict.use ?? "",
        verdictText(checks, system, verdict).slice(verdict.word.length + 2),
      ]),
    );
  },
);
