import { functions } from "../../../src/core";
import { convert } from "../../../src/core/units/conversion";
import { call, CellError, message } from "../../support";
import { card, near, plainGrades, sleeve, speed } from "./plain";
import type { Fields } from "./plain";

const sweep = (heading: string, values: readonly unknown[], fields: Fields = sleeve, grade: string | null = "Plain") =>
  call(functions.DUTYSWEEP, [card(fields), heading, values.map((value) => [value]), null, grade, plainGrades]).slice(1);
const errorOf = (row: readonly unknown[]) => (row[5] as CellError).message;

test("a row per value: the value, use, what governs and the verdict", () => {
  const [light, heavy] = sweep("load", [300, 800]);
  expect([light![0], light![1], light![2], light![4], light![5]]).toEqual([300, "N", "Plain", "PV", "fits, PV 47 %"]);
  near(light![3], ((300 / 400) * speed) / 0.1);
  expect([heavy![0], heavy![4], heavy![5]]).toEqual([800, "PV", "fails, PV 126 %"]);
});

test("the heading may be any that a table of duties has, with its unit", () => {
  expect(sweep("Radial load [kN]", [0.3])[0]!.slice(0, 2)).toEqual([300, "N"]);
  near(sweep("load [lbf]", [100])[0]![0], convert(100, "lbf", "N"), 1e-12);
  expect(message(call(functions.DUTYSWEEP, [card(sleeve), "lod", [[1]], null, "Plain", plainGrades]))).toBe(
    'heading "lod" is unknown; nearest: load',
  );
  expect(
    message(call(functions.DUTYSWEEP, [card(sleeve), "colour of the paint", [[1]], null, "Plain", plainGrades])),
  ).toContain("give one of a table of duties");
});

test("a value is read as in a duty: text with its unit, words, spans and bands", () => {
  expect(sweep("load", ["0.3 kN"])[0]!.slice(0, 2)).toEqual([300, "N"]);
  expect(sweep("shaft", ["hardened steel", "soft steel"]).map((row) => String(row[5]).split(",")[0])).toEqual([
    ...["fits", "no data"],
  ]);
  expect(sweep("load", ["300 to 800"])[0]![5]).toBe("fails, PV 126 %");
});

test("every value is told in the sheet's unit: bands, spans and words too", () => {
  const told = (heading: string, values: readonly unknown[], units: "metric" | "inch" = "metric") =>
    call(functions.DUTYSWEEP, [card(sleeve), heading, [values], null, "Plain", plainGrades], units)
      .slice(1)
      .map((row) => row.slice(0, 2));
  expect(told("load [lbf]", ["20 to 40", "20 ± 5", 20])).toEqual([
    ["88.96443 to 177.9289", "N"],
    ["66.72332 to 111.2055, likely 88.96443", "N"],
    [convert(20, "lbf", "N"), "N"],
  ]);
  expect(told("temperature [°F]", ["50 to 86", 50])).toEqual([
    ["10 to 30", "°C"],
    [10, "°C"],
  ]);
  expect(told("temperature [°C]", ["10 to 30"], "inch")).toEqual([["50 to 86", "°F"]]);
  expect(told("shaft zone", ["f7", "-0.0254/0 mm"], "inch")).toEqual([
    ["f7", ""],
    ["0/-0.001 in", ""],
  ]);
  expect(told("media", ["Fuels;water"])).toEqual([["fuels, water", ""]]);
});

test("what cannot be read, or lies outside, is an error in its own row", () => {
  const [word, below, typed, together, good] = sweep("bore", ["wide", -5, "20 N", 24, 20], { ...sleeve, outside: 23 });
  expect(errorOf(word!)).toBe('values: bore must be a number or text like "12.5 mm", got "wide"');
  expect(errorOf(below!)).toBe("values: bore must be above 0 mm, got -5");
  expect(errorOf(typed!)).toContain("bore must be in a unit like mm");
  expect(errorOf(together!)).toBe("values: outside must be above the bore of 24 mm, got 23 mm");
  expect([together![0], together![1], together![2]]).toEqual([24, "mm", "Plain"]);
  expect(good![5]).toContain("PV 47 %");
  expect(errorOf(sweep("rpm", [0])[0]!)).toContain("static");
  const error = { type: "Error", basicValue: "#DIV/0!" };
  expect((sweep("load", [error])[0]![5] as CellError).code).toBe("#DIV/0!");
});

test("a blank, and a 0 where it can be no value, leaves its row blank", () =>
  expect(sweep("bore", [null, 0, "", 20]).map((row) => row[2])).toEqual(["", "", "", "Plain"]));

test("a range of any shape is read row by row", () => {
  const wide = call(functions.DUTYSWEEP, [
    card(sleeve),
    "load",
    [
      [100, 200],
      [300, 400],
    ],
    null,
    "Plain",
    plainGrades,
  ]);
  expect(wide.slice(1).map(([value]) => value)).toEqual([100, 200, 300, 400]);
});

test("a field that the duty does not give is put in", () => {
  const [soft, hard] = sweep("design factor", [1, 3]);
  expect([soft![5], hard![5]]).toEqual(["fits, PV 47 %", "fails, PV 141 %"]);
});

test("the grade is that of the duty as it stands, held over the values; a sweep of grades names each", () => {
  expect(sweep("load", [300, 5000], sleeve, null).map((row) => row[2])).toEqual(["Plain", "Plain"]);
  const [first, unknown, second] = sweep("grade", ["Bare", "Nothing", "Plain"], sleeve, null);
  expect([first![2], second![2], unknown![2]]).toEqual(["Bare", "Plain", ""]);
  expect(errorOf(unknown!)).toContain('grade "Nothing" is unknown');
  expect(message(call(functions.DUTYSWEEP, [card(sleeve), "grade", [["Bare"]], null, "Plain", plainGrades]))).toContain(
    "grade",
  );
});

describe("steps", () => {
  const heading = ["duty", "load", "bore", "length", "rpm", "temperature", "time"];
  const steps = [
    heading,
    ["Drum", 300, 20, 20, 60, 23, 5],
    [null, 500, null, null, null, null, 3],
    [null, 300, null, null, null, null, 5],
  ];
  const use = (field: string, value: number) =>
    call(functions.DUTYSWEEP, [steps, field, [[value]], null, "Plain", plainGrades])[1]![3];
  test("a value goes into the first step and all that share it", () => {
    near(use("load", 400), ((500 / 400) * speed) / 0.1);
    near(use("load", 600), ((600 / 400) * speed) / 0.1);
    near(use("rpm", 30), ((500 / 400) * speed) / 2 / 0.1);
  });
  test("the time into the first step alone", () => {
    const worn = steps.map((row, i) => [
      ...row,
      ...(i === 0 ? ["hours", "wear allowance"] : i === 1 ? [100, 0.2] : [null, null]),
    ]);
    const life = (time: number) => {
      const mean = ((time * 300 + 3 * 500 + 5 * 300) / (time + 8) / 400) * speed;
      return (100 * 1e-6 * mean * 3600) / 0.2;
    };
    const [, row] = call(functions.DUTYSWEEP, [worn, "time", [[20]], null, "Plain", plainGrades]);
    // PV governs by its use; wear is asked beside it
    near(row![3], Math.max(life(20), ((500 / 400) * speed) / 0.1));
  });
});
