import { Band } from "../../../../src/core/band";
import type { FieldKey, FieldValues, NamedDuty } from "../../../../src/core/duties";
import { movablesOf } from "../../../../src/core/duties/model/movable";
import { heldValues, stepsLikeFirst, withField, withValues } from "../../../../src/core/duties/model/withField";
import { described, on, sleeve } from "../support";

const movable = (duty: NamedDuty, label: string) => movablesOf(duty).find((one) => one.label === label)!;
/** Of the field that has a greatest value that still counts, or one that does not count any more. */
const shown = (more: FieldValues, label: string) => {
  const { value, least, most } = movable(on(more), label);
  return { value, least, most };
};

test("a number moves within its domain: up to its end, or the last number below one that it must stay under", () => {
  expect(shown({ impactFactor: 2 }, "impact factor")).toEqual({ value: 2, least: 1, most: 100 });
  expect(shown({ load: 600 }, "load")).toEqual({ value: 600, least: 0, most: undefined });
  const { most } = shown({ slope: 1 }, "slope");
  expect(most).toBeLessThan(10);
  expect(most).toBeGreaterThan(10 - 1e-14);
});

describe("a band moves as a whole", () => {
  test("until an end of it meets an end of the domain: 2 to 4 about 3 up to 50 to 100 and down to 1 to 2", () => {
    // the domain is 1 to 100: 3·100/4 = 75 and 3·1/2 = 1.5
    const factor = shown({ impactFactor: new Band(2, 4) }, "impact factor, middle of its band");
    expect(factor).toEqual({ value: 3, least: 1.5, most: 75 });
  });
  test("a domain that is open above sets no end", () =>
    expect(shown({ load: new Band(2, 4) }, "load, middle of its band")).toEqual({
      value: 3,
      least: 0,
      most: undefined,
    }));
  test.each([
    ["middle", new Band(200, 400), new Band(400, 800)],
    ["likely value", new Band(200, 400, 250), new Band(400, 800, 500)],
  ])("in proportion about its %s, which it keeps", (told, band, doubled) => {
    const { value, to } = movable(on({ load: band }), `load, ${told} of its band`);
    const moved = to(2 * value).values.load as unknown as Band;
    expect([moved.low, moved.high, moved.likely]).toEqual([doubled.low, doubled.high, doubled.likely]);
  });
});

describe("what moves together over the steps of a duty", () => {
  const held = (duty: NamedDuty, key: FieldKey) => heldValues(duty, key).map(({ steps }) => steps);
  const load = new Band(500, 700);
  const steps = (second: FieldValues) => described({ ...sleeve, load, time: 5 }, { ...second, time: 5 });

  test("a band that a step takes over is one; typed again it is another, which varies by itself", () => {
    expect(held(steps({}), "load")).toEqual([[0, 1]]);
    expect(held(steps({ load: new Band(500, 700) }), "load")).toEqual([[0], [1]]);
    expect(stepsLikeFirst(steps({}), "load")).toEqual([0, 1]);
    expect(stepsLikeFirst(steps({ load: new Band(500, 700) }), "load")).toEqual([0]);
  });
  test("a number typed again is the same; a time never is", () => {
    expect(held(steps({ cycles: 15 }), "cycles")).toEqual([[0, 1]]);
    expect(held(steps({ cycles: 16 }), "cycles")).toEqual([[0], [1]]);
    expect(held(steps({}), "time")).toEqual([[0], [1]]);
    expect(stepsLikeFirst(steps({}), "time")).toEqual([0]);
  });
});

test("steps that get another value are checked as if it had been typed: running time has no place beside them", () => {
  const two = described({ ...sleeve, time: 5 }, { load: 500, time: 5 });
  const refused = "running time has no place beside steps";
  expect(() => withField(two, "runningTime", 5, [0, 1])).toThrow(refused);
  expect(() => withValues(two, { runningTime: 5, restTime: 5 })).toThrow(refused);
});

test("of a duty with bands a corner in motion is shown, or the first where all are at rest", () => {
  const turning = on({ stroke: undefined, cycles: undefined, rpm: new Band(0, 20) });
  expect(turning.moving).toBe(turning.corners[1]);
  const still = on({ motion: "static", stroke: undefined, cycles: undefined, load: new Band(500, 700) });
  expect(still.moving).toBe(still.corners[0]);
});
