import { BushError } from "../../../src/core/errors";
import { functions } from "../../../src/core";
import { judge, NamedDuty, notAsked, readDuties, verdictOf, verdictText } from "../../../src/core/duties";
import type { Check, FieldValues } from "../../../src/core/duties";
import { criteria } from "../../../src/core/duties/criteria";
import { chooseDuty } from "../../../src/core/duties/judging/choose";
import { together, worse } from "../../../src/core/duties/judging/criterion";
import type { Finding } from "../../../src/core/duties/judging/criterion";
import { better, judgedGrade } from "../../../src/core/duties/judging/rank";
import { Band } from "../../../src/core/band";
import { call } from "../../support";
import { between, checksOf, described, full, grade, on, resting, without } from "./support";

const finding = (more: Partial<Finding>): Finding => ({ word: "fits", figures: [], ...more });
const use = (x: number | undefined, word: Finding["word"] = "fits") => finding({ word, use: x });

describe("the worse of two findings", () => {
  test.each<[string, Finding, Finding]>([
    ["by its word: what fails", use(0.1, "fails"), use(undefined, "no data")],
    ["what is not known before care", use(undefined, "no data"), use(0.9, "care")],
    ["care before what fits", use(undefined, "care"), use(0.9)],
    ["of one word by its use", use(0.9), use(0.8)],
    ["by any use, also none of its limit, before one that has none", use(0), use(undefined)],
    ["without a use by the room that is left", finding({ value: 5, limit: 0 }), finding({ value: 10, limit: 0 })],
    ["also from below", finding({ value: 85, limit: 90 }), finding({ value: 20, limit: 90 })],
    [
      "where it fails by how far it is missed",
      finding({ word: "fails", value: 110, limit: 90 }),
      finding({ word: "fails", value: 91, limit: 90 }),
    ],
    ["one with a room before one without", finding({ value: 5, limit: 0 }), finding({ value: 1 })],
    [
      "care by the room that it says to leave, where its limit is held",
      finding({ word: "care", value: 1, limit: 0, room: () => [1] }),
      finding({ word: "care", value: 2, limit: 0, room: () => [2] }),
    ],
    [
      "where that ties by what else is told, to a rounding",
      finding({ word: "care", room: () => [1 + 1e-11, -0.6] }),
      finding({ word: "care", room: () => [1, -0.5] }),
    ],
    ["and where uses tie", finding({ use: 0.5, room: () => [-60] }), finding({ use: 0.5, room: () => [-50] })],
  ])("%s", (_, bad, good) => {
    expect(worse(bad, good)).toBe(bad);
    expect(worse(good, bad)).toBe(bad);
  });
  test("is the first of equals", () => {
    for (const [a, b] of [
      [use(0.5), use(0.5)],
      [finding({}), finding({})],
    ] as const)
      expect(worse(a, b)).toBe(a);
  });
});

test("of several things the worst is told, with the reasons of all that are as bad and the figures of all", () => {
  const said = (word: Finding["word"], text: string, figure: "shock" | "dirt") =>
    finding({ word, figures: [figure], say: () => text });
  const all = together([said("care", "a", "shock"), said("fits", "b", "dirt"), said("care", "c", "dirt")]);
  expect([all.word, all.say!("metric"), all.figures]).toEqual(["care", "a; c", ["shock", "dirt", "dirt"]]);
  expect(together([said("care", "a", "shock"), use(0.5)]).say!("metric")).toBe("a");
});

describe("what governs a verdict", () => {
  const check = (id: string, more: Partial<Finding>): Check => ({
    ...finding(more),
    criterion: criteria.find((one) => one.id === id)!,
    duty: on({}).corners[0]!,
  });
  test("is the first of those whose uses differ by a rounding, the greater of others", () => {
    const pair = (more: number) => [check("speed", { use: 0.5 }), check("pv", { use: 0.5 + more })];
    expect(verdictOf(pair(1e-11)).governing.criterion.id).toBe("speed");
    expect(verdictOf(pair(1e-8)).governing.criterion.id).toBe("pv");
  });
  test("is a use of 0 before one that is told without", () =>
    expect(verdictOf([check("moisture", {}), check("pv", { use: 0 })]).governing.criterion.id).toBe("pv"));
  test("is followed by the greatest use where it has neither words nor a use, and not where it has one", () => {
    const [moist, used] = [check("moisture", { word: "care" }), check("pv", { use: 0.5 })];
    expect(verdictOf([moist, used]).next).toBe(used);
    expect(verdictOf([used]).next).toBeUndefined();
  });
  test("is not followed by itself, nor by a use where data are missing", () => {
    expect(verdictText([check("pv", { word: "care", use: 0.5, say: () => "PV so" })], "metric")).toBe("care, PV so");
    expect(verdictOf([check("shock", { word: "no data", property: "shock" }), check("pv", { use: 0.5 })]).next).toBe(
      undefined,
    );
  });
});

