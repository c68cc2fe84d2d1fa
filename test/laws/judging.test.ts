import fc from "fast-check";
import { functions } from "../../src/core";
import { Band } from "../../src/core/band";
import { readZone } from "../../src/core/fit/zones/zone";
import {
  criteria,
  field,
  fieldHeading,
  judge,
  NamedDuty,
  readDuties,
  stepValues,
  verdictOf,
  words,
} from "../../src/core/duties";
import type { FieldKey, FieldValues } from "../../src/core/duties";
import { kindOf, mediaClasses, mediaRatings, property, ratings, standardLibrary } from "../../src/core/grades/model";
import { shafts } from "../../src/core/grades/model/shafts";
import type { Grade, PropertyKey, Values } from "../../src/core/grades/model";
import { kinds } from "../../src/core/kinds";
import type { Kind } from "../../src/core/kinds";
import { fromWorking } from "../../src/core/units/scale";
import { call } from "../support";
import { between, check, equal } from "./check";

/** What must hold of every judgement, whatever the grade and the duty. */
const zone = (text: string) => readZone(text, "metric", "zone");
const oneOf = fc.constantFrom;
const may = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
/** A number over decades, so that small and large come alike. */
const over = (low: number, high: number) => between(Math.log(low), Math.log(high)).map(Math.exp);

/** Degrees as a person types them. */
const degrees = (low: number, high: number) => between(low, high).map((t) => Math.round(t * 100) / 100);

type Point = { at: number; value: number };
const curveOf = (low: number, high: number) =>
  fc
    .array(fc.tuple(degrees(-40, 120), over(low, high)), { minLength: 2, maxLength: 4 })
    .map((points) => points.sort(([a], [b]) => a - b).map(([at, value]): Point => ({ at, value })))
    .filter((points): points is [Point, ...Point[]] => points.every(({ at }, i) => i === 0 || at > points[i - 1]!.at));
const figures = {
  staticPressure: over(5, 200),
  runningPressure: over(2, 100),
  speedTurning: over(0.1, 5),
  speedSwinging: over(0.1, 5),
  speedLinear: over(0.1, 5),
  pvLimit: over(0.02, 1),
  lowestTemperature: degrees(-100, 15),
  highestTemperature: degrees(20, 250),
  shortTermTemperature: degrees(80, 300),
  pressureCurve: curveOf(5, 100),
  pvCurve: curveOf(0.02, 1),
  frictionLow: between(0.05, 0.15),
  frictionHigh: between(0.15, 0.4),
  wearLow: over(1e-7, 1e-6),
  wearHigh: over(1e-6, 1e-5),
  wearFrom: oneOf("flat", "bush"),
  compressiveStrength: over(5, 200),
  compressiveModulus: over(500, 8000),
  poisson: between(0.3, 0.48),
  expansion: over(2e-5, 2e-4),
  expansionStep: oneOf(0, 0.0005, 0.003),
  conductivity: over(0.2, 0.6),
  swelling50: between(0, 0.006),
  swellingSaturated: between(0.006, 0.02),
  shock: oneOf(...ratings),
  edgeLoad: oneOf(...ratings),
  dirt: oneOf(...ratings),
  damping: oneOf(...ratings),
  softShaft: oneOf(...ratings),
  roughShaft: oneOf(...ratings),
  vacuum: oneOf(...ratings),
  media: fc.array(fc.record({ medium: oneOf(...mediaClasses), rating: oneOf(...mediaRatings) }), { maxLength: 9 }),
  shafts: fc.subarray([...shafts]),
  shaftHardness: between(100, 400),
};
/** A grade of which any figure may be missing. */
const randomGrade = fc.record(figures, { requiredKeys: [] });
test("a random grade has every figure that a criterion rests on", () => {
  expect(Object.keys(figures)).toEqual(expect.arrayContaining(criteria.flatMap(({ properties }) => properties)));
});
const asGrade = (values: Values): Grade => ({ name: "T", kind: "own", values, origins: {}, extra: [] });
const library = standardLibrary().grades.map(({ values }) => values);
const anyGrade: fc.Arbitrary<Values> = fc.oneof(
  { weight: 2, arbitrary: oneOf(...library) },
  { weight: 1, arbitrary: randomGrade },
  // all figures there, so that something may fit
  {
    weight: 1,
    arbitrary: fc
      .tuple(oneOf(...library.slice(-6)), randomGrade as fc.Arbitrary<Values>)
      .map(([full, some]) => ({ ...full, ...some })),
  },
);

