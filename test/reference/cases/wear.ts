import { functions } from "../../../src/core";
import { toWorking } from "../../../src/core/units/scale";
import { call } from "../../support";
import type { ReferenceCase } from "../case";

const family = "Wear and cost";
const juvinall =
  "Juvinall, Marshek: Fundamentals of Machine Component Design, surface damage: copper pin (785 MPa) on a steel disk (2059 MPa), 20 N at 16 mm, 80 rev/min, 2 h; wear coefficients 1.10e-4 and 6.93e-5";

/** mm³ worn off by a coefficient over a hardness, through WEAR on a face of 12 mm². */
function wornVolume(coefficient: number, hardness: number): number {
  const area = 12;
  const wearrate = (coefficient / hardness) * 1000;
  return functions.WEAR({ wearrate, pressure: 20 / area, distance: (2 * Math.PI * 16 * 80 * 120) / 1e6 }) * area;
}

/** Depth in mm of a face of 1 mm², worn in small steps of sliding, each taking k·F·Δs of volume. */
function wornInSteps(wearrate: number, load: number, metres: number): number {
  const steps = 100_000;
  let volume = 0;
  for (let i = 0; i < steps; i++) volume += wearrate * load * (metres / steps);
  return volume;
}

/** Hours on the clock until the allowance is gone, the same law stepped second by second. */
function hoursUntilWorn(wearrate: number, pressure: number, speed: number, allowance: number): number {
  let [depth, seconds] = [0, 0];
  const step = 10;
  while (depth < allowance) {
    depth += wearrate * pressure * speed * step;
    seconds += step;
  }
  return seconds / 3600;
}

/** All that is paid for 5000 pieces in lots of 200, over the pieces. */
function ledger(): number {
  let [paid, pieces] = [900, 0];
  for (; pieces < 5000; pieces += 200) paid += 200 * 2.4 + 0.04 * (200 * 2.4) + 60;
  return paid / pieces;
}

/** Cost per 1000 h of a machine that runs a very long time and changes the part whenever its life is up. */
function costOfRunning(): number {
  const hours = 4_000_000;
  let paid = 0;
  for (let clock = 0; clock < hours; clock += 4000) paid += 3 + 18 + 40;
  return (paid / hours) * 1000;
}

const breaks = [
  [1, 4.2],
  [100, 3.1],
  [500, 2.4],
];

/** The parts of a table in order of cost per hour, by hand: price over the life of the grade's greater wear rate. */
const quotes = [
  ["part", "supplier", "grade", "bore [mm]", "length [mm]", "price", "order quantity", "life allowance [mm]"],
  ["A", "S", "A grade", 20, 15, 1.9, 200, 0.3],
  ["B", "S", "B grade", 20, 15, 2.4, 200, 0.3],
  ["C", "S", "A grade", 20, 15, 1.2, 200, 0.15],
];
const grades = [
  [
    "grade",
    "running pressure limit [MPa]",
    "speed limit turning [m/s]",
    "PV limit [MPa*m/s]",
    "lowest temperature [°C]",
    "highest temperature [°C]",
    "wear rate low [mm^3/(N*m)]",
    "wear rate high [mm^3/(N*m)]",
    "wear rate from",
  ],
  ["A grade", 20, 1, 0.2, -40, 90, 1e-6, 4e-6, "bush"],
  ["B grade", 20, 1, 0.2, -40, 90, 5e-7, 2e-6, "bush"],
];
/** 0.5 MPa at 0.1 m/s. */
const duty = [
  ["load [N]", "bore [mm]", "length [mm]", "rpm", "temperature [°C]"],
  [150, 20, 15, (0.1 * 60_000) / (Math.PI * 20), 20],
];
function cheapestFirst(): string {
  const rate = { "A grade": 4e-6, "B grade": 2e-6 } as Record<string, number>;
  return quotes
    .slice(1)
    .map((q) => ({ part: q[0], cost: Number(q[5]) / (Number(q[7]) / (rate[String(q[2])]! * 0.5 * 0.1 * 3600)) }))
    .sort((a, b) => a.cost - b.cost)
    .map((q) => q.part)
    .join(" ");
}

