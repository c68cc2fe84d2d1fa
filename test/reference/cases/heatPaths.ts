import { functions } from "../../../src/core";
import { shaftConductance, wallConductance } from "../../../src/core/heat/paths";
import type { ReferenceCase } from "../case";
import { meanRise } from "../solve/assembly";
import { recorded as recordedOf } from "./recorded";
import { finByDifferences, plateByDifferences, wallByDifferences } from "../solve/conduction";

const family = "Heat and friction";

const notebook = "as a companion notebook prints it";
const incropera = `Incropera and others: Fundamentals of Heat and Mass Transfer, Ex. 3.9, p. 145, ${notebook}`;
const long = 10_000;
const som = `Som: Introduction to Heat Transfer, Ex. 2.13, p. 68, ${notebook}`;
/** Rods that lose heat to the air: diameter, length in mm, conductivity, film, rise of the root in K, heat in W. */
const rods: readonly [string, number, number, number, number, number, string, string][] = [
  ["copper, very long", 5, long, 398, 100, 75.15, "8.33", incropera],
  ["stainless steel, very long", 5, long, 14, 100, 75.15, "1.56", incropera],
  [
    ...(["copper wire, very long", 2.5, long, 396, 10, 70, "0.865"] as const),
    `Kreith, Manglik, Bohn: Principles of Heat Transfer, 7th ed., Ex. 2.6, p. 99, ${notebook}`,
  ],
  ["copper, 10 mm, very long", 10, long, 370, 10, 100, "9.554781", som],
  [
    ...(["aluminium, insulated tip", 25, 100, 200, 15, 235, "26.6"] as const),
    `Gavhane: Heat Transfer, Ex. 2.47, p. 2.96, ${notebook}`,
  ],
];

/** The same of rods whose tip stands in the air. */
const tipped: typeof rods = [
  ["copper, 20 mm long", 10, 20, 370, 10, 100, "0.705573", som],
  ["copper, 40 mm long", 10, 40, 370, 10, 100, "1.326555", som],
  ["copper, 200 mm long", 10, 200, 370, 10, 100, "5.562994", som],
  ["copper, 400 mm long", 10, 400, 370, 10, 100, "8.290014", som],
  ["copper, 1 m long", 10, 1000, 370, 10, 100, "9.528623", som],
  [
    ...(["steel, 150 mm long", 50, 150, 20, 8, 75, "12.089"] as const),
    `Dwivedi: Heat and Mass Transfer, Ex. 3.7, p. 91, ${notebook}`,
  ],
];
/** A tip in the air loses as much as artanh(h/(m·k))/m more length with an insulated tip, exactly; mm. */
function tipLength(diameter: number, conductivity: number, film: number): number {
  const m = Math.sqrt((4 * film) / (conductivity * (diameter / 1000)));
  return (Math.atanh(film / (m * conductivity)) / m) * 1000;
}
/** W of a rod that RUNTEMP sees as the shaft end of a bush without length whose housing takes no heat. */
function rodHeat(bore: number, endlength: number, shaftconductivity: number, film: number, rise: number): number {
  const bush = { bore, length: 1e-9, wall: 1, bushconductivity: 1, shaftconductivity, endlength, film, ends: 1 };
  return rise / (functions.RUNTEMP({ ...bush, load: 1, speed: 1, friction: 1, ambient: 0 })[1] as number);
}

const bushes = [
  { bore: 20, length: 15, wall: 1.5, bushconductivity: 0.25, shaftconductivity: 45, film: 10, endlength: 60 },
  { bore: 6, length: 10, wall: 4, bushconductivity: 0.35, shaftconductivity: 15, film: 25, endlength: 30 },
  { bore: 80, length: 60, wall: 2.5, bushconductivity: 2, shaftconductivity: 160, film: 5, endlength: 150 },
  { bore: 40, length: 40, wall: 2, bushconductivity: 0.3, shaftconductivity: 16, film: 10, endlength: 200 },
].map((bush, i) => ({ ...bush, contact: 0.5, ends: 1 + (i % 2), housingpath: [0.05, 0.02, 1, 0.2][i]! }));
type Bush = (typeof bushes)[number];
const wall = (b: Bush) =>
  wallByDifferences(b.bore / 2000, (b.bore / 2 + b.wall) / 1000, b.length / 1000, b.bushconductivity, Math.PI);
