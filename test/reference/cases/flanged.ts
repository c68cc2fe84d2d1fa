import { flangedBush } from "../../../src/core";
import type { ReferenceCase } from "../case";
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

export const flangedCases: readonly ReferenceCase[] = [
  recorded(
    family,
    "FLANGEDBUSH, torque: 600 and 300 N, 20 mm, flange 21 to 30 mm",
    "a ring integral",
    "N·m",
    "1.47971",
    () => flangedBush(vent)[5]!,
  ),
  recorded(
    family,
    "FLANGEDBUSH, face pressure: 900 N on 17 to 28 mm",
    "the area",
    "MPa",
    "2.31498",
    () => flangedBush(mixer)[1]!,
  ),
  recorded(
    family,
    "FLANGEDBUSH, PV with shared heat: 200 and 900 N, 16 × 15 mm, 40 rev/min",
    "heat over friction and projected area",
    "MPa·m/s",
    "0.20816",
    () => flangedBush(mixer)[4]!,
  ),
  ...([vent, mixer] as const).flatMap((given): ReferenceCase[] => [
    {
      family,
      what: `FLANGEDBUSH, torque of both surfaces, ${given.bore} mm`,
      source: "Friction of strips of the bore and thin rings of the flange, summed",
      kind: "independent",
      unit: "N·m",
      expected: () => bySurfaces(given).torque,
      within: 1e-8,
      compute: () => flangedBush(given)[5]!,
    },
    {
      family,
      what: `FLANGEDBUSH, heat of both surfaces, ${given.bore} mm`,
      source: "Work of friction on strips and rings in one second",
      kind: "independent",
      unit: "W",
      expected: () => bySurfaces(given).work,
      within: 1e-8,
      compute: () => flangedBush(given)[6]!,
    },
    {
      family,
      what: `FLANGEDBUSH, PV to compare, ${given.bore} mm`,
      source: "The summed work over friction and projected area",
      kind: "independent",
      unit: "MPa·m/s",
      expected: () => bySurfaces(given).work / (given.friction * given.bore * given.length),
      within: 1e-8,
      compute: () => flangedBush(given)[4]!,
    },
  ]),
];
