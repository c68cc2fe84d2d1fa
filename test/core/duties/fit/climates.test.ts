import { againOf, climates } from "../../../../src/core/duties/fit/climates";
import { on } from "../support";

const duty = on({ temperature: { low: 30, high: 50 }, moisture: "wet" }).corners[0]!;
/** Name, temperature of bush and of housing, swelling. */
const states = (rise: number, change: number) =>
  climates(duty, rise, change).map(({ name, bush, housing, swelling }) => [name, bush, housing, swelling]);

const dry = [
  ["assembly", 20, 20, 0],
  ["cold", 30, 30, 0],
  ["hot", 50, 50, 0],
];
const running = [
  ["running", 50.5, 50.5, 0],
  ["running, housing cool", 50.5, 50, 0],
];

test("at rest and dry: assembly, both ends of the surroundings, and cold again, as cold as at assembly", () =>
  expect(states(0, 0)).toEqual([...dry, ["cold again", 20, 20, 0]]));

test("however little friction warms the bore, it runs, its housing as warm or as cool as the surroundings", () =>
  expect(states(0.5, 0)).toEqual([...dry, ...running, ["cold again", 20, 20, 0]]));

test("what swells does so in service, and is as dry as before when it is cold again", () =>
  expect(states(0.5, 0.01)).toEqual([
    ...dry,
    ...running,
    ["cold, wet", 30, 30, 0.01],
    ["hot, wet", 50, 50, 0.01],
    ["running, wet", 50.5, 50.5, 0.01],
    ["running, wet, housing cool", 50.5, 50, 0.01],
    ["cold again", 20, 20, 0],
  ]));

test("what dries also stands where it was pressed in, and stays dry", () =>
  expect(states(0, -0.01)).toEqual([
    ...dry,
    ["cold, dried", 20, 20, -0.01],
    ["hot, dried", 50, 50, -0.01],
    ["cold again", 20, 20, -0.01],
  ]));

test("a metal of the housing that is not known is told when the duty is read", () =>
  expect(() => on({ housing: "cheese" })).toThrow("housing"));

describe("a short peak", () => {
  const peaked = on({ temperature: { low: 30, high: 50 }, peakTemperature: 90 }).corners[0]!;
  const named = (rise: number) =>
    climates(peaked, rise, 0).map(({ name, surroundings, bush, housing }) => [name, surroundings, bush, housing]);
  test("is a state of its own, at rest and running", () => {
    expect(named(0).slice(3)).toEqual([
      ["short peak", 90, 90, 90],
      ["cold again", 20, 20, 20],
    ]);
    expect(named(5).slice(5)).toEqual([
      ["short peak", 90, 90, 90],
      ["running in the short peak", 90, 95, 95],
      ["running in the short peak, housing cool", 90, 95, 90],
      ["cold again", 20, 20, 20],
    ]);
  });
});

test("after the hottest hold each state of service comes again, but for one that is cold again", () => {
  const again = (low: number, rise: number, change: number) => {
    const all = climates(on({ temperature: { low, high: 50 }, moisture: "wet" }).corners[0]!, rise, change);
    const later = againOf(all);
    const both = [...all, ...later];
    expect(later.every(({ isAfter }) => isAfter)).toBe(true);
    for (const { name, bush, housing, swelling } of later)
      expect(all).toContainEqual(
        expect.objectContaining({ name: name.replace(/ again(, not dried)?$/, ""), bush, housing, swelling }),
      );
    expect(new Set(both.map(({ name }) => name)).size).toBe(both.length);
    return later.map(({ name }) => name);
  };
  expect(again(10, 0, 0)).toEqual(["hot again"]);
  expect(again(30, 0, 0)).toEqual(["hot again"]);
  expect(again(10, 5, 0.01)).toEqual([
    ...["hot again", "running again", "running, housing cool again"],
    ...["cold, wet again", "hot, wet again", "running, wet again", "running, wet, housing cool again"],
  ]);
  expect(again(10, 0, -0.01)).toEqual(["cold again, not dried", "hot again", "hot, dried again"]);
});
