import { Band } from "../../../src/core/band";
import { cornerOf, growth, likelyOf, quantile, spreadPoints } from "../../../src/core/duties/model/bandPoints";
import { between, check, equal } from "../../laws/check";
import fc from "fast-check";

test("the roots of the recurrence are those of its equation", () => {
  for (const n of [1, 2, 3, 4, 5, 6]) equal(growth(n) ** (n + 1), growth(n) + 1, 1e-14);
  // printed to seven decimals where the recurrence is described
  const printed = [1.618034, 1.324718, 1.2207441, 1.167304, 1.1347241, 1.1127757];
  printed.forEach((g, i) => expect(Math.abs(growth(i + 1) - g)).toBeLessThan(5.1e-8));
});

test("the first points of one and of two coordinates, by hand from the roots printed above", () => {
  // frac(0.5 + k/1.618034); frac(0.5 + k/1.3247180) and frac(0.5 + k/1.3247180²), with 0.7548777 and 0.5698403
  const expected = [
    [[0.118034], [0.736068]],
    [
      [0.2548777, 0.0698403],
      [0.0097554, 0.6396806],
    ],
  ];
  expected.forEach((points, i) =>
    points.forEach((point, k) =>
      point.forEach((value, j) => expect(spreadPoints(2, i + 1)[k]![j]).toBeCloseTo(value, 6)),
    ),
  );
});

/** How far the share of values below any x is from x at most. */
const discrepancy = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const { length } = sorted;
  return Math.max(...sorted.map((x, i) => Math.max(Math.abs(x - i / length), Math.abs(x - (i + 1) / length))));
};
test("points lie in the unit cube, always the same, and each coordinate fills it evenly", () => {
  for (const n of [1, 2, 3, 4, 5, 6]) {
    const points = spreadPoints(2048, n);
    expect(points).toEqual(spreadPoints(2048, n));
    for (let j = 0; j < n; j++) {
      const values = points.map((point) => point[j]!);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...values)).toBeLessThan(1);
      // the fourth of six is nearly 15/23, so that it falls into 23 heaps
      expect(discrepancy(values)).toBeLessThan(n === 6 && j === 3 ? 0.022 : 0.005);
    }
  }
});

const triangle = fc.tuple(between(0, 100), between(0.1, 100), between(0.05, 0.95));
test("a quantile undoes the distribution of its band", () =>
  check(fc.tuple(triangle, between(0, 1)), ([[low, width, mode], share]) => {
    expect((quantile(new Band(low, low + width), share) - low) / width).toBeCloseTo(share, 9);
    const likely = low + mode * width;
    const x = quantile(new Band(low, low + width, likely), share);
    const below =
      x < likely ? (x - low) ** 2 / (width * width * mode) : 1 - (low + width - x) ** 2 / (width * width * (1 - mode));
    expect(below).toBeCloseTo(share, 6);
  }));

test("its ends are the band's, and the middle of a triangle is its likely value", () => {
  for (const band of [new Band(2, 5), new Band(2, 5, 2), new Band(2, 5, 3), new Band(2, 5, 5)])
    for (const [share, end] of [
      [0, 2],
      [1, 5],
    ] as const)
      expect(quantile(band, share)).toBe(end);
  expect(quantile(new Band(640, 960, 800), 0.5)).toBe(800);
  // 2 + √(0.27·3·1) below the likely 3, which a third lies below, and 5 − √((1 − 5/6)·3·2) above it
  expect(quantile(new Band(2, 5, 3), 0.27)).toBeCloseTo(2.9, 12);
  expect(quantile(new Band(2, 5, 3), 5 / 6)).toBeCloseTo(4, 12);
  expect(likelyOf(new Band(640, 960, 700))).toBe(700);
  expect(likelyOf(new Band(640, 960))).toBe(800);
});

test("every corner once", () => {
  const bands = [new Band(1, 2), new Band(3, 4), new Band(5, 6)];
  const corners = Array.from({ length: 8 }, (_, number) => bands.map(cornerOf(bands, number)).join());
  expect(new Set(corners).size).toBe(8);
  expect(corners[0]).toBe("1,3,5");
  expect(corners[7]).toBe("2,4,6");
});
