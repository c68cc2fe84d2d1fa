import { functions } from "../../../src/core";
import { boreIn, relax, stateAt } from "../../../src/core/fit/history";
import { fitPressureOf, heldAtEnds } from "../../../src/core/fit/lame";
import type { ReferenceCase } from "../case";
import { afterHold } from "../solve/relaxingRing";
import { recorded } from "./recorded";

const family = "Fits and clearance";
const bush = { bore: 20, outside: 23, housing: 40, bushpoisson: 0.4, housingmodulus: 70000, housingpoisson: 0.33 };

/** Interference, share kept, mismatch hot and now. */
const holds: readonly [string, number, number, number, number][] = [
  ["loose when cold again", 0.05, 0.6, 0.0037, 0],
  ["colder and drier than at assembly", 0.05, 0.6, 0.0037, -0.002],
  ["gripping when cold again", 0.12, 0.7, 0.004, 0],
  ["loose while hot", 0.02, 0.5, -0.004, 0.001],
  ["still hot", 0.08, 0.4, 0.006, 0.006],
];

const grip = { pressure: 1.8, outside: 23, length: 15, friction: 0.2 };
const rings = 2000;
/** Σ over thin rings of the joint of what each gives. */
const overRings = (each: (width: number) => number): number =>
  Array.from({ length: rings }, () => each(grip.length / rings)).reduce((sum, part) => sum + part, 0);

const pressing = { pressure: 5, outside: 23, length: 15, interference: 0.1, friction: 0.2, chamfer: 15 };
/** Force along the axis of rings seated at full interference and of rings on the chamfer, squeezed by a share of it. */
function pressedInByRings(): number {
  const { pressure, outside, length, interference, friction, chamfer } = pressing;
  const slope = Math.tan((chamfer * Math.PI) / 180);
  const reach = interference / 2 / slope;
  let force = friction * pressure * Math.PI * outside * length;
  for (let i = 0; i < rings; i++) {
    const normal =
      (pressure * ((i + 0.5) / rings) * Math.PI * outside * (reach / rings)) / Math.cos((chamfer * Math.PI) / 180);
    force += normal * (Math.sin((chamfer * Math.PI) / 180) + friction * Math.cos((chamfer * Math.PI) / 180));
  }
  return force;
}

export const gripCases: readonly ReferenceCase[] = [
  ...holds.map(([what, interference, kept, hot, now]): ReferenceCase => ({
    family,
    what: `GRIPLEFT: ${what}`,
    source: "A ring of a standard linear solid in a rigid housing, by elements over the radius and steps of time",
    kind: "other method",
    unit: "mm",
    expected: () =>
      afterHold({ bore: 20, outside: 23, modulus: 2500, poisson: 0.4, interference, kept, hot, now }).left,
    within: 1e-6,
    compute: () => functions.GRIPLEFT({ interference, outside: 23, kept, mismatchhot: hot, mismatchnow: now }),
  })),
  recorded(
    family,
    "PRESSFIT with the modulus that a hot hold leaves: 0.12 mm, mismatch 0.4 %, 0.6 of 2500 MPa kept",
    "radial viscoelastic finite elements with contact, 2.01454",
    "MPa",
    "2.01454",
    () => functions.PRESSFIT({ ...bush, interference: 0.12 + 23 * 0.003984, bushmodulus: 2500 * 0.6 })[0]!,
  ),
  recorded(
    family,
    "bore of a pressed bush after a hot hold: 0.12 mm, mismatch 0.4 %, 0.6 of 2500 MPa kept, cold again",
    "radial viscoelastic finite elements with contact, 19.8746",
    "mm",
    "19.8746",
    () => {
      const ring = {
        ...{ bore: 20, outside: 23, housing: 40, bushModulus: 2500, bushPoisson: 0.4 },
        ...{ housingModulus: 70000, housingPoisson: 0.33 },
      };
      const { set } = relax(ring, stateAt(ring, 0.12, 0.003984, 0), 0.6);
      return boreIn(ring, 20, 0, stateAt(ring, 0.12, 0, set));
    },
  ),
  recorded(
    family,
    "fit pressure of a bush held at its ends, 60 K above its housing: free strain and ν times it",
    "plane-strain elements, 4.95248",
    "MPa",
    "4.95248",
    () => {
      const ring = heldAtEnds({
        ...{ bore: 20, outside: 23, housing: 40, bushModulus: 2500, bushPoisson: 0.4 },
        ...{ housingModulus: 70000, housingPoisson: 0.33 },
      });
      return fitPressureOf(ring, 0.08 + 23 * 60 * 9e-5 * 1.4);
    },
  ),
  recorded(family, "PUSHOUT: 1.8 MPa, 23 × 15 mm, μ = 0.2", "a sum over rings", "N", "390.186", () =>
    functions.PUSHOUT(grip),
  ),
  {
    family,
    what: "PUSHOUT: 8.4883 MPa, 30 × 5 mm, μ = 0.25",
    source: "Crawford: Plastics Engineering, 3rd ed., Ex. 2.7, pp. 64-65, the other way round: 1 kN gives 8.5 MN/m²",
    kind: "printed example",
    unit: "kN",
    expected: "1",
    within: 5e-4,
    compute: () => functions.PUSHOUT({ pressure: 8.4883, outside: 30, length: 5, friction: 0.25 }) / 1000,
  },
  {
    family,
    what: "SPINTORQUE: the same joint under 800 N",
    source: "Friction of thin rings times their radius, and that of the load beside it",
    kind: "other method",
    unit: "N·m",
    expected: () => (overRings((width) => 0.2 * 1.8 * Math.PI * 23 * width * (23 / 2)) + 0.2 * 800 * (23 / 2)) / 1000,
    within: 1e-9,
    compute: () => functions.SPINTORQUE({ ...grip, load: 800 }),
  },
  recorded(
    family,
    "PRESSIN: 5 MPa, 23 × 15 mm, μ = 0.2, 0.1 mm, chamfer 15°",
    "rings summed on the chamfer; the part without friction is the elastic energy stored",
    "N",
    "1099.62",
    () => functions.PRESSIN(pressing),
  ),
  {
    family,
    what: "PRESSIN: the same, by rings",
    source: "Forces on rings seated and rings on the chamfer, resolved along the axis",
    kind: "other method",
    unit: "N",
    expected: pressedInByRings,
    within: 1e-9,
    compute: () => functions.PRESSIN(pressing),
  },
  {
    family,
    what: "PRESSIN without friction: work per length of pressing in",
    source:
      "Elastic energy stored in the joint per length: half of pressure times circumference times radial interference",
    kind: "other method",
    unit: "N",
    expected: () => {
      const ring = { ...bush, bushmodulus: 2500 };
      const pressure = functions.PRESSFIT({ ...ring, interference: 0.05 })[0]!;
      return (pressure * Math.PI * 23 * (0.05 / 2)) / 2;
    },
    within: 1e-12,
    compute: () => {
      const pressure = functions.PRESSFIT({ ...bush, bushmodulus: 2500, interference: 0.05 })[0]!;
      return functions.PRESSIN({ pressure, outside: 23, length: 15, interference: 0.05, friction: 0 });
    },
  },
];
