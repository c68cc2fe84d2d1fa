import { criteria, fieldKeys, NamedDuty } from "../../../../src/core/duties";
import type { Duty, FieldValues } from "../../../../src/core/duties";
import { readZone } from "../../../../src/core/fit/zones/zone";
import { property } from "../../../../src/core/grades/model";
import type { Values } from "../../../../src/core/grades/model";
import { between, checksOf, curve, described, full, isAsked, on, resting, stated } from "../support";

/** When each criterion is asked, and when not: the duty alone decides. */
const flanged: FieldValues = { ...on({}).values, part: "flanged", flangeOutside: 30 };
const washer: FieldValues = {
  ...{ part: "washer", load: 600, inner: 20, outer: 40, rpm: 30 },
  ...{ temperature: { low: 23, high: 23 } },
};
const zone = (text: string) => readZone(text, "metric", "zone");
const [boreZone, shaftZone, housingZone] = [zone("E10"), zone("f7"), zone("H7")];
const outsideZone = zone("+0.05/+0.10");
const movesThenRests = described({ ...on({}).values, time: 5 }, { motion: "static", time: 5 });

type Judged = Duty | NamedDuty;
const asked: Readonly<Record<string, { readonly by: readonly Judged[]; readonly not: readonly Judged[] }>> = {
  staticPressure: {
    by: [
      stated({ motion: "static" }),
      on({}, resting),
      on({ staticLoad: 700 }),
      on({ cycles: 0 }),
      on({ stroke: 0 }),
      movesThenRests,
    ],
    not: [stated(), on({}), on({}, washer), on({ staticLoad: 700 }, washer)],
  },
  runningPressure: {
    by: [stated(), on({}), on({}, flanged), movesThenRests],
    not: [stated({ motion: "static" }), on({}, resting), on({ stroke: 0 }), on({}, washer)],
  },
  facePressure: {
    by: [on({}, washer), on({ axialLoad: 100 }, flanged), on({ staticLoad: 5 }, washer)],
    not: [stated(), on({}), on({}, flanged), on({}, resting)],
  },
  highestTemperature: {
    by: [stated(), stated({ motion: "static" }), on({}), on({}, resting), on({}, washer)],
    not: [],
  },
  speed: {
    by: [stated(), on({}), on({}, washer), movesThenRests],
    not: [stated({ motion: "static" }), on({}, resting)],
  },
  pv: { by: [stated(), on({}), on({}, washer), movesThenRests], not: [stated({ motion: "static" }), on({}, resting)] },
  boreTemperature: {
    by: [stated(), on({}), on({}, washer), movesThenRests],
    not: [stated({ motion: "static" }), on({}, resting)],
  },
  shortPeak: {
    by: [on({ peakTemperature: 30 }), on({ peakTemperature: 23 }, resting)],
    not: [on({}), stated(between(20, 85))],
  },
  lowestTemperature: {
    by: [stated(between(19.9, 23)), on(between(-40, 0)), on(between(19), resting)],
    not: [stated(between(20)), on(between(20, 40)), on(between(23))],
  },
  peakPressure: { by: [on({ boreZone }), on({ shaftZone }, resting)], not: [on({}), on({ wall: 1.5 })] },
  edgePressure: { by: [on({ slope: 0.1 }), on({ span: 300 }), on({ slope: 0 })], not: [on({}), on({}, resting)] },
  tilt: { by: [on({ slope: 0.1 }), on({ span: 300 }, resting)], not: [on({}), on({ spanDiameter: 20 })] },
  wearLife: {
    by: [on({ hours: 100, allowance: 0.2 }), on({ hours: 100 }), on({ allowance: 0.2 })],
    not: [on({}), stated(), on({ hours: 100, allowance: 0.2 }, resting)],
  },
  moisture: {
    by: [on({ moisture: "humid" }), on({ moisture: "wet" }, resting)],
    not: [on({}), on({ moisture: "dry" })],
  },
  media: { by: [on({ media: ["water"] }), on({ media: ["fuels"] }, resting)], not: [on({}), on({ media: [] })] },
  dirt: { by: [on({ dirt: "some" }), on({ dirt: "heavy" })], not: [on({}), on({ dirt: "none" })] },
  shock: { by: [on({ impactFactor: 1.01 }), on({ impactFactor: 2 }, resting)], not: [on({}), on({ impactFactor: 1 })] },
  damping: { by: [on({ damping: "yes" })], not: [on({}), on({ damping: "no" })] },
  vacuum: { by: [on({ vacuum: "yes" })], not: [on({}), on({ vacuum: "no" })] },
  shaft: {
    by: [on({ shaft: "chromed" }), on({ hardness: 300 }), on({ roughness: 0.1 }), on({ hardness: 300 }, resting)],
    not: [on({})],
  },
  lengthOverBore: { by: [on({}), on({}, flanged), on({}, resting)], not: [stated(), on({}, washer)] },
  clearance: {
    by: [on({ boreZone }), on({ shaftZone }), on({ leastClearance: 0.01 })],
    not: [on({}), on({ wall: 1.5 })],
  },
  grip: { by: [on({ housingZone }), on({ outsideZone }, resting)], not: [on({}), on({ keptGrip: 0.5 })] },
  notJudged: {
    by: [
      on({ loadTurns: "yes" }),
      on({ friction: 0.3 }),
      on({ housingPath: 0.1 }, washer),
      on({ endLength: 50 }, washer),
    ],
    not: [
      ...[on({}), on({ loadTurns: "no" }), on({ labour: 20 }), on({ flangeThickness: 2 }, flanged)],
      ...[
        on({ friction: 0.3, housingPath: 0.1 }),
        on({ friction: 0.3, housingPath: 0.1 }, resting),
        ...[on({ friction: 0.3, endLength: 0 }), on({ endLength: 0 }), on({ endLength: 0 }, washer)],
      ],
    ],
  },
};

