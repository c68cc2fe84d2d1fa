import { functions } from "../../../src/core";
import { flangedNodes, flangeRise, sleeveRise } from "../../../src/core/heat/flangedPaths";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { flangedRises } from "../solve/flangedAssembly";
import { recorded } from "./recorded";

const family = "Loading, motion, PV";
const vent = { radial: 600, axial: 300, bore: 20, length: 20, inner: 21, outer: 30, rpm: 60, friction: 0.15 };
const mixer = { radial: 200, axial: 900, bore: 16, length: 15, inner: 17, outer: 28, rpm: 40, friction: 0.12 };

/** Friction of strips round the bore and of thin rings on the flange: torque in N·m, work of one second in J. */
function bySurfaces(given: typeof vent) {
  const { radial, axial, bore, length, inner, outer, rpm, friction } = given;
  const n = 20_000;
  const facePressure = axial / ((Math.PI / 4) * (outer ** 2 - inner ** 2));
  const sleevePressure = radial / (bore * length);
  const width = (outer - inner) / 2 / n;
  const perSecond = (2 * Math.PI * rpm) / 60;
  let [torque, work] = [0, 0];
  const add = (force: number, radius: number) => {
    torque += (friction * force * radius) / 1000;
    work += (friction * force * radius * perSecond) / 1000;
  };
  for (let i = 0; i < n; i++) {
    const r = inner / 2 + (i + 0.5) * width;
    add(facePressure * 2 * Math.PI * r * width, r);
    // the bore's strip as it projects on the mean pressure
    add((sleevePressure * bore * length) / n, bore / 2);
  }
  return { torque, work };
}

const heat = "Heat and friction";
const millimetres = 1e-3;
const collar = 4;
/** Of carbon steel, hardened: Callister, Table B.7. */
const steelConductivity = 42.7;
const still = { contact: 0.5, film: 10, bushconductivity: 0.25, shaftconductivity: 45 };
const ventPaths = { ...still, wall: 1.5, flangethickness: 1.5, farend: 100, shoulderend: 0 };
const mixerPaths = { ...still, wall: 1, flangethickness: 1, farend: 80, shoulderend: 60 };
type Bush = typeof vent;
type Ways = typeof ventPaths;

/** Friction heat on sleeve and flange, W: torque of each times the angular speed. */
function heats({ radial, axial, bore, inner, outer, rpm, friction }: Bush): [number, number] {
  const perForce = (friction * 2 * Math.PI * rpm) / 60 / 1000;
  const faceRadius = (outer ** 3 - inner ** 3) / (outer ** 2 - inner ** 2) / 3;
  return [perForce * radial * (bore / 2), perForce * axial * faceRadius];
}
/** Rises of sleeve and flange; `tip` is what a tip in the air adds to an end's length. */
function byNodes(bush: Bush, ways: Ways, housing: number, tip = 0): [number, number] {
  const [farend, shoulderend] = [ways.farend, ways.shoulderend].map((end) => (end > 0 ? end + tip : 0)) as [
    number,
    number,
  ];
  const nodes = flangedNodes({ ...bush, ...ways, farend, shoulderend, flangeoutside: bush.outer }, housing);
  return [sleeveRise(nodes, ...heats(bush)), flangeRise(nodes, ...heats(bush))];
}
function byVolumes(bush: Bush, ways: Ways, housing: number): number {
  const { bore, length, inner, outer } = bush;
  const { wall, flangethickness: thickness, farend, shoulderend, ...rest } = ways;
  const sizes = { bore, length, inner, outer, wall, thickness, collar, farend, shoulderend };
  const metres = Object.fromEntries(Object.entries(sizes).map(([key, size]) => [key, size * millimetres]));
  const { sleeve, flange } = flangedRises({ ...(metres as typeof sizes), ...rest, housing }, ...heats(bush));
  return Math.max(sleeve, flange);
}

/** Bush, ways out, housing's conductance in W/K. */
export const flangedAssemblies: readonly (readonly [string, Bush, Ways, number])[] = [
  ["20 mm, housing at ambient", vent, ventPaths, Infinity],
  ["16 mm, axial load", mixer, mixerPaths, 0.0761208],
  ["20 mm, two ends", vent, { ...ventPaths, farend: 60, shoulderend: 60 }, 0.1],
  [
    "40 mm of stainless steel, radial load",
    { radial: 1000, axial: 100, bore: 40, length: 40, inner: 42, outer: 55, rpm: 30, friction: 0.12 },
    {
      ...still,
      shaftconductivity: 16,
      bushconductivity: 0.3,
      wall: 2,
      flangethickness: 2,
      farend: 150,
      shoulderend: 100,
    },
    0.3,
  ],
  [
    "10 mm",
    { radial: 300, axial: 300, bore: 10, length: 12, inner: 11, outer: 18, rpm: 100, friction: 0.2 },
    { ...still, shaftconductivity: 50, wall: 1, flangethickness: 1, farend: 40, shoulderend: 40 },
    0.05,
  ],
  [
    "30 mm, end beyond the shoulder alone, housing at ambient",
    { radial: 100, axial: 600, bore: 30, length: 25, inner: 32, outer: 48, rpm: 30, friction: 0.15 },
    { ...still, bushconductivity: 0.42, wall: 2, flangethickness: 2, farend: 0, shoulderend: 80 },
    Infinity,
  ],
  [
    "60 mm of aluminium",
    { radial: 800, axial: 800, bore: 60, length: 50, inner: 62, outer: 75, rpm: 20, friction: 0.1 },
    {
      ...still,
      shaftconductivity: 150,
      bushconductivity: 0.3,
      wall: 2.5,
      flangethickness: 2.5,
      farend: 100,
      shoulderend: 100,
    },
    1,
  ],
];
/** By how much the two nodes give the hotter surface more than the volumes do, as a share of its rise. */
export const flangedError = (bush: Bush, ways: Ways, housing: number): number =>
  Math.max(...byNodes(bush, ways, housing)) / byVolumes(bush, ways, housing) - 1;
