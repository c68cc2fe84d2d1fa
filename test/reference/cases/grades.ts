import { functions } from "../../../src/core";
import type { System } from "../../../src/core/kinds";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { rootOf } from "../solve/rootOf";

const family = "Grades, limits, verdicts";

const shigley = "Budynas, Nisbett: Shigley's Mechanical Engineering Design, 8th to 10th ed., Table 12-7";
const a4 = "Neale: The Tribology Handbook, 2nd ed. 1995, section A4, rubbing bearing materials";
const a4Unfilled = "Neale: The Tribology Handbook, 2nd ed. 1995, section A4, thermoplastics without filler";
const a5 = "Neale: The Tribology Handbook, 2nd ed. 1995, section A5, p. A5.1";
const crawford = "Crawford: Plastics Engineering, Table 1.8, p. 31";
const callister = "Callister, Rethwisch: Fundamentals of Materials Science and Engineering, 3rd ed. 2008, Table B.1";
const callisterB6 = callister.replace("B.1", "B.6");
const margolis = "Margolis (ed.): Engineering Plastics Handbook, 2006, Table 5.5, p. 91";
const king = "R. B. King: RAE Technical Report 78063, 1978, summary";

/** The generic library against the figures as printed. */
const printed: readonly [string, string, string, System, string, string][] = [
  ["PA66", "running pressure limit", "1000", "inch", "psi", shigley],
  ["PA66", "PV limit", "1000", "inch", "psi·ft/min", a4Unfilled],
  ["PA66", "static pressure limit", "10", "metric", "MPa", a5],
  ["PA66", "highest temperature", "90", "metric", "°C", crawford],
  ["PA66", "expansion", "144e-6", "metric", "1/K", callisterB6],
  ["PA66", "conductivity", "0.24", "metric", "W/(m·K)", crawford],
  ["PA66", "density", "1.14", "metric", "g/cm³", crawford],
  ["PA66 lubricated", "static pressure limit", "15", "metric", "MPa", a5],
  ["PA66 lubricated", "running pressure limit", "1500", "inch", "psi", a4],
  ["PA66 lubricated", "friction high", "0.4", "metric", "", a4],
  ["POM homopolymer", "running pressure limit", "1000", "inch", "psi", shigley],
  ["POM copolymer", "PV limit", "1000", "inch", "psi·ft/min", a4Unfilled],
  ["POM copolymer", "highest temperature", "180", "inch", "°F", shigley],
  ["POM copolymer", "conductivity", "0.2", "metric", "W/(m·K)", crawford],
  ["POM copolymer", "compressive modulus", "2500", "metric", "MPa", margolis],
  ["PTFE", "PV limit", "1000", "inch", "psi·ft/min", shigley],
  ["PTFE", "highest temperature", "250", "metric", "°C", crawford],
  ["PTFE", "expansion", "216e-6", "metric", "1/K", callisterB6],
  ["PTFE", "density", "2.17", "metric", "g/cm³", callister],
  ["PTFE + glass", "highest temperature", "250", "metric", "°C", a5],
  ["PTFE + carbon", "friction high", "0.35", "metric", "", a4],
  ["PTFE fabric", "static pressure limit", "60000", "inch", "psi", a4],
  ["PTFE fabric", "PV limit", "25000", "inch", "psi·ft/min", shigley],
  ["PTFE fabric", "wear rate low", "7e-8", "metric", "mm³/(N·m)", king],
  ["PTFE fabric", "conductivity", "0.24", "metric", "W/(m·K)", a5],
  ["phenolic fabric", "static pressure limit", "30", "metric", "MPa", a5],
  ["phenolic fabric", "highest temperature", "200", "inch", "°F", shigley],
  ["phenolic fabric", "expansion", "80e-6", "metric", "1/K", a4],
  ["UHMWPE", "static pressure limit", "10", "metric", "MPa", a5],
  ["UHMWPE", "expansion", "360e-6", "metric", "1/K", callisterB6],
  ["UHMWPE", "density", "0.94", "metric", "g/cm³", callister],
  ["PEEK", "highest temperature", "204", "metric", "°C", crawford],
  ["PEEK", "static pressure limit", "30", "metric", "MPa", a5],
  ["PET", "expansion", "117e-6", "metric", "1/K", callisterB6],
  ["PBT", "expansion", "171e-6", "metric", "1/K", callisterB6],
  ["PI + graphite", "highest temperature", "250", "metric", "°C", a5],
  ["PI + graphite", "expansion", "50e-6", "metric", "1/K", a5],
];

