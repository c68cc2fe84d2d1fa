import { functions } from "../../../src/core";
import { assess, ranked, statedDuty } from "../../../src/core/duties";
import type { Stated } from "../../../src/core/duties";
import { leastOver, libraryOf, pvLimit, readCurve } from "../../../src/core/grades/model";
import type { Grade, Values } from "../../../src/core/grades/model";
import { nearest } from "../../../src/core/names";
import { cautionsOf } from "../../../src/core/grades/cautionsOf";
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
const stated: Stated = { pressure: 2, speed: 0.05, temperature: { low: 20, high: 20 }, motion: "turning" };
type Given = NonNullable<Parameters<typeof statedDuty>[1]>;
const at = (low: number, high = low) => ({ temperature: { low, high } });
const cautionsIn = (g: Grade, d: Partial<Stated> = {}, given: Given = {}) => {
  const duty = statedDuty({ ...stated, ...d }, given);
  return cautionsOf(g, duty, assess(g.values, duty));
};
const cautions = (g: Grade, d: Partial<Stated> = {}, given: Given = {}) => cautionsIn(g, d, given).join(" ");
const wordOf = (g: Grade, d: Partial<Stated>, id: string) =>
  assess(g.values, statedDuty({ ...stated, ...d })).find(({ criterion }) => criterion.id === id)?.word;

describe("a limit holds at itself and to a rounding", () => {
  test("use", () => {
    for (const [pressure, word] of [
      [20, "fits"],
      [20 * (1 + 1e-10), "fits"],
      [20 * (1 + 1e-8), "fails"],
    ] as const)
      expect(wordOf(grade(), { pressure, speed: 0 }, "runningPressure")).toBe(word);
  });
  test("temperature; in motion the highest leaves no room for friction heat", () => {
    const resting = { motion: "static" } as const;
    for (const [t, word] of [
      [90, "fits"],
      [90 + 1e-10, "fits"],
      [90.001, "fails"],
    ] as const)
      expect(wordOf(grade(), { ...at(20, t), ...resting }, "highestTemperature")).toBe(word);
    expect(wordOf(grade(), at(20, 90), "highestTemperature")).toBe("fails");
    expect(wordOf(grade(), at(20, 89.99), "highestTemperature")).toBe("fits");
    for (const [t, word] of [
      [-40, "fits"],
      [-40 - 1e-10, "fits"],
      [-40.001, "fails"],
    ] as const)
      expect(wordOf(grade(), at(t, 20), "lowestTemperature")).toBe(word);
    const unknown = grade({ lowestTemperature: undefined });
    expect(wordOf(unknown, at(20), "lowestTemperature")).toBeUndefined();
    expect(wordOf(unknown, at(19.9, 20), "lowestTemperature")).toBe("no data");
  });
  test("a given limit equal to its curve is the one that is named", () => {
    const curve = readCurve("c", { kind: "pv", above: 0 }, "20: 0.2; 80: 0.1", undefined, "metric");
    const capped = { ...values, pvCurve: curve };
    expect(pvLimit(capped, { low: 20, high: 20 })).toMatchObject({ value: 0.2, key: "pvLimit" });
    expect(pvLimit(capped, { low: 20, high: 21 })).toMatchObject({ key: "pvCurve" });
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
        [-30, 20],
        [90, 101],
      ].map(([low, high]) => leastOver(kinked, { low: low!, high: high! })),
    ).toEqual([...[1, 1, 1, 1.4, 2.2, 2.2].map((x) => expect.closeTo(x, 12)), undefined]);
  });
});

