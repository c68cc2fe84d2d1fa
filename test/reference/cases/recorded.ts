import type { ReferenceCase } from "../case";

/** A value that a separate program of the same equations gave, held to six digits, beside what its own check by another method gave. */
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
  source: `A separate program of the same equations, recorded; checked there by ${checkedBy}`,
  kind: "other method",
  unit,
  expected,
  within: 1e-5,
  compute,
});
