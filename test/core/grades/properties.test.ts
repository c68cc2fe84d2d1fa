import { readFileSync } from "node:fs";
import path from "node:path";
import { functions } from "../../../src/core";
import type { Bounds } from "../../../src/core/domain";
import type { Cell } from "../../../src/core/formula";
import {
  propertyHeading,
  parseGrades,
  properties,
  propertyNamed,
  standardLibrary,
} from "../../../src/core/grades/model";
import type { Property, Values } from "../../../src/core/grades/model";
import { normal } from "../../../src/core/names";
import { call, one } from "../host";

/** Every entry of the list is looked up, written, read back, refused where it is wrong, and documented. */

const complete = standardLibrary().byName.get("demosorrel")!;
const guide = readFileSync(path.join(__dirname, "../../../docs/guide/own-data.md"), "utf8");
const entries = properties.map((p) => [p.heading, p] as const);
const held = entries.filter(([, { key }]) => key !== "grade" && key !== "kind");
const valueOf = (values: Values, { key }: Property) => values[key as keyof Values];

/** A cell of the property, for one that no invented grade has. */
function typical(p: Property): Cell {
  if (p.kind === "choice") return p.words[0]!;
  if (p.kind === "rating") return "fair";
  if (p.kind === "text" || p.kind === "list") return "a word";
  if (p.kind === "media") return "water: limited";
  const { above, from, to } = p as Partial<Bounds>;
  const middle = ((above ?? from)! + to!) / 2;
  return p.kind === "curve" ? `20: ${middle}; 80: ${middle}` : middle;
}
/** The rows, beside the library, of the grade that has the property; none where the invented one does. */
const lacking = (p: Property): Cell[][] | null =>
  p.key === "grade" || p.key === "kind" || valueOf(complete.values, p) !== undefined
    ? null
    : [
        ["grade", propertyHeading(p, "metric")],
        [complete.name, typical(p)],
      ];
const read = (heading: string, cell: Cell) =>
  parseGrades(
    [
      ["grade", heading],
      ["A", cell],
    ],
    "metric",
    "grades",
  );

