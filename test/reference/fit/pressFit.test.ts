import { closeIn, pressFit, runClearance } from "../../../src/core";
import { closeInOf, fitPressureOf, heldAtEnds, heldStrain } from "../../../src/core/fit/lame";
import type { Ring } from "../../../src/core/fit/lame";
import { answer } from "../../../src/edge/sheet";

/**
 * An independent solution of bush and housing: linear finite elements along the radius for the displacement u(r) of a
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
  const u = solveTridiagonal(diagonal, above, load);
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

function solveTridiagonal(diagonal: number[], above: number[], load: number[]): number[] {
  const d = [...diagonal];
  const y = [...load];
  for (let i = 1; i < d.length; i++) {
    const factor = above[i - 1]! / d[i - 1]!;
    d[i]! -= factor * above[i - 1]!;
    y[i]! -= factor * y[i - 1]!;
  }
  const u = new Array<number>(d.length).fill(0);
  for (let i = d.length - 1; i >= 0; i--) u[i] = (y[i]! - (i + 1 < d.length ? above[i]! * u[i + 1]! : 0)) / d[i]!;
  return u;
}

const cases: [string, Ring, number][] = [
  ["thin polyamide bush in an aluminium boss", ring(20, 23, 40, 2500, 0.4, 69000, 0.33), 0.08],
  ["thick polymer bush in a polymer housing", ring(20, 32, 50, 3000, 0.38, 2600, 0.4), 0.12],
  ["bronze ring in cast iron", ring(50, 60, 90, 110000, 0.34, 100000, 0.26), 0.05],
];
function ring(bore: number, outside: number, housing: number, ...elastic: [number, number, number, number]): Ring {
  const [bushModulus, bushPoisson, housingModulus, housingPoisson] = elastic;
  return { bore, outside, housing, bushModulus, bushPoisson, housingModulus, housingPoisson };
}
const solve = (r: Ring, interference: number, bushStrain = 0, housingStrain = 0) =>
  solveRings(
    [r.bore / 2, r.outside / 2, r.housing / 2],
    { modulus: r.bushModulus, poisson: r.bushPoisson, strain: bushStrain },
    { modulus: r.housingModulus, poisson: r.housingPoisson, strain: housingStrain },
    interference,
  );
const sheetArgs = (r: Ring) => ({
  bore: r.bore,
  outside: r.outside,
  housing: r.housing,
  bushmodulus: r.bushModulus,
  bushpoisson: r.bushPoisson,
  housingmodulus: r.housingModulus,
  housingpoisson: r.housingPoisson,
});
const close = (a: number, b: number, relative = 1e-5) => expect(Math.abs(a - b)).toBeLessThan(relative * Math.abs(b));

describe.each(cases)("%s, against the thick-ring equation solved by elements", (_, r, interference) => {
  const numerical = solve(r, interference);
  test("PRESSFIT", () => {
    const [pressure, stress, change] = pressFit({ ...sheetArgs(r), interference }) as [number, number, number];
    close(pressure, numerical.pressure);
    close(stress, numerical.hoopAtBore, 1e-4);
    close(change, numerical.boreChange);
  });
  test("CLOSEIN", () => close(closeIn(sheetArgs(r)), -numerical.boreChange / interference));

  test("RUNCLEARANCE with heat and swelling in bush and housing", () => {
    const [bushStrain, housingStrain] = [60 * 9e-5 + 0.006, 60 * 2.36e-5];
    const warm = solve(r, interference, bushStrain, housingStrain);
    const change = runClearance({
      clearance: 0,
      bore: r.bore,
      outside: r.outside,
      interference,
      closein: closeIn(sheetArgs(r)),
      temperature: 80,
      bushexpansion: 9e-5,
      housingexpansion: 2.36e-5,
      shaftexpansion: 0,
      swelling: 0.6,
    });
    close(change, warm.boreChange - numerical.boreChange);
  });
});

test("a long bush held at its ends, in a rigid housing, against Hooke's law with zero axial strain", () => {
  const r = { ...cases[0]![1], housingModulus: 1e15 };
  const strain = 0.0114;
  const free = heldStrain(strain, r.bushPoisson);
  close(r.bore * free - closeInOf(heldAtEnds(r)) * r.outside * free, heldBoreChange(r, strain), 1e-8);
});

/** Marches u and σr of the three-dimensional law from bore to joint (Runge-Kutta) and picks the u(a) that makes u(b) zero. */
function heldBoreChange({ bore, outside, bushModulus: E, bushPoisson: nu }: Ring, strain: number): number {
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

// Worked elsewhere by finite elements: d 20, D 26, ν 0.35, rigid housing, ε 0.0055, housing strain 0.000575
test("the whole chain, solved elsewhere by finite elements: the bore changes by −0.025973 mm", () => {
  const rigid = { ...sheetArgs(ring(20, 26, 60, 2500, 0.35, 2e5, 0.3)), housingmodulus: 1e15 };
  const change = runClearance({
    clearance: 0,
    bore: 20,
    outside: 26,
    interference: 0.05,
    closein: closeIn(rigid),
    temperature: 70,
    bushexpansion: 0.0055 / 50,
    housingexpansion: 0.000575 / 50,
    shaftexpansion: 0,
  });
  expect(change).toBeCloseTo(-0.025973, 6);
});

// Lamé by hand: κ = 2·D·d/((D² + d²) − ν·(D² − d²)) = 920/(929 − 51.6) for d 20, D 23, ν 0.4
test("close-in of 20/23 in a rigid housing is 1.0486", () => {
  expect(closeInOf(ring(20, 23, Infinity, 2000, 0.4, 1e15, 0.3))).toBeCloseTo(920 / 877.4, 9);
});

// Shigley's Mechanical Engineering Design, 9th ed., Eq. (7-40): one material, p = E·δ·(do² − d²)·(d² − di²)/(2·d³·(do² − di²))
test("equal materials obey the textbook's short form", () => {
  const r = ring(20, 40, 80, 207000, 0.292, 207000, 0.292);
  const short = (207000 * 0.03 * (80 ** 2 - 40 ** 2) * (40 ** 2 - 20 ** 2)) / (2 * 40 ** 3 * (80 ** 2 - 20 ** 2));
  expect(fitPressureOf(r, 0.03)).toBeCloseTo(short, 9);
});

/**
 * Shigley's Mechanical Engineering Design, 8th ed., instructor's solutions to Problems 3-69 and 3-70: a solid 1 in steel
 * shaft (30 Mpsi, 0.292) in a hub of 2 in outside. Diameters in inches, moduli and answers in psi.
 */
describe("textbook press fits", () => {
  const inSteel = ring(0, 1, 2, 30e6, 0.292, 30e6, 0.292);
  const inIron = ring(0, 1, 2, 30e6, 0.292, 14.5e6, 0.211);
  test("3-69: a cast iron hub (14.5 Mpsi, 0.211), shaft 1.002 in: 13 064 psi", () => {
    expect(Math.round(fitPressureOf(inIron, 0.002))).toBe(13064);
  });
  test("3-70: a steel hub, interference 0.003 in at most: 33 750 psi", () => {
    expect(Math.round(fitPressureOf(inSteel, 0.003))).toBe(33750);
  });
  test("3-69 through the sheet, the shaft drilled by a hair, in inch units", () => {
    const [pressure] = answer(pressFit, [1e-6, 1, 2, 0.002, 30e6, 0.292, 14.5e6, 0.211, "inch"])[0] as number[];
    expect(Math.round(pressure!)).toBe(13064);
  });
});
