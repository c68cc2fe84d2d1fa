import { criteria } from "../../../src/core/duties";
import type { Duty, FieldValues } from "../../../src/core/duties";
import { standardLibrary } from "../../../src/core/grades/model";
import type { Values } from "../../../src/core/grades/model";
import { Band } from "../../../src/core/band";
import { readZone } from "../../../src/core/fit/zones/zone";
import { percentText } from "../../../src/core/measure";
import type { Working } from "../../../src/core/duties/judging/criterion";
import { evaluate, readLine, symbolsOf } from "../../../src/core/teach/working";
import type { Line } from "../../../src/core/teach/working";
import { between, checksOf, curve, described, full, on, resting, stated } from "./support";

/** The lines that a criterion shows, worked through as they stand, against what it finds: a record cannot show another sum. */
const washer: FieldValues = {
  ...{ part: "washer", load: 600, inner: 20, outer: 40, rpm: 30 },
  ...{ temperature: { low: 23, high: 23 } },
};
const flanged: FieldValues = {
  ...{ part: "flanged", load: 500, axialLoad: 250, bore: 20, length: 20, flangeOutside: 30, rpm: 20 },
  ...{ temperature: { low: 5, high: 35 } },
};
const factors = { geometryFactor: 1.5, heatFactor: 0.5, counterfaceFactor: 2, impactFactor: 1.4, designFactor: 1.5 };
const zone = (text: string) => readZone(text, "metric", "zone");
/** A bush pressed into its housing; its swelling and what it keeps of its grip as each duty says. */
const fitted: FieldValues = {
  ...{
    wall: 1.5,
    boreZone: zone("E10"),
    shaftZone: zone("f7"),
    outsideZone: zone("+0.05/+0.10"),
    housingZone: zone("H7"),
  },
  ...{ housing: "aluminium alloy", housingOutside: 40, shaft: "stainless steel", temperature: { low: -10, high: 50 } },
};
const fits = {
  fit: on(fitted),
  "fit, at rest": on(fitted, { ...resting, load: 4000 }),
  "fit that keeps a share": on({ ...fitted, keptGrip: 0.6, assemblyMoisture: "dry", moisture: "wet" }),
  "fit that dries": on({ ...fitted, keptGrip: 0.4, assemblyMoisture: "wet", leastClearance: 0.02 }),
  "fit of a free bore": on({ ...fitted, zoneHolds: "free", moisture: "humid", impactFactor: 1.5 }),
  "fit held at its ends": on({ ...fitted, heldAtEnds: "yes", keptGrip: 0.5, moisture: "wet", assemblyMoisture: "dry" }),
  "fit in an unbounded housing": described({ ...on(fitted).values, housingOutside: undefined }),
  "loose fit": on({ ...fitted, outsideZone: zone("-0.02/+0.03") }),
  "tight fit": on({ ...fitted, boreZone: zone("H7"), shaftZone: zone("h6"), moisture: "wet", slope: 0.02 }),
  slope: on({ ...fitted, slope: 0.05, load: 900 }),
  "slope that lifts": on({ ...fitted, slope: 0.3, boreZone: zone("C11"), allowance: 0.2, hours: 100 }),
  "slope that jams": on({ ...fitted, slope: 2 }),
  "slope without load": on({ ...fitted, slope: 0.05, load: 0 }),
  span: on({ ...fitted, span: 300, spanDiameter: 18, slope: 0.01, impactFactor: 1.2, staticLoad: 2500 }),
  "worn fit": on({ ...fitted, hours: 50, allowance: 0.15 }),
  "ways out": on({ ...fitted, housingPath: 0.3, endLength: 60, hours: 50, allowance: 0.15 }),
  "ways out, friction given": on({ wall: 1.5, endLength: 60, shaft: "hardened steel", friction: 0.1 }),
  "ways out, in heavy use": on({ wall: 1.5, housingPath: 0.05, load: 1500 }),
  "no sure way out": on({ wall: 1.5, shaft: "hardened steel", endLength: 5 }),
};
const duties: readonly (readonly [string, Duty])[] = [
  ["stated", stated()],
  ["stated, hot", stated(between(20, 70))],
  ["stated, cold", stated(between(-30, 0))],
  ["stated, at rest", stated({ motion: "static", ...between(20, 60) })],
  ["stated, without load", stated({ pressure: 0 })],
  ["stated, too hot", stated(between(20, 95))],
  ...Object.entries({
    sleeve: on({}),
    "peak at rest": on({ peakTemperature: 60 }, resting),
    "peak in motion": on({ peakTemperature: 40 }),
    "hot sleeve": on({ temperature: { low: 10, high: 60 }, peakTemperature: 80 }),
    "cold sleeve": on({ temperature: { low: -35, high: -5 } }),
    "worn sleeve": on({ hours: 120, allowance: 0.2 }),
    "worn with factors": on({ hours: 120, allowance: 0.2, ...factors }),
    "beyond its limits": on({ load: 3000, hours: 120, allowance: 0.2 }),
    intermittent: on({ runningTime: 2, restTime: 10, hours: 500, allowance: 0.2 }),
    "intermittent with a time constant": on({
      runningTime: 2,
      restTime: 10,
      timeConstant: 8,
      hours: 5,
      allowance: 0.2,
    }),
    "at rest": on({ staticLoad: 9000, impactFactor: 1.3, designFactor: 2 }, resting),
    "static load": on({ staticLoad: 9000, ...factors }),
    washer: on({ hours: 100, allowance: 0.3, staticLoad: 3000 }, washer),
    flanged: on({ hours: 100, allowance: 0.3, ...factors }, flanged),
    steps: described(
      { ...on({ hours: 100, allowance: 0.3, ...factors }).values, time: 10 },
      { load: 900, stroke: 60, time: 5 },
      { motion: "static", load: 4000, time: 60, temperature: { low: 0, high: 40 } },
    ),
    "steps of a washer": described({ ...on({}, washer).values, time: 10 }, { motion: "static", load: 900, time: 5 }),
    "with ways out for the heat": on({ wall: 1.5, housingPath: 0.02, endLength: 30, shaft: "stainless steel" }),
    "with one way out": on({ wall: 1.5, endLength: 30, shaft: "stainless steel", friction: 0.3 }),
    "flanged with ways out": on(
      { wall: 1.5, flangeThickness: 1.5, housingPath: 0.02, shaft: "stainless steel" },
      flanged,
    ),
    "flanged with one way out": on(
      { wall: 1.5, flangeThickness: 1.5, endLength: 30, shaft: "stainless steel" },
      flanged,
    ),
    ...fits,
    bands: on({ load: new Band(300, 900), cycles: new Band(5, 20), allowance: new Band(0.1, 0.2), hours: 100 }),
    "bands of a fit": on({
      ...fitted,
      slope: new Band(0.02, 0.06),
      keptGrip: new Band(0.5, 0.9),
      wall: new Band(1.5, 2),
    }),
    "cycle with a time constant": described(
      { ...on({ timeConstant: 12, hours: 100, allowance: 0.3 }).values, time: 10 },
      { load: 1200, stroke: 60, time: 5 },
      { motion: "static", time: 30 },
    ),
    "flanged cycle": described(
      { ...flanged, timeConstant: 12, hours: 100, allowance: 0.3, time: 10 },
      { load: 100, axialLoad: 900, time: 4 },
      { motion: "static", time: 3 },
    ),
    "flanged on its flange": on({ load: 20, axialLoad: 900, length: 80, flangeOutside: 24 }, flanged),
    "no wear": on({ load: 0, hours: 100, allowance: 0.3 }),
  }).flatMap(([name, { corners }]) => corners.map((corner) => [name, corner] as const)),
];
const elastic: Values = {
  ...full,
  ...{
    expansion: 1e-4,
    expansionStep: 0,
    compressiveModulus: 2000,
    poisson: 0.4,
    frictionLow: 0.1,
    frictionHigh: 0.2,
    conductivity: 0.3,
  },
};
const grades: readonly (readonly [string, Values])[] = [
  ["elastic", elastic],
  ["elastic, by flat tests", { ...elastic, wearFrom: "flat" }],
  ["elastic, its edge fair", { ...elastic, edgeLoad: "fair", compressiveStrength: 8 }],
  ["full", full],
  [
    "with curves",
    { ...full, pressureCurve: curve("23: 60; 60: 12; 140: 8", "pressure"), pvCurve: curve("23: 0.2; 80: 0.05", "pv") },
  ],
  [
    "with short curves",
    { ...full, pressureCurve: curve("0: 60; 40: 50", "pressure"), pvCurve: curve("0: 0.2; 30: 0.15", "pv") },
  ],
  ["hot", { ...full, highestTemperature: 250, shortTermTemperature: 280 }],
  ["empty", {}],
  ...standardLibrary().grades.map(({ name, values }) => [name, values] as const),
];

