import { functions } from "../../../src/core";
import { closeInOf, fitPressureOf, heldAtEnds, heldStrain } from "../../../src/core/fit/lame";
import type { Ring } from "../../../src/core/fit/lame";
import { call, pressedBush } from "../../support";
import type { ReferenceCase } from "../case";
import { afterHold } from "../solve/relaxingRing";
import { heldBoreChange, solveRing } from "../solve/rings";
import { rootOf } from "../solve/rootOf";
import { agreeingCells } from "./iso286Printed";
import { agreeingRows, limits } from "./iso286Rows";

const family = "Fits and clearance";
type Part = Omit<ReferenceCase, "family">;

const corrigendum = "ISO 286-2:1988/Cor.1:2006";
const shigley98 = "Shigley's Mechanical Engineering Design, 9th ed., Example 7-7, p. 398";
const shigleyFits = "Shigley's Mechanical Engineering Design, 8th ed., instructor's solutions";
const bhandari = "Bhandari: Design of Machine Elements, Example 3.3, through its Scilab companion";
const drawing = "Narayana, Kannaiah, Reddy: Machine Drawing";

const upper = 0;
const lower = 1;
const corrected: readonly [string, number, number, 0 | 1, string][] = [
  ["A", 13, 340, upper, "2090"],
  ["E", 8, 100, upper, "126"],
  ["R", 10, 25, upper, "-28"],
  ["f", 9, 300, lower, "-186"],
];
/** ISO 286-1 and -2, spot values in µm, upper and lower. */
const remembered: readonly [string, number, number, string, string][] = [
  ["H", 7, 25, "21", "0"],
  ["f", 7, 25, "-20", "-41"],
  ["g", 6, 50, "-9", "-25"],
  ["k", 6, 40, "18", "2"],
  ["p", 6, 25, "35", "22"],
  ["K", 7, 25, "6", "-15"],
  ["N", 7, 25, "-7", "-28"],
  ["P", 7, 100, "-24", "-59"],
  ["JS", 7, 25, "10.5", "-10.5"],
  ["E", 10, 20, "124", "40"],
  ["D", 10, 20, "149", "65"],
  ["F", 8, 20, "53", "20"],
  ["C", 11, 60, "330", "140"],
  ["c", 11, 70, "-150", "-340"],
  ["x", 6, 20, "67", "54"],
  ["z", 6, 30, "101", "88"],
  ["U", 7, 20, "-33", "-54"],
  ["X", 7, 20, "-46", "-67"],
  ["Z", 7, 45, "-127", "-152"],
  ["za", 7, 25, "139", "118"],
];
const sizeAt = (zone: string, end: 0 | 1): number => functions.LIMITS({ size: 34, zone })[end]!;
const hubAndShaft = () => functions.FITOF({ size: 50, fit: "H7/s6" });

