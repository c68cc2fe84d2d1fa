import type { ReferenceCase } from "../case";

/** A value of the same equations solved apart from this code, held to six digits, beside what its own check by another method gave. */
export const recorded = (
  family: ReferenceCase["family"],
  what: string,
  checkedBy: string,
  unit: string,
  expected: string,
  compute: () => number,
): ReferenceCase => ({
  family,
  what,
  source: `The same equations solved apart from this code, recorded; checked there by ${checkedBy}`,
  kind: "other method",
  unit,
  expected,
  within: 1e-5,
  compute,
});
