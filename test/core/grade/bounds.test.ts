import { greatestLoad, greatestRpm, leastLength } from "../../../src/core";
import {
  assess,
  boreCloseIn,
  cautionsOf,
  leastOver,
  lengthCaution,
  limitOf,
  rank,
  readCurve,
} from "../../../src/core/grade";
import { libraryOf } from "../../../src/core/grade";
import type { Duty, Grade, Values } from "../../../src/core/grade";
import { nearest } from "../../../src/core/names";
import { call, CellError } from "../../support";

/** Limits, cautions and suggestions exactly at their edges. */
const values: Values = {
  staticPressure: 60,
  runningPressure: 20,
  speedTurning: 1,
  pvLimit: 0.2,
  lowestTemperature: -40,
  highestTemperature: 90,
  shortTermTemperature: 120,
};
const grade = (more: Partial<Values> = {}, origins: Grade["origins"] = {}): Grade => ({
  name: "T",
  kind: "own",
  values: { ...values, ...more },
  origins,
  extra: [],
});
const duty: Duty = { pressure: 2, speed: 0.05, temperature: { low: 20, high: 20 }, motion: "turning" };
const at = (low: number, high = low): Duty => ({ ...duty, temperature: { low, high } });
const cautions = (g: Grade, d: Partial<Duty> = {}) => cautionsOf(g, { ...duty, ...d }).join(" ");
const verdictOf = (g: Grade, d: Partial<Duty>, criterion: string) =>
  assess(g, { ...duty, ...d }).find((c) => c.criterion === criterion)?.verdict;

describe("a limit holds at itself and to a rounding", () => {
  test("use", () => {
    for (const [pressure, word] of [
      [20, "OK"],
      [20 * (1 + 1e-10), "OK"],
      [20 * (1 + 1e-8), "fails"],
    ] as const)
      expect(verdictOf(grade(), { pressure, speed: 0 }, "running pressure")).toBe(word);
  });
  test("temperature", () => {
    for (const [t, word] of [
      [90, "OK"],
      [90 + 1e-10, "OK"],
      [90.001, "fails"],
    ] as const)
      expect(verdictOf(grade(), at(20, t), "highest temperature")).toBe(word);
    for (const [t, word] of [
      [-40, "OK"],
      [-40 - 1e-10, "OK"],
      [-40.001, "fails"],
    ] as const)
      expect(verdictOf(grade(), at(t, 20), "lowest temperature")).toBe(word);
    const unknown = grade({ lowestTemperature: undefined });
    expect(verdictOf(unknown, at(20), "lowest temperature")).toBeUndefined();
    expect(verdictOf(unknown, at(19.9, 20), "lowest temperature")).toBe("no data");
  });
  test("wear: the life wanted is the life there is", () => {
    const wears = grade({ wearHigh: 2e-6 });
    const life = 0.5 / (2e-6 * 2 * 0.05 * 3600);
    for (const [hours, word] of [
      [life, "OK"],
      [life * (1 + 1e-10), "OK"],
      [life * 1.001, "fails"],
    ] as const)
      expect(verdictOf(wears, { wear: { hours, allowance: 0.5 } }, "wear")).toBe(word);
  });
  test("moisture: a clearance used up exactly binds", () => {
    const swells = grade({ swellingSaturated: 0.02, poisson: 0.4 });
    const closeIn = boreCloseIn(20, 23, 0.4, 0.02);
    for (const [clearance, word] of [
      [closeIn, "fails"],
      [closeIn * 1.001, "OK"],
      [0, "fails"],
      [-0.1, "fails"],
    ] as const)
      expect(verdictOf(swells, { wet: true, fit: { bore: 20, outside: 23, clearance } }, "moisture")).toBe(word);
  });
  test("a given limit equal to its curve is the one that is named", () => {
    const curve = readCurve("c", { kind: "pv", above: 0 }, "20: 0.2; 80: 0.1", undefined, "metric");
    expect(limitOf(grade({ pvCurve: curve }), "pvLimit", { low: 20, high: 20 })).toMatchObject({
      value: 0.2,
      key: "pvLimit",
    });
    expect(limitOf(grade({ pvCurve: curve }), "pvLimit", { low: 20, high: 21 })).toMatchObject({ key: "pvCurve" });
    expect(() => readCurve("c", { kind: "pv", above: 0 }, "20: 1; 20: 2", undefined, "metric")).toThrow(
      "in order of temperature",
    );
    const kinked = readCurve("c", { kind: "pv", above: 0 }, "0: 3; 50: 1; 100: 3", undefined, "metric");
    expect(
      [
        [0, 100],
        [50, 100],
        [0, 50],
        [60, 80],
        [10, 20],
      ].map(([low, high]) => leastOver(kinked, { low: low!, high: high! })),
    ).toEqual([1, 1, 1, 1.4, 2.2].map((x) => expect.closeTo(x, 12)));
  });
});

