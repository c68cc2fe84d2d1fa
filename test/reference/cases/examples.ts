import { functions } from "../../../src/core";
import { call } from "../../support";
import type { ReferenceCase } from "../case";
import { printed } from "./typed";

const notebook = "as its open companion notebook prints it (the book itself not opened)";
const shigley = "Shigley's Mechanical Engineering Design, 8th ed., solutions manual, p. 323, Prob. 12-22";
const wentzell = (at: string) => `Wentzell: Machine Design, ${at}, ${notebook}`;
const khurmi = (at: string) => `Khurmi, Gupta: Theory of Machines, ${at}, ${notebook}`;
const jindal = (at: string) => `Jindal: Machine Design, ${at}, ${notebook}`;
const ugural = `Ugural, Fenster: Advanced Strength and Applied Elasticity, Ex. 8.3, p. 243, ${notebook}`;
const boresi = `Boresi, Schmidt: Advanced Mechanics of Materials, 6th ed., Ex. 11.3, p. 398, ${notebook}`;
const crawford = "Crawford: Plastics Engineering, 3rd ed.";
const sp811 = "NIST Special Publication 811, 2008 edition, Appendix B, B.2 and its examples";

/** Power of a torque in N·m at a speed in rev/min. */
const watts = (rpm: number, per = 1) =>
  [
    `times 2π·${rpm}/60${per === 1 ? "" : `, over ${per}`}`,
    (torque: number) => (torque * 2 * Math.PI * rpm) / 60 / per,
  ] as const;

/** An own grade that only a PV limit bounds. */
const byPv = [
  [
    ...["grade", "running pressure limit [psi]", "speed limit turning [ft/min]", "PV limit [psi*ft/min]"],
    ...["lowest temperature [°F]", "highest temperature [°F]"],
  ],
  ["X", 100_000, 5000, 3000, -100, 570],
];
/** What DUTYCHECKS finds for one criterion of a card in inch units. */
const found = (criterion: string, card: unknown): number =>
  call(functions.DUTYCHECKS, [card, null, "X", byPv], "inch").find(([name]) => name === criterion)![1] as number;
const machine = Object.entries({ load: 20, bore: 0.75, length: 0.875, rpm: 500, temperature: 70 });
const bush = Object.entries({ load: 500, bore: 1, length: 1, rpm: 200, temperature: 70 });
const onCard = (source: string, criterion: string, unit: string, expected: string, card: unknown): ReferenceCase => ({
  family: "Duties",
  what: `DUTYCHECKS, ${criterion} of the card ${(card as [string, number][]).map(([name, value]) => `${name} ${value}`).join(", ")}`,
  source,
  kind: "printed example",
  unit,
  expected,
  compute: () => found(criterion, card),
});