const fin = (b: Bush) => finByDifferences(b.bore / 1000, b.shaftconductivity, b.film, b.endlength / 1000);
const duty = { load: 500, speed: 0.08, friction: 0.18, ambient: 30 };
/** K per W, the housing of the bush's own conductance or at ambient. */
const rise = (b: Bush, housing: number) =>
  meanRise({
    diameter: b.bore / 1000,
    length: b.length / 1000,
    conductivity: b.shaftconductivity,
    film: b.film,
    endlength: b.endlength / 1000,
    ends: b.ends,
    wall: wall(b),
    housing,
  });
const byFriction = duty.load * duty.speed * duty.friction;
const atAmbient = 1e9;
const inSlices =
  "Shaft in slices against wall and air, the housing as one body, the wall by finite differences; the model of the function allows 0.5 %";

const plates: readonly [number, number, number, number][] = [
  [23, 8, 50, 10],
  [12, 3, 16, 25],
  [90, 20, 160, 5],
];

/** A pipe's wall alone: heat of 120.786 W through 1 m. */
const pipe = (bore: number, wall: number, bushconductivity: number): number =>
  functions.RUNTEMP({
    ...{ load: 120.786, friction: 1, speed: 1, bore, wall, length: 1000, bushconductivity },
    ...{ shaftconductivity: 45, endlength: 0, contact: 1, ambient: 0 },
  })[0] as number;
const cengel = `Çengel: Heat and Mass Transfer, A Practical Approach, Ex. 3.8, ${notebook}`;

/** Assemblies worked by a separate numerical solution, recorded: load, speed, friction, ambient; their shaft's tips stand in the air, as long as d/4 more of its side. */
const recorded: readonly [string, Parameters<typeof functions.RUNTEMP>[0], string, string][] = [
  [
    "RUNTEMP: 20/23 × 15 bush, two ends of 60 mm, housing of 47 cm²",
    {
      ...{ load: 400, speed: 0.1, friction: 0.15, ambient: 25, bore: 20, length: 15, wall: 1.5 },
      ...{
        bushconductivity: 0.25,
        shaftconductivity: 45,
        endlength: 60 + 5,
        ends: 2,
        housingpath: 0.0466055270160046,
      },
    },
    "81.3805",
    "81.5718",
  ],
  [
    "RUNTEMP: 40/44 × 40 bush, one end of 200 mm, housing of 210 cm²",
    {
      ...{ load: 1500, speed: 0.08, friction: 0.12, ambient: 40, bore: 40, length: 40, wall: 2 },
      ...{
        bushconductivity: 0.3,
        shaftconductivity: 16,
        endlength: 200 + 10,
        ends: 1,
        housingpath: 0.20992122111287,
      },
    },
    "92.9796",
    "93.1551",
  ],
];

