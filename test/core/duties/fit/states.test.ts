import type { FieldValues } from "../../../../src/core/duties";
import { fitStates, mayClose, neededShareOf, warmerStates } from "../../../../src/core/duties/fit/states";
import type { FitState, FitStates } from "../../../../src/core/duties/fit/states";
import { readZone } from "../../../../src/core/fit/zones/zone";
import type { Values } from "../../../../src/core/grades/model";
import { full, on, resting, sleeve } from "../support";

const elastic: Values = { ...full, expansion: 1e-4, expansionStep: 0, compressiveModulus: 2000, poisson: 0.4 };
const zone = (text: string) => readZone(text, "metric", "zone");
const pressed: FieldValues = {
  ...{ wall: 1.5, boreZone: zone("E10"), shaftZone: zone("f7"), outsideZone: zone("+0.05/+0.10") },
  ...{ housingZone: zone("H7"), housing: "aluminium alloy", housingOutside: 40, shaft: "hardened steel" },
  ...{ assemblyMoisture: "dry", temperature: { low: 0, high: 40 } },
};
const dutyOf = (more: FieldValues = {}, base = sleeve) => on({ ...pressed, ...more }, base).corners[0]!;
const statesOf = (more: FieldValues = {}, base = sleeve, values = elastic) =>
  fitStates(values, dutyOf(more, base)) as FitStates;

test("the limits that imply how far the bore warms are figures of a fit in motion alone", () => {
  expect(statesOf().figures).toEqual(expect.arrayContaining(["pvLimit", "highestTemperature"]));
  // PV 0.001: a third of a kelvin
  expect(statesOf({ load: 6 }).figures).toEqual(expect.arrayContaining(["pvLimit", "highestTemperature"]));
  for (const key of ["pvLimit", "highestTemperature"]) expect(statesOf({}, resting).figures).not.toContain(key);
});

test("swelling in service and at assembly are figures, each asked for; a dry bush asks for none", () => {
  expect(statesOf({ moisture: "wet", assemblyMoisture: "humid" }).figures).toEqual(
    expect.arrayContaining(["swellingSaturated", "swelling50"]),
  );
  expect(statesOf().figures).not.toContain("swelling50");
  const bare = { ...elastic, swelling50: undefined } as unknown as Values;
  expect(statesOf({ moisture: "wet", assemblyMoisture: "humid" }, sleeve, bare)).toEqual({ property: "swelling50" });
  expect(statesOf({}, sleeve, bare).states).toHaveLength(6);
});

// PV 0.1 of 0.2 MPa·m/s: half of the 67 K from 23 to 90 °C over 40 °C
test("a bore that is warmer than told changes the states in which it runs, and what is left when cold again", () => {
  const shown = warmerStates(statesOf(), 5).map(({ name, bush, housing, shaft }) => [name, bush, housing, shaft]);
  expect(shown).toEqual([
    ["running", 78.5, 78.5, 78.5],
    ["running, housing cool", 78.5, 40, 78.5],
    ["cold again", 0, 0, 0],
  ]);
  expect(warmerStates(statesOf(), 0)).toEqual([]);
});

test("a warmer hold takes more of what is kept in part", () => {
  const found = statesOf({ keptGrip: 0.5 });
  const gripIn = (states: readonly FitState[]) => states.find(({ name }) => name === "cold again")!.grip;
  const grip = (by: number) => gripIn(warmerStates(found, by));
  expect(grip(20)).toBeLessThan(grip(5));
  expect(grip(5)).toBeLessThan(gripIn(found.states));
});

describe("by how much a bore may close", () => {
  const { course } = statesOf().states[0]!;
  /** All growth of the bush inwards, half as much again where its ends are held, with nothing given back by a housing that yields, and that of the shaft. */
  const most = (() => {
    const { ring, expansion, shaftMetal } = course.assembly;
    const [d, D, E] = [ring.bore, ring.outside, ring.bushModulus];
    const of = (big: number, small: number) => (big * big + small * small) / (big * big - small * small);
    const wall = (of(D, d) - ring.bushPoisson) / E;
    return ((2 * D * d) / (E * (D * D - d * d)) / wall) * D * 1.5 * expansion + d * shaftMetal.expansion;
  })();
  test("is its growth in so many kelvin", () => {
    expect(mayClose(course, 10, 10 * most * 0.999999)).toBe(true);
    expect(mayClose(course, 10, 10 * most * 1.000001)).toBe(false);
  });
  test("is no less than it closes by in a thin housing after a hotter hold, however much of its grip it keeps", () => {
    const least = (states: readonly FitState[]) => Math.min(...states.map(({ clearance }) => clearance.least));
    for (const housingOutside of [23.5, 24, 30])
      for (const keptGrip of [0.05, 0.3, 0.7, 0.95])
        for (const heldAtEnds of ["yes", "no"] as const)
          for (const to of ["+0.05/+0.06", "+0.2/+0.3"]) {
            const found = statesOf({ housingOutside, keptGrip, heldAtEnds, outsideZone: zone(to) });
            const closes = least(found.states) - least(warmerStates(found, 10));
            expect(mayClose(found.states[0]!.course, 10, closes)).toBe(true);
          }
  });
  test("a grade with a step of growth may close by any", () => {
    const stepped = { ...course, assembly: { ...course.assembly, step: 0.001 } };
    expect(mayClose(stepped, 0, 1)).toBe(true);
  });
});

test("a loose bush is held by no share of its grip, one that no heat has pressed harder by any", () => {
  const needed = (more: FieldValues, base = resting) => neededShareOf(statesOf(more, base).states[0]!.course);
  expect(needed({ outsideZone: zone("-0.05/-0.02") })).toBe(2);
  expect(needed({ temperature: { low: 20, high: 20 } })).toBe(0);
  const between = needed({ temperature: { low: 20, high: 60 } });
  expect(between).toBeGreaterThan(0);
  expect(between).toBeLessThan(1);
});