/** Printed examples of all families, each computed by the formula that its reader would type. */
export const exampleCases: readonly ReferenceCase[] = [
  printed(shigley, "500", "psi", { f: functions.PRESSURE, given: [500, 1, 1], units: "inch" }),
  printed(shigley, "52.4", "ft/min", { f: functions.SPEED, given: [1, 200], units: "inch" }),
  printed(wentzell("Ex. 19.1, p. 417"), "98.17", "ft/min", { f: functions.SPEED, given: [0.75, 500], units: "inch" }),
  printed(wentzell("Ex. 19.1, p. 417"), "30.48", "psi", {
    f: functions.PRESSURE,
    given: [20, 0.75, 0.875],
    units: "inch",
  }),
  printed(khurmi("Ex. 10.22, p. 302"), "0.17", "MPa", { f: functions.WASHERPRESSURE, given: [4000, 100, 200] }),
  printed(
    `Hibbeler: Mechanics of Materials, Ex. 12.14, p. 621, ${notebook}`,
    "52",
    "kN·m²",
    {
      f: functions.SHAFTSLOPE,
      given: ["overhung", 10_000, 4000, Math.round((64e15 / 210_000 / Math.PI) ** 0.25 * 1000) / 1000, 210_000, 2000],
      then: ["in rad, times its E·I of 1e6 kN·m²", (degrees) => (degrees * Math.PI * 1e6) / 180],
    },
    { misprint: { should: "26.67", why: "F·a·s/3 = 10·2·4/3; the notebook divides whole numbers" } },
  ),
  {
    family: "Grades, limits, verdicts",
    what: "MINLENGTH: 20 lbf on 0.75 in at 98.17 ft/min, a PV limit of 3000 psi·ft/min",
    source: wentzell("Ex. 19.1, p. 417"),
    kind: "printed example",
    unit: "in",
    expected: "0.873",
    compute: () => call(functions.MINLENGTH, ["X", 20, 0.75, 98.17, 70, byPv], "inch")[0]![0] as number,
  },
  onCard(wentzell("Ex. 19.1, p. 417"), "running pressure", "psi", "30.48", machine),
  onCard(wentzell("Ex. 19.1, p. 417"), "speed", "ft/min", "98.17", machine),
  onCard(shigley, "running pressure", "psi", "500", bush),
  onCard(shigley, "speed", "ft/min", "52.4", bush),
  printed(khurmi("Ex. 10.15, p. 286"), "271.4", "W", {
    f: functions.HEAT,
    given: [2000, (Math.PI * 60 * 1440) / 60_000, 0.03],
  }),
  printed(khurmi("Ex. 10.16, p. 288"), "523.6", "W", {
    f: functions.WASHERTORQUE,
    given: [20_000, 0, 150, 0.05, "new"],
    then: watts(100),
  }),
  printed(khurmi("Ex. 10.19, p. 295"), "25.45", "kW", {
    f: functions.WASHERTORQUE,
    given: [100_000, 300, 600, 0.12, "worn"],
    then: watts(90, 1000),
  }),
  printed(khurmi("Ex. 10.20, p. 296"), "13.64", "kW", {
    f: functions.WASHERTORQUE,
    given: [150_000, 250, 400, 0.05, "new"],
    then: watts(105, 1000),
  }),
  printed(`${khurmi("Ex. 10.28, p. 308")}, load from 0.127 MPa at the inner radius`, "18.8", "kW", {
    f: functions.WASHERTORQUE,
    given: [2992.4, 150, 250, 0.3, "worn"],
    then: ["times 4 faces and 2π·500/60, over 1000", (torque) => (torque * 4 * 2 * Math.PI * 500) / 60 / 1000],
  }),
  printed(`Bevan: The Theory of Machines, Ex. 3, p. 193, ${notebook}`, "19.24", "hp", {
    f: functions.WASHERTORQUE,
    given: [35_840, 12, 16, 0.04, "new"],
    units: "inch",
    then: ["times 120/63025", (torque) => (torque * 120) / 63_025],
  }),
  printed(
    `${jindal("Ex. 22-5, p. 591")}, load printed to 0.1 N`,
    "102.314",
    "N·m",
    {
      f: functions.WASHERTORQUE,
      given: [1031.1, 100, 160, 0.25, "new"],
      then: ["times 6 faces", (torque) => torque * 6],
    },
    { within: 0.005 / 102.314 },
  ),
  printed(wentzell("Ex. 16.1, p. 358"), "378.0", "lbf·in", {
    f: functions.WASHERTORQUE,
    given: [120, 18, 24, 0.3, "worn"],
    units: "inch",
  }),
  printed(
    `${crawford}, Ex. 2.7, pp. 64-65: a ring of nylon on a steel shaft (interference printed to 0.32 mm on the radius)`,
    "8.5",
    "MPa",
    { f: functions.PRESSFIT, given: [1e-6, 30, 50, 0.64, 1e9, 0.3, 1000, 0.4] },
    { within: 0.13 / 8.5 },
  ),
  printed(`${crawford}, Ex. 2.6, p. 63: 40 mm of plastic and steel, 80 K`, "0.22", "mm", {
    f: functions.RUNCLEARANCE,
    given: [0, 40, 50, 0, 1, 100, 8e-5, 8e-5, 1.1e-5],
  }),
  printed(ugural, "12.3", "MPa", { f: functions.PRESSFIT, given: [300, 400, 500, 0.2, 200_000, 0.3, 200_000, 0.3] }),
  printed(
    `${ugural}; it goes on with 12.3`,
    "-56.23",
    "MPa",
    { f: functions.PRESSFIT, given: [300, 400, 500, 0.2, 200_000, 0.3, 200_000, 0.3], column: 1 },
    { within: 0.03 / 56.23 },
  ),
  printed(
    `${boresi}; it goes on with a rounded pressure`,
    "-449.92",
    "MPa",
    { f: functions.PRESSFIT, given: [20, 50, 100, 0.144, 200_000, 0.29, 200_000, 0.29], column: 1 },
    { within: 0.15 / 449.92 },
  ),
  ...(
    [
      ["Ex. 4-2, p. 112", 25, "H7", "21", "0"],
      ["Ex. 4-3, p. 113", 50, "H8", "39", "0"],
      ["Ex. 4-3, p. 113", 50, "g7", "-9", "-34"],
      ["Ex. 4-4, p. 114", 30, "j6", "11", "-5", "9", "-4"],
      ["Ex. 4-4, p. 114", 30, "H7", "25", "0", "21", "0"],
    ] as const
  ).flatMap(([at, size, zone, upper, lower, ...should]) =>
    [upper, lower].map((expected, column) => {
      const right = should[column];
      const why = "30 mm is the end of the range from 18 to 30; the book reads the next one";
      const misprint = right === undefined || right === expected ? {} : { misprint: { should: right, why } };
      const then = ["in µm", (mm: number) => mm * 1000] as const;
      return printed(
        jindal(at),
        expected,
        "µm",
        { f: functions.DEVIATION, given: [size, zone], column, then },
        misprint,
      );
    }),
  ),
  ...(["-0.041", "-0.007"] as const).map((expected, column) =>
    printed(jindal("Ex. 4-2, p. 112"), expected, "mm", { f: functions.FITOF, given: [25, "H7/r6"], column }),
  ),
  printed(jindal("Ex. 4-2, p. 112"), "interference", "", { f: functions.FITOF, given: [25, "H7/r6"], column: 2 }),
  printed(sp811, "1195635", "Pa", { f: functions.UNIT, given: [11.8, "atm", "Pa"] }),
  printed(sp811, "0.1382550", "kg·m/s", { f: functions.UNIT, given: [1, "lb ft/s", "kg m/s"] }),
  printed(sp811, "0.02831685", "m³/s", { f: functions.UNIT, given: [1, "ft^3/s", "m^3/s"] }),
];
