import { bandSolver } from "./banded";
import { eliminate } from "./eliminate";

/** A flat layer of thickness 1 bonded to a rigid ground, its ends free, under a rigid face that presses one of them first. */
export interface TiltedLayer {
  readonly length: number;
  readonly modulus: number;
  readonly poisson: number;
  /** Load per width, and slope of the face, rad. */
  readonly load: number;
  readonly slope: number;
}

const up = 16;

/**
 * Greatest pressure under the face, by plane strain elements of four nodes (shear in full, volume at their middle) and contact without friction by its
 * active nodes: the layer may swell out at its ends. It knows no foundation.
 */
export function layerByElements({ length, modulus, poisson, load, slope }: TiltedLayer): number {
  const along = Math.round(length * up);
  const [h, size] = [1 / up, 2 * (along + 1) * up];
  const lambda = (modulus * poisson) / ((1 + poisson) * (1 - 2 * poisson));
  const mu = modulus / (2 * (1 + poisson));
  const band = Array.from({ length: size }, () => new Float64Array(2 * up + 4));
  /** Degree of freedom; none at the ground. */
  const at = (i: number, j: number, axis: 0 | 1) => (j === 0 ? -1 : 2 * (i * up + j - 1) + axis);
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  const slopes = (x: number, y: number) =>
    corners.map(([a, b]) => [((a ? 1 : -1) * (b ? y : 1 - y)) / h, ((b ? 1 : -1) * (a ? x : 1 - x)) / h] as const);
  const element = Array.from({ length: 8 }, () => new Float64Array(8));
  const add = (
    points: readonly number[],
    weight: number,
    energy: (a: readonly number[], b: readonly number[]) => number,
  ) => {
    for (const x of points)
      for (const y of points) {
        // strains of each degree of freedom: along, up, shear
        const strains = slopes(x, y).flatMap(([dx, dy]) => [
          [dx, 0, dy],
          [0, dy, dx],
        ]);
        for (let a = 0; a < 8; a++)
          for (let b = 0; b < 8; b++) element[a]![b]! += weight * energy(strains[a]!, strains[b]!);
      }
  };
  const reach = Math.sqrt(1 / 12);
  add([0.5], h * h, (a, b) => lambda * (a[0]! + a[1]!) * (b[0]! + b[1]!));
  add([0.5 - reach, 0.5 + reach], (h * h) / 4, (a, b) => 2 * mu * (a[0]! * b[0]! + a[1]! * b[1]!) + mu * a[2]! * b[2]!);
  for (let i = 0; i < along; i++)
    for (let j = 0; j < up; j++) {
      const places = corners.flatMap(([a, b]) => ([0, 1] as const).map((axis) => at(i + a, j + b, axis)));
      places.forEach((m, a) =>
        places.forEach((n, b) => {
          if (m >= 0 && n >= m) band[m]![n - m]! += element[a]![b]!;
        }),
      );
    }
  const solve = bandSolver(band);
  const top = Array.from({ length: along + 1 }, (_, i) => at(i, up, 1));
  const sunk = top.map((from) => {
    const unit = new Float64Array(size);
    unit[from] = 1;
    const moved = solve(unit);
    return top.map((to) => moved[to]!);
  });
  let active = top.map((_, i) => i).slice(0, Math.round(along / 2));
  for (let round = 0; round < 200; round++) {
    // unknown: forces of the active nodes and the depth at the end
    const rows = active.map((i) => [...active.map((k) => sunk[i]![k]!), -1, -slope * i * h]);
    const solution = eliminate([...rows, [...active.map(() => 1), 0, load]]);
    const depth = solution.at(-1)!;
    const force = new Map(active.map((i, k) => [i, solution[k]!]));
    const next = top.flatMap((_, i) => {
      const own = force.get(i);
      if (own !== undefined) return own > 0 ? [i] : [];
      const moved = active.reduce((sum, k) => sum + sunk[i]![k]! * force.get(k)!, 0);
      return depth - slope * i * h > moved + 1e-12 ? [i] : [];
    });
    if (next.length === active.length && next.every((i, k) => i === active[k]))
      return Math.max(...active.map((i) => force.get(i)! / (i === 0 || i === along ? h / 2 : h)));
    active = next;
  }
  throw new Error("the contact did not settle");
}