const zones: readonly Part[] = [
  {
    what: "every row of limit deviations, at the upper end, in the middle and at the lower end of its range of sizes",
    source: "Table of ISO 286-2 limit deviations compiled apart from the tables in data/",
    kind: "other method",
    unit: "rows agreeing",
    expected: "3025",
    compute: agreeingRows,
  },
  {
    what: "s to zc and S to ZC, every size, two misprints mended",
    source: `${drawing}, Tables 15.2 and 15.3`,
    kind: "printed example",
    unit: "cells agreeing",
    expected: "250",
    compute: agreeingCells,
  },
  ...corrected.map(([letter, grade, size, end, expected]): Part => ({
    what: `${letter}${grade} at ${size} mm, ${end === upper ? "upper" : "lower"} deviation`,
    source: corrigendum,
    kind: "printed example",
    unit: "µm",
    expected,
    compute: () => limits(letter, grade, size)[end],
  })),
  ...(
    [
      ["34 H11", 0, "34.000"],
      ["34 H11", 1, "34.160"],
      ["34 c11", 0, "33.720"],
      ["34 c11", 1, "33.880"],
    ] as const
  ).map(([zone, end, expected]): Part => ({
    what: `LIMITS: ${zone}, ${end === 0 ? "least" : "greatest"} size`,
    source: shigley98,
    kind: "printed example",
    unit: "mm",
    expected,
    compute: () => sizeAt(zone, end),
  })),
  ...(
    [
      ["U", 225, "-256", "-258", "IT7 + D = 46 + √(200·225) = 258.1, the mirror of u in Table 15.2"],
      ["X", 400, "-650", "-660", "IT7 + 1.6·D = 57 + 1.6·√(355·400) = 659.9, the mirror of x in Table 15.2"],
    ] as const
  ).map(([letter, size, expected, should, why]): Part => ({
    what: `${letter}8 at ${size} mm, upper deviation`,
    source: `${drawing}, Table 15.3`,
    kind: "printed example",
    unit: "µm",
    expected,
    misprint: { should, why },
    compute: () => limits(letter, 8, size)[upper],
  })),
  {
    what: "P7 from 18 to 30 mm: delta 8, ES −14",
    source: `${drawing}, note to Table 15.3`,
    kind: "printed example",
    unit: "µm",
    expected: "-14",
    compute: () => limits("P", 7, 24)[upper],
  },
  ...(
    [
      ["H7 upper", "25", () => limits("H", 7, 50)[upper]],
      ["s6 upper", "59", () => limits("s", 6, 50)[upper]],
      ["s6 lower", "43", () => limits("s", 6, 50)[lower]],
      ["least clearance", "-59", () => (hubAndShaft()[0] as number) * 1000],
      ["greatest clearance", "-18", () => (hubAndShaft()[1] as number) * 1000],
    ] as const
  ).map(([what, expected, compute]): Part => ({
    what: `50 H7/s6: ${what}`,
    source: bhandari,
    kind: "printed example",
    unit: "µm",
    expected,
    compute,
  })),
  {
    what: "50 H7/s6: kind of fit",
    source: bhandari,
    kind: "printed example",
    unit: "",
    expected: "interference",
    compute: () => hubAndShaft()[2] as string,
  },
  ...remembered.flatMap(([letter, grade, size, es, ei]) =>
    ([es, ei] as const).map((expected, end): Part => ({
      what: `DEVIATION: ${letter}${grade} at ${size} mm, ${end === upper ? "upper" : "lower"}`,
      source: "ISO 286-1:2010 and ISO 286-2:2010",
      kind: "memory",
      unit: "µm",
      expected,
      compute: () => (call(functions.DEVIATION, [size, `${letter}${grade}`])[0]![end] as number) * 1000,
    })),
  ),
];

const ring = (bore: number, outside: number, housing: number, ...elastic: [number, number, number, number]): Ring => {
  const [bushModulus, bushPoisson, housingModulus, housingPoisson] = elastic;
  return { bore, outside, housing, bushModulus, bushPoisson, housingModulus, housingPoisson };
};
const sheetArgs = (r: Ring) => ({
  bore: r.bore,
  outside: r.outside,
  housing: r.housing,
  bushmodulus: r.bushModulus,
  bushpoisson: r.bushPoisson,
  housingmodulus: r.housingModulus,
  housingpoisson: r.housingPoisson,
});
const assemblies: readonly [string, Ring, number][] = [
  ["thin polyamide bush in an aluminium boss", ring(20, 23, 40, 2500, 0.4, 69000, 0.33), 0.08],
  ["thick polymer bush in a polymer housing", ring(20, 32, 50, 3000, 0.38, 2600, 0.4), 0.12],
  ["bronze ring in cast iron", ring(50, 60, 90, 110000, 0.34, 100000, 0.26), 0.05],
];
const elements = "The thick-ring equation solved by finite elements over the radius, two meshes extrapolated";
const warmth = [60 * 9e-5 + 0.006, 60 * 2.36e-5] as const;

