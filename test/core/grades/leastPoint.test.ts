import { readCurve } from "../../../src/core/grades/model";
import { endsOf, leastOver, leastPoint } from "../../../src/core/grades/model/curve";

const curve = readCurve("curve", { kind: "pressure", above: 0 }, "0: 50; 20: 20; 40: 60", undefined, "metric");
const span = (low: number, high: number) => ({ low, high });

test("a curve ends in its first and its last point", () => expect(endsOf(curve)).toEqual({ low: 0, high: 40 }));

// falling by 1.5 a kelvin to 20 °C, rising by 2 a kelvin behind it
test.each([
  ["within a falling stretch: its warm end", span(5, 15), 27.5, { at: 15, before: 0, after: 20 }],
  ["within a rising stretch: its cold end", span(25, 35), 30, { at: 25, before: 20, after: 40 }],
  ["over the lowest point: that point, alone", span(10, 30), 20, { at: 20, before: 20, after: 20 }],
  ["up to the lowest point: that point, alone", span(10, 20), 20, { at: 20, before: 20, after: 20 }],
  ["before the first point: the first, alone", span(-10, -10), 50, { at: -10, before: 0, after: 0 }],
  ["from before the first point", span(-10, 10), 35, { at: 10, before: 0, after: 20 }],
  ["at the first point: that point, alone", span(0, 0), 50, { at: 0, before: 0, after: 0 }],
  ["at the last point: that point, alone", span(40, 40), 60, { at: 40, before: 40, after: 40 }],
])("%s", (_, over, least, found) => {
  expect(leastOver(curve, over)).toBe(least);
  const { at, before, after } = leastPoint(curve, over);
  expect({ at, before: before.at, after: after.at }).toEqual(found);
});
