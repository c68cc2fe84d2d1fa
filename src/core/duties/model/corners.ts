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

/** Whether a band of a size may cross the end of a range of sizes: its corners then change with it. */
export const mayJump = (sizes: FieldValues): boolean =>
  hasClass(sizes, "boreZone", "shaftZone", "outsideZone", "housingZone") &&
  [sizes.bore, sizes.wall, sizes.outside].some((size) => size instanceof Band);

/** Beyond the hair that a size converted from inches may lie above the end of its range. */
const justAbove = 1 + 3e-9;
const sides = sizeSteps.flatMap((size) => [size, size * justAbove]);

/** Bands of a size, at the ends of ranges that lie within them. */
function jumps(sizes: FieldValues): (readonly [Band, number])[] {
  const { bore, wall, outside } = sizes;
  const found: (readonly [Band, number])[] = [];
  const add = (band: FieldValues["bore"], sizeAt: (end: number) => number): void => {
    if (!(band instanceof Band)) return;
    for (const side of sides) {
      const value = sizeAt(side);
      if (band.low < value && value < band.high) found.push([band, value]);
    }
  };
  if (hasClass(sizes, "boreZone", "shaftZone")) add(bore, (size) => size);
  if (!hasClass(sizes, "outsideZone", "housingZone")) return found;
  if (wall === undefined) add(outside, (size) => size);
  else {
    // the seat is bore + 2·wall
    for (const w of endsOf(wall)) add(bore, (size) => size - 2 * w);
    for (const b of endsOf(bore)) add(wall, (size) => (size - b) / 2);
  }
  return found;
}

const endsOf = (size: FieldValues["bore"]): readonly number[] =>
  size === undefined ? [] : size instanceof Band ? [size.low, size.high] : [size];

type ZoneKey = "boreZone" | "shaftZone" | "outsideZone" | "housingZone";
const hasClass = (sizes: FieldValues, ...keys: readonly ZoneKey[]): boolean =>
  keys.some((key) => sizes[key] instanceof ToleranceClass);
