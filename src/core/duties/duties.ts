import { BushError } from "../errors";
import { formula } from "../formula";
import type { Answer } from "../formula";
import { gradesArg } from "../grades/model/table";
import type { Library } from "../grades/model/library";
import type { System } from "../kinds";
import { chooseGrade } from "./judging/choose";
import { dataLabel, found, judge, notAsked } from "./judging/judge";
import type { NamedDuty } from "./model/namedDuty";
import { dutiesArg } from "./model/readDuties";
import type { DutyLine } from "./model/readDuties";
import type { Check } from "./judging/criterion";
import { verdictOf, verdictText } from "./judging/verdict";

const columns = [
  { name: "duty", kind: "text" },
  { name: "grade", kind: "text" },
  { name: "pressure", kind: "pressure" },
  { name: "speed", kind: "speed" },
  { name: "PV", kind: "pv" },
  { name: "upper bore temperature", kind: "temperature" },
  { name: "governing", kind: "text" },
  { name: "use", kind: "ratio" },
  { name: "life", kind: "time" },
  { name: "verdict", kind: "text" },
  { name: "data", kind: "text" },
  { name: "not asked", kind: "text" },
] as const;
const blank: Answer[] = columns.map(() => "");

/** The greatest figure over the faces and steps of the harder corner. */
export function greatest(duty: NamedDuty, of: "pressure" | "speed"): number {
  let most = 0;
  for (const { steps } of duty.corners)
    for (const { bore, face } of steps) most = Math.max(most, bore?.[of] ?? 0, face?.[of] ?? 0);
  return most;
}

/** The most that the bore may come to; empty where nothing bounds it. */
function upperBore(checks: readonly Check[]): Answer {
  const bore = found(checks, "boreTemperature");
  const upper = bore?.upper ?? bore?.value;
  return upper === undefined || upper === Infinity ? "" : upper;
}

function lineOf({ name, duty }: DutyLine, library: Library | undefined, system: System): Answer[] {
  const fault = (error: BushError, grade = ""): Answer[] =>
    columns.map((column) =>
      column.name === "duty" ? name : column.name === "grade" ? grade : column.name === "verdict" ? error : "",
    );
  if (duty instanceof BushError) return fault(duty);
  try {
    const grade = chooseGrade(duty, undefined, library);
    const checks = judge(grade, duty);
    const verdict = verdictOf(checks);
    return [
      duty.name,
      grade.name,
      greatest(duty, "pressure"),
      greatest(duty, "speed"),
      Math.max(...duty.corners.map(({ pv }) => pv)),
      upperBore(checks),
      verdict.governing.criterion.heading,
      verdict.use ?? "",
      found(checks, "wearLife")?.limit ?? "",
      verdictText(checks, system, verdict),
      dataLabel(grade, checks),
      notAsked(checks, duty)
        .map(({ heading }) => heading)
        .join(", "),
    ];
  } catch (error) {
    if (error instanceof BushError) return fault(error, duty.grade);
    throw error;
  }
}

/** A row of the table is a row of the answer: later steps and spare rows stay empty, so that it can stand beside it. */
export const DUTIES = formula(
  {
    id: "DUTIES",
    text: "Every duty of a table judged by all criteria with its own grade, or with the best, which is named; one row for each row of the table. Pressure without the impact factor; the bore temperature is its upper figure: friction at its high figure, no way out through a housing of unknown conductance",
    args: { duties: dutiesArg, grades: gradesArg },
    units: true,
    result: { shape: "table", text: "One row for each row of the table, later steps and spare rows empty", columns },
    source: { key: "own", at: "criteria: see DUTYCHECKS" },
    example: [
      [
        ["duty", "grade", "load [N]", "bore [mm]", "length [mm]", "rpm", "temperature [°C]"],
        ["Seed-drum spindle", "Demo Medlar", 180, 15, 20, 120, "5 to 45"],
        ["Bench roller", "", 250, 20, 25, 45, "10 to 40"],
      ],
    ],
    see: ["DUTYCHECKS", "DUTYRANK", "VERDICT"],
  },
  ({ duties, grades }, system = "metric"): Answer[][] => {
    const rows = Array.from({ length: duties.height }, () => blank);
    for (const line of duties.lines) rows[line.number - duties.first] = lineOf(line, grades, system);
    return rows;
  },
);