const drive: fc.Arbitrary<FieldValues> = fc.oneof(
  fc.record({ rpm: over(0.5, 500) }),
  fc.record({ swing: over(5, 180), cycles: over(0.2, 60) }),
  fc.record({ stroke: over(10, 500), cycles: over(0.2, 60) }),
  fc.constant({ motion: "static" } as const),
);
const size: fc.Arbitrary<FieldValues> = over(6, 80).chain((bore) =>
  fc.oneof(
    { weight: 3, arbitrary: between(0.4, 2.2).map((ratio) => ({ bore, length: bore * ratio, load: 0 })) },
    fc.record({
      ...{
        part: fc.constant("flanged" as const),
        bore: fc.constant(bore),
        length: between(0.5, 2).map((r) => r * bore),
      },
      ...{ flangeOutside: between(1.2, 2).map((r) => r * bore), axialLoad: over(1, 5000) },
    }),
    fc.record({
      part: fc.constant("washer" as const),
      inner: fc.constant(bore),
      outer: between(1.3, 2.5).map((r) => r * bore),
    }),
  ),
);
const temperature = fc.tuple(degrees(-40, 60), degrees(0, 60)).map(([low, by]) => ({ low, high: low + by }));
/** What a duty may say beside load, size, motion and temperature. */
const extras = fc.record(
  {
    impactFactor: between(1, 3),
    designFactor: between(1, 3),
    staticLoad: over(10, 20_000),
    moisture: oneOf("dry", "humid", "wet"),
    media: fc.subarray([...mediaClasses], { maxLength: 2 }),
    dirt: oneOf("none", "some", "heavy"),
    vacuum: oneOf("no", "yes"),
    damping: oneOf("no", "yes"),
    shaft: oneOf(...shafts),
    hardness: between(80, 500),
    roughness: between(0.1, 2),
    hours: over(1, 20_000),
    allowance: over(0.02, 0.4),
    geometryFactor: between(0.5, 2),
    finishFactor: between(1, 4),
  } satisfies { [K in FieldKey]?: unknown },
  { requiredKeys: [] },
) as fc.Arbitrary<FieldValues>;
const peak = may(degrees(0, 60));
const intermittent = may(
  fc.record({ runningTime: over(0.5, 60), restTime: over(0.5, 600), timeConstant: over(1, 60) }),
);

/** A described duty of one step, as its row says it. */
const anyRow: fc.Arbitrary<FieldValues> = fc
  .tuple(over(5, 20_000), size, drive, temperature, fc.oneof(extras, fc.constant({})), peak, intermittent)
  .map(([load, ofSize, motion, span, more, above, rests]) => ({
    ...{ ...ofSize, load, ...motion, temperature: span, ...more },
    ...(above === undefined ? {} : { peakTemperature: span.high + above }),
    ...(rests && motion.motion !== "static" ? rests : {}),
  }));
const fit: FieldValues = {
  ...{ boreZone: zone("E10"), shaftZone: zone("f7"), outsideZone: zone("+0.05/+0.10"), housingZone: zone("H7") },
  ...{ housing: "aluminium alloy", shaft: "stainless steel", wall: 2 },
};
/** The same of a sleeve pressed into its housing, some with a slope. */
const pressedRow: fc.Arbitrary<FieldValues> = fc
  .tuple(anyRow, may(between(0, 0.3)), may(between(0.2, 1)), may(over(0.01, 2)), may(over(5, 200)))
  .filter(([row]) => row.part === undefined)
  .map(([row, slope, keptGrip, housingPath, endLength]) =>
    defined({
      ...row,
      ...fit,
      allowance: Math.min(Number(row.allowance ?? 0.2), 1),
      slope,
      keptGrip,
      housingPath,
      endLength,
    }),
  );
const defined = (row: Record<string, unknown>): FieldValues =>
  Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));

const dutyOf = (...rows: FieldValues[]): NamedDuty => {
  let above: FieldValues = {};
  const steps = rows.map((row, i) => {
    const step = stepValues(row, above, i > 0, rows.length > 1);
    above = step.values;
    return step;
  });
  return new NamedDuty("D", steps);
};
/** How good a verdict is; the worst is 0. */
const worth = (values: Values, duty: NamedDuty): number => words.indexOf(verdictOf(judge(asGrade(values), duty)).word);
const care = words.indexOf("care");

/** Of a law that is about what fits it is told how often something did. */
class Tally {
  readonly of = { fails: 0, "no data": 0, care: 0, fits: 0 };
  count(worth: number): void {
    this.of[words[worth]!]++;
  }
  get all(): number {
    return Object.values(this.of).reduce((sum, n) => sum + n, 0);
  }
}