describe("grades in order", () => {
  const ranked = (word: Finding["word"], of: number | undefined, limit?: number) =>
    judgedGrade(grade({}), [
      ...[{ ...use(of, word), criterion: criteria.find(({ id }) => id === "pv")!, duty: on({}).corners[0]! }],
      ...(limit === undefined
        ? []
        : [
            {
              ...finding({ limit }),
              criterion: criteria.find(({ id }) => id === "wearLife")!,
              duty: on({}).corners[0]!,
            },
          ]),
    ] as Check[]);
  test.each<[string, Parameters<typeof ranked>, Parameters<typeof ranked>]>([
    ["what fits before care", ["fits", 0.9], ["care", 0.1]],
    ["care before what is not known", ["care", undefined], ["no data", 0.1]],
    ["what is not known before what fails", ["no data", undefined], ["fails", 1.1]],
    ["the lesser use first", ["fits", 0.5], ["fits", 0.6]],
    ["the lesser use first, whatever the life", ["fits", 0.5, 100], ["fits", 0.5 + 1e-8, 200]],
    ["a use before none", ["fits", 0.9], ["fits", undefined]],
    ["of like uses, to a rounding, the longer life", ["fits", 0.5 + 1e-11, 200], ["fits", 0.5, 100]],
    ["a life before none", ["fits", 0.5, 0.5], ["fits", 0.5]],
  ])("%s", (_, first, second) => {
    expect(Math.sign(better(ranked(...first), ranked(...second)))).toBe(-1);
    expect(Math.sign(better(ranked(...second), ranked(...first)))).toBe(1);
  });
  test("equals are equal, lives without end too", () => {
    expect(better(ranked("fits", 0.5, 100), ranked("fits", 0.5, 100))).toBe(0);
    expect(better(ranked("fits", 0.5, Infinity), ranked("fits", 0.5, Infinity))).toBe(0);
  });
});

describe("which duty of a table", () => {
  const named = (...names: readonly string[]) => [
    ["duty", "load [N]", "bore [mm]", "length [mm]", "rpm", "temperature"],
    ...names.map((name) => [name, 100, 20, 20, 10, 23]),
  ];
  const tableOf = (...names: readonly string[]) => readDuties(named(...names), "metric", "duties");
  test("an error in the name's place is passed on", () => {
    const error = new BushError("passed", "duty", "#REF!");
    expect(() => chooseDuty(tableOf("Vent", "Drum"), error)).toThrow(error);
  });
  test("an unknown one is answered by the first three", () =>
    expect(() => chooseDuty(tableOf("Vent", "Drum", "Roller", "Gate"), "Fan")).toThrow(
      'duty "Fan" is unknown; the table has "Vent", "Drum" or "Roller"',
    ));
  test("that cannot be read says why", () => {
    const [heading, ...lines] = named("Vent");
    const table = readDuties([heading, lines[0]!.with(1, "much")] as never, "metric", "duties");
    expect(() => chooseDuty(table, null)).toThrow("load");
  });
});

describe("what was not asked", () => {
  const open = (duty: NamedDuty) => notAsked(judge(grade(full), duty), duty).map(({ id }) => id);
  test("is what optional fields would ask, of this part and motion, and were left open", () => {
    expect(open(on({}))).toEqual(expect.arrayContaining(["staticPressure", "wearLife", "clearance", "shaft", "media"]));
    expect(open(on({}))).not.toContain("notJudged");
    // at rest nothing wears and the static limit was asked anyway
    expect(open(on({}, resting))).toContain("shaft");
    for (const id of ["wearLife", "staticPressure"]) expect(open(on({}, resting))).not.toContain(id);
    const washer: FieldValues = { part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, ...between(23) };
    for (const id of ["clearance", "grip", "tilt"]) expect(open(described(washer))).not.toContain(id);
  });
  test("is not what one of several fields asked", () => {
    for (const fields of [{ hours: 10 }, { allowance: 0.2 }]) expect(open(on(fields))).not.toContain("wearLife");
    expect(open(on({ hardness: 300 }))).not.toContain("shaft");
  });
  test("goes by the motion of a duty that rests first", () => {
    const later = described({ ...on({}, resting).values, time: 5 }, { motion: "turning", rpm: 10, time: 5 });
    expect(open(later)).toContain("wearLife");
  });
});

test("of a band the corner with less room is told, of one corner the finding as it is", () => {
  const peak = (to: Band) => judge(grade(full), on({ peakTemperature: to as never }));
  const found = peak(new Band(60, 80)).find(({ criterion }) => criterion.id === "shortPeak")!;
  // 80 + 33.5 °C
  expect(found.value).toBe(113.5);
  expect(checksOf(without("shortTermTemperature"), on({ peakTemperature: 60 })).map(({ word }) => word)).toContain(
    "no data",
  );
});

describe("a row of DUTIES", () => {
  const heading = ["duty", "grade", "load [N]", "bore [mm]", "length [mm]", "rpm", "temperature [°C]"];
  test("tells the greatest PV of its bands", () => {
    const [names, row] = call(functions.DUTIES, [[heading, ["Drum", "Demo Medlar", "100 to 200", 20, 20, 60, 23]]]);
    // 200/400 MPa at π·20·60/60000 m/s
    expect(row![names!.findIndex((name) => /^PV/.test(String(name)))]).toBeCloseTo(0.5 * 0.02 * Math.PI, 12);
  });
  test("whose grade is not known says so beside its name", () => {
    const [names, row] = call(functions.DUTIES, [[heading, ["Drum", "Unobtainium", 100, 20, 20, 60, 23]]]);
    expect(row!.slice(0, 2)).toEqual(["Drum", "Unobtainium"]);
    expect(String(row![names!.indexOf("verdict")])).toContain('grade "Unobtainium" is unknown');
  });
});
