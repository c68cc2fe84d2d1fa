import { functions } from "../../../src/core";
import type { Formula } from "../../../src/core/formula";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { periodicPeak } from "../solve/transient";

const shigley =
  "Budynas, Nisbett: Shigley's Mechanical Engineering Design, 8th to 10th ed., boundary-lubricated bearings: P = F/(D·L), V = π·D·N/12 in psi, ft/min, worked by hand";
const inInch = (f: Formula, ...given: number[]): number => call(f, given, "inch")[0]![0] as number;

/** mm/s of path over a period, from a position in mm followed in small steps of time; answered in m/s. */
function meanSpeed(position: (t: number) => number, period: number): number {
  const steps = 200_000;
  let travel = 0;
  for (let i = 0; i < steps; i++)
    travel += Math.abs(position(((i + 1) / steps) * period) - position((i / steps) * period));
  return travel / period / 1000;
}

/** The sum of a quantity over thin rings of a face, and of their areas. */
function overRings(inner: number, outer: number, quantity: (radius: number) => number) {
  const n = 100_000;
  const width = (outer - inner) / 2 / n;
  let [sum, area] = [0, 0];
  for (let i = 0; i < n; i++) {
    const radius = inner / 2 + (i + 0.5) * width;
    sum += quantity(radius) / n;
    area += 2 * Math.PI * radius * width;
  }
  return { mean: sum, area };
}

/** Force on a half cylinder of uniform pressure, summed over strips: the projected area must come out. */
function loadOfHalfBore(pressure: number, bore: number, length: number): number {
  const n = 100_000;
  let force = 0;
  for (let i = 0; i < n; i++)
    force += pressure * Math.sin(((i + 0.5) / n) * Math.PI) * ((Math.PI * bore) / 2 / n) * length;
  return force;
}

const spectrum = [
  { p: 2, v: 0.1, t: 10 },
  { p: 4, v: 0.05, t: 5 },
  { p: 1, v: 0, t: 15 },
];
/** Work of friction over the whole cycle at a friction of 1, clocked in small steps. */
function meanWork(): number {
  const dt = 0.001;
  let [work, time] = [0, 0];
  for (const { p, v, t } of spectrum)
    for (let clock = dt / 2; clock < t; clock += dt) {
      work += p * v * dt;
      time += dt;
    }
  return work / time;
}

const family = "Loading, motion, PV";

export const loadingCases: readonly ReferenceCase[] = [
  {
    family,
    what: "PRESSURE: 700 lbf on 1.5 in × 1.5 in",
    source: shigley,
    kind: "memory",
    unit: "psi",
    expected: "311.1",
    compute: () => inInch(functions.PRESSURE, 700, 1.5, 1.5),
  },
  {
    family,
    what: "SPEED: 1.5 in at 80 rev/min",
    source: shigley,
    kind: "memory",
    unit: "ft/min",
    expected: "31.42",
    compute: () => inInch(functions.SPEED, 1.5, 80),
  },
  {
    family,
    what: "PV of both: F·N·π/(12·L), the diameter drops out",
    source: shigley,
    kind: "memory",
    unit: "psi·ft/min",
    expected: "9774",
    compute: () =>
      inInch(functions.PVVALUE, inInch(functions.PRESSURE, 700, 1.5, 1.5), inInch(functions.SPEED, 1.5, 80)),
  },
  {
    family,
    what: "PRESSURE: the load that a uniform pressure on half the bore carries, 20 × 15 mm",
    source: "Pressure times area of each strip of the bore, summed in the direction of the load",
    kind: "other method",
    unit: "MPa",
    expected: () => 2.5,
    within: 1e-8,
    compute: () => functions.PRESSURE({ load: loadOfHalfBore(2.5, 20, 15), bore: 20, length: 15 }),
  },
  {
    family,
    what: "WASHERPRESSURE: 500 N on a face of 21 to 40 mm",
    source: "Area summed from thin rings",
    kind: "other method",
    unit: "MPa",
    expected: () => 500 / overRings(21, 40, () => 0).area,
    within: 1e-9,
    compute: () => functions.WASHERPRESSURE({ load: 500, inner: 21, outer: 40 }),
  },
  {
    family,
    what: "SPEED: 20 mm at 120 rev/min",
    source: "The path of a point of the shaft followed in small steps of time",
    kind: "other method",
    unit: "m/s",
    expected: () => meanSpeed((t) => 10 * 4 * Math.PI * t, 0.5),
    within: 1e-9,
    compute: () => functions.SPEED({ bore: 20, rpm: 120 }),
  },
  {
    family,
    what: "SWINGSPEED: 20 mm, sinusoidal swing of 90° from end to end, 30 cycles a minute",
    source: "The path of a point of the shaft followed in small steps of time",
    kind: "other method",
    unit: "m/s",
    expected: () => meanSpeed((t) => 10 * (Math.PI / 4) * Math.sin((2 * Math.PI * t) / 2), 2),
    within: 1e-8,
    compute: () => functions.SWINGSPEED({ bore: 20, swing: 90, cycles: 30 }),
  },
  {
    family,
    what: "STROKESPEED: stroke of 400 mm, 6 cycles a minute",
    source: "The path of the rod followed in small steps of time",
    kind: "other method",
    unit: "m/s",
    expected: () => meanSpeed((t) => 200 * Math.cos((2 * Math.PI * t) / 10), 10),
    within: 1e-8,
    compute: () => functions.STROKESPEED({ stroke: 400, cycles: 6 }),
  },
  {
    family,
    what: "WASHERSPEED: 21 to 40 mm at 120 rev/min",
    source: "Mean over the radius of the speed of each thin ring",
    kind: "other method",
    unit: "m/s",
    expected: () => overRings(21, 40, (radius) => (2 * Math.PI * radius * 120) / 60_000).mean,
    within: 1e-9,
    compute: () => functions.WASHERSPEED({ inner: 21, outer: 40, rpm: 120 }),
  },
  {
    family,
    what: "PVVALUE: 387 psi at 24.8 ft/min in working units",
    source: "Exact inch, pound and standard gravity (SI Brochure, 9th ed.; NIST SP 811, 2008, App. B)",
    kind: "definition",
    unit: "MPa·m/s",
    expected: () => 387 * ((0.45359237 * 9.80665) / 0.0254 ** 2 / 1e6) * 24.8 * (0.3048 / 60),
    within: 1e-12,
    compute: () => call(functions.PVVALUE, ["387 psi", "24.8 ft/min"])[0]![0] as number,
  },
  {
    family,
    what: "DUTYPV: three steps, the last at rest",
    source: "Work of friction over the whole cycle, clocked in steps of a millisecond",
    kind: "other method",
    unit: "MPa·m/s",
    expected: meanWork,
    within: 1e-9,
    compute: () =>
      functions.DUTYPV({
        pressures: spectrum.map((s) => s.p),
        speeds: spectrum.map((s) => s.v),
        times: spectrum.map((s) => s.t),
      })[0]!,
  },
  {
    family,
    what: "DUTYPV: the same steps, PV to compare with a time constant of 8",
    source: "The first-order equation marched through the cycle until it closes (Runge-Kutta)",
    kind: "other method",
    unit: "MPa·m/s",
    expected: () =>
      periodicPeak(
        spectrum.map(({ p, v, t }) => ({ steady: p * v, time: t })),
        8,
      ),
    within: 1e-8,
    compute: () =>
      functions.DUTYPV({
        pressures: spectrum.map((s) => s.p),
        speeds: spectrum.map((s) => s.v),
        times: spectrum.map((s) => s.t),
        timeconstant: 8,
      })[2]!,
  },
];