describe("cautions", () => {
  test("derating is spoken of above 23 °C, where no curve is known", () => {
    expect(
      [23, 23.5].map((t) => cautions(grade(), { temperature: { low: 20, high: t } }).includes("not derated")),
    ).toEqual([false, true]);
  });
  test("missing limits are named once, and nothing else is said of them", () => {
    const found = cautionsOf(grade({ pvLimit: undefined }), at(20, 60)).filter((text) => text.includes("PV limit"));
    expect(found).toEqual(["No data on PV limit: it was not checked."]);
  });
  test("a limit's condition and a remembered value are told, others not", () => {
    const origin = { source: "shigley", at: "Table 12-7", printed: "x", label: "memory", condition: "dry" } as const;
    expect(cautions(grade({}, { pvLimit: origin }))).toContain("The PV limit: dry.");
    expect(cautions(grade({}, { pvLimit: origin }))).toContain("was recalled from");
    expect(cautions(grade({}, { pvLimit: { ...origin, label: "read", condition: undefined } }))).not.toMatch(
      /recalled|The PV limit/,
    );
  });
  test("short excursions: above the highest lasting temperature, up to the short-term one", () => {
    const told = (t: number) => cautions(grade(), { temperature: { low: 20, high: t } }).includes("Short excursions");
    expect([90, 91, 120, 121].map(told)).toEqual([false, true, true, false]);
    expect(cautions(grade({ shortTermTemperature: undefined }), at(20, 100))).not.toContain("Short excursions");
    expect(cautions(grade({ highestTemperature: undefined }))).toContain("No data on highest temperature");
  });
  test("an unknown lowest temperature is told only below room temperature", () => {
    const cold = (low: number, more = {}) =>
      cautions(grade(more), { temperature: { low, high: 20 } }).includes("lowest temperature");
    expect([cold(20, { lowestTemperature: undefined }), cold(19, { lowestTemperature: undefined }), cold(19)]).toEqual([
      false,
      true,
      false,
    ]);
  });
  test("wet: swelling of zero is none, a little is told; PV limits are dry where something moves", () => {
    const wet = (swellingSaturated: number | undefined, motion: Duty["motion"] = "turning") =>
      cautions(grade({ swellingSaturated }), { wet: true, motion });
    expect(wet(0)).not.toMatch(/Swells|No data on swelling/);
    expect(wet(0.005)).toContain("Swells by 0.5 % when saturated");
    expect(wet(0.07)).toContain("Swells by 7 % when saturated");
    expect(wet(undefined)).toContain("No data on swelling saturated");
    expect([wet(0), wet(0, "static")].map((text) => text.includes("PV limits are for dry"))).toEqual([true, false]);
    expect(cautions(grade({ swellingSaturated: 0.02 }))).not.toContain("Swells");
  });
  test("shafts: one among those suited, and what a soft one suffers", () => {
    const shafts = ["hardened steel", "Soft steel"];
    const on = (shaft: string, softShaft?: Values["softShaft"]) => cautions(grade({ shafts, softShaft }), { shaft });
    expect(on("hardened steel", "poor")).not.toMatch(/not among|soft shaft/);
    expect(on("soft steel", "good")).not.toMatch(/not among|soft shaft/);
    expect(on("soft steel")).not.toMatch(/not among|soft shaft/);
    expect(on("soft steel", "fair")).toContain("Spares a soft shaft: fair.");
    expect(on("chromed")).toContain("A shaft of chromed is not among those suited");
    expect(cautions(grade(), { shaft: "chromed" })).toContain("No data on shafts suited.");
  });
  test("hardness: told below what is asked, or where only the material is known", () => {
    const with200 = (d: Partial<Duty>) => cautions(grade({ shaftHardness: 200 }), d).includes("at least 200 HB");
    expect([with200({ hardness: 199 }), with200({ hardness: 200 }), with200({ hardness: 201 }), with200({})]).toEqual([
      true,
      false,
      false,
      false,
    ]);
    expect([with200({ shaft: "chromed" }), with200({ shaft: "chromed", hardness: 300 })]).toEqual([true, false]);
  });
  test("length over bore from 0.5 to 2", () => {
    const told = (lengthRatio?: number) => lengthCaution({ lengthRatio }).length;
    expect([undefined, 0.49, 0.5, 0.52, 1, 2, 2.01, 3].map(told)).toEqual([0, 1, 0, 0, 0, 0, 1, 1]);
  });
});

