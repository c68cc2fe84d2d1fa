/** How well a figure is founded, the strongest first. */
export const labels = ["read", "own", "derived", "memory", "common practice", "memory, band only", "invented"] as const;
export type Label = (typeof labels)[number];

/** The label of an answer that rests on several figures; none where no figure counted. */
export function weakest(some: readonly Label[]): Label | undefined {
  let last = -1;
  for (const label of some) last = Math.max(last, labels.indexOf(label));
  return labels[last];
}