export const wearCases: readonly ReferenceCase[] = [
  {
    family,
    what: "WEAR: volume of the pin",
    source: juvinall,
    kind: "memory",
    unit: "mm³",
    expected: "2.7",
    compute: () => wornVolume(1.1e-4, 785),
  },
  {
    family,
    what: "WEAR: volume of the disk",
    source: juvinall,
    kind: "memory",
    unit: "mm³",
    expected: "0.65",
    compute: () => wornVolume(6.93e-5, 2059),
  },
  {
    family,
    what: "LIFE in inch units: K·P·V·T is the depth; K = 24e-10, 100 psi, 100 ft/min, 0.024 in",
    source: "ASTM D3702: wear factor K = W/(P·V·T), W in inches, P in psi, V in ft/min, T in hours, worked by hand",
    kind: "memory",
    unit: "h",
    expected: "1000",
    within: 1e-10,
    compute: () => call(functions.LIFE, [24e-10, 100, 100, 0.024, null, null], "inch")[0]![0] as number,
  },
  {
    family,
    what: "wear factor of 1e-10 in³·min/(ft·lbf·h) in mm³/(N·m)",
    source: "Exact inch, pound and standard gravity (SI Brochure, 9th ed.; NIST SP 811, 2008)",
    kind: "definition",
    unit: "mm³/(N·m)",
    expected: () => (1e-10 * 25.4 ** 3) / 60 / (0.3048 * 0.45359237 * 9.80665),
    within: 1e-12,
    compute: () => toWorking("wearRate", 1e-10, "inch"),
  },
  {
    family,
    what: "WEAR: k = 2e-6, 2.67 MPa, 400 km",
    source: "Volume worn off a face of 1 mm² in 100 000 steps of sliding",
    kind: "other method",
    unit: "mm",
    expected: () => wornInSteps(2e-6, 2.67, 400_000),
    within: 1e-9,
    compute: () => functions.WEAR({ wearrate: 2e-6, pressure: 2.67, distance: 400 }),
  },
  {
    family,
    what: "LIFE: k = 2e-6, 2.67 MPa, 0.1257 m/s, 0.5 mm",
    source: "Wear followed by the clock until the allowance is gone",
    kind: "other method",
    unit: "h",
    expected: () => hoursUntilWorn(2e-6, 2.67, 0.1257, 0.5),
    within: 1e-4,
    compute: () => functions.LIFE({ wearrate: 2e-6, pressure: 2.67, speed: 0.1257, allowance: 0.5 }),
  },
  {
    family,
    what: "LIFEBAND: shortest life of a grade of 4e-6",
    source: "Wear followed by the clock until the allowance is gone",
    kind: "other method",
    unit: "h",
    expected: () => hoursUntilWorn(4e-6, 0.5, 0.1, 0.3),
    within: 1e-4,
    compute: () => call(functions.LIFEBAND, ["A grade", 0.5, 0.1, 0.3, null, grades])[1]![0] as number,
  },
  {
    family,
    what: "LANDED: 2.40 a piece, lots of 200, tooling 900, 5000 pieces, freight 60, duty 4 %",
    source: "Ledger of every lot, all that was paid over all pieces",
    kind: "other method",
    unit: "",
    expected: ledger,
    within: 1e-12,
    compute: () => functions.LANDED({ price: 2.4, quantity: 200, tooling: 900, volume: 5000, freight: 60, duty: 0.04 }),
  },
  {
    family,
    what: "RUNCOST: 3 a piece, 4000 h, labour 18, downtime 40",
    source: "A machine run for four million hours, every change of the part paid",
    kind: "other method",
    unit: "per 1000 h",
    expected: costOfRunning,
    within: 1e-12,
    compute: () => functions.RUNCOST({ landed: 3, life: 4000, labour: 18, downtime: 40 }),
  },
  {
    family,
    what: "PRICEAT: 250 pieces",
    source: "The price of a break holds from its quantity on, no source",
    kind: "definition",
    unit: "",
    expected: "3.1",
    compute: () => call(functions.PRICEAT, [250, breaks])[0]![0] as number,
  },
  {
    family,
    what: "QUOTES: order of three parts",
    source: "Price over life worked apart and sorted: " + cheapestFirst(),
    kind: "other method",
    unit: "",
    expected: cheapestFirst(),
    compute: () =>
      call(functions.QUOTES, [quotes, duty, null, grades])
        .slice(1, 4)
        .map((line) => line[1])
        .join(" "),
  },
];
