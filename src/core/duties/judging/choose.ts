import { BushError, clash, noDatum, orList } from "../../errors";
import type { AnyArg, TextArg } from "../../formula";
import { findGrade } from "../../grades/model/find";
import { gradesArg } from "../../grades/model/table";
import type { Grade, Library } from "../../grades/model/library";
import { present } from "../../present";
import { judge } from "./judge";
import type { NamedDuty } from "../model/namedDuty";
import { ranked, scopeOf } from "./rank";
import type { DutyTable } from "../model/readDuties";

/** The argument that names one duty of a table. */
export const dutyArg = {
  kind: "any",
  optional: true,
  text: "Name of the duty, or its number in the table, steps counted once; not needed where there is one",
} as const satisfies AnyArg;

const chosenGradeArg = {
  kind: "text",
  optional: true,
  text: "Grade to judge; else the duty's own, else the best",
} as const satisfies TextArg;

/** What the functions on one duty take behind the table; DUTYRANK chooses its grade itself. */
export const rankArgs = { duty: dutyArg, grades: gradesArg };
export const oneDutyArgs = { duty: dutyArg, grade: chosenGradeArg, grades: gradesArg };

/** The card of their examples. */
export const exampleDuty = [
  ["duty", "Seed-drum spindle"],
  ["load [N]", 180],
  ["bore [mm]", 15],
  ["length [mm]", 20],
  ["rpm", 120],
  ["temperature [°C]", "5 to 45"],
];

/** The duty of that name; a number that matches no name is the n-th. */
export function chooseDuty({ lines }: DutyTable, wanted: unknown): NamedDuty {
  const line = lineOf(lines, wanted);
  if (line.duty instanceof BushError) throw line.duty;
  return line.duty;
}

function lineOf(lines: DutyTable["lines"], wanted: unknown) {
  if (wanted === undefined || wanted === null) {
    const [only] = lines;
    if (only && lines.length === 1) return only;
    throw clash("duty", `duty is missing: the table holds ${lines.length}, name one or give its number`);
  }
  if (wanted instanceof BushError) throw wanted;
  const name = String(wanted).trim().toLowerCase();
  const named = lines.find((line) => line.name.toLowerCase() === name);
  const found = named ?? (typeof wanted === "number" ? lines[wanted - 1] : undefined);
  if (found) return found;
  const some = orList(lines.slice(0, 3).flatMap((line) => (line.name === "" ? [] : [`"${line.name}"`])));
  throw noDatum(
    "duty",
    `duty "${String(wanted)}" is unknown; ${some ? `the table has ${some}` : `give 1 to ${lines.length}`}`,
  );
}

/** The grade asked for, else the duty's own, else the best of those looked at. */
export function chooseGrade(duty: NamedDuty, wanted: string | undefined, library: Library | undefined): Grade {
  const name = wanted ?? duty.grade;
  if (name !== undefined) return findGrade(name, library);
  return present(ranked(scopeOf(library), (grade) => judge(grade, duty))[0]).grade;
}