const thinInSteel: Ring = { ...assemblies[0]![1], housingModulus: 1e15 };
const inIron = ring(0, 1, 2, 30e6, 0.292, 14.5e6, 0.211);
const inSteel = ring(0, 1, 2, 30e6, 0.292, 30e6, 0.292);

const pressing: readonly Part[] = [
  ...assemblies.flatMap(([name, r, interference]): Part[] => {
    const fit = () => functions.PRESSFIT({ ...sheetArgs(r), interference });
    return [
      {
        what: `PRESSFIT, fit pressure: ${name}`,
        source: elements,
        kind: "other method",
        unit: "MPa",
        expected: () => solveRing(r, interference).pressure,
        within: 1e-5,
        compute: () => fit()[0]!,
      },
      {
        what: `PRESSFIT, hoop stress at the bore: ${name}`,
        source: elements,
        kind: "other method",
        unit: "MPa",
        expected: () => solveRing(r, interference).hoopAtBore,
        within: 1e-4,
        compute: () => fit()[1]!,
      },
      {
        what: `PRESSFIT, bore change: ${name}`,
        source: elements,
        kind: "other method",
        unit: "mm",
        expected: () => solveRing(r, interference).boreChange,
        within: 1e-5,
        compute: () => fit()[2]!,
      },
      {
        what: `CLOSEIN: ${name}`,
        source: elements,
        kind: "other method",
        unit: "",
        expected: () => -solveRing(r, interference).boreChange / interference,
        within: 1e-5,
        compute: () => functions.CLOSEIN(sheetArgs(r)),
      },
      {
        what: `RUNCLEARANCE, change by heat and swelling in bush and housing: ${name}`,
        source: elements,
        kind: "other method",
        unit: "mm",
        expected: () => solveRing(r, interference, ...warmth).boreChange - solveRing(r, interference).boreChange,
        within: 1e-5,
        compute: () =>
          functions.RUNCLEARANCE({
            clearance: 0,
            bore: r.bore,
            outside: r.outside,
            interference,
            closein: functions.CLOSEIN(sheetArgs(r)),
            temperature: 80,
            bushexpansion: 9e-5,
            housingexpansion: 2.36e-5,
            shaftexpansion: 0,
            swelling: 0.006,
          }),
      },
    ];
  }),
  {
    what: "long bush held at its ends in a rigid housing, free strain 1.14 %: change of the bore",
    source: "Hooke's law in three dimensions with zero axial strain, marched from bore to joint (Runge-Kutta)",
    kind: "other method",
    unit: "mm",
    expected: () => heldBoreChange(thinInSteel, 0.0114),
    within: 1e-8,
    compute: () => {
      const free = heldStrain(0.0114, 0, thinInSteel.bushPoisson);
      return thinInSteel.bore * free - closeInOf(heldAtEnds(thinInSteel)) * thinInSteel.outside * free;
    },
  },
  {
    what: "RUNCLEARANCE, change: d 20, D 26, ν 0.35, rigid housing, free strain 0.0055, housing 0.000575",
    source: "Rings of bush and housing as radial finite elements in plane stress, recorded",
    kind: "other method",
    unit: "mm",
    expected: "-0.025973",
    compute: () =>
      functions.RUNCLEARANCE({
        clearance: 0,
        bore: 20,
        outside: 26,
        interference: 0.05,
        closein: functions.CLOSEIN({ ...sheetArgs(ring(20, 26, 60, 2500, 0.35, 2e5, 0.3)), housingmodulus: 1e15 }),
        temperature: 70,
        bushexpansion: 0.0055 / 50,
        housingexpansion: 0.000575 / 50,
        shaftexpansion: 0,
      }),
  },
  {
    what: "close-in of 20/23 in a rigid housing, ν 0.4",
    source: "Lamé by hand: 2·D·d/((D² + d²) − ν·(D² − d²)) = 920/877.4",
    kind: "other method",
    unit: "",
    expected: () => 920 / 877.4,
    within: 1e-9,
    compute: () => closeInOf(ring(20, 23, Infinity, 2000, 0.4, 1e15, 0.3)),
  },
  {
    what: "fit pressure of equal materials, 20/40/80, δ 0.03",
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. (7-40), the short form, worked by hand",
    kind: "other method",
    unit: "MPa",
    expected: () => (207000 * 0.03 * (80 ** 2 - 40 ** 2) * (40 ** 2 - 20 ** 2)) / (2 * 40 ** 3 * (80 ** 2 - 20 ** 2)),
    within: 1e-12,
    compute: () => fitPressureOf(ring(20, 40, 80, 207000, 0.292, 207000, 0.292), 0.03),
  },
  {
    what: "1 in steel shaft, 1.002 in, in a 2 in cast iron hub",
    source: `${shigleyFits} to Problem 3-69`,
    kind: "printed example",
    unit: "psi",
    expected: "13064",
    compute: () => fitPressureOf(inIron, 0.002),
  },
  {
    what: "the same through PRESSFIT in inch units, the shaft drilled by a hair",
    source: `${shigleyFits} to Problem 3-69`,
    kind: "printed example",
    unit: "psi",
    expected: "13064",
    compute: () => call(functions.PRESSFIT, [1e-6, 1, 2, 0.002, 30e6, 0.292, 14.5e6, 0.211], "inch")[0]![0] as number,
  },
  {
    what: "1 in steel shaft in a 2 in steel hub, interference 0.003 in at most",
    source: `${shigleyFits} to Problem 3-70`,
    kind: "printed example",
    unit: "psi",
    expected: "33750",
    compute: () => fitPressureOf(inSteel, 0.003),
  },
];