describe("a figure dropped from a grade", () => {
  const curves: ReadonlySet<string> = new Set(["pressureCurve", "pvCurve"]);
  test.each([
    ["any duty", anyRow],
    ["a fit", pressedRow],
  ])("never yields fits or care where there was neither, nor fits where there was care: %s", (_, rows) => {
    const tried = new Tally();
    check(fc.tuple(anyGrade, rows), ([values, row]) => {
      const duty = dutyOf(row);
      const before = worth(values, duty);
      tried.count(before);
      for (const key of Object.keys(values) as (keyof Values)[]) {
        if (curves.has(key)) continue;
        const { [key]: dropped, ...rest } = values;
        if (dropped === undefined) continue;
        const after = worth(rest, duty);
        if (after > before && after >= care) throw new Error(`without ${key} ${words[before]} became ${words[after]}`);
      }
    });
    expect(tried.of.fails).toBeGreaterThan(20);
    expect(tried.of["no data"]).toBeGreaterThan(20);
  });
});

describe("a harder duty is never judged better", () => {
  type Harder = (row: FieldValues, by: number) => FieldValues | undefined;
  const scaled =
    (key: FieldKey, way: 1 | -1): Harder =>
    (row, by) => {
      const value = row[key];
      return typeof value === "number" ? { ...row, [key]: way === 1 ? value * by : value / by } : undefined;
    };
  const worded =
    (key: FieldKey, ...order: readonly string[]): Harder =>
    (row, by) => ({
      ...row,
      [key]: order[Math.min(order.length - 1, order.indexOf(String(row[key] ?? order[0])) + (by > 2 ? 2 : 1))],
    });
  const harder: Readonly<Record<string, Harder>> = {
    load: scaled("load", 1),
    "axial load": scaled("axialLoad", 1),
    "static load": scaled("staticLoad", 1),
    "impact factor": scaled("impactFactor", 1),
    "design factor": scaled("designFactor", 1),
    rpm: scaled("rpm", 1),
    cycles: scaled("cycles", 1),
    stroke: scaled("stroke", 1),
    swing: (row, by) => (row.swing === undefined ? undefined : { ...row, swing: (row.swing as number) * by }),
    "warmer end": (row, by) => {
      const { low, high } = row.temperature!;
      const { peakTemperature: above } = row;
      const to = high + 20 * (by - 1);
      return {
        ...row,
        temperature: { low, high: to },
        ...(above === undefined ? {} : { peakTemperature: Math.max(above, to) }),
      };
    },
    "colder end": (row, by) => ({
      ...row,
      temperature: { low: row.temperature!.low - 20 * (by - 1), high: row.temperature!.high },
    }),
    "short peak": (row, by) =>
      row.peakTemperature === undefined ? undefined : { ...row, peakTemperature: row.peakTemperature + 20 * by },
    "running time": scaled("runningTime", 1),
    "rest time": scaled("restTime", -1),
    "time constant": scaled("timeConstant", -1),
    hours: scaled("hours", 1),
    "wear allowance": scaled("allowance", -1),
    "wear factor geometry": scaled("geometryFactor", 1),
    "wear factor finish": scaled("finishFactor", 1),
    hardness: scaled("hardness", -1),
    roughness: scaled("roughness", 1),
    slope: (row, by) =>
      row.slope === undefined ? undefined : { ...row, slope: (row.slope as number) + 0.1 * (by - 1) },
    "share of grip kept": scaled("keptGrip", -1),
    "housing's conductance": scaled("housingPath", -1),
    "exposed length": scaled("endLength", -1),
    dirt: worded("dirt", "none", "some", "heavy"),
    vacuum: worded("vacuum", "no", "yes"),
    damping: worded("damping", "no", "yes"),
    "one medium more": (row, by) => ({
      ...row,
      media: [...(row.media ?? []), mediaClasses[Math.floor(by * 7) % mediaClasses.length]!],
    }),
    // a shorter bush bears more; up to twice its bore it also is not too long
    length: (row, by) =>
      row.length === undefined || row.slope !== undefined || (row.length as number) > 2 * (row.bore as number)
        ? undefined
        : { ...row, length: (row.length as number) / by },
  };
  test.each(Object.entries(harder))("by %s", (_, make) => {
    const tried = new Tally();
    check(fc.tuple(anyGrade, fc.oneof(anyRow, pressedRow), between(1.01, 4)), ([values, row, by]) => {
      const next = make(row, by);
      if (!next) return;
      const [before, after] = [worth(values, dutyOf(row)), worth(values, dutyOf(next))];
      tried.count(before);
      if (after > before) throw new Error(`${words[before]} became ${words[after]}: ${JSON.stringify([row, next])}`);
    });
    expect(tried.all).toBeGreaterThan(20);
  });
  test("nor one that a field more is asked of", () => {
    const asking: FieldValues = {
      hours: 100,
      allowance: 0.2,
      hardness: 150,
      roughness: 1,
      shaft: "chromed",
      dirt: "some",
      staticLoad: 900,
    };
    check(fc.tuple(anyGrade, anyRow, oneOf(...(Object.keys(asking) as FieldKey[]))), ([values, row, key]) => {
      if (
        row[key] !== undefined ||
        (key === "allowance" && row.hours !== undefined) ||
        (key === "hours" && row.allowance !== undefined)
      )
        return;
      const [before, after] = [worth(values, dutyOf(row)), worth(values, dutyOf({ ...row, [key]: asking[key] }))];
      if (after > before) throw new Error(`${key}: ${words[before]} became ${words[after]}`);
    });
  });
});