test("every criterion stands here", () =>
  expect(Object.keys(asked).sort()).toEqual(criteria.map(({ id }) => id).sort()));

test.each(Object.entries(asked))("%s is asked exactly then", (id, { by, not }) => {
  for (const duty of by) expect([duty, isAsked(id, duty)]).toEqual([duty, true]);
  for (const duty of not) expect([duty, isAsked(id, duty)]).toEqual([duty, false]);
});

test("the grade has no say in what is asked", () => {
  for (const { by, not } of Object.values(asked))
    for (const duty of [...by, ...not]) {
      const ids = (values: typeof full) => checksOf(values, duty).map(({ criterion }) => criterion.id);
      expect(ids({})).toEqual(ids(full));
    }
});

test("the figures that counted are among those that a criterion is said to need", () => {
  const fitted = { boreZone, shaftZone, outsideZone, housingZone, housing: "aluminium alloy", shaft: "carbon steel" };
  const asking = { ...fitted, wall: 2, slope: 0.01, hours: 100, allowance: 0.1, moisture: "wet", peakTemperature: 60 };
  const duties: readonly Judged[] = [
    ...Object.values(asked).flatMap(({ by }) => by),
    on(asking as FieldValues),
    on({ ...asking, endLength: 60, housingPath: 0.1 } as FieldValues),
  ];
  for (const duty of duties)
    for (const { criterion, figures, property: one } of checksOf(full, duty)) {
      const said: readonly string[] = criterion.properties;
      for (const key of [...figures, ...(one ? [one] : [])]) expect(`${criterion.id}: ${said.join()}`).toContain(key);
    }
});

test("each criterion is described once, in words of its own", () => {
  for (const of of ["id", "heading", "text"] as const)
    expect(new Set(criteria.map((criterion) => criterion[of])).size).toBe(criteria.length);
  for (const { heading, text, asked: when, source, fields, properties } of criteria) {
    expect(heading).toMatch(/^[\p{Lu}\p{Ll} ]+$/u);
    expect([text, when].join(" ")).not.toMatch(/\.$/);
    expect([source].flat().length).toBeGreaterThan(0);
    for (const key of fields) expect(fieldKeys).toContain(key);
    for (const key of properties) expect(property(key)).toBeDefined();
  }
});

/**
 * What a criterion calls its fields is what it looks at: each of them alone can change what it finds, somewhere. A field that
 * stood there in vain would pass for judged.
 */