export const heatPathCases: readonly ReferenceCase[] = [
  recordedOf(
    family,
    "CONTACTSHARE: clearance 0.08 mm, wall 1.5 mm, 0.25 W/(m·K)",
    "finite differences of the annulus fed through the air gap, 0.808551",
    "",
    "0.818182",
    () => functions.CONTACTSHARE({ clearance: 0.08, wall: 1.5, conductivity: 0.25 }),
  ),
  ...[...rods, ...tipped].map((rod): ReferenceCase => {
    const [what, bore, endlength, shaftconductivity, film, warm, expected, source] = rod;
    const more = tipped.includes(rod) ? tipLength(bore, shaftconductivity, film) : 0;
    return {
      family,
      what: `RUNTEMP, shaft end alone: heat of a rod of ${what}${more > 0 ? ", its tip in the air" : ""}`,
      source,
      kind: "printed example",
      unit: "W",
      expected,
      compute: () => rodHeat(bore, endlength + more, shaftconductivity, film, warm),
    };
  }),
  {
    ...recordedOf(
      family,
      "shaft end as a fin, its tip in the air: 12 mm, 25 mm long, 16 W/(m·K), 15 W/(m²·K)",
      "the boundary value problem of the fin; d/4 more length here stands for the tip",
      "W/K",
      "0.0146571",
      () => shaftConductance({ bore: 12, length: 0, shaftconductivity: 16, endlength: 25 + 3, ends: 1, film: 15 }),
    ),
    within: 2e-4,
  },
  {
    family,
    what: "bush wall as a tube: steam pipe of 20 m, radii 6 and 8 cm, 20 W/(m·K), 150 to 60 °C",
    source: "Çengel: Heat Transfer, A Practical Approach, steady conduction",
    kind: "memory",
    unit: "kW",
    expected: "786",
    compute: () =>
      (wallConductance({ bore: 120, length: 20_000, wall: 20, bushconductivity: 20, contact: 1 }) * 90) / 1000,
  },
  {
    family,
    what: "RUNTEMP, housing at ambient, no shaft end: pipe wall of 50/55 mm, 80 W/(m·K)",
    source: `${cengel}, pipe wall`,
    kind: "printed example",
    unit: "K",
    expected: "0.022903",
    compute: () => pipe(50, 2.5, 80),
  },
  {
    family,
    what: "RUNTEMP, housing at ambient, no shaft end: insulation of 55/115 mm, 0.05 W/(m·K)",
    source: `${cengel}, insulation (heat printed to six digits)`,
    kind: "printed example",
    unit: "K",
    expected: "283.588",
    within: 0.005 / 283.588,
    compute: () => pipe(55, 30, 0.05),
  },
  ...bushes.flatMap((bush): ReferenceCase[] => [
    {
      family,
      what: `wall of a ${bush.bore} mm bush, half of the bore in contact`,
      source: "Finite differences over the radius",
      kind: "other method",
      unit: "W/K",
      expected: () => wall(bush),
      within: 5e-7,
      compute: () => wallConductance(bush),
    },
    {
      family,
      what: `one end of a ${bush.bore} mm shaft in air, ${bush.endlength} mm long`,
      source: "Finite differences along the shaft, its tip insulated",
      kind: "other method",
      unit: "W/K",
      expected: () => fin(bush),
      within: 5e-7,
      compute: () => shaftConductance({ ...bush, length: 0, ends: 1 }),
    },
    {
      family,
      what: `RUNTEMP of a ${bush.bore} mm bush above 30 °C, housing's path known`,
      source: inSlices,
      kind: "other method",
      unit: "K",
      expected: () => byFriction * rise(bush, bush.housingpath),
      within: 0.005,
      compute: () => (functions.RUNTEMP({ ...bush, ...duty })[1] as number) - 30,
    },
    {
      family,
      what: `RUNTEMP of a ${bush.bore} mm bush above 30 °C, housing at ambient`,
      source: inSlices,
      kind: "other method",
      unit: "K",
      expected: () => byFriction * rise(bush, atAmbient),
      within: 0.005,
      compute: () => (functions.RUNTEMP({ ...bush, ...duty, housingpath: undefined })[0] as number) - 30,
    },
    {
      family,
      what: `RUNTEMP of a ${bush.bore} mm bush above 30 °C, no way out through the housing`,
      source: inSlices,
      kind: "other method",
      unit: "K",
      expected: () => byFriction * rise(bush, 0),
      within: 0.005,
      compute: () => (functions.RUNTEMP({ ...bush, ...duty, housingpath: undefined })[1] as number) - 30,
    },
    {
      family,
      what: `HEATPV of a ${bush.bore} mm bush, 40 K above ambient, housing's path known`,
      source: inSlices,
      kind: "other method",
      unit: "MPa·m/s",
      expected: () => 40 / rise(bush, bush.housingpath) / (0.18 * bush.bore * bush.length),
      within: 0.005,
      compute: () => functions.HEATPV({ ...bush, rise: 40, friction: 0.18 })[0]!,
    },
  ]),
  ...plates.map(([outside, thickness, conductivity, film]): ReferenceCase => ({
    family,
    what: `HOUSINGPATH: plate of ${thickness} mm and ${conductivity} W/(m·K) round ${outside} mm`,
    source: "Finite differences over rings that widen outwards",
    kind: "other method",
    unit: "W/K",
    expected: () => plateByDifferences(outside / 2000, thickness / 1000, conductivity, film),
    within: 1e-6,
    compute: () => functions.HOUSINGPATH({ outside, thickness, conductivity, film }),
  })),
  ...recorded.flatMap(([what, given, equations, volumes]): ReferenceCase[] => [
    {
      family,
      what: `${what}, equations`,
      source: "The same equations solved apart from this code, recorded; tip in the air there, d/4 more length here",
      kind: "other method",
      unit: "°C",
      expected: equations,
      within: 1e-4,
      compute: () => functions.RUNTEMP(given)[1] as number,
    },
    {
      family,
      what: `${what}, in space`,
      source:
        "Axisymmetric finite volumes of shaft, bush and ring housing, recorded; the model allows 0.5 % of the rise",
      kind: "other method",
      unit: "°C",
      expected: volumes,
      within: 0.004,
      compute: () => functions.RUNTEMP(given)[1] as number,
    },
  ]),
];