test("no point of a band is judged worse than the band", () => {
  const keys = [
    "load",
    "rpm",
    "bore",
    "length",
    "impactFactor",
    "hardness",
    "hours",
    "allowance",
    "roughness",
  ] as const;
  check(
    fc.tuple(
      anyGrade,
      anyRow,
      fc.subarray([...keys], { minLength: 1, maxLength: 3 }),
      fc.array(between(0, 1), { minLength: 3, maxLength: 3 }),
    ),
    ([values, row, banded, at]) => {
      const present = banded.filter((key) => typeof row[key] === "number");
      const bands = present.map((key) => [key, new Band(row[key] as number, (row[key] as number) * 1.3)] as const);
      if (bands.some(([key]) => key === "bore") && row.flangeOutside !== undefined) return;
      const duty = dutyOf({ ...row, ...Object.fromEntries(bands) });
      expect(duty.corners).toHaveLength(2 ** bands.length);
      const inside = bands.map(([key, { low, high }], i) => [key, low + at[i]! * (high - low)] as const);
      expect(worth(values, dutyOf({ ...row, ...Object.fromEntries(inside) }))).toBeGreaterThanOrEqual(
        worth(values, duty),
      );
    },
  );
});

/** Rows as cells of a table under their headings; plain numbers in the units of the sheet. */
function tableOf(rows: readonly FieldValues[], system: "metric" | "inch"): unknown[][] {
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row)))] as FieldKey[];
  const cell = (key: FieldKey, value: unknown): unknown => {
    const { kind } = field(key);
    if (value === undefined) return null;
    if (kind === "span") {
      const { low, high } = value as { low: number; high: number };
      const [a, b] = [low, high].map((t) => fromWorking("temperature", t, system));
      return `${a} to ${b}`;
    }
    if (Array.isArray(value)) return value.length === 0 ? null : value.join(", ");
    if (typeof value !== "number") return String(value);
    // a bare 0 could be a blank
    if (kind === "temperature") return `${fromWorking("temperature", value, system)} ${kinds.temperature[system]}`;
    // a plain percentage could be either
    return kind === "percent" ? `${value * 100} %` : kind in kinds ? fromWorking(kind as Kind, value, system) : value;
  };
  return [
    ["duty", ...keys.map((key) => fieldHeading(key, system))],
    ...rows.map((row, i) => [`D${i}`, ...keys.map((key) => cell(key, row[key]))]),
  ];
}

test("a table in inches says the same as one in metric units: words, values, limits and uses", () => {
  check(fc.tuple(anyGrade, fc.oneof(anyRow, pressedRow)), ([values, row]) => {
    const told = (["metric", "inch"] as const).map((system) => {
      const [line] = readDuties(tableOf([row], system) as never, system, "duties").lines;
      if (!(line!.duty instanceof NamedDuty)) throw line!.duty;
      return judge(asGrade(values), line!.duty);
    });
    const [metric, inch] = told as [(typeof told)[number], (typeof told)[number]];
    expect(inch.map(({ criterion, word }) => [criterion.id, word])).toEqual(
      metric.map(({ criterion, word }) => [criterion.id, word]),
    );
    metric.forEach(({ value, limit, use }, i) => {
      const other = inch[i]!;
      for (const [a, b] of [
        [value, other.value],
        [limit, other.limit],
        [use, other.use],
      ])
        if (a === undefined || b === undefined) expect(a).toBe(b);
        else if (Number.isFinite(a)) expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(a)));
    });
  });
});