/** Sources that were recalled, not read again. */
const recalled: ReadonlySet<string> = new Set([shigley, a4Unfilled]);

/** Both unit systems as the source prints them side by side: its own rounding is the tolerance. */
const printedMetric: readonly [string, string, string, number, string][] = [
  ["PA66 lubricated", "running pressure limit", "10", 0.5, "MPa"],
  ["PTFE fabric", "static pressure limit", "420", 10, "MPa"],
];

const curve = [
  [-40, 0.12],
  [23, 0.12],
  [90, 0.05],
] as const;
/** An own row with limits known here, so that nothing is looked up in the library. */
const table = [
  [
    "grade",
    "running pressure limit [MPa]",
    "speed limit turning [m/s]",
    "PV limit [MPa*m/s]",
    "lowest temperature [°C]",
    "highest temperature [°C]",
    "PV at temperature [°C: MPa*m/s]",
  ],
  ["X", 20, 1.1, 0.12, -40, 90, curve.map(([at, value]) => `${at}: ${value}`).join("; ")],
  ["Y", 12, 0.9, 0.3, -20, 80, null],
];
const number = (cells: unknown[][]): number => cells[0]![0] as number;

/** A point of the straight line between two points of the curve, by Lagrange's formula. */
function onCurve(at: number): number {
  const [[x0, y0], [x1, y1]] = [curve[1], curve[2]];
  return (y0 * (at - x1)) / (x0 - x1) + (y1 * (at - x0)) / (x1 - x0);
}

/** MPa·m/s at which friction alone takes the bore of X from the surroundings to its highest temperature: the PV limit heats it from 23 °C to 90 °C. */
const heatingTo90 = (surroundings: number): number => (0.12 * (90 - surroundings)) / (90 - 23);

/** Whether X holds a sleeve, straight from the limits. */
const overload = (load: number, bore: number, length: number, speed: number): number => {
  const pressure = load / (bore * length);
  return Math.max(pressure / 20, (pressure * speed) / onCurve(40), (pressure * speed) / heatingTo90(40)) - 1;
};
const speedAt = (bore: number, rpm: number): number => (Math.PI * bore * rpm) / 60_000;

