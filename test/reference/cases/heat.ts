import { frictionHeat, heatPv, runTemperature, sleeveTorque, washerTorque } from "../../../src/core";
import { shaftConductance, wallConductance } from "../../../src/core/heat/paths";
import type { ReferenceCase } from "../case";
import { finByDifferences, wallByDifferences } from "../solve/conduction";
import { rootOf } from "../solve/rootOf";

const family = "Heat and friction";
const incropera =
  "Incropera and others: Fundamentals of Heat and Mass Transfer, 7th ed., chapter 3, extended surfaces: very long rod of 5 mm, root at 100 °C, air at 25 °C, h = 100 W/(m²·K)";
const shigley = "Shigley's Mechanical Engineering Design, frictional-contact axial clutches";

const bushes = [
  { bore: 20, length: 15, wall: 1.5, bushconductivity: 0.25, shaftconductivity: 45, film: 10 },
  { bore: 6, length: 10, wall: 4, bushconductivity: 0.35, shaftconductivity: 15, film: 25 },
  { bore: 80, length: 60, wall: 2.5, bushconductivity: 2, shaftconductivity: 160, film: 5 },
];
type Bush = (typeof bushes)[number];
const wall = (b: Bush) =>
  wallByDifferences(b.bore / 2000, (b.bore / 2 + b.wall) / 1000, b.length / 1000, b.bushconductivity, Math.PI);
const fin = (b: Bush) => finByDifferences(b.bore / 1000, b.shaftconductivity, b.film);
const heat = { load: 500, speed: 0.08, friction: 0.18 };

/** The rise at which the heat made is the heat lost through the wall and two ends. */
const balancedRise = (b: Bush): number =>
  rootOf((rise) => rise * (wall(b) + 2 * fin(b)) - heat.friction * heat.load * heat.speed, 0, 1e4);

const rods: readonly [string, number, string][] = [
  ["copper", 398, "8.3"],
  ["aluminium alloy", 180, "5.6"],
  ["stainless steel", 14, "1.6"],
];

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
  ...rods.map(([metal, shaftconductivity, expected]): ReferenceCase => ({
    family,
    what: `shaft end as a fin: heat of a rod of ${metal}`,
    source: incropera,
    kind: "published",
    memory: true,
    unit: "W",
    expected,
    compute: () => shaftConductance({ bore: 5, shaftconductivity, ends: 1, film: 100 }) * 75,
  })),
  {
    family,
    what: "bush wall as a tube: steam pipe of 20 m, radii 6 and 8 cm, 20 W/(m·K), 150 to 60 °C",
    source: "Çengel: Heat Transfer, A Practical Approach, steady conduction",
    kind: "published",
    memory: true,
    unit: "kW",
    expected: "786",
    compute: () =>
      (wallConductance({ bore: 120, length: 20_000, wall: 20, bushconductivity: 20, contact: 1 }) * 90) / 1000,
  },
  ...bushes.flatMap((bush): ReferenceCase[] => [
    {
      family,
      what: `wall of a ${bush.bore} mm bush, half of the bore in contact`,
      source: "Finite differences over the radius",
      kind: "independent",
      unit: "W/K",
      expected: () => wall(bush),
      within: 5e-7,
      compute: () => wallConductance(bush),
    },
    {
      family,
      what: `one end of a ${bush.bore} mm shaft in air`,
      source: "Finite differences along the shaft",
      kind: "independent",
      unit: "W/K",
      expected: () => fin(bush),
      within: 5e-6,
      compute: () => shaftConductance({ ...bush, ends: 1 }),
    },
    {
      family,
      what: `RUNTEMP of a ${bush.bore} mm bush above 30 °C`,
      source: "Both paths by finite differences; the rise where the heat made and lost balance, by bisection",
      kind: "independent",
      unit: "K",
      expected: () => balancedRise(bush),
      within: 5e-6,
      compute: () => runTemperature({ ...bush, ...heat, ambient: 30, ends: 2 }) - 30,
    },
    {
      family,
      what: `HEATPV of a ${bush.bore} mm bush, 40 K above ambient`,
      source: "Both paths by finite differences; heat lost over friction and projected area",
      kind: "independent",
      unit: "MPa·m/s",
      expected: () => (40 * (wall(bush) + 2 * fin(bush))) / (0.18 * bush.bore * bush.length),
      within: 5e-6,
      compute: () => heatPv({ ...bush, rise: 40, friction: 0.18, ends: 2 }),
    },
  ]),
  {
    family,
    what: "WASHERTORQUE, worn: plate of 175 to 250 mm, 4 kN, f = 0.3: F·f·(D + d)/4",
    source: `${shigley}, uniform wear, worked by hand`,
    kind: "published",
    memory: true,
    unit: "N·m",
    expected: "127.5",
    compute: () => washerTorque({ ...plate, wearstate: "worn" }),
  },
  {
    family,
    what: "WASHERTORQUE, new: the same plate, (F·f/3)·(D³ − d³)/(D² − d²)",
    source: `${shigley}, uniform pressure, worked by hand`,
    kind: "published",
    memory: true,
    unit: "N·m",
    expected: "128.82",
    compute: () => washerTorque({ ...plate, wearstate: "new" }),
  },
  {
    family,
    what: "WASHERTORQUE, new",
    source: "Friction of thin rings summed, pressure uniform",
    kind: "independent",
    unit: "N·m",
    expected: () => faceTorque(() => 1),
    within: 1e-8,
    compute: () => washerTorque({ ...plate, wearstate: "new" }),
  },
  {
    family,
    what: "WASHERTORQUE, worn",
    source: "Friction of thin rings summed, pressure falling as 1/r",
    kind: "independent",
    unit: "N·m",
    expected: () => faceTorque((r) => 1 / r),
    within: 1e-8,
    compute: () => washerTorque({ ...plate, wearstate: "worn" }),
  },
  {
    family,
    what: "TORQUE: 800 N, 20 mm, μ = 0.2",
    source: "Work of friction along a polygon of 100 000 sides, per radian",
    kind: "independent",
    unit: "N·m",
    expected: () => workPerRadian({ load: 800, bore: 20, friction: 0.2 }),
    within: 1e-8,
    compute: () => sleeveTorque({ load: 800, bore: 20, friction: 0.2 }),
  },
  {
    family,
    what: "HEAT: 180 lbf, 24.8 ft/min, μ = 0.17, as torque times angular speed of a 0.75 in shaft",
    source: "Power as torque times angular speed, exact inch, pound and gravity",
    kind: "independent",
    unit: "W",
    expected: () => {
      const newtons = 180 * 0.45359237 * 9.80665;
      const radius = 0.375 * 0.0254;
      const angularSpeed = (24.8 * 0.3048) / 60 / radius;
      return 0.17 * newtons * radius * angularSpeed;
    },
    within: 1e-12,
    compute: () => frictionHeat({ load: 180 * 4.4482216152605, speed: 24.8 * 0.00508, friction: 0.17 }),
  },
];
