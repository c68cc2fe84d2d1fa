import fc from "fast-check";
import * as core from "../../src/core";
import { between, check, rises } from "./check";

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
