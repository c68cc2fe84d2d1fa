import { clash } from "../errors";

/** A spectrum step by step, out of one list for each of its quantities; a step with nothing in it is a spare row, one with a gap an error. */
export function spectrumOf<N extends string>(
  lists: Readonly<Record<N, readonly (number | undefined)[]>>,
): Record<N, number>[] {
  const named = Object.entries<readonly (number | undefined)[]>(lists);
  const length = Math.max(...named.map(([, list]) => list.length));
  const all = named.length === 2 ? "both" : "all three";
  for (const [name, list] of named)
    if (list.length !== length)
      throw clash(name, `${name} has ${list.length} cells, another range has ${length}: each step needs ${all}`);
  return Array.from({ length }, (_, i) => i).flatMap((i) => {
    if (named.every(([, list]) => list[i] === undefined)) return [];
    const gap = named.find(([, list]) => list[i] === undefined);
    if (gap) throw clash(gap[0], `${gap[0]} is missing in step ${i + 1}`);
    return [Object.fromEntries(named.map(([name, list]) => [name, list[i]])) as Record<N, number>];
  });
}

/** Duration of the whole cycle; without any there is no mean and no peak. */
export function cycleOf(times: readonly number[]): number {
  const total = times.reduce((sum, time) => sum + time, 0);
  if (total === 0) throw clash("times", "times must sum to above 0");
  return total;
}
