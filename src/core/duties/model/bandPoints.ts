import type { Band } from "../../band";
import { present } from "../../present";

/** The value of a band that is told where one number has to do: the likely one, or the middle. */
export const likelyOf = ({ low, high, likely }: Band): number => likely ?? (low + high) / 2;

/** What each of the bands is at, told by its number among them. */
export function pickOf(bands: readonly Band[], valueOf: (band: Band, i: number) => number): (band: Band) => number {
  const at = new Map(bands.map((band, i) => [band, valueOf(band, i)]));
  return (band) => present(at.get(band));
}

/** Corner of that number, from 0 to 2^n − 1: each band at one of its ends. */
export const cornerOf = (bands: readonly Band[], number: number): ((band: Band) => number) =>
  pickOf(bands, ({ low, high }, i) => ((number >> i) & 1 ? high : low));

/** The positive root g of g^(n+1) = g + 1, by g ← (g + 1)^(1/(n + 1)), which closes in on it from both sides. */
export function growth(n: number): number {
  let g = 1.5;
  for (let i = 0; i < 100; i++) g = (g + 1) ** (1 / (n + 1));
  return g;
}

/**
 * Points that fill the unit cube evenly without a seed: coordinate j of point k is frac(0.5 + k·g^−j), k and j from 1
 * (additive recurrence after Roberts).
 */
export function spreadPoints(count: number, n: number): number[][] {
  const g = growth(n);
  const strides = Array.from({ length: n }, (_, j) => g ** -(j + 1));
  return Array.from({ length: count }, (_, k) => strides.map((stride) => (0.5 + (k + 1) * stride) % 1));
}

/** The value below which a band lies with that probability: uniform between its ends, or triangular about its likely value. */
export function quantile({ low, high, likely }: Band, share: number): number {
  if (likely === undefined) return low + share * (high - low);
  const below = (likely - low) / (high - low);
  return share < below
    ? low + Math.sqrt(share * (high - low) * (likely - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - likely));
}