/** Every check of every duty by every grade, with what its criterion works. */
const checked = grades.flatMap(([grade, values]) =>
  duties.flatMap(([duty, judged]) =>
    checksOf(values, judged).map((check) => ({
      check,
      place: `${check.criterion.id} of ${duty} in ${grade}`,
      working: check.criterion.working?.(values, judged),
    })),
  ),
);
const read = new Map<string, Line>();
const lineOf = (text: string): Line => {
  if (!read.has(text)) read.set(text, readLine(text));
  return read.get(text)!;
};

/** What its lines come to, in their order. */
function worked({ lines, known }: Working): ReadonlyMap<string, number> {
  const scope = new Map(Object.entries(known).map(([symbol, { value }]) => [symbol, value.value]));
  for (const { symbol, tree } of lines.map(lineOf)) {
    if (scope.has(symbol)) throw new Error(`${symbol} is defined twice`);
    scope.set(
      symbol,
      evaluate(tree, (name) => scope.get(name)),
    );
  }
  return scope;
}
const isClose = (a: number | undefined, b: number | undefined): boolean =>
  a === b || Math.abs(a! - b!) <= 1e-12 * Math.max(1, Math.abs(a!));

test("every criterion's working ends in its value, its limit and its use", () => {
  const shownBy = new Map<string, number>();
  for (const { check, place, working } of checked) {
    if (!working) continue;
    const { criterion, value, limit, use, word } = check;
    shownBy.set(criterion.id, (shownBy.get(criterion.id) ?? 0) + 1);
    // no working where there is no number, and none that says more or less than the finding
    if (word === "no data") throw new Error(`${place}: a working of no data`);
    const scope = worked(working);
    for (const [symbol, expected] of [
      ["V", value],
      ["Z", limit],
      ["u", use],
    ] as const)
      if (!isClose(expected, scope.get(symbol)))
        throw new Error(`${place}: ${symbol} is ${scope.get(symbol)}, not ${expected}`);
    // a working in front leads to a figure that is known here, clearances to no less than none
    if (working.first && working.known.C)
      expect(isClose(working.known.C.value.value, Math.max(0, worked(working.first).get("C")!))).toBe(true);
    const share = scope.get("R_a");
    if (share !== undefined && word === "care")
      expect(check.say!("metric")).toContain(` ${percentText(share)} of the press fit`);
    // what was found by iteration is put into its equation: one side over the other
    for (const [symbol, side] of scope) if (/^one(_|$)/.test(symbol)) expect(side).toBeCloseTo(1, 9);
  }
  const withWorking = criteria.filter(({ working }) => working).map(({ id }) => id);
  expect([...shownBy.keys()].sort()).toEqual([...withWorking].sort());
  for (const [id, count] of shownBy) expect([id, count > 10]).toEqual([id, true]);
});

