import { Band } from "../../band";
import { sizeSteps } from "../../fit/zones/iso286";
import { ToleranceClass } from "../../fit/zones/zone";
import { cornerOf } from "./bandPoints";
import type { FieldValues } from "./fields";

/** What each band is at. */
export type Pick = (band: Band) => number;

/**
 * Where a duty is judged for its worst: each band at one of its ends and, since the limits of a tolerance class jump where a
 * range of sizes ends, each band of a size on both sides of such an end too, the others at theirs.
 */
export function cornerPicks(bands: readonly Band[], sizes: FieldValues): readonly Pick[] {
  const ends = Array.from({ length: 2 ** bands.length }, (_, number) => cornerOf(bands, number));
  const picks = [...ends];
  for (const [band, value] of jumps(sizes)) {
    const i = bands.indexOf(band);
    // of the two ends of this band one stands for both
    const others = ends.filter((_, number) => ((number >> i) & 1) === 0);
    for (const pick of others) picks.push((one) => (one === band ? value : pick(one)));
  }
  return picks;
}

/** Whether the ends of ranges count: a size is a band, and a zone of it a tolerance class. */
export const mayJump = ({ bore, wall, outside, ...of }: FieldValues): boolean =>
  [bore, wall, outside].some((size) => size instanceof Band) &&
  [of.boreZone, of.shaftZone, of.outsideZone, of.housingZone].some((zone) => zone instanceof ToleranceClass);

/** Beyond the hair that a size converted from inches may lie above the end of its range. */
const justAbove = 1 + 3e-9;
const sides = sizeSteps.flatMap((size) => [size, size * justAbove]);

/** Bands of a size, at the ends of ranges that bore or seat crosses within them; the seat is outside, or bore + 2·wall. */
function jumps(sizes: FieldValues): (readonly [Band, number])[] {
  if (!mayJump(sizes)) return [];
  const { bore, wall, outside } = sizes;
  const found: (readonly [Band, number])[] = [];
  const add = (band: typeof bore, value: number): void => {
    if (band instanceof Band && band.low < value && value < band.high) found.push([band, value]);
  };
  for (const side of sides) {
    add(bore, side);
    add(outside, side);
    for (const w of endsOf(wall)) add(bore, side - 2 * w);
    for (const b of endsOf(bore)) add(wall, (side - b) / 2);
  }
  return found;
}

const endsOf = (size: FieldValues["bore"]): readonly number[] =>
  size instanceof Band ? [size.low, size.high] : size === undefined ? [] : [size];
