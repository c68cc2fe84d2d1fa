import { better, judge, judgedGrade } from "../../core/duties";
import type { NamedDuty, Ranked } from "../../core/duties";
import type { Grade, GradeKind } from "../../core/grades/model";

/** Grades side by side. */
export const mostChosen = 3;

/** What the sheet's functions look at stands first: the user's own grades, without any the generic families. */
export const kindsInOrder: readonly GradeKind[] = ["own", "generic", "demo"];

export const judgedFor = (duty: NamedDuty, grade: Grade): Ranked => judgedGrade(grade, judge(grade, duty));

/** Grades by kind, each kind ranked as DUTYRANK ranks it. */
export const inOrder = (judged: readonly Ranked[]): Ranked[] =>
  kindsInOrder.flatMap((kind) => judged.filter(({ grade }) => grade.kind === kind).sort(better));
