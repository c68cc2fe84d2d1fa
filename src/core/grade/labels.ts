import type { Grade } from "./library";
import type { PropertyKey } from "./properties";

/** How well a figure is founded, the strongest first. */
export const labels = ["read", "own", "derived", "memory", "common practice", "memory, band only", "invented"] as const;
export type Label = (typeof labels)[number];

/** The label of an answer that rests on several figures; none where no figure counted. */
export const weakest = (some: readonly Label[]): Label | undefined => labels.findLast((label) => some.includes(label));

/** How well one figure of a grade is founded. */
export const labelOf = (grade: Grade, key: PropertyKey): Label =>
  grade.kind === "own" ? "own" : grade.kind === "demo" ? "invented" : (grade.origins[key]?.label ?? "common practice");
