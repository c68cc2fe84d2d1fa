import { dutyPv, washerPressure, washerSpeed, washerTorque } from "../../../src/core";
import { call, CellError } from "../../support";

const column = (...cells: unknown[]) => cells.map((cell) => [cell]);
const of = (...lists: unknown[][][]) => call(dutyPv, lists)[0]![0];
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

test("a face without a width is no ring", () => {
  const ring = { inner: 40, outer: 40 };
  for (const face of [
    () => washerPressure({ ...ring, load: 1 }),
    () => washerSpeed({ ...ring, rpm: 1 }),
    () => washerTorque({ ...ring, load: 1, friction: 0.1 }),
  ])
    expect(face).toThrow("outer must be above inner");
});