const volumes =
  "Axisymmetric finite volumes of shaft, collar, sleeve and flange; the two nodes may be 9 % of the rise above, and not below";

/** Invented but for its shape: the duty of the third assembly, its flange beginning at the bore, on a grade of the same figures. */
function byDuty(): number {
  const grades = [
    ["grade", "PV limit", "highest temperature", "friction high", "conductivity"],
    ["Plain", 5, 300, 0.15, 0.25],
  ];
  const duty = {
    ...{ part: "flanged", load: 600, "axial load": 300, bore: 20, length: 20, wall: 1.5 },
    ...{ "flange outside": 30, "flange thickness": 1.5, rpm: 60, temperature: 25 },
    ...{ shaft: "hardened steel", "exposed length": 60, "housing conductance": 0.1 },
  };
  const rows = call(functions.DUTYCHECKS, [Object.entries(duty), null, "Plain", grades]);
  return (rows.find(([criterion]) => criterion === "bore temperature")![1] as number) - 25;
}

export const flangedCases: readonly ReferenceCase[] = [
  recorded(
    family,
    "FLANGEDBUSH, torque: 600 and 300 N, 20 mm, flange 21 to 30 mm",
    "a ring integral",
    "N·m",
    "1.47971",
    () => functions.FLANGEDBUSH(vent)[5]!,
  ),
  recorded(
    family,
    "FLANGEDBUSH, face pressure: 900 N on 17 to 28 mm",
    "the area",
    "MPa",
    "2.31498",
    () => functions.FLANGEDBUSH(mixer)[1]!,
  ),
  recorded(
    family,
    "FLANGEDBUSH, PV with shared heat: 200 and 900 N, 16 × 15 mm, 40 rev/min",
    "heat over friction and projected area",
    "MPa·m/s",
    "0.20816",
    () => functions.FLANGEDBUSH(mixer)[4]!,
  ),
  recorded(
    heat,
    "bore temperature of a flanged bush: flange, housing at ambient, 600 and 300 N, 20 mm",
    "axisymmetric finite volumes, 67.037 (the model's own error)",
    "°C",
    "68.9109",
    () => 25 + byNodes(vent, ventPaths, Infinity, vent.bore / 4)[1],
  ),
  recorded(
    heat,
    "bore temperature of a flanged bush: flange, housing of 0.076 W/K, 200 and 900 N, 16 mm",
    "axisymmetric finite volumes, 89.1432 (the model's own error)",
    "°C",
    "90.7416",
    () => 40 + byNodes(mixer, mixerPaths, 0.0761208, mixer.bore / 4)[1],
  ),
  ...flangedAssemblies.map(([what, bush, ways, housing]): ReferenceCase => ({
    family: heat,
    what: `bore temperature of a flanged bush, hotter rise: ${what}`,
    source: volumes,
    kind: "other method",
    unit: "K",
    expected: () => byVolumes(bush, ways, housing),
    within: 0.09,
    compute: () => Math.max(...byNodes(bush, ways, housing)),
  })),
  {
    family: heat,
    what: "DUTYCHECKS: rise of the bore of a flanged duty, 600 and 300 N, 20 mm, two ends of 60 mm, 0.1 W/K",
    source: volumes,
    kind: "other method",
    unit: "K",
    expected: () =>
      byVolumes(
        { ...vent, inner: 20 },
        { ...ventPaths, shaftconductivity: steelConductivity, farend: 60, shoulderend: 60 },
        0.1,
      ),
    within: 0.09,
    compute: byDuty,
  },
  ...([vent, mixer] as const).flatMap((given): ReferenceCase[] => [
    {
      family,
      what: `FLANGEDBUSH, torque of both surfaces, ${given.bore} mm`,
      source: "Friction of strips of the bore and thin rings of the flange, summed",
      kind: "other method",
      unit: "N·m",
      expected: () => bySurfaces(given).torque,
      within: 1e-8,
      compute: () => functions.FLANGEDBUSH(given)[5]!,
    },
    {
      family,
      what: `FLANGEDBUSH, heat of both surfaces, ${given.bore} mm`,
      source: "Work of friction on strips and rings in one second",
      kind: "other method",
      unit: "W",
      expected: () => bySurfaces(given).work,
      within: 1e-8,
      compute: () => functions.FLANGEDBUSH(given)[6]!,
    },
    {
      family,
      what: `FLANGEDBUSH, PV to compare, ${given.bore} mm`,
      source: "The summed work over friction and projected area",
      kind: "other method",
      unit: "MPa·m/s",
      expected: () => bySurfaces(given).work / (given.friction * given.bore * given.length),
      within: 1e-8,
      compute: () => functions.FLANGEDBUSH(given)[4]!,
    },
  ]),
];
