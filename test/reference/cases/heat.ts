import { functions } from "../../../src/core";
import type { ReferenceCase } from "../case";

const family = "Heat and friction";
const shigley = "Shigley's Mechanical Engineering Design, frictional-contact axial clutches";

const plate = { load: 4000, inner: 175, outer: 250, friction: 0.3 };
/** N·m of a ring face, from thin rings; `shape` is the pressure over the radius. */
function faceTorque(shape: (r: number) => number): number {
  const n = 20_000;
  const dr = (plate.outer - plate.inner) / 2 / n;
  let [force, moment] = [0, 0];
  for (let i = 0; i < n; i++) {
    const r = plate.inner / 2 + (i + 0.5) * dr;
    const ring = shape(r) * 2 * Math.PI * r * dr;
    force += ring;
    moment += ring * r;
  }
  return (plate.friction * plate.load * (moment / force)) / 1000;
}

/** J of friction in one turn over 2π: the torque is the work per radian. */
function workPerRadian({ load, bore, friction }: { load: number; bore: number; friction: number }): number {
  const steps = 100_000;
  let work = 0;
  for (let i = 0; i < steps; i++) work += friction * load * (2 * (bore / 2000) * Math.sin(Math.PI / steps));
  return work / (2 * Math.PI);
}

export const heatCases: readonly ReferenceCase[] = [
  {
    family,
    what: "WASHERTORQUE, worn: plate of 175 to 250 mm, 4 kN, f = 0.3: F·f·(D + d)/4",
    source: `${shigley}, uniform wear, worked by hand`,
    kind: "memory",
    unit: "N·m",
    expected: "127.5",
    compute: () => functions.WASHERTORQUE({ ...plate, wearstate: "worn" }),
  },
  {
    family,
    what: "WASHERTORQUE, new: the same plate, (F·f/3)·(D³ − d³)/(D² − d²)",
    source: `${shigley}, uniform pressure, worked by hand`,
    kind: "memory",
    unit: "N·m",
    expected: "128.82",
    compute: () => functions.WASHERTORQUE({ ...plate, wearstate: "new" }),
  },
  {
    family,
    what: "WASHERTORQUE, new",
    source: "Friction of thin rings summed, pressure uniform",
    kind: "other method",
    unit: "N·m",
    expected: () => faceTorque(() => 1),
    within: 1e-8,
    compute: () => functions.WASHERTORQUE({ ...plate, wearstate: "new" }),
  },
  {
    family,
    what: "WASHERTORQUE, worn",
    source: "Friction of thin rings summed, pressure falling as 1/r",
    kind: "other method",
    unit: "N·m",
    expected: () => faceTorque((r) => 1 / r),
    within: 1e-8,
    compute: () => functions.WASHERTORQUE({ ...plate, wearstate: "worn" }),
  },
  {
    family,
    what: "TORQUE: 800 N, 20 mm, μ = 0.2",
    source: "Work of friction along a polygon of 100 000 sides, per radian",
    kind: "other method",
    unit: "N·m",
    expected: () => workPerRadian({ load: 800, bore: 20, friction: 0.2 }),
    within: 1e-8,
    compute: () => functions.TORQUE({ load: 800, bore: 20, friction: 0.2 }),
  },
  {
    family,
    what: "HEAT: 180 lbf, 24.8 ft/min, μ = 0.17, as torque times angular speed of a 0.75 in shaft",
    source: "Power as torque times angular speed, exact inch, pound and gravity",
    kind: "other method",
    unit: "W",
    expected: () => {
      const newtons = 180 * 0.45359237 * 9.80665;
      const radius = 0.375 * 0.0254;
      const angularSpeed = (24.8 * 0.3048) / 60 / radius;
      return 0.17 * newtons * radius * angularSpeed;
    },
    within: 1e-12,
    compute: () => functions.HEAT({ load: 180 * 4.4482216152605, speed: 24.8 * 0.00508, friction: 0.17 }),
  },
];
