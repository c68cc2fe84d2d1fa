import { functions } from "../../../src/core";
import { figure } from "../../../src/core/duties/judging/criterion";
import { RecordWorkings } from "../../../src/core/duties/sheet/rows";
import type { System } from "../../../src/core/kinds";
import { call, pressedBush } from "../../support";
import { card, near, plainGrades, sleeve } from "./plain";
import type { Fields } from "./plain";

/** Single lines of DUTYSHEET's record: [what, formula, numbers, result, unit, from where]. */
type Line = readonly [what: string, formula: string, numbers: string, result: unknown, unit: string, from: string];
const record = (
  duty: readonly (readonly unknown[])[],
  grade: string,
  grades: unknown = null,
  units: System = "metric",
) => {
  const rows = call(functions.DUTYSHEET, [duty, null, grade, grades], units).slice(1) as unknown as [string, ...Line][];
  const sections = [...new Set(rows.map(([section]) => section))];
  const linesOf = (section: string) =>
    rows.filter(([name]) => name === section).map(([, ...line]) => line as unknown as Line);
  const line = (section: string, what: string) => linesOf(section).find(([name]) => name === what);
  return { sections, linesOf, line };
};
const ofCard = (fields: Fields, grades: unknown = plainGrades, units?: System) =>
  record(card({ duty: "Roller", ...sleeve, ...fields }), "Plain", grades, units);
/** The plain grades with a further column. */
const withColumn = (heading: string, value: unknown) => [
  [...plainGrades[0]!, heading],
  ...plainGrades.slice(1).map((row) => [...row, value]),
];
/** 300 N on 20 × 20 mm at 60/min for 5 minutes, and what follows it. */
const steps = (...later: readonly (readonly unknown[])[]) => [
  ["duty", "load [N]", "bore [mm]", "length [mm]", "rpm", "temperature [°C]", "time [min]"],
  ["Drum", 300, 20, 20, 60, 23, 5],
  ...later,
];

describe("inputs as read", () => {
  const inputOf = (fields: Fields, what: string, units?: System) =>
    ofCard(fields, plainGrades, units).line("input", what)?.slice(3, 5);
  test.each<[Fields, string, unknown, string]>([
    [{ load: "200 to 400" }, "load", "200 to 400", "N"],
    [{ load: "300 ± 20 %" }, "load", "240 to 360, likely 300", "N"],
    [{ temperature: "5 to 45" }, "temperature", "5 to 45", "°C"],
    [{ temperature: 23 }, "temperature", 23, "°C"],
    [{ media: "water, fuels" }, "media", "water, fuels", ""],
    [{ "design factor": "1.2 to 1.8" }, "design factor", "1.2 to 1.8", ""],
  ])("%j: %s %s %s", (fields, what, result, unit) => expect(inputOf(fields, what)).toEqual([result, unit]));
  test("in inch units the ends of a band too, but for what has no dimension", () => {
    const inch = { "bore [mm]": 20, "length [mm]": 20, bore: "", length: "", load: "", temperature: "5 to 45 °C" };
    const given = (fields: Fields) =>
      Object.fromEntries(Object.entries({ ...inch, ...fields }).filter(([, value]) => value !== ""));
    const lineOf = (fields: Fields, what: string) =>
      record(card({ duty: "Roller", rpm: 60, ...given(fields) }), "Demo Medlar", null, "inch")
        .line("input", what)
        ?.slice(3, 5);
    // 100 lbf = 444.82216152605 N; 5 and 45 °C are 41 and 113 °F
    expect(lineOf({ "load [N]": "444.82216152605 to 889.6443230521" }, "load")).toEqual(["100 to 200", "lbf"]);
    expect(lineOf({ "load [N]": 100 }, "temperature")).toEqual(["41 to 113", "°F"]);
    expect(lineOf({ "load [N]": 100, "design factor": "1.2 to 1.8" }, "design factor")).toEqual(["1.2 to 1.8", ""]);
  });
  test("a zone as its deviations, the upper one first", () =>
    expect(record(pressedBush(), "Demo Sorrel").line("input", "outside zone")?.slice(3, 5)).toEqual([
      "+0.1/+0.05 mm",
      "",
    ]));
  test("in inch units a zone too", () => {
    const zones = { "bore zone": "0.1/0.2", "housing zone": "0/0.001", "shaft zone": "-0.1/-0.05" };
    const bush = pressedBush({ ...zones, "outside zone": "+0.002/+0.004" });
    expect(record(bush, "Demo Sorrel", null, "inch").line("input", "outside zone")?.[3]).toBe("+0.004/+0.002 in");
  });
  test("duty and grade stand in the record's head, not once more among them", () => {
    const { linesOf } = ofCard({ grade: "Plain" });
    expect(linesOf("input").map(([what]) => what)).not.toEqual(expect.arrayContaining(["duty"]));
    expect(linesOf("input").map(([what]) => what)).not.toEqual(expect.arrayContaining(["grade"]));
  });
  test("a motion that was typed does not follow from its figures", () => {
    const typed = ofCard({ motion: "turning" })
      .linesOf("input")
      .filter(([what]) => what === "motion");
    expect(typed.map((line) => [line[3], line[5]])).toEqual([["turning", "as read"]]);
  });
});

