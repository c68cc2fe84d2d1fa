import { functions } from "../../../src/core";
import { confinedStiffness, edgeStiffness } from "../../../src/core/loading/layer";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { slopesOf } from "../solve/beam";
import { contactByElements } from "../solve/boreContact";
import { rootOf } from "../solve/rootOf";
import { layerByElements } from "../solve/tiltedLayer";
import { tiltedByCells } from "../solve/tiltedShaft";
import { recorded } from "./recorded";

const family = "Loading, motion, PV";
const rad = Math.PI / 180;
const notebook = "as a companion notebook prints it";

const bansal = `Bansal: Strength of Materials, ${notebook}`;
const sarkar = `Sarkar: Strength of Materials, Ex. 6.6, p. 158, ${notebook}`;
const slope = (given: Parameters<typeof functions.SHAFTSLOPE>[0], bush: 0 | 1 = 0): number =>
  functions.SHAFTSLOPE(given)[bush];

const steel = { diameter: 18, modulus: 206000, inner: 6 };
const bending = (206000 * Math.PI * (18 ** 4 - 6 ** 4)) / 64;
const spread = Array.from({ length: 2000 }, (_, i) => ({ force: 900 / 2000, at: ((i + 0.5) / 2000) * 240 }));
const beams = [
  { loadcase: "central", loads: [{ force: 900, at: 120 }], place: undefined },
  { loadcase: "uniform", loads: spread, place: undefined },
  { loadcase: "offset", loads: [{ force: 900, at: 70 }], place: 70 },
  { loadcase: "overhung", loads: [{ force: 900, at: -70 }], place: 70 },
] as const;

const bores = [
  { load: 3000, bore: 20, length: 20, wall: 1.5, clearance: 0.06, modulus: 2500, poisson: 0.4, within: 0.08 },
  { load: 4000, bore: 40, length: 40, wall: 2.5, clearance: 0.1, modulus: 3000, poisson: 0.38, within: 0.08 },
  { load: 600, bore: 12, length: 12, wall: 1, clearance: 0.03, modulus: 900, poisson: 0.45, within: 0.25 },
  { load: 800, bore: 20, length: 20, wall: 1.5, clearance: 0.06, modulus: 2500, poisson: 0.3, within: 0.05 },
];
const elements =
  "Finite elements of the bonded wall for each harmonic, contact by its active cells; the foundation of the function allows";

const layer = { bore: 20, length: 15, wall: 1.5, modulus: 2500, poisson: 0.4 };
const tilted: readonly [string, { load: number; clearance: number; slope: number }][] = [
  ["partly lifted", { load: 800, clearance: 0.08, slope: 0.002 }],
  ["full length", { load: 4000, clearance: 0.04, slope: 0.0003 }],
  ["full length, no clearance", { load: 4000, clearance: 0, slope: 0.0005 }],
];
const cells = "The same foundation as cells, 400 round and 300 along, the depth by bisection on their sum";
const atSlope = (given: { load: number; clearance: number; slope: number }) =>
  functions.EDGEPRESSURE({ ...layer, load: given.load, clearance: given.clearance, tilt: given.slope / rad });

const overBore = (given: Parameters<typeof functions.PEAKPRESSURE>[0], end: 0 | 1 = 0): number =>
  functions.PEAKPRESSURE(given)[end]!;

