import { functions } from "../../../src/core";
import { call, CellError } from "../../support";

const column = (...cells: unknown[]) => cells.map((cell) => [cell]);
const of = (...lists: unknown[][][]) => call(functions.DUTYPV, lists)[0]![0];
const told = (...lists: unknown[][][]) => (of(...lists) as CellError).message;

test("a step with nothing in it is a spare row, wherever it stands", () => {
  const steps = [column(2, null, 4), column(0.1, null, 0.05), column(10, null, 5)] as const;
  expect(of(...steps)).toBeCloseTo((2 * 0.1 * 10 + 4 * 0.05 * 5) / 15, 12);
});

test("a step that lacks one of the three is told by list and step", () => {
  expect(told(column(2, null), column(0.1, 0.1), column(10, 5))).toBe("pressures is missing in step 2");
  expect(told(column(2, 3), column(0.1, null), column(10, 5))).toBe("speeds is missing in step 2");
  expect(told(column(2, 3), column(0.1, 0.1), column(10, null))).toBe("times is missing in step 2");
  expect(told(column(2, null), column(0.1, null), column(10, 5))).toBe("pressures is missing in step 2");
  expect(told(column(2, 3), column(0.1, null), column(10, null))).toBe("speeds is missing in step 2");
});

test("times that sum to nothing have no mean, times that sum to little have one", () => {
  expect(told(column(2), column(0.1), column(0))).toBe("times must sum to above 0");
  expect(of(column(2), column(0.1), column(1))).toBeCloseTo(0.2, 12);
  expect(told(column(2), column(0.1), column(1, 2))).toBe(
    "pressures has 1 cells, another range has 2: each step needs all three",
  );
});

describe("the PV to compare", () => {
  const steps = [column(2, 4, 1), column(0.1, 0.05, 0), column(10, 5, 15)] as const;
  const row = (timeconstant?: unknown) => call(functions.DUTYPV, [...steps, timeconstant])[0] as number[];
  test("is the greatest step, since a mean hides a step that lasts", () => {
    const [mean, greatest, compared] = row();
    expect(mean).toBeCloseTo(0.1, 12);
    expect([greatest, compared]).toEqual([0.2, 0.2]);
  });
  test("with a time constant it is the peak: the greatest step where that is short, the mean where it is long", () => {
    expect(row(0.01)[2]).toBeCloseTo(0.2, 9);
    expect(row(1e6)[2]).toBeCloseTo(0.1, 5);
    // on for 15, off for 15, τ 20: (1 − e^(−15/20))/(1 − e^(−30/20))
    expect(row(20)[2]).toBeCloseTo((0.2 * (1 - Math.exp(-0.75))) / (1 - Math.exp(-1.5)), 12);
  });
  test("a column of time constants answers row by row; one that is none is told", () => {
    const rows = call(functions.DUTYPV, [...steps, [[20], ["soon"], [1e6]]]);
    expect(rows).toHaveLength(3);
    expect((rows[1]![0] as CellError).message).toMatch(/^timeconstant must be a number/);
    expect(rows[2]).toEqual(row(1e6));
  });
  test("times in minutes and a time constant in minutes", () => {
    const minutes = column("10 min", "5 min", "15 min");
    expect(call(functions.DUTYPV, [steps[0], steps[1], minutes, "20 min"])[0]![2]).toBeCloseTo(row(20)[2]!, 12);
  });
});

test("called directly it refuses what no sheet would let through", () => {
  const direct = (pressure: number, time: number) => () =>
    functions.DUTYPV({ pressures: [2, pressure], speeds: [0.1, 0.1], times: [10, time] });
  expect(direct(NaN, 5)).toThrow("pressures 2 must be 0 MPa or more, got NAN");
  expect(direct(-5, 5)).toThrow("pressures 2 must be 0 MPa or more, got -5");
  expect(direct(5, Infinity)).toThrow("times 2 must be 0 h or more");
  expect(direct(2, 10)()[0]).toBeCloseTo(0.2, 12);
});

test("a face without a width is no ring", () => {
  const ring = { inner: 40, outer: 40 };
  for (const face of [
    () => functions.WASHERPRESSURE({ ...ring, load: 1 }),
    () => functions.WASHERSPEED({ ...ring, rpm: 1 }),
    () => functions.WASHERTORQUE({ ...ring, load: 1, friction: 0.1 }),
  ])
    expect(face).toThrow("outer must be above inner");
});
