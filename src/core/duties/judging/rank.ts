import { standardLibrary } from "../../grades/model/library";
import type { Grade, Library } from "../../grades/model/library";
import { rounding, words } from "./criterion";
import type { Check } from "./criterion";
import { found } from "./judge";
import { verdictOf } from "./verdict";
import type { Verdict } from "./verdict";

export interface Ranked extends Verdict {
  readonly grade: Grade;
  readonly checks: readonly Check[];
}

/** Grades by verdict, then by rising use, then by falling life; equals keep their order. */
export function ranked(grades: readonly Grade[], check: (grade: Grade) => Check[]): Ranked[] {
  return grades.map((grade) => judgedGrade(grade, check(grade))).sort(better);
}

export const judgedGrade = (grade: Grade, checks: readonly Check[]): Ranked => ({
  grade,
  checks,
  ...verdictOf(checks),
});

export function better(a: Ranked, b: Ranked): number {
  const byWord = words.indexOf(b.word) - words.indexOf(a.word);
  if (byWord !== 0) return byWord;
  const [use, other] = [useOf(a), useOf(b)];
  if (Math.abs(use - other) > rounding * Math.max(use, other)) return use - other;
  return lifeOf(b) - lifeOf(a) || 0;
}
/** Grades without a use of their own stand behind those that have one. */
const useOf = ({ use, governing }: Ranked): number => use ?? governing.use ?? Number.MAX_VALUE;
const lifeOf = ({ checks }: Ranked): number => found(checks, "wearLife")?.limit ?? 0;

/** The grades that are looked at where none is named: the user's own, else the generic families. */
export const scopeOf = (library: Library = standardLibrary()): readonly Grade[] => library.scope;