describe("the motion of a later step", () => {
  const motionsOf = (...later: readonly (readonly unknown[])[]) => {
    const [headings, ...rows] = steps(...later) as unknown[][];
    const table = [
      [...headings!, "motion"],
      ...rows.map((row) => (row.length > headings!.length ? row : [...row, null])),
    ];
    return record(table, "Plain", plainGrades)
      .linesOf("input")
      .filter(([what]) => what.startsWith("motion"))
      .map((line) => [line[0], line[3], line[5]]);
  };
  const row = (rpm: unknown, motion: unknown) => [null, 200, null, null, rpm, null, 5, motion];
  const first = ["motion, step 1", "turning", "follows from its figures"];
  test.each([
    ["of the same figures", row(null, null), [first, ["motion, step 2", "turning", "follows from its figures"]]],
    ["of its own figures", row(30, null), [first, ["motion, step 2", "turning", "follows from its figures"]]],
    ["typed", row(null, "static"), [["motion, step 2", "static", "as read"], first]],
  ])("%s", (_, later, lines) => expect(motionsOf(later)).toEqual(lines));
  test("behind a rest follows from its figures, or is the rest's", () => {
    const [, , ...third] = motionsOf(row(null, "static"), row(30, null));
    expect(third).toEqual([["motion, step 3", "turning", "follows from its figures"]]);
    expect(motionsOf(row(null, "static"), row(null, null))[0]).toEqual(["motion, steps 2, 3", "static", "as read"]);
  });
});

describe("figures of the grade", () => {
  const grades = withColumn("PV at temperature", "23: 0.1; 100: 0.02");
  const { line } = ofCard({ hardness: 300, shaft: "hardened steel" }, withColumn("least shaft hardness", 200));
  test("a number beside its unit, a curve with its units in its heading", () => {
    const curved = ofCard({}, grades);
    expect(curved.line("grade", "PV limit")?.slice(3, 5)).toEqual([0.1, "MPa·m/s"]);
    const [what, , , , unit] = curved.linesOf("grade").find(([heading]) => heading.startsWith("PV at temperature"))!;
    expect([what, unit]).toEqual([expect.stringMatching(/^PV at temperature \[.*MPa·m\/s\]$/), ""]);
  });
  test("that is the limit of a criterion without a formula stands as its limit alone", () => {
    expect(line("shaft", "Limit")?.[3]).toBe(200);
    expect(line("shaft", "least shaft hardness")).toBeUndefined();
    expect(line("shaft", "shafts suited")?.[3]).toBe("hardened steel");
    expect(line("shaft", "shaft")?.[3]).toBe("hardened steel");
    // what the duty leaves out is not asked
    expect(line("shaft", "roughness")).toBeUndefined();
  });
  test("in words stand before the formula that rests on them, those in figures within it", () => {
    const worn = ofCard({ hours: 10, "wear allowance": 0.2 });
    expect(worn.line("wear life", "wear rate from")?.[3]).toBe("bush");
    expect(worn.line("wear life", "wear rate high")).toBeUndefined();
    expect(worn.line("wear life", "Wear rate, high")?.slice(3, 6)).toEqual([1e-6, "mm³/(N·m)", "figure of the grade"]);
    expect(worn.line("wear life", "Hours wanted")?.[5]).toBe("");
  });
});

