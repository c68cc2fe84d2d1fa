import type { FieldValues } from "../../../../src/core/duties";
import { on } from "../support";

const accepted = (more: FieldValues) => () => on({ wall: 1.5, ...more });

test("wall and outside agree to a millionth of the outside: what inches leave of 20 + 2 × 1.5 is no contradiction", () => {
  expect(accepted({ outside: 23.00002 })).not.toThrow();
  expect(accepted({ outside: 22.99998 })).not.toThrow();
  for (const outside of [23.00003, 22.99997])
    expect(accepted({ outside })).toThrow("wall and outside contradict each other");
});

test("a flange stands out over the bush, by however little", () => {
  const flange: FieldValues = { part: "flanged", axialLoad: 100, stroke: undefined, cycles: undefined, rpm: 30 };
  expect(accepted({ ...flange, flangeOutside: 23.01 })).not.toThrow();
  expect(accepted({ ...flange, flangeOutside: 23 })).toThrow(
    "flange outside must be above the bush's outside of 23 mm",
  );
});
