import { functions } from "../../../src/core";
import type { ReferenceCase } from "../case";
import { wallByDifferences, finByDifferences } from "../solve/conduction";
import { rootOf } from "../solve/rootOf";
import { periodicPeak } from "../solve/transient";
import { recorded } from "./recorded";

const family = "Heat and friction";

/** W/K of an assembly of known size: its wall and one long end of its shaft, by finite differences. */
const conductance = wallByDifferences(0.01, 0.0115, 0.015, 0.25, Math.PI) + finByDifferences(0.02, 45, 10);
/** The PV at which friction makes the heat that this assembly loses between two temperatures. */
const balancedPv = (bore: number, ambient: number): number =>
  rootOf((pv) => 0.15 * pv * 20 * 15 - conductance * (bore - ambient), 0, 10);

const rises = [60, 20, 95, 0];
const times = [100, 200, 30, 400];
const steps = rises.map((steady, i) => ({ steady, time: times[i]! }));

export const ambientCases: readonly ReferenceCase[] = [
  recorded(
    family,
    "DERATEDPV: 0.09561 MPa·m/s at 23 °C, highest 90 °C, at 60 °C",
    "axisymmetric finite volumes of a whole assembly, 0.0428103",
    "MPa·m/s",
    "0.0428104",
    () => functions.DERATEDPV({ pvlimit: 0.09561, highest: 90, ambient: 60 }),
  ),
  recorded(family, "DERATEDPV: capped below the reference", "the definition", "MPa·m/s", "0.1", () =>
    functions.DERATEDPV({ pvlimit: 0.1, highest: 90, ambient: 10 }),
  ),
  recorded(
    family,
    "DERATEDPV: exponent 1.25, still air alone",
    "the root of a heat balance whose film grows as rise^0.25",
    "MPa·m/s",
    "0.0366276",
    () => functions.DERATEDPV({ pvlimit: 0.1, highest: 90, ambient: 60, exponent: 1.25 }),
  ),
  recorded(family, "BORETEMP at the PV that DERATEDPV allows", "the highest temperature itself", "°C", "90", () =>
    functions.BORETEMP({ pv: 0.1 * (30 / 67), pvlimit: 0.1, highest: 90, ambient: 60 }),
  ),
  {
    family,
    what: "DERATEDPV: limit of a known assembly moved from 23 to 70 °C",
    source: "Wall and shaft by finite differences; the PV whose heat they carry at each temperature, by bisection",
    kind: "other method",
    unit: "MPa·m/s",
    expected: () => balancedPv(90, 70),
    within: 1e-9,
    compute: () => functions.DERATEDPV({ pvlimit: balancedPv(90, 23), highest: 90, ambient: 70 }),
  },
  {
    family,
    what: "BORETEMP: the same assembly at 71 °C in surroundings of 35 °C",
    source: "Wall and shaft by finite differences; the PV whose heat they carry, by bisection",
    kind: "other method",
    unit: "°C",
    expected: "71",
    within: 1e-9,
    compute: () =>
      functions.BORETEMP({ pv: balancedPv(71, 35), pvlimit: balancedPv(90, 23), highest: 90, ambient: 35 }),
  },
  recorded(
    family,
    "PEAKRISE: 60, 20, 95, 0 K for 100, 200, 30, 400 s, τ = 150 s",
    "the differential equation run to its periodic state",
    "K",
    "35.8557",
    () => functions.PEAKRISE({ rises, times, timeconstant: 150 }),
  ),
  {
    family,
    what: "PEAKRISE: the same steps, τ = 40 s",
    source: "The first-order equation marched through the cycle until it closes (Runge-Kutta)",
    kind: "other method",
    unit: "K",
    expected: () => periodicPeak(steps, 40),
    within: 1e-7,
    compute: () => functions.PEAKRISE({ rises, times, timeconstant: 40 }),
  },
  {
    family,
    what: "PEAKRISE: a thermocouple 10 s after its step, τ = 2.1587 s: share of the final reading",
    source: "Çengel: Heat and Mass Transfer, A Practical Approach, Ex. 4.1, as a companion notebook prints it",
    kind: "printed example",
    unit: "",
    expected: "0.99",
    within: 5e-4,
    compute: () => functions.PEAKRISE({ rises: [1, 0], times: [10, 2000], timeconstant: 2.1587315293533518 }),
  },
];