describe("suggested names", () => {
  test("up to three, the nearest first; a name inside another is near, a single letter is not", () => {
    expect(nearest("sorel", ["Sorrel", "Quince", "Medlar"])).toEqual(["Sorrel"]);
    expect(nearest("abcdef", ["abcdeg", "abcdex", "abcdez", "abcdey"])).toHaveLength(3);
    expect(nearest("abcdef", ["abcxyf", "abcdxf"])).toEqual(["abcdxf", "abcxyf"]);
    expect(nearest("PA", ["PA66", "POM"])).toEqual(["PA66"]);
    expect(nearest("P", ["PA66", "POM"])).toEqual([]);
    expect(nearest("PA66", ["A", "PA"])).toEqual(["PA"]);
    expect(nearest("", ["A"])).toEqual([]);
    expect(nearest("B", ["A", "AB"])).toEqual(["A", "AB"]);
    expect(nearest("abc", ["abd", "axx"])).toEqual(["abd"]);
    expect(nearest("abcdef", ["abcd", "badcfe", "xxcdefgh"])).toEqual(["abcd"]);
  });
  test("a missing and an extra letter count one each, at either end", () => {
    expect(nearest("bcdef", ["abxcdef"])).toEqual([]);
    expect(nearest("abxdef", ["abcdef", "abxdf"])).toEqual(["abcdef", "abxdf"]);
    expect(nearest("abcdefghi", ["zabcdefgx", "bcdefghix", "xyzdefghi"])).toEqual([
      "bcdefghix",
      "zabcdefgx",
      "xyzdefghi",
    ]);
  });
});

describe("sizing at its edges", () => {
  const table = [
    ["grade", "running pressure limit [MPa]", "speed limit turning [m/s]", "PV limit [MPa*m/s]", "highest temperature"],
    ["X", 20, 1.1, 0.12, 90],
    ["no PV", 20, 1.1, null, 90],
  ];
  const one = (cells: unknown[][]) => cells[0]![0];
  test("MAXRPM: a pressure at its limit turns, a little above turns not at all", () => {
    const rpm = (load: number) => one(call(greatestRpm, ["X", load, 20, 15, null, table]));
    expect(rpm(6000)).toBeCloseTo((60_000 * 0.12) / 20 / (Math.PI * 20), 9);
    expect(rpm(6000 * (1 + 1e-10))).toBeCloseTo((60_000 * 0.12) / 20 / (Math.PI * 20), 6);
    expect((rpm(6001) as CellError).message).toContain("no shaft speed is allowed");
    expect((rpm(10_000) as CellError).message).toContain("running pressure 33.3333 MPa is above its limit 20 MPa");
  });
  test("without load or speed the PV limit is not asked for; with a little it is", () => {
    expect(one(call(greatestRpm, ["no PV", 0, 20, 15, null, table]))).toBeCloseTo((60_000 * 1.1) / (Math.PI * 20), 9);
    expect(one(call(greatestLoad, ["no PV", 20, 15, 0, null, table]))).toBe(6000);
    expect(one(call(leastLength, ["no PV", 6000, 20, 0, null, table]))).toBe(15);
    for (const cells of [
      call(greatestRpm, ["no PV", 1, 20, 15, null, table]),
      call(greatestLoad, ["no PV", 20, 15, 1, null, table]),
      call(leastLength, ["no PV", 6000, 20, 1, null, table]),
    ])
      expect((one(cells) as CellError).message).toBe('grade "no PV" has no data on PV limit');
    expect(one(call(greatestLoad, ["X", 20, 15, 1, null, table]))).toBeCloseTo(300 * 0.12, 9);
  });
  test("a power of ten before a heading's unit, raised or typed", () => {
    for (const unit of ["10⁻³ MPa", "10^-3 MPa", "1e-3 MPa", "1E-3 MPa", "×10⁻³ MPa", "x 10 ^ −3 · MPa"]) {
      const own = [
        ["grade", `running pressure limit [${unit}]`, "highest temperature"],
        ["X", 20_000, 90],
      ];
      expect(one(call(greatestLoad, ["X", 20, 15, 0, null, own]))).toBeCloseTo(6000, 6);
    }
  });
  test("the ranking: fits by use, then fails by use, then no data; equals keep their order", () => {
    const named = (name: string, more: Partial<Values>): Grade => ({ ...grade(more), name });
    const library = libraryOf(
      [
        named("none", { pvLimit: undefined }),
        named("fails cold", { lowestTemperature: 25 }),
        named("fails more", { pvLimit: 0.01 }),
        named("fails", { pvLimit: 0.05 }),
        named("fits more", { pvLimit: 0.11 }),
        named("fits", { pvLimit: 1 }),
        named("fits too", { pvLimit: 1 }),
      ],
      [],
    );
    const order = rank(duty, library)
      .map((r) => r.grade.name)
      .filter((name) => !name.startsWith("Demo"));
    expect(order.filter((name) => /^(fits|fails|none)/.test(name))).toEqual([
      "fits",
      "fits too",
      "fits more",
      "fails",
      "fails more",
      "fails cold",
      "none",
    ]);
  });
});
