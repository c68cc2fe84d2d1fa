import { runTemperature, washerTorque } from "../../src/core";
import { shaftConductance, wallConductance } from "../../src/core/heat/paths";

/** Solves a tridiagonal system: below·x[i-1] + on·x[i] + above·x[i+1] = right. */
function tridiagonal(below: number[], on: number[], above: number[], right: number[]): number[] {
  const n = on.length;
  const c = [...on];
  const r = [...right];
  for (let i = 1; i < n; i++) {
    const m = below[i]! / c[i - 1]!;
    c[i]! -= m * above[i - 1]!;
    r[i]! -= m * r[i - 1]!;
  }
  for (let i = n - 1; i >= 0; i--) r[i] = (r[i]! - (i < n - 1 ? above[i]! * r[i + 1]! : 0)) / c[i]!;
  return r;
}

/**
 * Independent: W/K through a sector of a tube's wall by finite differences over its radius, inside one degree above outside.
 * SI units; `sector` in radians.
 */
function wallByDifferences(inner: number, outer: number, length: number, conductivity: number, sector: number): number {
  const n = 2000;
  const dr = (outer - inner) / n;
  const face = (i: number) => (conductivity * sector * (inner + (i + 0.5) * dr) * length) / dr;
  const unknown = Array.from({ length: n - 1 }, (_, i) => i + 1);
  const below = unknown.map((i) => -face(i - 1));
  const above = unknown.map((i) => -face(i));
  const on = unknown.map((i) => face(i - 1) + face(i));
  const right = unknown.map((i) => (i === 1 ? face(0) : 0));
  const temperature = tridiagonal(below, on, above, right);
  return face(0) * (1 - temperature[0]!);
}

/** Independent: W/K of one long rod that cools in air, by finite differences along it; its far end is insulated. SI units. */
function finByDifferences(diameter: number, conductivity: number, film: number): number {
  const area = (Math.PI / 4) * diameter ** 2;
  const perimeter = Math.PI * diameter;
  const reach = Math.sqrt((conductivity * area) / (film * perimeter));
  const n = 6000;
  const dx = (20 * reach) / n;
  const along = (conductivity * area) / dx;
  const loss = film * perimeter * dx;
  const cells = Array.from({ length: n }, (_, i) => i);
  // cell centres: half a cell between the root, one degree above the air, and the first of them
  const below = cells.map((i) => (i === 0 ? 0 : -along));
  const above = cells.map((i) => (i === n - 1 ? 0 : -along));
  const on = cells.map((i) => (i === 0 ? 2 * along : along) + (i === n - 1 ? 0 : along) + loss);
  const right = cells.map((i) => (i === 0 ? 2 * along : 0));
  return 2 * along * (1 - tridiagonal(below, on, above, right)[0]!);
}

describe("heat paths against a numerical solution (independent)", () => {
  const bushes = [
    { bore: 20, length: 15, wall: 1.5, bushconductivity: 0.25, shaftconductivity: 45, film: 10 },
    { bore: 6, length: 10, wall: 4, bushconductivity: 0.35, shaftconductivity: 15, film: 25 },
    { bore: 80, length: 60, wall: 2.5, bushconductivity: 2, shaftconductivity: 160, film: 5 },
  ];
  test.each(bushes)("wall of a $bore mm bush, half of the bore in contact", (bush) => {
    const { bore, wall, length, bushconductivity } = bush;
    const numerical = wallByDifferences(
      bore / 2000,
      bore / 2000 + wall / 1000,
      length / 1000,
      bushconductivity,
      Math.PI,
    );
    expect(wallConductance(bush) / numerical).toBeCloseTo(1, 6);
  });
  test.each(bushes)("one end of a $bore mm shaft", (bush) => {
    const numerical = finByDifferences(bush.bore / 1000, bush.shaftconductivity, bush.film);
    expect(shaftConductance({ ...bush, ends: 1 }) / numerical).toBeCloseTo(1, 5);
  });
  test.each(bushes)("running temperature of a $bore mm bush: where the heat made and the heat lost balance", (bush) => {
    const { bore, wall, length, bushconductivity, shaftconductivity, film } = bush;
    const duty = { load: 500, speed: 0.08, friction: 0.18, ambient: 30 };
    const lost = (rise: number) =>
      rise *
      (wallByDifferences(bore / 2000, bore / 2000 + wall / 1000, length / 1000, bushconductivity, Math.PI) +
        2 * finByDifferences(bore / 1000, shaftconductivity, film));
    const made = duty.friction * duty.load * duty.speed;
    let [low, high] = [0, 1e4];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (lost(middle) < made) low = middle;
      else high = middle;
    }
    expect((runTemperature({ ...bush, ...duty, ends: 2 }) - 30) / low).toBeCloseTo(1, 5);
  });
});

describe("textbook cases", () => {
  // Incropera and others, Fundamentals of Heat and Mass Transfer, 7th ed. (memory), chapter 3, extended surfaces:
  // example of a very long rod of 5 mm diameter, root at 100 °C, air at 25 °C, h = 100 W/(m²·K) (memory). Printed to 0.1 W.
  test.each([
    ["copper", 398, 8.3],
    ["aluminium alloy", 180, 5.6],
    ["stainless steel", 14, 1.6],
  ])("long rod of %s", (_, shaftconductivity, printed) => {
    const heat = shaftConductance({ bore: 5, shaftconductivity, ends: 1, film: 100 }) * (100 - 25);
    expect(Math.abs(heat - printed)).toBeLessThanOrEqual(0.05);
  });

  // Çengel, Heat Transfer: A Practical Approach, chapter on steady conduction: heat loss of a steam pipe 20 m long,
  // radii 6 and 8 cm, k = 20 W/(m·°C), surfaces at 150 and 60 °C: 786 kW (memory).
  test("steam pipe", () => {
    const conductance = wallConductance({ bore: 120, length: 20000, wall: 20, bushconductivity: 20, contact: 1 });
    expect(Math.abs((conductance * (150 - 60)) / 1000 - 786)).toBeLessThanOrEqual(0.5);
  });

  // Independent: friction torque of the ring integrated numerically, pressure uniform or falling as 1/r.
  test.each([
    ["new", () => 1],
    ["worn", (r: number) => 1 / r],
  ] as const)("thrust washer, %s, against an integral over its face", (wearstate, shape) => {
    const [load, inner, outer, friction] = [4000, 175, 250, 0.3];
    const n = 20000;
    const dr = (outer - inner) / 2 / n;
    let force = 0;
    let moment = 0;
    for (let i = 0; i < n; i++) {
      const r = inner / 2 + (i + 0.5) * dr;
      const ring = shape(r) * 2 * Math.PI * r * dr;
      force += ring;
      moment += ring * r;
    }
    const expected = (friction * load * (moment / force)) / 1000;
    expect(washerTorque({ load, inner, outer, friction, wearstate })).toBeCloseTo(expected, 6);
  });

  // Shigley's Mechanical Engineering Design, frictional-contact axial clutches (memory): T = F·f·(D + d)/4 for uniform wear,
  // T = (F·f/3)·(D³ − d³)/(D² − d²) for uniform pressure; the numbers below are those formulas worked by hand.
  test("clutch plate 250/175 mm, 4 kN, f = 0.3", () => {
    const plate = { load: 4000, inner: 175, outer: 250, friction: 0.3 };
    expect(washerTorque({ ...plate, wearstate: "worn" })).toBeCloseTo(127.5, 10);
    expect(washerTorque({ ...plate, wearstate: "new" })).toBeCloseTo(128.82, 2);
  });
});