const housed = ring(20, 23, 60, 2500, 0.4, 69000, 0.33);
/** An own grade, so that its modulus and expansion are known here. */
const bushGrade = [
  [
    "grade",
    "compressive modulus [MPa]",
    "Poisson's ratio",
    "expansion [1/K]",
    "expansion step [%]",
    "swelling saturated",
  ],
  ["X", 2500, 0.4, 9e-5, "0 %", "1 %"],
];
/** One row of FITTABLE by its headings. */
function inState(state: string, card: unknown): Record<string, unknown> {
  const [headings, ...rows] = call(functions.FITTABLE, [card, "", "X", bushGrade]) as [string[], ...unknown[][]];
  const row = rows.find(([name]) => name === state)!;
  return Object.fromEntries(headings.map((heading, i) => [heading, row[i]]));
}
const holding = "Ring of a standard linear solid in an elastic ring, by elements over the radius and steps of time";
/** The least clearance at 80 °C of 20 +0.05/+0.08 over −0.02/−0.04, bush 23 +0.05/+0.1 in 0/+0.02, sizes moved by the elements. */
function hotLeast(housingExpansion: number, shaftExpansion: number): number {
  const [bore, shaft] = [20.05, 19.98];
  const [bushStrain, housingStrain] = [60 * 9e-5, 60 * housingExpansion];
  const changes = [0.03, 0.1].map((interference) => {
    const pressed = solveRing(housed, interference).boreChange;
    const hot = solveRing(housed, interference, bushStrain, housingStrain).boreChange;
    // the elements move the nominal bore; what the bush was wider than that before it was pressed in grows freely
    return hot - pressed + (bore - 20 - pressed) * bushStrain;
  });
  return bore - shaft + Math.min(...changes) - shaft * 60 * shaftExpansion;
}

/** Half-width of the clearance of sizes drawn from their tolerances: three standard deviations where each half tolerance is three. */
function bandByDraws(): number {
  let state = 12345;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const n = 400_000;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((0.0105 / 3) * normal() - (0.0105 / 3) * normal()) ** 2;
  return 3 * Math.sqrt(squares / n);
}

