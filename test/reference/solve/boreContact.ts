import { eliminate } from "./eliminate";

/**
 * A rigid shaft in a bore with clearance, by elements: the wall bonded to a rigid housing, plane strain, u_r = U(r)·cos nθ and u_θ = V(r)·sin nθ
 * by quadratic elements over the wall for each n; then cells of pressure round the bore, kept where they press. It knows no foundation.
 */
export interface Bore {
  readonly load: number;
  readonly bore: number;
  readonly length: number;
  readonly wall: number;
  readonly clearance: number;
  readonly modulus: number;
  readonly poisson: number;
}

const half = 5;

/** Radial displacement of the bore for a pressure of 1·cos nθ on it. */
function compliance({ bore, wall, modulus, poisson }: Bore, n: number): number {
  const elements = 16;
  const size = 2 * (2 * elements + 1);
  const band = Array.from({ length: size }, () => new Array<number>(half + 1).fill(0)); // band[i][k] = K(i, i + k)
  const lambda = (modulus * poisson) / ((1 + poisson) * (1 - 2 * poisson));
  const mu = modulus / (2 * (1 + poisson));
  const inner = bore / 2;
  const h = wall / elements;
  const points = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)];
  const weights = [5 / 9, 8 / 9, 5 / 9];
  for (let e = 0; e < elements; e++)
    points.forEach((x, g) => {
      const r = inner + (e + (1 + x) / 2) * h;
      const shape = [(x * (x - 1)) / 2, 1 - x * x, (x * (x + 1)) / 2];
      const slope = [x - 0.5, -2 * x, x + 0.5].map((s) => (2 * s) / h);
      const weight = weights[g]! * (h / 2) * r;
      // strains of each degree of freedom: radial, hoop, shear
      const strains = shape.flatMap((s, i) => [
        [slope[i]!, s / r, (-n * s) / r],
        [0, (n * s) / r, slope[i]! - s / r],
      ]);
      for (let i = 0; i < 6; i++)
        for (let j = i; j < 6; j++) {
          const [a, b] = [strains[i]!, strains[j]!];
          const volume = (a[0]! + a[1]!) * (b[0]! + b[1]!);
          const energy = lambda * volume + 2 * mu * (a[0]! * b[0]! + a[1]! * b[1]!) + mu * a[2]! * b[2]!;
          band[4 * e + i]![j - i]! += weight * energy;
        }
    });
  const stiff = 1e9 * modulus;
  for (const i of [size - 2, size - 1, ...(n === 0 ? Array.from({ length: size / 2 }, (_, k) => 2 * k + 1) : [])])
    band[i]![0]! += stiff;
  return solveBand(band, inner);
}

/** First unknown of a symmetric banded system loaded at its first equation. */
function solveBand(band: number[][], load: number): number {
  // eliminated from the last equation upwards, so that the first unknown comes out at the end
  for (let i = band.length - 1; i > 0; i--)
    for (let k = 1; k <= Math.min(half, i); k++) {
      const row = band[i - k]!;
      const factor = row[k]! / band[i]![0]!;
      for (let m = k; m <= Math.min(half, i); m++) band[i - m]![m - k]! -= factor * band[i - m]![m]!;
    }
  return load / band[0]![0]!;
}

/** Pressure at the bottom of the bore, and the half angle of contact in degrees. */
export function contactByElements(b: Bore): { readonly peak: number; readonly angle: number } {
  const cells = 72;
  const width = (0.6 * Math.PI) / cells;
  const harmonics = 240;
  const angle = Array.from({ length: cells }, (_, j) => (j + 0.5) * width);
  const soft = Array.from({ length: harmonics + 1 }, (_, n) => compliance(b, n));
  const influence = angle.map((at) =>
    angle.map((from) => {
      let sum = (soft[0]! * width) / Math.PI;
      for (let n = 1; n <= harmonics; n++)
        sum += soft[n]! * (4 / (Math.PI * n)) * Math.sin((n * width) / 2) * Math.cos(n * from) * Math.cos(n * at);
      return sum;
    }),
  );
  let active = angle.map((_, i) => i);
  for (let round = 0; round < 60; round++) {
    // unknown: pressures of the active cells and the shaft's sinking
    const rows = active.map((i) => [
      ...active.map((j) => influence[i]![j]!),
      -Math.cos(angle[i]!),
      -(b.clearance / 2) * (1 - Math.cos(angle[i]!)),
    ]);
    const carried = active.map((j) => b.bore * width * Math.cos(angle[j]!));
    const solution = eliminate([...rows, [...carried, 0, b.load / b.length]]);
    const sink = solution.at(-1)!;
    const pressure = new Map(active.map((i, k) => [i, solution[k]!]));
    const next = angle.flatMap((at, i) => {
      const own = pressure.get(i);
      if (own !== undefined) return own > 0 ? [i] : [];
      const moved = active.reduce((sum, j) => sum + influence[i]![j]! * pressure.get(j)!, 0);
      return sink * Math.cos(at) - (b.clearance / 2) * (1 - Math.cos(at)) > moved + 1e-12 ? [i] : [];
    });
    if (next.length === active.length && next.every((i, k) => i === active[k]))
      return { peak: solution[0]!, angle: (active.length * width * 180) / Math.PI };
    active = next;
  }
  throw new Error("the contact did not settle");
}
