import fc from "fast-check";
import { curveText, leastOver, readCurve, valueAt } from "../../../src/core/grades/model";
import { seed } from "../../laws/check";

const pressure = { kind: "pressure", above: 0, to: 1000 } as const;
const read = (text: string, unit?: string, system: "metric" | "inch" = "metric") =>
  readCurve("curve", pressure, text, unit, system);
const curve = read("-40: 40; 23: 40; 80: 25");

test("points as typed", () => {
  expect(curve).toEqual([
    { at: -40, value: 40 },
    { at: 23, value: 40 },
    { at: 80, value: 25 },
  ]);
  expect(read("23: 40,5; 80: 25;")).toEqual([
    { at: 23, value: 40.5 },
    { at: 80, value: 25 },
  ]);
});

test("units of the sheet, of the heading, of the numbers themselves", () => {
  const wanted = [
    { at: 0, value: 1000 * 0.006894757293168361 },
    { at: 100, value: 500 * 0.006894757293168361 },
  ];
  for (const points of [
    read("32: 1000; 212: 500", undefined, "inch"),
    read("32: 1000; 212: 500", "°F: psi"),
    read("0: 1000; 100: 500", "psi"),
    read("32 °F: 1000 psi; 100 °C: 500 psi"),
  ])
    points.forEach((point, i) => {
      expect(point.at).toBeCloseTo(wanted[i]!.at, 10);
      expect(point.value).toBeCloseTo(wanted[i]!.value, 10);
    });
});

test("straight between points, the first value below them, nothing above", () => {
  expect(valueAt(curve, -40)).toBe(40);
  expect(valueAt(curve, 0)).toBe(40);
  expect(valueAt(curve, 23)).toBe(40);
  expect(valueAt(curve, 51.5)).toBeCloseTo(32.5, 12);
  expect(valueAt(curve, 80)).toBe(25);
  expect(valueAt(curve, -40.001)).toBe(40); // colder than the first point its value holds
  expect(valueAt(curve, 80.001)).toBeUndefined();
});

test("the least over a span looks at the points inside it", () => {
  const dip = read("0: 40; 30: 10; 60: 50");
  expect(leastOver(dip, { low: 0, high: 60 })).toBe(10);
  expect(leastOver(dip, { low: 40, high: 60 })).toBeCloseTo(10 + 40 / 3, 12);
  expect(leastOver(dip, { low: -1, high: 0 })).toBe(40);
  expect(leastOver(dip, { low: 20, high: 61 })).toBeUndefined();
});

test("the least over a span is never above the value anywhere in it", () => {
  const temperature = fc.double({ min: -40, max: 80, noNaN: true });
  fc.assert(
    fc.property(temperature, temperature, temperature, (a, b, c) => {
      const [low, at, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      expect(leastOver(curve, { low, high })!).toBeLessThanOrEqual(valueAt(curve, at)! + 1e-12);
    }),
    { seed },
  );
});

test.each([
  ["23", 'curve must be two or more points as "23: 40; 80: 25", got "23"'],
  ["23: 40", 'curve must be two or more points as "23: 40; 80: 25", got "23: 40"'],
  ["23: 40: 5; 80: 25", 'curve must be two or more points as "23: 40; 80: 25", got "23: 40: 5; 80: 25"'],
  ["80: 25; 23: 40", 'curve must be in order of temperature, got "80: 25; 23: 40"'],
  ["23: 40; 80: -5", 'curve must be above 0 MPa and at most 1000 MPa, got "80: -5"'],
  ["-300: 40; 80: 25", 'curve must be -273.15 °C or more, got "-300: 40"'],
  ["23: x; 80: 5", 'curve must be a number or text like "12.5 MPa", got "x"'],
  ["23: 40 m; 80: 5", 'curve must be in a unit like MPa or psi, got "m"'],
])("%s is refused", (text, message) => expect(() => read(text)).toThrow(message));

test("written and read back in either unit system", () => {
  for (const system of ["metric", "inch"] as const) {
    const back = read(curveText(curve, "pressure", system), undefined, system);
    back.forEach((point, i) => {
      expect(point.at).toBeCloseTo(curve[i]!.at, 7);
      expect(point.value).toBeCloseTo(curve[i]!.value, 7);
    });
  }
});