test("wherever there is a use, the working shows it", () => {
  for (const { check, place, working } of checked) {
    // without an end to a life there is nothing to divide by
    if (check.use === undefined || check.limit === undefined) continue;
    const end = check.criterion.id === "boreTemperature" ? "(V - T) / (T_max - T)" : "V / Z";
    const last = working?.lines.at(-1);
    if (last !== `u = ${end}`) throw new Error(`${place} ends in ${last}, not in u = ${end}`);
  }
});

test("every known symbol is used; it and every symbol on the way say what they are, each in words of its own", () => {
  for (const { place, working } of checked) {
    if (!working) continue;
    const lines = working.lines.map(lineOf);
    const used = new Set(lines.flatMap(({ tree }) => symbolsOf(tree)));
    for (const symbol of Object.keys(working.known))
      if (!used.has(symbol)) throw new Error(`${place}: ${symbol} is not used`);
    const defined = lines.map(({ symbol }) => symbol).filter((symbol) => !["V", "Z", "u"].includes(symbol));
    const texts = [
      ...Object.values(working.known).map(({ text }) => text),
      ...defined.map((symbol) => working.between?.[symbol]?.text ?? symbol),
    ];
    for (const text of texts)
      if (!/^\p{Lu}[^;.]{2,}[^;.\s]$/u.test(text)) throw new Error(`${place}: "${text}" says nothing`);
    if (texts.length > new Set(texts).size) throw new Error(`${place}: one text for two symbols: ${texts.join("; ")}`);
  }
});
