import { formula } from "../formula";
import type { Answer } from "../formula";
import { kindText } from "../grades/model/library";
import { chooseDuty, exampleDuty, rankArgs } from "./judging/choose";
import { dataLabel, found, judge } from "./judging/judge";
import { ranked, scopeOf } from "./judging/rank";
import { dutiesArg } from "./model/readDuties";
import { verdictText } from "./judging/verdict";

export const DUTYRANK = formula(
  {
    id: "DUTYRANK",
    text: "All grades ranked for one duty, each with its reason: those of grades where given, else the generic families; invented ones only when asked for",
    args: { duties: dutiesArg, ...rankArgs },
    units: true,
    result: {
      shape: "table",
      text: "One grade per row, best first",
      columns: [
        { name: "grade", kind: "text" },
        { name: "kind", kind: "text" },
        { name: "use", kind: "ratio" },
        { name: "life", kind: "time" },
        { name: "verdict", kind: "text" },
        { name: "data", kind: "text" },
      ],
    },
    source: { key: "own", at: "verdict, then use, then life" },
    example: [exampleDuty, "", "demo"],
    see: ["DUTIES", "DUTYCHECKS", "SHORTLIST"],
  },
  ({ duties, duty, grades }, system = "metric"): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    return ranked(scopeOf(grades), (grade) => judge(grade, chosen)).map(({ grade, checks, ...verdict }) => [
      grade.name,
      kindText[grade.kind],
      verdict.use ?? "",
      found(checks, "wearLife")?.limit ?? "",
      verdictText(checks, system, verdict),
      dataLabel(grade, checks),
    ]);
  },
);
