import { bandSolver } from "./banded";

/** A flanged bush on its shaft; SI units. The collar whose face bears on the flange is as wide as the flange and as long as `collar`. */
export interface FlangedAssembly {
  readonly bore: number;
  readonly length: number;
  readonly wall: number;
  readonly inner: number;
  readonly outer: number;
  readonly thickness: number;
  readonly collar: number;
  readonly farend: number;
  readonly shoulderend: number;
  readonly shaftconductivity: number;
  readonly bushconductivity: number;
  /** Share of the bore that touches, and so conducts. */
  readonly contact: number;
  readonly film: number;
  /** W/K from the seat to the surroundings; Infinity with the housing at ambient, 0 without a housing. */
  readonly housing: number;
}

const parts = (from: number, to: number, count: number): number[] =>
  to > from ? Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 1)) / count) : [];

/**
 * Mean rises of bore and flange face for heat on each, by axisymmetric finite volumes of shaft, collar, sleeve and flange; the housing is one body.
 * The shaft's ends and the collar cool in the air, tips are insulated. It knows neither fins nor nodes.
 */
export function flangedRises(
  a: FlangedAssembly,
  onSleeve: number,
  onFlange: number,
): { sleeve: number; flange: number } {
  const shoulder = a.length + a.thickness;
  const [rBore, rSeat, rRim] = [a.bore / 2, a.bore / 2 + a.wall, a.outer / 2];
  const r = [0, ...parts(0, rBore, 10), ...parts(rBore, rSeat, 8), ...parts(rSeat, rRim, 12)];
  const z = [
    -a.farend,
    ...parts(-a.farend, 0, 40),
    ...parts(0, a.length, 30),
    ...parts(a.length, shoulder, 8),
    ...parts(shoulder, shoulder + a.collar, 10),
    ...parts(shoulder + a.collar, shoulder + a.collar + a.shoulderend, 40),
  ];
  const [columns, rows] = [r.length - 1, z.length - 1];
  const middle = (edges: readonly number[], i: number) => (edges[i]! + edges[i + 1]!) / 2;
  type Body = "metal" | "sleeve" | "flange" | "housing" | "air";
  const body = (i: number, k: number): Body => {
    if (i < 0) return "metal";
    if (k < 0 || k >= rows) return "air";
    const [radius, at] = [i < columns ? middle(r, i) : Infinity, middle(z, k)];
    if (radius < rBore) return "metal";
    if (at > shoulder) return at < shoulder + a.collar && radius < rRim ? "metal" : "air";
    if (at > a.length) return radius < rRim ? "flange" : "air";
    if (at < 0) return "air";
    return radius < rSeat ? "sleeve" : "housing";
  };
  const conductivity = (of: Body, isRadial: boolean): number => {
    if (of === "metal") return a.shaftconductivity;
    return of === "sleeve" && isRadial ? a.contact * a.bushconductivity : a.bushconductivity;
  };
  const isSolid = (of: Body) => of !== "air" && of !== "housing";

  const size = columns * rows;
  const at = (i: number, k: number) => k * columns + i;
  const band = Array.from({ length: size }, () => new Float64Array(columns + 1)); // band[n][m] = K(n, n + m)
  const toHousing = new Float64Array(size);
  /** Joins a cell to what lies behind one of its faces, half a cell on each side. */
  const join = (
    from: [number, number],
    to: [number, number],
    area: number,
    half: number,
    beyond: number,
    isRadial: boolean,
  ) => {
    const [own, other] = [body(...from), body(...to)];
    if (!isSolid(own)) return;
    const inside = half / (conductivity(own, isRadial) * area);
    const n = at(...from);
    if (isSolid(other)) {
      const g = 1 / (inside + beyond / (conductivity(other, isRadial) * area));
      band[n]![0]! += g;
      band[Math.min(n, at(...to))]![Math.abs(at(...to) - n)]! -= g / 2; // each face is met from both of its sides
    } else if (other === "housing") {
      band[n]![0]! += 1 / inside;
      toHousing[n]! += 1 / inside;
    } else if (own === "metal" && to[1] >= 0 && to[1] < rows) band[n]![0]! += 1 / (inside + 1 / (a.film * area));
  };
  for (let k = 0; k < rows; k++)
    for (let i = 0; i < columns; i++) {
      if (!isSolid(body(i, k))) {
        band[at(i, k)]![0] = 1;
        continue;
      }
      const [dr, dz] = [r[i + 1]! - r[i]!, z[k + 1]! - z[k]!];
      const ring = Math.PI * (r[i + 1]! ** 2 - r[i]! ** 2);
      if (i > 0) join([i, k], [i - 1, k], 2 * Math.PI * r[i]! * dz, dr / 2, (r[i]! - r[i - 1]!) / 2, true);
      join(
        [i, k],
        [i + 1, k],
        2 * Math.PI * r[i + 1]! * dz,
        dr / 2,
        i + 2 <= columns ? (r[i + 2]! - r[i + 1]!) / 2 : 0,
        true,
      );
      join([i, k], [i, k - 1], ring, dz / 2, k > 0 ? (z[k]! - z[k - 1]!) / 2 : 0, false);
      join([i, k], [i, k + 1], ring, dz / 2, k + 2 <= rows ? (z[k + 2]! - z[k + 1]!) / 2 : 0, false);
    }

  // friction: even along the bore, and over the face as its speed, which grows with the radius
  const bore = new Float64Array(size);
  const face = new Float64Array(size);
  const faceArea = new Float64Array(size);
  const boreColumn = r.indexOf(rBore) - 1;
  const cube = (x: number) => x ** 3;
  for (let k = 0; k < rows; k++)
    if (middle(z, k) > 0 && middle(z, k) < a.length) bore[at(boreColumn, k)] = (z[k + 1]! - z[k]!) / a.length;
  const first = z.findIndex((edge) => edge >= shoulder - 1e-12);
  for (let i = 0; i < columns; i++) {
    const [low, high] = [Math.max(r[i]!, a.inner / 2), Math.min(r[i + 1]!, rRim)];
    if (high <= low) continue;
    face[at(i, first)] = (cube(high) - cube(low)) / (cube(rRim) - cube(a.inner / 2));
    faceArea[at(i, first)] = (high ** 2 - low ** 2) / (rRim ** 2 - (a.inner / 2) ** 2);
  }
  const sum = (x: ArrayLike<number>, y: ArrayLike<number>) => {
    let total = 0;
    for (let n = 0; n < size; n++) total += x[n]! * y[n]!;
    return total;
  };
  const solve = bandSolver(band);
  const byHeat = solve(Float64Array.from(bore, (share, n) => share * onSleeve + face[n]! * onFlange));
  const byHousing = solve(toHousing);
  // the housing as one body: what flows into it flows out through its own conductance
  const wall = toHousing.reduce((total, g) => total + g, 0);
  const rise = a.housing === Infinity ? 0 : sum(toHousing, byHeat) / (a.housing + wall - sum(toHousing, byHousing));
  const mean = (weights: Float64Array) => sum(weights, byHeat) + rise * sum(weights, byHousing);
  return { sleeve: mean(bore), flange: mean(faceArea) };
}
