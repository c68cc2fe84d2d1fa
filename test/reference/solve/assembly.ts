import { tridiagonal } from "./tridiagonal";

/** A shaft in its bush; SI units. Conductances of the bush's wall and of its housing to the surroundings in W/K. */
export interface Assembly {
  readonly diameter: number;
  readonly length: number;
  readonly conductivity: number;
  readonly film: number;
  readonly endlength: number;
  readonly ends: number;
  readonly wall: number;
  readonly housing: number;
}

/**
 * Mean rise of the bore for one watt of friction spread evenly along it: the shaft in slices, inside the bush against its wall, outside
 * against the air, and the housing as one body. It knows neither the fin's closed form nor the series of thirds.
 */
export function meanRise(a: Assembly): number {
  const inside = 600;
  const outside = a.endlength > 0 ? 1200 : 0;
  const left = a.ends > 0 ? outside : 0;
  const right = a.ends > 1 ? outside : 0;
  const n = left + inside + right;
  const isInside = (i: number) => i >= left && i < left + inside;
  const width = (i: number) => (isInside(i) ? a.length / inside : a.endlength / outside);
  const area = (Math.PI / 4) * a.diameter ** 2;
  const link = (i: number) => (i < 0 || i > n - 2 ? 0 : (2 * a.conductivity * area) / (width(i) + width(i + 1)));
  const out = (i: number) => (isInside(i) ? a.wall / inside : a.film * Math.PI * a.diameter * width(i));
  const slices = Array.from({ length: n }, (_, i) => i);
  const solve = (source: (i: number) => number): number[] =>
    tridiagonal(
      slices.map((i) => -link(i - 1)),
      slices.map((i) => link(i - 1) + link(i) + out(i)),
      slices.map((i) => -link(i)),
      slices.map(source),
    );
  const meanInside = (t: number[]) => t.slice(left, left + inside).reduce((sum, x) => sum + x, 0) / inside;
  // the system is linear: the friction with the housing at ambient, and the housing one degree warm without friction
  const byHeat = meanInside(solve((i) => (isInside(i) ? 1 / inside : 0)));
  const byHousing = meanInside(solve((i) => (isInside(i) ? a.wall / inside : 0)));
  const housingRise = (a.wall * byHeat) / (a.housing + a.wall * (1 - byHousing));
  return byHeat + byHousing * housingRise;
}
