import told from "../../data/misses.json";
import { catalogue } from "../../src/core";
import { criteria } from "../../src/core/duties";
import { withFigures } from "../../scripts/lib/figures";
import { modelErrors } from "./measured/compare";
import { measurements, sources, words } from "./measured/measurements";
import { misses } from "./measured/misses";
import { models } from "./measured/models";

const compared = modelErrors().flatMap(({ points }) => points);

test("every prediction is that of the same equations solved apart from this code, to its three digits", () => {
  const told = compared.filter(({ simple }) => simple !== undefined);
  expect(told.length).toBeGreaterThan(45);
  for (const { what, predicted, simple } of told)
    expect([what, Math.abs(predicted / simple! - 1) < 0.006]).toEqual([what, true]);
});

test("a point of a series is predicted from the others alone: its own measurement changes nothing", () => {
  // PLA by hand: rates of the five others in µm/km over MPa: 10/0.06, 8/0.08, 12/0.08, 20/0.09, 30/0.1; their geometric mean times 0.05 MPa
  const others = [10 / 0.06, 8 / 0.08, 12 / 0.08, 20 / 0.09, 30 / 0.1];
  const mean = Math.exp(others.reduce((sum, rate) => sum + Math.log(rate), 0) / others.length);
  const point = compared.find(({ model, given }) => model === "wear" && given.pressure === 0.05)!;
  expect(point.predicted).toBeCloseTo(mean * 0.05, 9);
  // PA6 likewise: the arithmetic mean of 0.66, 0.86, 0.91, 0.83 and 0.94
  const rubbed = compared.find(({ model, given }) => model === "friction" && given.pressure === 0.05)!;
  expect(rubbed.predicted).toBeCloseTo((0.66 + 0.86 + 0.91 + 0.83 + 0.94) / 5, 12);
});

test("the median, the range and the sides are counted: BORETEMP by hand", () => {
  const { points, median, least, greatest, unsafe } = modelErrors().find(
    ({ model }) => model.key === "boreTemperature",
  )!;
  // 0.1·67/8.665 … the twelve ratios as the source lists them, sorted: the middle two 0.801 and 0.832
  expect([points.length, unsafe]).toEqual([12, 12]);
  expect([median, least, greatest].map((x) => x.toFixed(3))).toEqual(["0.817", "0.550", "0.978"]);
});

test("each measurement names a model, a source and a label; what is within the scatter is not beyond it", () => {
  const keys = models.map(({ key }) => key);
  for (const { model, source, label } of [...measurements, ...words]) {
    expect(keys).toContain(model);
    expect(Object.keys(sources)).toContain(source);
    expect(["read", "memory", "derived"]).toContain(label);
  }
  const within = compared.find(({ isUnsafe, isBeyond }) => isUnsafe && !isBeyond)!;
  expect(within.scatter).toBeGreaterThan(Math.abs(within.predicted - within.measured));
});

test("a model names functions of the catalogue and criteria, and tells where was looked if nothing was found", () => {
  for (const { key, functions, criteria: criteriaOf, looked } of models) {
    for (const id of criteriaOf) expect(criteria.map((one) => one.id)).toContain(id);
    for (const id of functions) expect(catalogue.map((f) => f.spec.id)).toContain(id);
    expect([key, looked !== undefined]).toEqual([key, !measurements.some(({ model }) => model === key)]);
  }
});

test("what the texts tell are the figures of the measurements, rounded up: run `npm run sync` after changing one", () => {
  expect(told).toEqual(misses());
  // BORETEMP for 90 °C by hand: 31.23 K measured, 0.4·67 = 26.8 told
  expect(told.boreLowBy.at90).toBe(4.5);
  // 22 µm/km measured, 8.78 predicted
  expect(told.wear.oneRate).toBe(2.6);
});

test("a figure in a hand-written text is renewed between its marks, and an unknown one is an error", () => {
  const text = "up to <!-- a.b -->1<!-- --> times, <!-- a.c -->2<!-- --> K";
  expect(withFigures(text, { a: { b: 3.5, c: 4 } })).toBe(
    "up to <!-- a.b -->3.5<!-- --> times, <!-- a.c -->4<!-- --> K",
  );
  expect(() => withFigures(text, { a: { b: 1 } })).toThrow("no figure is called a.c");
});
