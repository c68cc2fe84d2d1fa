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

const laws: readonly Way[] = [
  way(
    "DERATEDPV",
    core.deratedPv,
    { pvlimit: 0.1, highest: 90, ambient: 60, reference: 23 },
    { pvlimit: [1, 0.01, 5], highest: [1, 30, 260], ambient: [-1, -40, 150], reference: [1, -20, 80] },
  ),
  way(
    "BORETEMP",
    core.boreTemperature,
    { pv: 0.05, pvlimit: 0.1, highest: 90, ambient: 40, reference: 23 },
    {
      ...{ pv: [1, 0, 1], pvlimit: [-1, 0.01, 5], highest: [1, 30, 260] },
      ...{ ambient: [1, -40, 150], reference: [-1, -20, 80] },
    },
  ),
  way(
    "PEAKRISE of an intermittent duty",
    ({ rise, on, off, timeconstant }) => core.peakRise({ rises: [rise, 0], times: [on, off], timeconstant }),
    { rise: 60, on: 5, off: 12, timeconstant: 9 },
    { rise: [1, 0, 300], on: [1, 0.01, 100], off: [-1, 0.01, 100], timeconstant: [-1, 0.1, 1000] },
  ),
  ...([0, 1] as const).map((end) =>
    way(
      `RUNTEMP, ${end === 0 ? "housing at ambient" : "no way out through the housing"}`,
      (values) => core.runTemperature(values)[end] as number,
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
    (values) => core.runTemperature(values)[1] as number,
    { ...assembly, housingpath: 0.1 },
    {
      ...{ wall: [1, 0.1, 20], bushconductivity: [-1, 0.05, 10], contact: [-1, 0.1, 1], bore: [-1, 5, 200] },
      ...{ housingpath: [-1, 0.001, 10], endlength: [-1, 1, 1000] },
    },
  ),
  way(
    "HOUSINGPATH",
    core.housingPath,
    { outside: 23, thickness: 8, conductivity: 50, film: 10 },
    { outside: [1, 1, 500], thickness: [1, 0.1, 100], conductivity: [1, 0.1, 400], film: [1, 1, 200] },
  ),
  way(
    "WEAR with a flat's rate",
    (values) => core.wearDepth({ ...values, from: "flat" }),
    { wearrate: 2e-6, pressure: 2.5, distance: 20, clearance: 0.08 },
    {
      ...{ wearrate: [1, 0, 1e-4], pressure: [1, 0, 100], distance: [1, 0, 1e4] },
      ...{ clearance: [1, 0, 5] },
    },
  ),
  way(
    "LIFE with a flat's rate",
    (values) => core.wearLife({ ...values, from: "flat" }),
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
    core.peakRise({ rises: cycle.map(([rise]) => rise), times: cycle.map(([, time]) => time), timeconstant });
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
      const flat = core.wearDepth({ wearrate, pressure, distance });
      const worn = core.wearDepth({ wearrate, pressure, distance, from: "flat", clearance });
      expect(worn).toBeGreaterThanOrEqual((4 / Math.PI) * flat * (1 - 1e-9));
      expect(worn).toBeLessThanOrEqual((4 / Math.PI) * flat + ((4 / Math.PI - 1) * clearance) / 2 + 1e-12);
    }));
  test("without clearance it is that of the smallest clearance", () =>
    check(duty, ([wearrate, pressure, distance]) => {
      const flat = core.wearDepth({ wearrate, pressure, distance });
      const of = (clearance: number) => core.wearDepth({ wearrate, pressure, distance, from: "flat", clearance });
      for (const by of [1e-6, 1e-11, 1e-13, 1e-300]) equal(of(by * flat), of(0), 1e-6);
    }));
});