test("no two names of properties are alike", () => {
  const names = properties.flatMap((p) => [...new Set([p.heading, p.key, ...p.also].map(normal))]);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test.each(entries)("%s is found by every name, and answered", (_, p) => {
  for (const name of [p.heading, p.key, ...p.also, p.heading.toUpperCase()]) {
    expect([name, propertyNamed(name)?.key]).toEqual([name, p.key]);
    for (const units of ["metric", "inch"])
      expect(String(one(functions.GRADE, complete.name, name, lacking(p), units))).not.toMatch(/^(#|$)/);
  }
  const own = lacking(p);
  expect(one(functions.SOURCE, complete.name, p.heading, own)).toBe(
    own ? "own row, no source given" : "invented for the demo",
  );
});

test.each(held)("%s goes out with GRADES and comes back as it was", (_, p) => {
  const own = lacking(p);
  const { values } = own ? parseGrades(own, "metric", "grades").grades[0]! : complete;
  for (const units of ["metric", "inch"] as const) {
    const table = call(functions.GRADES, [[p.heading]], own, units);
    const row = table.find(([name]) => name === complete.name)!;
    const { grades, unknownColumns, faults } = parseGrades([table[0], row] as Cell[][], "metric", "grades");
    expect([faults, unknownColumns]).toEqual([[], []]);
    expect(nearly(valueOf(grades[0]!.values, p))).toEqual(nearly(valueOf(values, p)));
  }
});

/** Numbers to nine digits, wherever they stand; a curve is written with ten. */
const nearly = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, x: unknown) => (typeof x === "number" ? Number(x.toPrecision(9)) : x)));

const wrong = (p: Property): Cell | undefined => {
  if (p.kind === "text" || p.kind === "list") return undefined;
  return p.kind === "curve" ? "20: high; 80: low" : "no such word";
};
test.each(held.filter(([, p]) => wrong(p) !== undefined))("%s is refused where it is wrong", (heading, p) => {
  const { faults, grades } = read(heading, wrong(p)!);
  expect(grades).toEqual([]);
  expect(faults.map(({ message }) => message.slice(0, `grades row 2: ${heading}`.length))).toEqual([
    `grades row 2: ${heading}`,
  ]);
  expect(faults[0]!.message.length).toBeLessThanOrEqual(120);
});

test.each(entries)("%s stands in the guide with its meaning and test", (heading, p) => {
  const row = guide.split("\n").find((line) => line.startsWith(`| ${heading} `))!;
  for (const part of [...p.also, p.text, p.method ?? ""]) expect(row).toContain(part);
});

test("the types follow the list", () => {
  const values: Values = {
    wearFrom: "flat",
    media: [{ medium: "water", rating: "limited" }],
    dirt: "fair",
    pvLimit: 1,
  };
  // @ts-expect-error a word that the list does not have
  const word: Values = { wearFrom: "cup" };
  // @ts-expect-error a property that the list does not have
  const key: Values = { colour: "grey" };
  expect([values, word, key]).toHaveLength(3);
});

describe("media", () => {
  const media = (cell: Cell) => read("media", cell);
  test("case, spaces and either separator", () => {
    expect(media(" Sea Water : Limited , weak acids:resistant;").grades[0]!.values.media).toEqual([
      { medium: "sea water", rating: "limited" },
      { medium: "weak acids", rating: "resistant" },
    ]);
  });
  test.each([
    ["watr: limited", 'media "watr" is unknown; nearest: water'],
    ["acetone: limited", 'media "acetone" is unknown; a class is "sea water", say: see Own data in the docs'],
    ["fuels: good", 'media, fuels must be resistant, limited, attacked or note, as "resistant to 60 °C", got "good"'],
    ["fuels", 'media must be classes and ratings as "water: resistant; fuels: limited", got "fuels"'],
    ["fuels:", 'media must be classes and ratings as "water: resistant; fuels: limited", got "fuels:"'],
    ["fuels: limited; Fuels: attacked", 'media names "fuels" twice'],
  ])("%s is an error", (cell, message) => expect(media(cell).faults[0]!.message).toBe(`grades row 2: ${message}`));
  test("what stands between two colons is not read as a rating", () => {
    expect(media("fuels: limited: attacked").faults).toHaveLength(1);
  });
});

test("wear rate from: flat or bush, nothing else", () => {
  expect(read("wear rate from", " Bush ").grades[0]!.values.wearFrom).toBe("bush");
  expect(read("wear rate from", "pin on disc").faults[0]!.message).toBe(
    'grades row 2: wear rate from must be "flat" or "bush", got "pin on disc"',
  );
});

test("a static limit above the compressive strength is an error; where one is missing nothing is asked", () => {
  const cells = (strength: Cell): Cell[][] => [
    ["grade", "static pressure limit", "compressive strength"],
    ["A", 20, strength],
  ];
  expect(parseGrades(cells(16), "metric", "grades").faults[0]!.message).toBe(
    "grades row 2: static pressure limit is above compressive strength",
  );
  for (const strength of [20, null]) expect(parseGrades(cells(strength), "metric", "grades").faults).toEqual([]);
});

test("no demo grade breaks the order that a user's table is held to", () => {
  const demo = call(functions.GRADES, null, null, "metric").filter((row, i) => i === 0 || /^Demo/.test(String(row[0])));
  const { grades, faults } = parseGrades(demo as Cell[][], "metric", "grades");
  expect([grades.length, faults]).toEqual([6, []]);
});

test("a 0 under words, ratings, curves, media and what may not be 0 is a blank that a host handed over", () => {
  const wordless = held.filter(([, p]) => !["temperature", "percent"].includes(p.kind) && p.key !== "poisson");
  for (const [heading] of wordless) {
    const { grades, faults } = read(heading, 0);
    expect([heading, faults, grades[0]!.values]).toEqual([heading, [], {}]);
  }
});
