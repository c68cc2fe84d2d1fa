import { climates } from "../../../../src/core/duties/fit/climates";
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