const clearances: readonly Part[] = [
  {
    what: "CLEARANCE, half-width of the root-sum-square band of 20 H7/f7",
    source: "400 000 pairs drawn at random, half tolerances as three standard deviations",
    kind: "other method",
    unit: "mm",
    expected: bandByDraws,
    within: 5e-3,
    compute: () => {
      const [, , least, greatest] = functions.CLEARANCE({
        boreleast: 20,
        boregreatest: 20.021,
        shaftleast: 19.959,
        shaftgreatest: 19.98,
      });
      return (greatest! - least!) / 2;
    },
  },
  {
    what: "FITTABLE, least clearance hot: X in an aluminium housing of 60 mm, steel shaft, 80 °C",
    source: `${elements}; expansions of Callister, Table B.6`,
    kind: "other method",
    unit: "mm",
    expected: () => hotLeast(23.6e-6, 11.7e-6),
    within: 1e-6,
    compute: () => {
      const card = pressedBush({
        ...{ temperature: "20 to 80", "housing outside": 60, "bore zone": "+0.05/+0.08" },
        ...{ "housing zone": "0/+0.02", "shaft zone": "-0.04/-0.02" },
      });
      return inState("hot", card)["least clearance [mm]"] as number;
    },
  },
  ...[
    { what: "gripping", outside: "+0.12/+0.12", kept: 0.6, temperature: "20 to 80", moisture: "dry" },
    { what: "loose when cold again", outside: "+0.08/+0.08", kept: 0.4, temperature: "0 to 80", moisture: "dry" },
    { what: "soaked when hot", outside: "+0.12/+0.12", kept: 0.8, temperature: "10 to 60", moisture: "wet" },
  ].flatMap(({ what, outside, kept, temperature, moisture }): Part[] => {
    const zones = { "bore zone": "0/0", "outside zone": outside, "housing zone": "0/0", "shaft zone": "-1/-1" };
    const card = pressedBush({
      ...{ ...zones, "zone holds": "free", temperature, moisture, "housing outside": 40 },
      "share of grip kept": `${kept * 100} %`,
    });
    const [low, high] = temperature.split(" to ").map(Number) as [number, number];
    const mismatch = (t: number) => (9e-5 - 23.6e-6) * (t - 20);
    const solved = () =>
      afterHold({
        ...{ bore: 20, outside: 23, modulus: 2500, poisson: 0.4, kept },
        interference: Number(outside.split("/")[0]),
        hot: mismatch(high) + (moisture === "wet" ? 0.01 : 0),
        now: mismatch(low),
        housing: { outer: 40, modulus: 69000, poisson: 0.33 },
      });
    const common = {
      source: `${holding}; expansions of Callister, Table B.6`,
      kind: "other method",
      unit: "mm",
    } as const;
    return [
      {
        ...common,
        what: `FITTABLE, interference left back from a hot hold: ${what}`,
        expected: () => solved().left,
        within: 1e-5,
        compute: () => inState("cold again", card)["least interference [mm]"] as number,
      },
      {
        ...common,
        what: `FITTABLE, bore back from a hot hold: ${what}`,
        // all is counted from a housing that keeps its size: with it the bush shrinks by 23.6e-6/K
        expected: () => 20 * (1 + 23.6e-6 * (low - 20)) + solved().bore,
        within: 1e-6,
        compute: () =>
          (inState("cold again", card)["least clearance [mm]"] as number) + 19 * (1 + 11.7e-6 * (low - 20)),
      },
    ];
  }),
  {
    what: "FREETILT: 0.04 mm in a bush of 20 mm",
    source: "The angle whose tangent is the clearance over the length, by bisection",
    kind: "other method",
    unit: "°",
    expected: () => rootOf((degrees) => Math.tan((degrees * Math.PI) / 180) - 0.04 / 20, 0, 45),
    within: 1e-12,
    compute: () => functions.FREETILT({ clearance: 0.04, length: 20 }),
  },
];

export const fitCases: readonly ReferenceCase[] = [...zones, ...pressing, ...clearances].map((part) => ({
  family,
  ...part,
}));