const turning: FieldValues = { load: 600, bore: 20, length: 15, rpm: 40, temperature: { low: 23, high: 23 } };
const swinging: FieldValues = {
  ...{ load: 600, bore: 20, length: 15, swing: 90, cycles: 10 },
  ...{ temperature: { low: 23, high: 23 } },
};
const rich = { hours: 100, allowance: 0.2, shaft: "chromed", hardness: 250, roughness: 0.5, media: ["water"] } as const;
const pressed: FieldValues = {
  ...{ ...turning, ...rich, wall: 1.5, housing: "aluminium alloy", housingOutside: 40, shaft: "stainless steel" },
  ...{ boreZone, shaftZone, outsideZone, housingZone, moisture: "humid", keptGrip: 0.9, assemblyMoisture: "wet" },
};
const bases: readonly FieldValues[] = [
  pressed,
  { ...pressed, slope: 0.02, span: 300, spanDiameter: 20 },
  { ...turning, ...rich, wall: 1.5, housingPath: 0.05, endLength: 20, friction: 0.2 },
  { ...turning, ...rich, outside: 23, housingPath: 0.05 },
  {
    ...{ ...turning, ...rich, part: "flanged", axialLoad: 300, flangeOutside: 30, flangeThickness: 1.5, wall: 1.5 },
    ...{ housingPath: 0.05, endLength: 20, shaft: "stainless steel" },
  },
  { ...pressed, wall: undefined, outside: 23 },
  ...[turning, swinging, on({}).values, resting, washer, flanged].map((base) => ({ ...base, ...rich })),
  { ...flanged, ...rich, axialLoad: 100 },
  { ...turning, ...rich, part: "flanged", flangeOutside: 30, axialLoad: 100 },
  { ...turning, ...rich, runningTime: 2, restTime: 5 },
  { ...turning, ...rich, runningTime: 2, restTime: 5, timeConstant: 8 },
];
const others: FieldValues = {
  ...{ load: 700, axialLoad: 150, staticLoad: 2000, impactFactor: 1.5, designFactor: 2, bore: 25, length: 60 },
  ...{ flangeOutside: 35, inner: 25, outer: 45, rpm: 50, swing: 120, cycles: 20, stroke: 150, runningTime: 3 },
  ...{ restTime: 9, timeConstant: 3, temperature: { low: -10, high: 50 }, peakTemperature: 60, moisture: "wet" },
  ...{ media: ["strong acids"], dirt: "heavy", vacuum: "yes", damping: "yes", shaft: "soft steel", hardness: 150 },
  ...{ roughness: 1, slope: 0.2, span: 300, hours: 300, allowance: 0.1, geometryFactor: 2, heatFactor: 2 },
  ...{ temperatureFactor: 2, counterfaceFactor: 2, finishFactor: 2, motion: "static", wall: 2, outside: 24 },
  ...{ boreZone: zone("D10"), shaftZone: zone("h6"), outsideZone: zone("+0.02/+0.04"), housingZone: zone("P7") },
  ...{ housing: "carbon steel", housingOutside: 60, zoneHolds: "free", heldAtEnds: "yes", assemblyMoisture: "dry" },
  ...{ keptGrip: 0.3, leastClearance: 5, spanDiameter: 12, housingPath: 0.5, endLength: 60, friction: 0.3 },
  flangeThickness: 3,
};
const values: Values = {
  ...{ ...full, dirt: "fair", pressureCurve: curve("23: 60; 90: 15", "pressure") },
  ...{
    expansion: 9e-5,
    expansionStep: 0,
    compressiveModulus: 2500,
    poisson: 0.4,
    conductivity: 0.25,
    frictionHigh: 0.25,
  },
};

/** Findings as they tell; nothing where the fields do not go together. */
function told(id: string, given: FieldValues): string | undefined {
  try {
    const check = checksOf(values, described(given)).find(({ criterion }) => criterion.id === id);
    if (!check) return "not asked";
    const { criterion: _, say, tell, notes, ...finding } = check;
    return JSON.stringify([finding, say?.("metric"), tell?.("metric"), notes?.("metric", check)]);
  } catch {
    return undefined;
  }
}
const drives = ["rpm", "swing", "stroke", "cycles"] as const;
/** With one field changed; the motion's figures go where it is "static". */
function changed(base: FieldValues, key: keyof FieldValues): FieldValues {
  if (key !== "motion") return { ...base, [key]: others[key] };
  return {
    ...Object.fromEntries(Object.entries(base).filter(([k]) => !drives.includes(k as never))),
    motion: "static",
  };
}

test.each(criteria.filter(({ id }) => id !== "notJudged").map((c) => [c.id, c] as const))(
  "%s looks at each of its fields",
  (id, { fields }) => {
    const idle = fields.filter((key) => {
      if (key === "time") return false; // of steps: below
      return !bases.some((base) => {
        const [before, after] = [told(id, base), told(id, changed(base, key))];
        return before !== undefined && after !== undefined && before !== after;
      });
    });
    expect(idle).toEqual([]);
  },
);

test("the time of steps counts for the wear, and with a time constant for the PV", () => {
  const cycle = (time: number, more: FieldValues = {}) =>
    described({ ...turning, ...rich, ...more, time: 5 }, { rpm: 10, time });
  const [short, long] = [cycle(1), cycle(50)].map((duty) => checksOf(full, duty));
  const limit = (checks: typeof short, id: string) => checks!.find(({ criterion }) => criterion.id === id)!.limit!;
  expect(limit(long, "wearLife")).toBeGreaterThan(limit(short, "wearLife"));
  const pv = (time: number) =>
    checksOf(full, cycle(time, { timeConstant: 4 })).find(({ criterion }) => criterion.id === "pv")!.value!;
  expect(pv(50)).not.toBeCloseTo(pv(1), 3);
});
