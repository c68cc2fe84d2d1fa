import { functions } from "../../../src/core";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { beddedFace } from "../solve/beddedFace";
import { wornBore } from "../solve/boreWear";
import { recorded } from "./recorded";

const family = "Wear and cost";
const shigley = "Shigley's Mechanical Engineering Design, 8th ed., solutions manual, p. 323";
const wentzell = "Wentzell: Machine Design, Ex. 19.2, p. 421, as a companion notebook prints it";
const inch = (f: Parameters<typeof call>[0], ...given: unknown[]): number => call(f, given, "inch")[0]![0] as number;
/** Miles that a 1 in shaft slides at 400 rev/min in 1000 h. */
const miles = (Math.PI * 400 * 60 * 1000) / 63360;

const tiltedFace = { wearrate: 2e-6, pressure: 4, length: 15, tilt: (0.002 * 180) / Math.PI, distance: 0.4 };

const worn: readonly [number, number][] = [
  [2, 0.08],
  [60, 0.08],
  [200, 0.4],
];

export const boreWearCases: readonly ReferenceCase[] = [
  {
    family,
    what: "WEARRATE and LIFE, flat, no clearance: 0.6e-10 times 1.8, 500 psi, 52.36 ft/min, 0.005 in",
    source: `${shigley}, Prob. 12-22`,
    kind: "printed example",
    unit: "h",
    expected: "1388",
    within: 1.5 / 1388,
    compute: () =>
      inch(
        functions.LIFE,
        inch(functions.WEARRATE, 0.6e-10, 1.8, null, null, null, null),
        500,
        52.36,
        0.005,
        "flat",
        0,
      ),
  },
  {
    family,
    what: "WEAR, flat, no clearance: 0.6e-10, 250 psi, 1 in at 400 rev/min for 1000 h",
    source: `${shigley}, Prob. 12-23 (allowed wear; the tolerance follows from the printed length 0.80 in)`,
    kind: "printed example",
    unit: "in",
    expected: "0.002",
    within: 1.26e-5 / 0.002,
    compute: () => inch(functions.WEAR, 6e-11, 250, miles, "flat", 0),
  },
  {
    family,
    what: "LIFE by a bush's rate: 1.2e-9, 30.5 psi, 98 ft/min, 0.01 in",
    source: wentzell,
    kind: "printed example",
    unit: "h",
    expected: "2788",
    compute: () => inch(functions.LIFE, 1.2e-9, 30.5, 98, 0.01, null, null),
  },
  recorded(
    family,
    "WEAR, flat: k = 2e-6, 2.5 MPa, 20 km, clearance 0.08 mm",
    "stepwise wear of 1500 bore cells on a stiff foundation, 0.137821",
    "mm",
    "0.137821",
    () => functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance: 20, from: "flat", clearance: 0.08 }),
  ),
  {
    ...recorded(
      family,
      "WEAR, flat: at most (4/π)·k·p·s + (4/π − 1)·C/2 for the same",
      "stepwise wear of 1500 bore cells, 0.3 % below",
      "mm",
      "0.138254",
      () => functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance: 20, from: "flat", clearance: 0.08 }),
    ),
    within: 0.0032,
  },
  recorded(
    family,
    "WORNPEAK: 2.5 MPa, clearance 0.08 mm, sunk in as WEAR says after 2 km",
    "stepwise wear of 1500 bore cells on a stiff foundation, 3.75647",
    "MPa",
    "3.75547",
    () => {
      const sinking = functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance: 2, from: "flat", clearance: 0.08 });
      return functions.WORNPEAK({ pressure: 2.5, sinking, clearance: 0.08 })[0]!;
    },
  ),
  recorded(
    family,
    "RUNNINGIN: 0.02 mm over 300 m, k = 2e-6, 2.5 MPa, 1 km",
    "the differential equation solved in steps, 0.0242865",
    "mm",
    "0.0242865",
    () => functions.RUNNINGIN({ wearrate: 2e-6, pressure: 2.5, distance: 1, depth: 0.02, over: 0.3 }),
  ),
  recorded(
    family,
    "BEDDING, pressure on the bedded part: k = 2e-6, 4 MPa, 15 mm, slope 0.002, 400 m",
    "stepwise wear of 3000 cells of a flat face, 8.66852 at the edge",
    "MPa",
    "8.66025",
    () => functions.BEDDING(tiltedFace)[1]!,
  ),
  {
    family,
    what: "BEDDING, bedded length of the same",
    source: "A tilted flat face as cells, worn step by step while the shaft sinks, its slope kept",
    kind: "other method",
    unit: "mm",
    expected: () => beddedFace(2e-6, 4, 15, 0.002, 400),
    within: 0.01,
    compute: () => functions.BEDDING(tiltedFace)[2]!,
  },
  ...worn.flatMap(([distance, clearance]): ReferenceCase[] => [
    {
      family,
      what: `WEAR, flat: k = 2e-6, 2.5 MPa, ${distance} km, clearance ${clearance} mm`,
      source: "The bore as cells on a stiff foundation, worn step by step under a rigid shaft",
      kind: "other method",
      unit: "mm",
      expected: () => wornBore(2e-6, 2.5, distance * 1000, clearance),
      within: 2e-4,
      compute: () => functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance, from: "flat", clearance }),
    },
  ]),
  {
    family,
    what: "LIFE, flat: the hours after which those 20 km have been slid at 0.1 m/s",
    source: "The bore as cells on a stiff foundation, worn step by step; its depth put in as the allowance",
    kind: "other method",
    unit: "h",
    expected: () => 20_000 / 0.1 / 3600,
    within: 2e-4,
    compute: () =>
      functions.LIFE({
        ...{ wearrate: 2e-6, pressure: 2.5, speed: 0.1, from: "flat", clearance: 0.08 },
        allowance: wornBore(2e-6, 2.5, 20_000, 0.08),
      }),
  },
];