describe("the verdict's use", () => {
  const useOf = (fields: Fields, grades?: unknown) => {
    const line = ofCard(fields, grades).line("verdict", "use");
    return line && [line[2], line[3]];
  };
  test("is that of what governs, or of what follows where that is told in words", () => {
    expect(useOf({})![0]).toBe("PV");
    expect(useOf({ "impact factor": 2 })![0]).toBe("PV");
  });
  test("is that of what governs also where its words are followed by a greater one", () => {
    const [heading, ...lines] = plainGrades;
    const low = heading!.indexOf("wear rate low");
    const oneRate = [heading, ...lines.map((row) => row.with(low, null))];
    // 0.2/(1e-6·0.75·v·3600) h and 45 % of it: by one rate alone 2.6 times as much must have room
    const life = 0.2 / (1e-6 * 0.75 * ((Math.PI * 20 * 60) / 60_000) * 3600);
    const [criterion, use] = useOf({ hours: 0.45 * life, "wear allowance": 0.2 }, oneRate)!;
    expect(criterion).toBe("wear life");
    near(use, 0.45);
  });
});

describe("loads and motions", () => {
  test("of two steps each have their section", () =>
    expect(record(steps([null, 200, null, null, null, null, 5]), "Plain", plainGrades).sections).toEqual(
      expect.arrayContaining(["step 1", "step 2"]),
    ));
  test("of a flanged bush stand in bore and on the flange; a washer has its face alone", () => {
    const flanged = { part: "flanged", "flange outside": 30, "axial load": 100 };
    expect(ofCard(flanged).sections).toEqual(expect.arrayContaining(["load and motion", "load and motion, flange"]));
    const washer = record(
      card({ duty: "Washer", part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, temperature: 23 }),
      "Plain",
      plainGrades,
    );
    expect(washer.sections).toContain("load and motion");
    expect(washer.sections).not.toContain("load and motion, flange");
  });
  test("of a turning flange are worked at the radius of its friction, of one that slides at none", () => {
    const flange = (motion: Fields) => {
      const { rpm: _, ...still } = sleeve;
      const flanged = { part: "flanged", "flange outside": 30, "axial load": 100 };
      return record(card({ duty: "D", ...still, ...flanged, ...motion }), "Plain", withColumn("speed limit linear", 1))
        .linesOf("load and motion, flange")
        .map(([what]) => what);
    };
    expect(flange({ rpm: 60 })).toContain("Diameter at the friction radius of the face");
    expect(flange({ stroke: 50, cycles: 10 })).not.toContain("Diameter at the friction radius of the face");
    expect(flange({ stroke: 50, cycles: 10 })).toContain("Mean sliding speed");
  });
  test("at a band that no load hangs on are worked at its lower end", () => {
    const { sections } = ofCard({ hours: "10 to 20", "wear allowance": 0.2 });
    expect(sections).toContain("load and motion, hours 10 h");
    expect(sections).not.toContain("load and motion, hours 20 h");
  });
});

test("a line that is worked names the source of its formula, a figure put into it none", () => {
  const { linesOf } = ofCard({});
  const from = (what: string) => linesOf("load and motion").find(([name]) => name === what)?.[5];
  expect(from("Mean pressure")).not.toBe("");
  expect(linesOf("load and motion")[0]![5]).toBe("");
});

describe("a symbol", () => {
  test("that stands for the same once more is not told again", () => {
    const { linesOf } = ofCard({ "design factor": 2 });
    const told = ["running pressure", "PV"].flatMap((section) =>
      linesOf(section).filter(([what]) => what === "Design factor"),
    );
    expect(told).toHaveLength(1);
  });
  test("whose parts have changed is told again, though it comes to the same", () => {
    // half the load at twice the speed
    const halved = record(steps([null, 150, null, null, 120, null, 5]), "Plain", plainGrades).linesOf("step 2");
    expect(halved.filter(([, formula]) => formula.startsWith("PV = "))).toHaveLength(1);
  });
  test("whose parts have changed is told again, though it is no result and comes to the same", () => {
    const rows = new RecordWorkings("metric");
    const told = (a: number) => {
      const known = { a: figure(a, "ratio", "Smaller"), b: figure(5, "ratio", "Greater") };
      const between = { q: { unit: "", text: "The greater of both" } };
      return rows.working({ lines: ["q = max(a, b)"], known, between }, []).map(([what]) => what);
    };
    expect(told(1)).toEqual(["Smaller", "Greater", "The greater of both"]);
    expect(told(2)).toEqual(["Smaller", "The greater of both"]);
    expect(told(2)).toEqual([]);
  });
});
