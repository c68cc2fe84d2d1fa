import { writeFileSync } from "node:fs";
import path from "node:path";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import { escaped } from "../../src/book/record/html";
import { command } from "../../src/cli/command";
import { record } from "../../src/cli/record";
import { functions } from "../../src/core";
import type { Cell } from "../../src/core/formula";
import { answer } from "../../src/edge/sheet";
import { temporaryFolder } from "../package/run";
import { textHost } from "../support";

const duties = [[...dutyHeadings], ...dutyCells.map((row) => [...row])] as Cell[][];
const names = duties.slice(1).flatMap((row) => (row[dutyHeadings.indexOf("duty")] as string | null) ?? []);
const sheetOf = (name: string) =>
  answer(functions.DUTYSHEET, [duties, name, null, null, "metric"], textHost).slice(1) as (string | number)[][];
/** What stands in each tag of a page, or of the part of it behind a heading. */
const insideOf = (page: string, tag: string): string[] =>
  [...page.matchAll(new RegExp(`<${tag}>(.*?)</${tag}>`, "g"))].map(([, inner]) => inner!);
const sourcesOf = (page: string) => insideOf(page.split("<h2>Sources</h2>")[1]!, "li");

test("the record of every greenhouse duty shows each number of DUTYSHEET's answer, once worked out, else as it is", () => {
  expect(names.length).toBeGreaterThan(20);
  for (const name of names) {
    const page = record(duties, name, undefined, "metric");
    for (const [section, what, formula, numbers, result] of sheetOf(name)) {
      const shown = formula && numbers ? String(numbers).split(" = ").at(-1)! : String(result);
      if (typeof result === "number" && what !== "use")
        expect([
          name,
          section,
          what,
          page.includes(escaped(formula ? shown : String(Number(result.toPrecision(6))))),
        ]).toEqual([name, section, what, true]);
    }
  }
});

test.each(["metric", "inch"] as const)("its table of criteria has the sheet's own units: %s", (units) => {
  const table = duties.map((row) =>
    row.map((cell) => (/^[+-][\d.]+\/[+-][\d.]+$/.test(String(cell)) ? `${String(cell)} mm` : cell)),
  );
  const seen = new Set<unknown>();
  for (const name of names) {
    const page = record(table, name, undefined, units);
    const rows = insideOf(page, "tr").map((row) => insideOf(row, "td"));
    const checks = answer(functions.DUTYCHECKS, [table, name, null, null, units], textHost).slice(1);
    for (const [heading, value, limit, unit, , word] of checks) {
      if (String(word).startsWith("not ")) continue;
      const shown = (cell: unknown) =>
        typeof cell === "number" ? `${Number(cell.toPrecision(6))} ${unit as string}`.trim() : "";
      const [, asked, borne] = rows.find(([criterion]) => criterion === heading)!;
      expect([name, heading, asked, borne]).toEqual([name, heading, shown(value), shown(limit)]);
      seen.add(unit);
    }
  }
  const kinds = units === "inch" ? ["°F", "psi", "in", "psi·ft/min", "h"] : ["°C", "MPa", "mm", "MPa·m/s", "h"];
  expect([...seen]).toEqual(expect.arrayContaining(kinds));
});

describe("the list of sources", () => {
  const duty = { duty: "Roller", load: 300, bore: 20, length: 20, rpm: 30, temperature: "10 to 40" };
  const pageOf = (fields: Record<string, unknown>) =>
    record(
      [Object.keys({ ...duty, ...fields }), Object.values({ ...duty, ...fields })] as Cell[][],
      "Roller",
      undefined,
      "metric",
    );
  test("has none of the reasons of a verdict, and no column that is not read", () => {
    const page = pageOf({ grade: "Demo Medlar", colour: "red" });
    expect(page).toContain("where friction is at its high figure");
    expect(page).toContain("column of no known heading");
    expect(sourcesOf(page).length).toBeGreaterThan(3);
    expect(sourcesOf(page).join()).not.toMatch(/invented|high figure|no known heading/);
  });
  test("has those of the grade's figures, by whose numbers they stand beside figure and verdict", () => {
    const page = pageOf({ grade: "PA66" });
    const [, limit] = /<p>PV limit: [^<]*<small>(\[\d+\])<\/small>/.exec(page)!;
    expect(sourcesOf(page)[Number(limit!.slice(1, -1)) - 1]).toMatch(/Tribology Handbook/);
    expect(page).toContain(`<small>${limit}; limit derated for the surroundings`);
  });
});

test("a record names what it starts from, and changes with it", () => {
  const mark = (page: string) => /inputs ([\da-f]{8})/.exec(page)?.[1];
  const page = record(duties, "Seed-drum spindle", undefined, "metric");
  expect(page).toContain("Calculation record: Seed-drum spindle");
  expect(page).toContain("Preliminary sizing: test in the application before use.");
  const other = duties.map((row) => row.map((cell) => (cell === 180 ? 181 : cell)));
  expect(mark(page)).toBeDefined();
  expect(mark(record(other, "Seed-drum spindle", undefined, "metric"))).not.toBe(mark(page));
});

test("what is typed into a table stays text on the page", () => {
  const named = duties.map((row) => row.map((cell) => (cell === "Seed-drum spindle" ? "<b>a & b</b>" : cell)));
  const page = record(named, "<b>a & b</b>", undefined, "metric");
  expect(page).toContain("&lt;b&gt;a &amp; b&lt;/b&gt;");
  expect(page).not.toContain("<b>a & b");
});

test("a duty that is not there is refused", () => {
  expect(() => record(duties, "No such duty", undefined, "metric")).toThrow(/No such duty/);
});

describe("without --duty", () => {
  const folder = temporaryFolder();
  const run = (lines: readonly string[], ...more: string[]) => {
    const file = path.join(folder, "duties.csv");
    writeFileSync(file, `${lines.join("\n")}\n`);
    const said = { out: "", err: "" };
    const code = command(["record", file, ...more], {
      out: (text) => (said.out += text),
      err: (text) => (said.err += text),
    });
    return { code, ...said };
  };
  const heading = "duty,load,bore,length,rpm,temperature";
  const figures = "180,15,20,120,20";
  test("the one duty of a file is recorded", () => {
    const { code, out } = run([heading, `Drum,${figures}`]);
    expect(code).toBe(0);
    expect(out).toContain("Calculation record: Drum");
  });
  test("of several it is said that one has to be named, and what they are", () => {
    const { code, out, err } = run([heading, `Drum,${figures}`, `Vent,${figures}`]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/^--duty is missing: .*duties\.csv holds 2 duties, "Drum", "Vent"\n$/);
    const many = run([heading, ...Array.from({ length: 30 }, (_, i) => `D${i},${figures}`)]);
    expect(many.err).toMatch(/holds 30 duties, "D0", .*, "D19", …\n$/);
  });
  test("duties without names are told by their number, which names them", () => {
    const unnamed = ["load,bore,length,rpm,temperature", figures, "190,15,20,120,20"];
    expect(run(unnamed).err).toMatch(/holds 2 duties, number 1, number 2\n$/);
    const { code, out } = run(unnamed, "--duty", "2");
    expect([code, out.includes("190 N")]).toEqual([0, true]);
  });
});
