import { functions } from "../../../src/core";
import { Band } from "../../../src/core/band";
import { cornerOf, growth, quantile, spreadPoints } from "../../../src/core/duties/model/bandPoints";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { rootOf } from "../solve/rootOf";
import { recorded } from "./recorded";

const family = "Duties";
const sequences = "GoldenSequences, a Julia package after M. Roberts (2018), its documentation:";

/** PV of a load on a bush 20 × 15 in mm against 0.5 MPa·m/s at 23 °C, nothing of it left at 90 °C: F/(d·L)·v over the limit. */
const useOf = ([load, speed, temperature]: readonly number[]): number =>
  ((load! / 300) * speed!) / (0.5 * ((90 - temperature!) / 67));
const even = [new Band(700, 1000), new Band(0.1, 0.15), new Band(20, 40)];
const likely = [new Band(700, 1000, 800), new Band(0.1, 0.15, 0.12), new Band(20, 40, 25)];

/** The share of points of which the use is above 1. */
function above(bands: readonly Band[], count: number): number {
  const points = spreadPoints(count, bands.length).map((point) => point.map((x, j) => quantile(bands[j]!, x)));
  return points.filter((point) => useOf(point) > 1).length / count;
}

/** The same share by integration: over speed and temperature the part of the load's band above the load that is just held. */
function aboveByIntegral(parts = 400): number {
  let sum = 0;
  for (let i = 0; i < parts; i++)
    for (let k = 0; k < parts; k++) {
      const held = 1 / useOf([1, 0.1 + (0.05 * (i + 0.5)) / parts, 20 + (20 * (k + 0.5)) / parts]);
      sum += Math.min(1, Math.max(0, (1000 - held) / 300));
    }
  return sum / parts ** 2;
}

const cornerUses = Array.from({ length: 8 }, (_, number) => useOf(even.map(cornerOf(even, number))));

const heading = ["grade", "running pressure limit", "speed limit turning", "PV limit", "highest temperature"];
/** Invented, so that the sums are short: PV 0.1 MPa·m/s at 23 °C, nothing left at 123 °C. */
const grades = [heading, ["Plain", 20, 1, 0.1, 123]];
const duty = (more: Readonly<Record<string, number | string>>) =>
  Object.entries({ load: 300, bore: 20, length: 20, rpm: 60, temperature: 23, ...more });
const room = (field: string, column: number, more = {}): number =>
  call(functions.DUTYROOM, [duty(more), null, "Plain", grades]).find(([label]) => label === field)![column] as number;

/** PV of the duty in MPa·m/s by the work that friction of 1 does in a minute on the face: load over area times the way. */
const workOf = (load: number, rpm: number, length: number): number =>
  ((load / (20 * length)) * (Math.PI * 20 * rpm)) / 60_000;
const byRoot = (
  what: string,
  field: string,
  unit: string,
  column: number,
  more: Record<string, number>,
  root: () => number,
): ReferenceCase => ({
  family,
  what,
  source:
    "The root of PV less its limit, straight from 0.1 MPa·m/s at 23 °C to 0 at 123 °C, by bisection outside the project's criteria",
  kind: "other method",
  unit,
  expected: root,
  within: 5e-9,
  compute: () => room(field, column, more),
});

/** Percent of two even bands, 400 to 800 N and 40 to 80 a minute, on which the product is within the limit: by a fine grid. */
function areaWithin(): number {
  const parts = 1000;
  let within = 0;
  for (let i = 0; i < parts; i++)
    for (let k = 0; k < parts; k++)
      if (workOf(400 + (400 * (i + 0.5)) / parts, 40 + (40 * (k + 0.5)) / parts, 20) <= 0.1) within++;
  return (100 * within) / parts ** 2;
}

export const bandCases: readonly ReferenceCase[] = [
  {
    family,
    what: "Points of two bands: stride of the first coordinate, 1/g",
    source: `${sequences} the second sequence at 1`,
    kind: "printed example",
    unit: "",
    expected: "0.7548776662466927",
    compute: () => 1 / growth(2),
  },
  {
    family,
    what: "Points of two bands: stride of the second coordinate, 1/g²",
    source: `${sequences} the second sequence at 1`,
    kind: "printed example",
    unit: "",
    expected: "0.5698402909980532",
    compute: () => growth(2) ** -2,
  },
  {
    family,
    what: "Points of one band: the first, begun at 0.5",
    source: `${sequences} the golden sequence shifted by 0.5`,
    kind: "printed example",
    unit: "",
    expected: "0.1180339887498949",
    compute: () => spreadPoints(1, 1)[0]![0]!,
  },
  recorded(
    family,
    "Points of three bands: point 1, coordinate 1",
    "the root of g⁴ = g + 1",
    "",
    "0.319173",
    () => spreadPoints(1, 3)[0]![0]!,
  ),
  recorded(
    family,
    "Corners of three bands: least PV use of 700 to 1000 N, 0.1 to 0.15 m/s, 20 to 40 °C",
    "a grid of 41³ points, 0.446667",
    "",
    "0.446667",
    () => Math.min(...cornerUses),
  ),
  recorded(
    family,
    "Share of 2048 points with a PV use above 1, the same bands even",
    "nested integration, 0.0976643",
    "",
    "0.101562",
    () => above(even, 2048),
  ),
  recorded(
    family,
    "Share of 1024 points with a PV use above 1, triangular about 800 N, 0.12 m/s, 25 °C",
    "nested integration, 0.0129623",
    "",
    "0.0146484",
    () => above(likely, 1024),
  ),
  {
    family,
    what: "Share of 2048 points with a PV use above 1, the same bands even, against the integral",
    source: "Midpoints of speed and temperature, the load's part in closed form",
    kind: "other method",
    unit: "",
    expected: () => aboveByIntegral(),
    within: 0.06,
    compute: () => above(even, 2048),
  },
  {
    family,
    what: "DUTYBAND: share that holds PV, 400 to 800 N at 40 to 80 1/min on 20 × 20",
    source: "A grid of a million points of the two bands",
    kind: "other method",
    unit: "%",
    expected: areaWithin,
    within: 0.02,
    compute: () => {
      const rows = call(functions.DUTYBAND, [duty({ load: "400 to 800", rpm: "40 to 80" }), null, "Plain", grades]);
      return parseFloat(String(rows.find(([criterion]) => criterion === "PV")![5]));
    },
  },
  byRoot("DUTYROOM: greatest load of 300 N, 20 × 20 at 60 1/min and 23 °C", "load", "N", 6, {}, () =>
    rootOf((load) => workOf(load, 60, 20) - 0.1, 0, 1e5),
  ),
  byRoot("DUTYROOM: greatest rpm of the same at 60 °C", "rpm", "1/min", 6, { temperature: 60 }, () =>
    rootOf((rpm) => workOf(300, rpm, 20) - 0.063, 0, 1e5),
  ),
  byRoot("DUTYROOM: least length of the same with 500 N", "length", "mm", 3, { load: 500 }, () =>
    rootOf((length) => 0.1 - workOf(500, 60, length), 1, 100),
  ),
  byRoot("DUTYROOM: warmest surroundings of the same", "temperature", "°C", 6, {}, () =>
    rootOf((temperature) => workOf(300, 60, 20) - 0.001 * (123 - temperature), 23, 123),
  ),
];
