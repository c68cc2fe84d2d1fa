/** How well a figure is founded, the strongest first. */
export const labels = ["read", "own", "derived", "memory", "common practice", "memory, band only", "invented"] as const;
export type Label = (typeof labels)[number];

/** The label of an answer that rests on several figures; none where no figure counted. */
export const weakest = (some: readonly Label[]): Label | undefined => labels.findLast((label) => some.includes(label));
