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
