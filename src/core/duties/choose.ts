import { BushError, clash, noDatum, orList } from "../errors";
import type { AnyArg, TextArg } from "../formula";
import { findGrade } from "../grade/find";
import type { Grade, Library } from "../grade/library";
import { judge } from "./judge";
import type { NamedDuty } from "./namedDuty";
import { ranked, scopeOf } from "./rank";
import type { DutyTable } from "./readDuties";

/** The argument that names one duty of a table. */
export const dutyArg = {
  kind: "any",
  optional: true,
  text: "Name of the duty, or its number in the table, steps counted once; not needed where there is one",
} as const satisfies AnyArg;

export const chosenGradeArg = {
  kind: "text",
  optional: true,
  text: "Grade to judge; else the duty's own, else the best",
} as const satisfies TextArg;

/** The duty of that name; a number that matches no name is the n-th. */
export function chooseDuty({ lines }: DutyTable, wanted: unknown): NamedDuty {
  const line = lineOf(lines, wanted);
  if (line.duty instanceof BushError) throw line.duty;
  return line.duty;
}

function lineOf(lines: DutyTable["lines"], wanted: unknown) {
  if (wanted === undefined || wanted === null) {
    if (lines.length === 1) return lines[0]!;
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
  return ranked(scopeOf(library), (grade) => judge(grade, duty))[0]!.grade;
}