describe("cautions", () => {
  test("a PV limit that is derated says so above 23 °C, where no curve is known", () => {
    expect([23, 23.5].map((t) => cautions(grade(), at(20, t)).includes("derated"))).toEqual([false, true]);
  });
  test("a pressure limit without a curve says that it is not lowered", () => {
    expect(cautions(grade())).toContain("Running pressure: pressure limit not lowered for temperature");
  });
  test("missing limits are told", () => {
    expect(cautionsIn(grade({ pvLimit: undefined }), at(20, 60))).toContain("No data on PV limit: PV was not checked.");
  });
  test("a limit's condition and a remembered value are told, others not", () => {
    const origin = { source: "shigley", at: "Table 12-7", printed: "x", label: "memory", condition: "dry" } as const;
    expect(cautions(grade({}, { pvLimit: origin }))).toContain("The PV limit: dry.");
    expect(cautions(grade({}, { pvLimit: origin }))).toMatch(
      /Recalled from R\. G\. Budynas.*, not re-read: PV limit\./,
    );
    expect(cautions(grade({}, { pvLimit: { ...origin, label: "read", condition: undefined } }))).not.toMatch(
      /[Rr]ecalled|The PV limit/,
    );
  });
  test("short excursions: above the highest lasting temperature, up to the short-term one", () => {
    const told = (t: number) => cautions(grade(), at(20, t)).includes("Short excursions");
    expect([90, 91, 120, 121].map(told)).toEqual([false, true, true, false]);
    expect(cautions(grade({ shortTermTemperature: undefined }), at(20, 100))).not.toContain("Short excursions");
    expect(cautions(grade({ highestTemperature: undefined }))).toContain("No data on highest temperature");
  });
  test("an unknown lowest temperature is told only below room temperature", () => {
    const cold = (low: number, more = {}) => cautions(grade(more), at(low, 20)).includes("lowest temperature");
    expect([cold(20, { lowestTemperature: undefined }), cold(19, { lowestTemperature: undefined }), cold(19)]).toEqual([
      false,
      true,
      false,
    ]);
  });
  test("wet: swelling of zero is none, a little is told; PV limits are dry where something moves", () => {
    const wet = (swellingSaturated: number | undefined, motion: Stated["motion"] = "turning") =>
      cautions(grade({ swellingSaturated }), { motion }, { moisture: "wet" });
    expect(wet(0)).not.toMatch(/Swells|No data on swelling/);
    expect(wet(0.005)).toContain("Swells 0.5 %: check the wet clearance.");
    expect(wet(0.07)).toContain("Swells 7 %: check the wet clearance.");
    expect(wet(undefined)).toContain("No data on swelling saturated");
    expect([wet(0), wet(0, "static")].map((text) => text.includes("PV limits are for dry"))).toEqual([true, false]);
    expect(cautions(grade({ swellingSaturated: 0.02 }))).not.toContain("Swells");
  });
  test("shafts: one among those suited, and what a soft one suffers", () => {
    const shafts = ["hardened steel", "Soft steel"];
    const on = (shaft: NonNullable<Given["shaft"]>, softShaft?: Values["softShaft"]) =>
      cautions(grade({ shafts, softShaft }), {}, { shaft });
    expect(on("hardened steel", "poor")).not.toMatch(/not among|soft shaft/);
    expect(on("soft steel", "good")).not.toMatch(/not among|soft shaft/i);
    expect(on("soft steel")).toContain("No data on soft shaft");
    expect(on("soft steel", "fair")).toContain("Soft shaft: fair.");
    expect(on("chromed")).toContain("Shaft of chromed not among those suited.");
    expect(cautions(grade(), {}, { shaft: "chromed" })).toContain("No data on shafts suited");
  });
  test("hardness: told below what is asked", () => {
    const told = (hardness: number) =>
      cautions(grade({ shaftHardness: 200, softShaft: "good" }), {}, { hardness }).includes("at least 200 HB");
    expect([199, 200, 201].map(told)).toEqual([true, false, false]);
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
    const rpm = (load: number) => one(call(functions.MAXRPM, ["X", load, 20, 15, 23, table]));
    expect(rpm(6000)).toBeCloseTo((60_000 * 0.12) / 20 / (Math.PI * 20), 9);
    expect(rpm(6000 * (1 + 1e-10))).toBeCloseTo((60_000 * 0.12) / 20 / (Math.PI * 20), 6);
    expect((rpm(6001) as CellError).message).toContain("no shaft speed is allowed");
    expect((rpm(10_000) as CellError).message).toContain("running pressure 33.3333 MPa is above its limit 20 MPa");
  });
  test("what a verdict would need is needed: a missing PV limit is no data even without load or speed", () => {
    for (const cells of [
      call(functions.MAXRPM, ["no PV", 0, 20, 15, 23, table]),
      call(functions.MAXLOAD, ["no PV", 20, 15, 0, 23, table]),
      call(functions.MINLENGTH, ["no PV", 6000, 20, 0, 23, table]),
    ])
      expect((one(cells) as CellError).message).toBe('grade "no PV" has no data on PV limit');
    expect(one(call(functions.MAXLOAD, ["X", 20, 15, 1, 23, table]))).toBeCloseTo(300 * 0.12, 9);
    expect((one(call(functions.MAXLOAD, ["X", 20, 15, 1, null, table])) as CellError).message).toBe(
      "temperature is missing",
    );
  });
  test("a PV warms the bore by what the highest temperature has above 23 °C: a grade without such room is not sized", () => {
    const cold = [
      [...table[0]!, "PV at temperature", "lowest temperature"],
      ["cold", 20, 1.1, 0.12, 23, "0: 0.12; 20: 0.1", -40],
    ];
    for (const cells of [
      call(functions.MAXLOAD, ["cold", 20, 15, 0.1, 10, cold]),
      call(functions.MAXRPM, ["cold", 100, 20, 15, 10, cold]),
    ])
      expect((one(cells) as CellError).message).toBe('grade "cold" has no data on highest temperature');
  });
  test("a power of ten before a heading's unit, raised or typed", () => {
    for (const unit of ["10⁻³ MPa", "10^-3 MPa", "1e-3 MPa", "1E-3 MPa", "×10⁻³ MPa", "x 10 ^ −3 · MPa"]) {
      const own = [
        ["grade", `running pressure limit [${unit}]`, "highest temperature", "PV limit", "speed limit turning"],
        ["X", 20_000, 90, 0.1, 1],
      ];
      expect(one(call(functions.MAXLOAD, ["X", 20, 15, 0, 23, own]))).toBeCloseTo(6000, 6);
    }
  });
  test("the ranking: fits by use, then no data, then fails by use; equals keep their order", () => {
    const named = (name: string, more: Partial<Values>): Grade => ({ ...grade(more), name });
    const duty = statedDuty(stated);
    const { own } = libraryOf([
      named("none", { pvLimit: undefined }),
      named("fails more", { pvLimit: 0.01 }),
      named("fails", { pvLimit: 0.05 }),
      named("fits more", { pvLimit: 0.11 }),
      named("fits", { pvLimit: 1 }),
      named("fits too", { pvLimit: 1 }),
    ]);
    expect(ranked(own, (one) => assess(one.values, duty)).map(({ grade: { name } }) => name)).toEqual([
      "fits",
      "fits too",
      "fits more",
      "none",
      "fails",
      "fails more",
    ]);
  });
});

test("a use that no per cent tells any more is told in words", () => {
  // the PV limit of this grade at 23 °C is 0.13 MPa·m/s
  const said = (pressure: number, speed: number) =>
    call(functions.VERDICT, ["Demo Sorrel", pressure, speed, 23])[0]![0];
  expect(said(1e300, 1e300)).toBe("fails, PV far beyond its limit");
  expect(said(1.3e5, 1)).toBe("fails, PV far beyond its limit");
  expect(said(1.2e5, 1)).toBe("fails, PV 92307692 %");
});
