import { fitStates } from "../../../src/core/duties/fit/states";
import type { FitStates } from "../../../src/core/duties/fit/states";
import { readZone } from "../../../src/core/fit/zones/zone";
import { described } from "./support";

const zone = (text: string) => readZone(text, "metric", "zone");
/** A bush 20/23 at rest from 10 to 30 °C, pressed into carbon steel with at least 0.10 − 0.021 mm. */
const duty = described({
  ...{ load: 600, bore: 20, length: 20, wall: 1.5, motion: "static", temperature: { low: 10, high: 30 } },
  ...{ shaft: "hardened steel", housing: "carbon steel", assemblyMoisture: "dry", keptGrip: 1 },
  ...{ boreZone: zone("+0.07/+0.10"), outsideZone: zone("+0.10/+0.14") },
  ...{ housingZone: zone("0/+0.021"), shaftZone: zone("-0.03/0") },
});
const states = (expansionStep?: number) =>
  fitStates({ expansion: 2e-4, compressiveModulus: 500, poisson: 0.46, expansionStep }, duty.corners[0]!);
const grip = (name: string, expansionStep: number) =>
  (states(expansionStep) as FitStates).states.find((state) => state.name === name)!.grip;

test("a step of growth tightens what is warmer than at assembly, and nothing else", () => {
  // 0.079 + 23·((2e-4 − 1.17e-5)·10 + 0.003) = 0.079 + 23·0.004883
  expect(grip("hot", 0.003)).toBeCloseTo(0.079 + 23 * 0.004883, 9);
  for (const name of ["assembly", "cold"]) expect(grip(name, 0.003)).toBe(grip(name, 0));
});

test("a step that is not told is no data, not none", () => {
  expect(states()).toEqual({ property: "expansionStep" });
  expect((states(0) as FitStates).figures).toContain("expansionStep");
});