const named = standardLibrary().grades.map(({ name }) => name);
/** What DUTIES answers, by the name of the duty. */
const verdicts = (table: unknown[][]): Record<string, unknown> => {
  const [heading, ...lines] = call(functions.DUTIES, [table]);
  return Object.fromEntries(
    lines.map((line) => [line[0], Object.fromEntries(heading!.map((name, i) => [name, line[i]]))]),
  );
};

test("the order of columns and of rows says nothing", () => {
  const rows = fc.array(
    fc.tuple(anyRow, oneOf(...named)).map(([row, grade]) => ({ ...row, grade })),
    { minLength: 2, maxLength: 5 },
  );
  check(fc.tuple(rows, fc.integer(), fc.integer()), ([all, a, b]) => {
    const table = tableOf(all, "metric");
    const turned = (list: unknown[], by: number) => list.map((_, i) => list[(i + (by >>> 0)) % list.length]);
    const [heading, ...lines] = table.map((line) => turned(line, a));
    const turnedRows = turned(lines, b) as unknown[][];
    expect(verdicts([heading!, ...turnedRows])).toEqual(verdicts(table));
  });
});

test("VERDICT and DUTIES agree where both know the same", () => {
  const row = fc.tuple(over(6, 80), between(0.5, 2), over(5, 20_000), drive, temperature, oneOf(...named));
  check(row, ([bore, ratio, load, motion, span, grade]) => {
    const length = bore * ratio;
    const { rpm, swing, stroke, cycles } = motion as Record<string, number>;
    const speed =
      rpm !== undefined
        ? functions.SPEED({ bore, rpm })
        : swing !== undefined
          ? functions.SWINGSPEED({ bore, swing, cycles: cycles! })
          : stroke !== undefined
            ? functions.STROKESPEED({ stroke, cycles: cycles! })
            : 0;
    const kind =
      rpm !== undefined ? "turning" : swing !== undefined ? "swinging" : stroke !== undefined ? "linear" : "static";
    const stated = call(functions.VERDICT, [
      grade,
      functions.PRESSURE({ load, bore, length }),
      speed,
      `${span.low} to ${span.high}`,
      kind,
    ]);
    const { D0 } = verdicts(tableOf([{ load, bore, length, ...motion, temperature: span, grade }], "metric")) as Record<
      string,
      Record<string, unknown>
    >;
    expect(D0!.verdict).toBe(stated[0]![0]);
    expect(D0!.grade).toBe(grade);
  });
});

test("the use that governs is none of a missing figure, and of what fits at most 1", () => {
  check(fc.tuple(anyGrade, fc.oneof(anyRow, pressedRow)), ([values, row]) => {
    const checks = judge(asGrade(values), dutyOf(row));
    const { word, use, governing } = verdictOf(checks);
    const all = checks.map((one) => words.indexOf(one.word));
    expect(words.indexOf(word)).toBe(Math.min(...all));
    if (checks.some((one) => one.word === "no data")) expect(use).toBeUndefined();
    else if (use !== undefined && (word === "fits" || word === "care")) expect(use).toBeLessThanOrEqual(1 + 1e-9);
    if (governing.word === "fails" && governing.use !== undefined && use !== undefined) expect(use).toBeGreaterThan(1);
    for (const one of checks) {
      // a missing figure is named, and is missing
      if (one.word === "no data") expect([one.property ?? one.field].join()).not.toBe("");
      if (one.word === "no data" && one.property && one.criterion.id !== "media") {
        const isAbsurd = one.property === "highestTemperature" && values.highestTemperature! <= 23;
        expect([
          one.criterion.id,
          one.property,
          isAbsurd || values[one.property as keyof Values] === undefined,
        ]).toEqual([one.criterion.id, one.property, true]);
      }
      if (
        one.use !== undefined &&
        one.limit !== undefined &&
        one.value !== undefined &&
        one.criterion.kind !== "temperature"
      )
        equal(one.use, one.value / one.limit);
      for (const key of one.figures)
        expect([one.criterion.id, key, values[key as keyof Values] === undefined]).toEqual([
          one.criterion.id,
          key,
          false,
        ]);
      expect(
        one.figures.every(
          (key: PropertyKey) => kindOf(property(key)) === undefined || values[key as keyof Values] !== undefined,
        ),
      ).toBe(true);
    }
  });
});
