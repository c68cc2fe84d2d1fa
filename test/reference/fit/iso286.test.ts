import { readFileSync } from "node:fs";
import { fitOf, limitsOfSize } from "../../../src/core";
import { isoDeviations } from "../../../src/core/fit/iso286";
import { readFit, readZone, ToleranceClass } from "../../../src/core/fit/zone";

const limits = (letter: string, grade: number, size: number) => {
  const { lower, upper } = isoDeviations(new ToleranceClass(letter, grade), size)!;
  return [Math.round(upper * 1e4) / 10, Math.round(lower * 1e4) / 10];
};

/** 3025 rows of limit deviations in µm, ISO 286-2, compiled and reviewed apart from the tables in data/. */
const rows = readFileSync(`${__dirname}/iso286_deviations.csv`, "utf8").trim().split("\n").slice(1);

test("every row of the reviewed table, at the upper end and inside of its range", () => {
  expect(rows).toHaveLength(3025);
  for (const row of rows) {
    const [, letter, grade, , over, upTo, upper, lower, it] = row.split(",") as [string, string, ...string[]];
    for (const size of [Number(upTo), (Number(over) + Number(upTo)) / 2, Number(over) + 0.001]) {
      // the a and b rows start above 1 mm, as does N above grade 8
      if (size <= 1 && (/^[ab]$/i.test(letter) || (letter === "N" && Number(grade) > 8))) continue;
      const found = limits(letter, Number(grade), size);
      if (found[0] !== Number(upper) || found[1] !== Number(lower))
        throw new Error(`${row}: got ${found.join("/")} at ${size} mm`);
    }
    expect(Number(upper) - Number(lower)).toBe(Number(it));
  }
});

// ISO 286-2:1988/Cor.1:2006: the four corrected values, µm
test.each([
  ["A", 13, 340, "upper", 2090],
  ["E", 8, 100, "upper", 126],
  ["R", 10, 25, "upper", -28],
  ["f", 9, 300, "lower", -186],
])("%s%d at %d mm: %s deviation %d µm", (letter, grade, size, side, printed) => {
  expect(limits(letter, grade, size)[side === "upper" ? 0 : 1]).toBe(printed);
});

// Shigley's Mechanical Engineering Design, 9th ed., Example 7-7, p. 398: 34H11/c11
test("loose running fit 34H11/c11", () => {
  const hole = limitsOfSize({ size: 34, zone: readZone("34 H11", "metric", "zone") }) as number[];
  const shaft = limitsOfSize({ size: 34, zone: readZone("34 c11", "metric", "zone") }) as number[];
  expect(hole.map((v) => v.toFixed(3))).toEqual(["34.000", "34.160"]);
  expect(shaft.map((v) => v.toFixed(3))).toEqual(["33.720", "33.880"]);
});

// Machine Drawing (Narayana, Kannaiah, Reddy), note to Table 15.3: P7, 18 to 30 mm: delta 8, hence ES −14
test("P7 from 18 to 30 mm has ES −14 µm", () => {
  expect(limits("P", 7, 24)[0]).toBe(-14);
});

// Scilab companion to Bhandari, Design of Machine Elements, Example 3.3: 50 H7/s6
test("50 H7/s6: hub 0.025/0, shaft 0.059/0.043", () => {
  expect(limits("H", 7, 50)).toEqual([25, 0]);
  expect(limits("s", 6, 50)).toEqual([59, 43]);
  const [least, greatest, kind] = fitOf({ size: 50, fit: readFit("H7/s6", "metric", "fit") });
  expect([(least as number).toFixed(3), (greatest as number).toFixed(3), kind]).toEqual([
    "-0.059",
    "-0.018",
    "interference",
  ]);
});

/** ISO 286-1 and -2 spot values in µm, upper/lower (memory). */
test.each([
  ["H", 7, 25, 21, 0],
  ["f", 7, 25, -20, -41],
  ["g", 6, 50, -9, -25],
  ["k", 6, 40, 18, 2],
  ["p", 6, 25, 35, 22],
  ["K", 7, 25, 6, -15],
  ["N", 7, 25, -7, -28],
  ["P", 7, 100, -24, -59],
  ["JS", 7, 25, 10.5, -10.5],
  ["E", 10, 20, 124, 40],
  ["D", 10, 20, 149, 65],
  ["F", 8, 20, 53, 20],
  ["C", 11, 60, 330, 140],
  ["c", 11, 70, -150, -340],
  ["x", 6, 20, 67, 54],
  ["z", 6, 30, 101, 88],
  ["U", 7, 20, -33, -54],
  ["X", 7, 20, -46, -67],
  ["Z", 7, 45, -127, -152],
  ["za", 7, 25, 139, 118],
])("%s%d at %d mm: %d/%d µm", (letter, grade, size, upper, lower) => {
  expect(limits(letter, grade, size)).toEqual([upper, lower]);
});
