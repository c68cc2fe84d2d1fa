import fc from "fast-check";
import * as core from "../../src/core";
import { between, check, equal, rises } from "./check";

type At = Readonly<Record<string, number>>;
interface Way {
  readonly what: string;
  readonly answer: (values: Record<string, number>) => number;
  readonly at: At;
  /** The way the answer goes as each argument alone grows, and from where to where that is tried. */
  readonly ways: Readonly<Record<string, readonly [1 | -1, number, number]>>;
}
/** `at` gives the type of the values; all others stay as they are while one moves. */
const way = <A extends At>(
  what: string,
  answer: (values: A) => number,
  at: A,
  ways: { [N in keyof A]?: readonly [1 | -1, number, number] },
) => ({ what, answer, at, ways }) as unknown as Way;

const assembly = {
  ...{ load: 300, bore: 20, length: 15, wall: 1.5, speed: 0.1, friction: 0.2, ambient: 25 },
  ...{ bushconductivity: 0.25, shaftconductivity: 45, endlength: 60, ends: 1, film: 10, contact: 0.5 },
};

const layer = { bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
const sizes = { bore: [-1, 2, 200], length: [-1, 1, 200], wall: [-1, 0.1, 20] } as const;

/** MAXTILT, as steep as can be where the shaft would touch both ends first. */
function tiltOf(values: Parameters<typeof core.functions.MAXTILT>[0]): number {
  try {
    return core.functions.MAXTILT(values);
  } catch (error) {
    expect((error as Error).message).toContain("touches both ends");
    return 90;
  }
}

const laws: readonly Way[] = [
  way(
    "DERATEDPV",
    core.functions.DERATEDPV,
    { pvlimit: 0.1, highest: 90, ambient: 60, reference: 23 },
    { pvlimit: [1, 0.01, 5], highest: [1, 30, 260], ambient: [-1, -40, 150], reference: [1, -20, 80] },
  ),
  way(
    "BORETEMP",
    core.functions.BORETEMP,
    { pv: 0.05, pvlimit: 0.1, highest: 90, ambient: 40, reference: 23 },
    {
      ...{ pv: [1, 0, 1], pvlimit: [-1, 0.01, 5], highest: [1, 30, 260] },
      ...{ ambient: [1, -40, 150], reference: [-1, -20, 80] },
    },
  ),
  way(
    "PEAKRISE of an intermittent duty",
    ({ rise, on, off, timeconstant }) => core.functions.PEAKRISE({ rises: [rise, 0], times: [on, off], timeconstant }),
    { rise: 60, on: 5, off: 12, timeconstant: 9 },
    { rise: [1, 0, 300], on: [1, 0.01, 100], off: [-1, 0.01, 100], timeconstant: [-1, 0.1, 1000] },
  ),
  ...([0, 1] as const).map((end) =>
    way(
      `RUNTEMP, ${end === 0 ? "housing at ambient" : "no way out through the housing"}`,
      (values) => core.functions.RUNTEMP(values)[end] as number,
      assembly,
      {
        ...{ load: [1, 0, 5000], speed: [1, 0, 5], friction: [1, 0, 1], ambient: [1, -40, 150], bore: [-1, 5, 200] },
        ...{ shaftconductivity: [-1, 1, 400], endlength: [-1, 1, 1000], film: [-1, 1, 100] },
        ...(end === 0 ? { wall: [1, 0.1, 20], bushconductivity: [-1, 0.05, 10], contact: [-1, 0.1, 1] } : {}),
      },
    ),
  ),
  way(
    "RUNTEMP, housing's path known",
    (values) => core.functions.RUNTEMP(values)[1] as number,
    { ...assembly, housingpath: 0.1 },
    {
      ...{ wall: [1, 0.1, 20], bushconductivity: [-1, 0.05, 10], contact: [-1, 0.1, 1], bore: [-1, 5, 200] },
      ...{ housingpath: [-1, 0.001, 10], endlength: [-1, 1, 1000] },
    },
  ),
  way(
    "HOUSINGPATH",
    core.functions.HOUSINGPATH,
    { outside: 23, thickness: 8, conductivity: 50, film: 10 },
    { outside: [1, 1, 500], thickness: [1, 0.1, 100], conductivity: [1, 0.1, 400], film: [1, 1, 200] },
  ),
  way(
    "PEAKPRESSURE",
    (values) => core.functions.PEAKPRESSURE(values)[0]!,
    { ...layer, load: 3000 },
    { load: [1, 0, 1e5], clearance: [1, 0, 2], modulus: [1, 10, 1e5], poisson: [1, 0, 0.49], ...sizes },
  ),
  ...([0, 1] as const).map((figure) =>
    way(
      `EDGEPRESSURE, ${figure === 0 ? "lower" : "upper"}`,
      (values) => core.functions.EDGEPRESSURE(values)[figure] as number,
      { ...layer, load: 800, tilt: 0.1 },
      {
        ...{ load: [1, 1, 2e4], clearance: [1, 0.03, 2], modulus: [1, 300, 1e4], poisson: [1, 0, 0.45] },
        ...{ tilt: [1, 0, 0.3], bore: [-1, 5, 60], length: [-1, 3, 40], wall: [-1, 0.5, 20] },
      },
    ),
  ),
  way(
    "MAXTILT",
    tiltOf,
    { ...layer, load: 800, pressure: 40 },
    {
      ...{ pressure: [1, 1, 70], load: [-1, 300, 1e5], clearance: [-1, 0.05, 2], modulus: [-1, 500, 1e5] },
      ...{ poisson: [-1, 0, 0.49], bore: [1, 2, 40], length: [1, 1, 25], wall: [1, 0.5, 10] },
    },
  ),
  ...(["central", "uniform", "offset", "overhung"] as const).map((loadcase) =>
    way(
      `SHAFTSLOPE, ${loadcase}`,
      (values) => core.functions.SHAFTSLOPE({ ...values, loadcase })[0],
      {
        ...{ load: 600, span: 200, diameter: 16, modulus: 206000, inner: 4 },
        ...(loadcase === "offset" || loadcase === "overhung" ? { position: 60 } : {}),
      },
      // within the small slopes of the theory
      {
        ...{ load: [1, 0, 1e4], span: [1, 121, 1000], diameter: [-1, 8, 80], modulus: [-1, 1e4, 3e5] },
        ...{ inner: [1, 0, 15], ...(loadcase === "overhung" ? { position: [1, 1, 500] } : {}) },
      },
    ),
  ),
  ...(["pressure", "bore change"] as const).map((what, column) =>
    way(
      `PRESSFIT, ${what}`,
      (values) => Math.abs(core.functions.PRESSFIT(values)[2 * column]!),
      {
        ...{ bore: 20, outside: 23, housing: 40, interference: 0.05, bushmodulus: 2500, bushpoisson: 0.4 },
        ...{ housingmodulus: 69000, housingpoisson: 0.33 },
      },
      {
        ...{ interference: [1, 0, 2.3], housing: [1, 24, 500], housingmodulus: [1, 100, 1e6] },
        ...{ bushpoisson: [1, 0, 0.5], housingpoisson: [-1, 0, 0.5] },
        ...(what === "pressure" ? { bushmodulus: [1, 10, 1e5] } : { bushmodulus: [-1, 10, 1e5] }),
      },
    ),
  ),
  way(
    "GRIPLEFT",
    core.functions.GRIPLEFT,
    { interference: 0.05, outside: 23, kept: 0.6, mismatchhot: 0.0037, mismatchnow: -0.001 },
    {
      ...{ interference: [1, 0, 1], kept: [1, 0, 1], mismatchhot: [-1, -0.2, 0.2], mismatchnow: [1, -0.2, 0.2] },
    },
  ),
  way(
    "PRESSIN",
    core.functions.PRESSIN,
    { pressure: 5, outside: 23, length: 15, interference: 0.1, friction: 0.2, chamfer: 30 },
    {
      ...{ pressure: [1, 0, 50], outside: [1, 1, 200], length: [1, 1, 200], interference: [1, 0, 2] },
      ...{ friction: [1, 0, 1], chamfer: [-1, 5, 85] },
    },
  ),
  way(
    "FLANGEDBUSH, PV to compare",
    (values) => core.functions.FLANGEDBUSH(values)[4]!,
    { radial: 600, axial: 300, bore: 20, length: 20, inner: 21, outer: 30, rpm: 60, friction: 0.15 },
    {
      ...{ radial: [1, 0, 1e4], axial: [1, 0, 1e4], length: [-1, 1, 200], inner: [1, 20, 29.9] },
      ...{ outer: [1, 21.1, 200], rpm: [1, 0, 3000] },
    },
  ),
  way(
    "WEAR with a flat's rate",
    (values) => core.functions.WEAR({ ...values, from: "flat" }),
    { wearrate: 2e-6, pressure: 2.5, distance: 20, clearance: 0.08 },
    {
      ...{ wearrate: [1, 0, 1e-4], pressure: [1, 0, 100], distance: [1, 0, 1e4] },
      ...{ clearance: [1, 0, 5] },
    },
  ),
  way(
    "LIFE with a flat's rate",
    (values) => core.functions.LIFE({ ...values, from: "flat" }),
    { wearrate: 2e-6, pressure: 2.5, speed: 0.1, allowance: 0.2, clearance: 0.08 },
    {
      ...{ wearrate: [-1, 1e-8, 1e-4], pressure: [-1, 0.01, 100], speed: [-1, 0.001, 5] },
      ...{ allowance: [1, 0.001, 5], clearance: [-1, 0, 5] },
    },
  ),
];
const moves = laws.flatMap(({ what, ways, ...rest }) =>
  Object.entries(ways).map(([name, range]) => ({ what, name, range, ...rest })),
);
test.each(moves)("$what goes one way with $name", ({ name, range: [direction, low, high], answer, at }) => {
  rises(direction, [low, high], (x) => answer({ ...at, [name]: x }));
});

describe("the first-order peak of a cycle", () => {
  const step = fc.tuple(between(0.1, 100), between(0.1, 20));
  const of = (cycle: [number, number][], timeconstant: number) =>
    core.functions.PEAKRISE({ rises: cycle.map(([rise]) => rise), times: cycle.map(([, time]) => time), timeconstant });
  test("lies between the mean and the greatest step, and by the cycle's length near the mean", () =>
    check(fc.tuple(fc.array(step, { minLength: 1, maxLength: 6 }), between(0.1, 100)), ([cycle, timeconstant]) => {
      const total = cycle.reduce((sum, [, time]) => sum + time, 0);
      const mean = cycle.reduce((sum, [rise, time]) => sum + rise * time, 0) / total;
      const peak = of(cycle, timeconstant);
      const ratio = total / timeconstant;
      expect(peak).toBeGreaterThanOrEqual(mean * (1 - 1e-9));
      expect(peak).toBeLessThanOrEqual(Math.max(...cycle.map(([rise]) => rise)) * (1 + 1e-9));
      expect(peak).toBeLessThanOrEqual(mean * (ratio / -Math.expm1(-ratio)) * (1 + 1e-9));
    }));
  test("of on and off is above the mean by e^(off/2τ) at most", () =>
    check(fc.tuple(step, between(0.1, 20), between(0.1, 100)), ([[rise, on], off, timeconstant]) => {
      const bound = ((rise * on) / (on + off)) * Math.exp(off / (2 * timeconstant));
      expect(
        of(
          [
            [rise, on],
            [0, off],
          ],
          timeconstant,
        ),
      ).toBeLessThanOrEqual(bound * (1 + 1e-9));
    }));
});

describe("a bore worn by a rate from flat tests", () => {
  const duty = fc.tuple(between(1e-8, 1e-5), between(0.1, 20), between(0.1, 1000));
  test("sinks by 4/π of the flat's depth at least, and by no more than (4/π − 1)·C/2 above it", () =>
    check(fc.tuple(duty, between(0.001, 1)), ([[wearrate, pressure, distance], clearance]) => {
      const flat = core.functions.WEAR({ wearrate, pressure, distance });
      const worn = core.functions.WEAR({ wearrate, pressure, distance, from: "flat", clearance });
      expect(worn).toBeGreaterThanOrEqual((4 / Math.PI) * flat * (1 - 1e-9));
      expect(worn).toBeLessThanOrEqual((4 / Math.PI) * flat + ((4 / Math.PI - 1) * clearance) / 2 + 1e-12);
    }));
  test("without clearance it is that of the smallest clearance", () =>
    check(duty, ([wearrate, pressure, distance]) => {
      const flat = core.functions.WEAR({ wearrate, pressure, distance });
      const of = (clearance: number) => core.functions.WEAR({ wearrate, pressure, distance, from: "flat", clearance });
      for (const by of [1e-6, 1e-11, 1e-13, 1e-300]) equal(of(by * flat), of(0), 1e-6);
    }));
});

describe("a tilted shaft", () => {
  const given = fc.tuple(between(100, 5000), between(0.02, 0.3), between(300, 5000), between(0, 0.45));
  test("at the tilt of MAXTILT the upper edge pressure is the pressure", () =>
    check(fc.tuple(given, between(5, 60)), ([[load, clearance, modulus, poisson], pressure]) => {
      const at = { ...layer, load, clearance, modulus, poisson };
      const tilt = tiltOf({ ...at, pressure });
      if (tilt === 90) return;
      const [lower, upper] = core.functions.EDGEPRESSURE({ ...at, tilt });
      if (tilt === 0) expect(upper).toBeGreaterThanOrEqual(pressure * (1 - 1e-9));
      else equal(upper as number, pressure);
      expect(lower).toBeLessThanOrEqual((upper as number) * (1 + 1e-9));
    }));
  test("that does not tilt presses as PEAKPRESSURE's foundation, on its whole length", () =>
    check(given, ([load, clearance, modulus, poisson]) => {
      const at = { ...layer, load, clearance, modulus, poisson };
      const [, upper, length, contact] = core.functions.EDGEPRESSURE({ ...at, tilt: 0 });
      expect(upper).toBeLessThanOrEqual(core.functions.PEAKPRESSURE(at)[0]! * (1 + 1e-12));
      expect([length, contact]).toEqual([15, "full length"]);
      equal(core.functions.EDGEPRESSURE({ ...at, tilt: 1e-9 })[1] as number, upper as number, 1e-4);
    }));
  test("in a bore without clearance is the limit of small clearances", () =>
    check(fc.tuple(between(2000, 20000), between(0, 0.02)), ([load, tilt]) => {
      const of = (clearance: number) => core.functions.EDGEPRESSURE({ ...layer, load, tilt, clearance });
      for (const clearance of [1e-9, 1e-13])
        of(clearance).forEach((cell, i) =>
          typeof cell === "number" ? equal(cell, of(0)[i] as number, 1e-6) : expect(cell).toEqual(of(0)[i]),
        );
    }));
});
