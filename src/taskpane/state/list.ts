import { judge, ranked } from "../../core/duties";
import type { NamedDuty, Ranked } from "../../core/duties";
import type { GradeKind, Library } from "../../core/grades/model";

/** Grades side by side. */
export const mostChosen = 3;

/** What the sheet's functions look at stands first: the user's own grades, without any the generic families. */
export const kindsInOrder: readonly GradeKind[] = ["own", "generic", "demo"];

/** All grades by kind, each kind ranked as DUTYRANK ranks it. */
export const listOf = (duty: NamedDuty, { grades }: Library): Ranked[] =>
  kindsInOrder.flatMap((kind) =>
    ranked(
      grades.filter((grade) => grade.kind === kind),
      (grade) => judge(grade, duty),
    ),
  );