export const gradeCases: readonly ReferenceCase[] = [
  ...printed.map(([grade, property, expected, system, unit, source]): ReferenceCase => ({
    family,
    what: `${grade}, ${property}`,
    source,
    kind: recalled.has(source) ? "memory" : "printed example",
    unit,
    expected,
    within: 1e-12,
    compute: () => number(call(functions.GRADE, [grade, property], system)) * (unit === "%" ? 100 : 1),
  })),
  ...printedMetric.map(([grade, property, expected, within, unit]): ReferenceCase => ({
    family,
    what: `${grade}, ${property}, the source's own metric column`,
    source: a4,
    kind: "printed example",
    unit,
    expected,
    within,
    compute: () => number(call(functions.GRADE, [grade, property])),
  })),
  {
    family,
    what: "ALLOWABLE: PV limit at 60 °C, between two points of a curve",
    source: "Lagrange's formula of the straight line",
    kind: "other method",
    unit: "MPa·m/s",
    expected: () => onCurve(60),
    within: 1e-12,
    compute: () => number(call(functions.ALLOWABLE, ["X", "PV limit", 60, table])),
  },
  {
    family,
    what: "ALLOWABLE: PV limit from −20 to 60 °C",
    source: "Least of the curve sampled at a million temperatures",
    kind: "other method",
    unit: "MPa·m/s",
    expected: () => {
      let least = Infinity;
      for (let i = 0; i <= 1e6; i++)
        least = Math.min(least, Math.min(0.12, onCurve(Math.max(23, -20 + (80 * i) / 1e6))));
      return least;
    },
    within: 1e-9,
    compute: () => number(call(functions.ALLOWABLE, ["X", "PV limit", "-20 to 60", table])),
  },
  {
    family,
    what: "MAXLOAD: 20 × 15 mm at 0.05 m/s and 40 °C",
    source: "Bisection on the largest load that breaks no limit",
    kind: "other method",
    unit: "N",
    expected: () => rootOf((load) => overload(load, 20, 15, 0.05), 0, 1e6),
    within: 1e-10,
    compute: () => number(call(functions.MAXLOAD, ["X", 20, 15, 0.05, 40, table])),
  },
  {
    family,
    what: "MINLENGTH: 800 N, 20 mm at 0.05 m/s and 40 °C",
    source: "Bisection on the least length that breaks no limit",
    kind: "other method",
    unit: "mm",
    expected: () => rootOf((length) => -overload(800, 20, length, 0.05), 1e-6, 1e4),
    within: 1e-10,
    compute: () => number(call(functions.MINLENGTH, ["X", 800, 20, 0.05, 40, table])),
  },
  {
    family,
    what: "MAXRPM: 800 N, 20 × 15 mm at 40 °C",
    source: "Bisection on the highest speed that breaks no limit of speed and PV",
    kind: "other method",
    unit: "1/min",
    expected: () =>
      rootOf((rpm) => Math.max(speedAt(20, rpm) / 1.1 - 1, overload(800, 20, 15, speedAt(20, rpm))), 0, 1e6),
    within: 1e-10,
    compute: () => number(call(functions.MAXRPM, ["X", 800, 20, 15, 40, table])),
  },
  {
    family,
    what: "USE: 2 MPa at 0.04 m/s and 40 °C",
    source: "Each ratio worked by hand, the largest taken",
    kind: "other method",
    unit: "",
    expected: () => Math.max(2 / 20, 0.04 / 1.1, (2 * 0.04) / onCurve(40), (2 * 0.04) / heatingTo90(40)),
    within: 1e-12,
    compute: () => number(call(functions.USE, ["X", 2, 0.04, 40, "turning", table])),
  },
  {
    family,
    what: "CHECKS: PV limit of the table at 40 °C",
    source: "Lagrange's formula of the straight line",
    kind: "other method",
    unit: "MPa·m/s",
    expected: () => onCurve(40),
    within: 1e-12,
    compute: () =>
      call(functions.CHECKS, ["X", 2, 0.04, 40, "turning", table]).find((line) => line[0] === "PV")![2] as number,
  },
  {
    family,
    what: "VERDICT: 3 MPa at 0.05 m/s and 40 °C",
    source: "By hand: PV 0.15 over 0.102239 is 147 %, over the 0.089552 that heat the bore from 40 to 90 °C 167.5 %",
    kind: "other method",
    unit: "",
    expected: "fails, bore temperature 168 %",
    compute: () => String(call(functions.VERDICT, ["X", 3, 0.05, 40, "turning", table])[0]![0]),
  },
  {
    family,
    what: "SHORTLIST: X before or behind Y at 2 MPa, 0.04 m/s, 40 °C",
    source:
      "By hand: X uses 0.08/0.089552 = 89 % up to its bore temperature, Y 0.08/(0.3 × 40/57) = 38 %; Y stands first",
    kind: "other method",
    unit: "",
    expected: "Y X",
    compute: () =>
      call(functions.SHORTLIST, [2, 0.04, 40, "turning", "dry", table])
        .flat()
        .filter((cell) => cell === "X" || cell === "Y")
        .join(" "),
  },
];
