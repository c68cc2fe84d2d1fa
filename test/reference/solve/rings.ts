import type { Ring } from "../../../src/core/fit/lame";
import { tridiagonal } from "./tridiagonal";

/**
 * A second solution of bush and housing: linear finite elements along the radius for the displacement u(r) of a
 * thick ring in plane stress, from σr = E/(1 − ν²)·(u' + ν·u/r − (1 + ν)·ε) and σθ alike, with a jump of δ/2 at the joint.
 * It knows none of Lamé's formulas. Its error falls with the square of the mesh, so two meshes are extrapolated.
 */
interface Body {
  readonly modulus: number;
  readonly poisson: number;
  readonly strain: number;
}
interface Joint {
  readonly boreChange: number;
  readonly pressure: number;
  readonly hoopAtBore: number;
}

function solveRings(radii: [number, number, number], bush: Body, housing: Body, interference: number): Joint {
  const coarse = meshed(radii, bush, housing, interference, 400);
  const fine = meshed(radii, bush, housing, interference, 800);
  const extrapolated = (key: keyof Joint) => fine[key] + (fine[key] - coarse[key]) / 3;
  return {
    boreChange: extrapolated("boreChange"),
    pressure: extrapolated("pressure"),
    hoopAtBore: extrapolated("hoopAtBore"),
  };
}

function meshed(
  [a, b, c]: [number, number, number],
  bush: Body,
  housing: Body,
  interference: number,
  n: number,
): Joint {
  const nodes = [...mesh(a, b, n), ...mesh(b, c, n)];
  const size = nodes.length;
  const diagonal = new Array<number>(size).fill(0);
  const above = new Array<number>(size).fill(0);
  const load = new Array<number>(size).fill(0);
  for (let e = 0; e < size - 1; e++) {
    if (e === n) continue; // the joint: two nodes at one radius
    const body = e < n ? bush : housing;
    const [r1, r2] = [nodes[e]!, nodes[e + 1]!];
    const h = r2 - r1;
    const stiffness = body.modulus / (1 - body.poisson ** 2);
    const eigen = body.strain * (1 + body.poisson);
    for (const x of [-1, 1]) {
      const s = (1 + x / Math.sqrt(3)) / 2;
      const r = r1 + s * h;
      const weight = (h / 2) * r * stiffness;
      const shape = [1 - s, s] as const;
      const slope = [-1 / h, 1 / h] as const;
      const term = (i: 0 | 1, j: 0 | 1) =>
        weight *
        (slope[i] * slope[j] +
          (body.poisson * (slope[i] * shape[j] + shape[i] * slope[j])) / r +
          (shape[i] * shape[j]) / r ** 2);
      diagonal[e]! += term(0, 0);
      diagonal[e + 1]! += term(1, 1);
      above[e]! += term(0, 1);
      for (const i of [0, 1] as const) load[e + i]! += weight * eigen * (slope[i] + shape[i] / r);
    }
  }
  // joined nodes: u of the housing is u of the bush + δ/2; a stiff spring stands for the contact
  const spring = 1e9 * Math.max(bush.modulus, housing.modulus);
  diagonal[n]! += spring;
  diagonal[n + 1]! += spring;
  above[n]! -= spring;
  load[n]! -= (spring * interference) / 2;
  load[n + 1]! += (spring * interference) / 2;
  const u = tridiagonal([0, ...above], diagonal, above, load);
  // the bush's own nodal force at the joint, without the spring, is p·r
  const bushForce =
    (diagonal[n]! - spring) * u[n]! + above[n - 1]! * u[n - 1]! - (load[n]! + (spring * interference) / 2);
  // u' at the bore, by a one-sided difference of second order
  const h = nodes[1]! - nodes[0]!;
  const slopeAtBore = (-3 * u[0]! + 4 * u[1]! - u[2]!) / (2 * h);
  const hoop =
    (bush.modulus / (1 - bush.poisson ** 2)) *
    (u[0]! / a + bush.poisson * slopeAtBore - (1 + bush.poisson) * bush.strain);
  return { boreChange: 2 * u[0]!, pressure: -bushForce / b, hoopAtBore: hoop };
}

const mesh = (from: number, to: number, n: number): number[] =>
  Array.from({ length: n + 1 }, (_, i) => from + ((to - from) * i) / n);

/** A ring and its housing solved as one system; strains are free strains of heat and moisture. */
export const solveRing = (r: Ring, interference: number, bushStrain = 0, housingStrain = 0): Joint =>
  solveRings(
    [r.bore / 2, r.outside / 2, r.housing / 2],
    { modulus: r.bushModulus, poisson: r.bushPoisson, strain: bushStrain },
    { modulus: r.housingModulus, poisson: r.housingPoisson, strain: housingStrain },
    interference,
  );

/** Marches u and σr of the three-dimensional law from bore to joint (Runge-Kutta) and picks the u(a) that makes u(b) zero. */
export function heldBoreChange({ bore, outside, bushModulus: E, bushPoisson: nu }: Ring, strain: number): number {
  const lambda = (E * nu) / ((1 + nu) * (1 - 2 * nu));
  const mu = E / (2 * (1 + nu));
  const eigen = (3 * lambda + 2 * mu) * strain;
  type State = [u: number, radialStress: number];
  const slope = (r: number, [u, radial]: State): State => {
    const du = (radial + eigen - (lambda * u) / r) / (lambda + 2 * mu);
    const hoop = lambda * (du + u / r) + (2 * mu * u) / r - eigen;
    return [du, (hoop - radial) / r];
  };
  const atJoint = (atBore: number): number => {
    const n = 1000;
    const h = (outside - bore) / 2 / n;
    let y: State = [atBore, 0];
    const moved = (k: State, f: number): State => [y[0] + f * k[0], y[1] + f * k[1]];
    for (let i = 0; i < n; i++) {
      const r = bore / 2 + i * h;
      const k1 = slope(r, y);
      const k2 = slope(r + h / 2, moved(k1, h / 2));
      const k3 = slope(r + h / 2, moved(k2, h / 2));
      const k4 = slope(r + h, moved(k3, h));
      y = moved([k1[0] + 2 * (k2[0] + k3[0]) + k4[0], k1[1] + 2 * (k2[1] + k3[1]) + k4[1]], h / 6);
    }
    return y[0];
  };
  // the equation is linear in u(a): two marches give the root
  const [zero, one] = [atJoint(0), atJoint(1)];
  return (2 * -zero) / (one - zero);
}