export const contactCases: readonly ReferenceCase[] = [
  {
    family,
    what: "SHAFTSLOPE: 50 kN half way on 6 m, I = 78e6 mm⁴",
    source: `${bansal}, Ex. 12.1, p. 518 (the companion corrects the book)`,
    kind: "printed example",
    unit: "°",
    expected: "0.3935",
    compute: () => slope({ loadcase: "central", load: 50000, span: 6000, diameter: 199.6555, modulus: 210000 }),
  },
  {
    family,
    what: "SHAFTSLOPE: 45 kN spread over 5 m",
    source: `${bansal}, Ex. 12.5, p. 529`,
    kind: "printed example",
    unit: "rad",
    expected: "0.0104",
    compute: () => slope({ loadcase: "uniform", load: 45000, span: 5000, diameter: 309.4287, modulus: 10000 }) * rad,
  },
  {
    family,
    what: "SHAFTSLOPE, farther bush: 10 kN at 4 m of 10 m",
    source: sarkar,
    kind: "printed example",
    unit: "rad",
    expected: "0.00267",
    compute: () =>
      slope({ loadcase: "offset", load: 10000, span: 10000, position: 4000, diameter: 212.4504, modulus: 210000 }, 1) *
      rad,
  },
  recorded(
    family,
    "SHAFTSLOPE: 1600 N half way on 300 mm, 20 mm steel",
    "double integration of the moment, 0.0055627",
    "rad",
    "0.0055627",
    () => slope({ loadcase: "central", load: 1600, span: 300, modulus: 206000, diameter: 20 }) * rad,
  ),
  recorded(
    family,
    "SHAFTSLOPE: 600 N overhung by 60 mm on 200 mm, 16 mm steel",
    "double integration of the moment, 0.00362155",
    "rad",
    "0.00362155",
    () => slope({ loadcase: "overhung", load: 600, span: 200, position: 60, modulus: 206000, diameter: 16 }) * rad,
  ),
  ...beams.flatMap(({ loadcase, loads, place }) =>
    ([0, 1] as const).map((bush): ReferenceCase => ({
      family,
      what: `SHAFTSLOPE, ${loadcase}, hollow shaft, ${bush === 0 ? "nearer" : "farther"} bush`,
      source: "The bending moment integrated twice in small steps",
      kind: "other method",
      unit: "°",
      expected: () => Math.abs(slopesOf(loads, 240, bending)[bush]) / rad,
      within: 1e-5,
      compute: () => slope({ loadcase, load: 900, span: 240, position: place, ...steel }, bush),
    })),
  ),
  {
    family,
    what: "PEAKPRESSURE without clearance: 200 lbf on 1 in × 1 in, 4/π of the mean",
    source: "Shigley's Mechanical Engineering Design, 8th ed., solutions manual, p. 323, Prob. 12-23",
    kind: "printed example",
    unit: "psi",
    expected: "255",
    compute: () => call(functions.PEAKPRESSURE, [200, 1, 1, 0.06, 0, 400000, 0.4], "inch")[0]![0] as number,
  },
  ...(
    [
      ["20/23 × 20", bores[0]!, "20.3907", "19.7831"],
      ["40/45 × 40", bores[1]!, "9.57475", "9.3253"],
      ["12/14 × 12", bores[2]!, "10.8562", "9.92331"],
    ] as const
  ).map(([what, bore, expected, byElements]) =>
    recorded(
      family,
      `PEAKPRESSURE: bush ${what}, ${bore.load} N`,
      `harmonic elements of the bonded wall with contact, ${byElements} (the model's own error)`,
      "MPa",
      expected,
      () => overBore(bore),
    ),
  ),
  ...(
    [
      [0.01, "14.0443"],
      [4, "74.7626"],
    ] as const
  ).map(([group, expected]) =>
    recorded(family, `PEAKPRESSURE: half angle of contact at Λ = ${group}`, "bracketing", "°", expected, () => {
      const given = { bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
      const perLoad = 15 * confinedStiffness({ ...given, load: 1 }) * 10 * 0.04;
      return overBore({ ...given, load: group * perLoad }, 1);
    }),
  ),
  ...bores.flatMap(({ within, ...bore }, i): ReferenceCase[] => [
    {
      family,
      what: `PEAKPRESSURE: bush of ${bore.bore} mm, wall ${bore.wall} mm, ν ${bore.poisson}`,
      source: `${elements} ${within * 100} %`,
      kind: "other method",
      unit: "MPa",
      expected: () => contactByElements(bore).peak,
      within,
      compute: () => overBore(bore),
    },
    ...(i === 1
      ? [
          {
            family,
            what: "PEAKPRESSURE: half angle of contact of the 40 mm bush",
            source: `${elements} 20 %`,
            kind: "other method",
            unit: "°",
            expected: () => contactByElements(bore).angle,
            within: 0.2,
            compute: () => overBore(bore, 1),
          } as const,
        ]
      : []),
  ]),
  recorded(
    family,
    "EDGEPRESSURE, upper, partly lifted: 800 N, slope 0.0055627",
    "a foundation summed over 1200 × 1200 cells, 61.6133",
    "MPa",
    "61.6132",
    () => atSlope({ load: 800, clearance: 0.08, slope: 0.00556269704010508 })[1] as number,
  ),
  recorded(
    family,
    "EDGEPRESSURE, upper, full length: 4000 N, slope 0.0003",
    "a foundation summed over 1200 × 1200 cells, 35.8353",
    "MPa",
    "35.8353",
    () => atSlope({ load: 4000, clearance: 0.04, slope: 0.0003 })[1] as number,
  ),
  recorded(
    family,
    "MAXTILT: 40 MPa, 800 N, as a slope",
    "the root of the cells' sum, 0.00199136",
    "rad",
    "0.00199137",
    () => functions.MAXTILT({ ...layer, load: 800, clearance: 0.08, pressure: 40 }) * rad,
  ),
  ...tilted.flatMap(([what, given]): ReferenceCase[] => [
    ...(["lower", "upper"] as const).map((figure, i): ReferenceCase => ({
      family,
      what: `EDGEPRESSURE, ${figure}, ${what}`,
      source: cells,
      kind: "other method",
      unit: "MPa",
      expected: () => {
        const stiffness = (figure === "lower" ? edgeStiffness : confinedStiffness)({ ...layer, ...given });
        return tiltedByCells({ ...layer, ...given, stiffness }).pressure;
      },
      within: 3e-5,
      compute: () => atSlope(given)[i] as number,
    })),
    {
      family,
      what: `EDGEPRESSURE, length in contact, ${what}`,
      source: cells,
      kind: "other method",
      unit: "mm",
      expected: () =>
        tiltedByCells({ ...layer, ...given, stiffness: confinedStiffness({ ...layer, ...given }) }).length,
      within: 3e-5,
      compute: () => atSlope(given)[2] as number,
    },
  ]),
  ...(
    [
      [0.3, 0.27],
      [0.4, 0.57],
    ] as const
  ).map(([poisson, within]): ReferenceCase => ({
    family,
    what: `EDGEPRESSURE, upper: its layer under a tilted flat face, ν ${poisson}`,
    source: `Plane strain elements of a layer with free ends and contact; the layer of the function may be ${Math.round(within * 100)} % above`,
    kind: "other method",
    unit: "MPa",
    expected: () => layerByElements({ length: 6, modulus: 2500, poisson, load: 40, slope: 0.002 }),
    within,
    compute: () => {
      const flat = { load: 40, bore: 1, length: 6, wall: 1, clearance: 0, modulus: 2500, poisson };
      return Math.sqrt(2 * confinedStiffness(flat) * 0.002 * flat.load);
    },
  })),
  {
    family,
    what: "MAXTILT: 25 MPa, 1500 N, full length in contact",
    source: `${cells}, the slope by bisection on the pressure at the edge`,
    kind: "other method",
    unit: "°",
    expected: () => {
      const given = { ...layer, load: 1500, clearance: 0.05 };
      const stiffness = confinedStiffness(given);
      return rootOf((slope) => tiltedByCells({ ...given, stiffness, slope }).pressure - 25, 1e-6, 0.003, 12) / rad;
    },
    within: 1e-3,
    compute: () => functions.MAXTILT({ ...layer, load: 1500, clearance: 0.05, pressure: 25 }),
  },
];
