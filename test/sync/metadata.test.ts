import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import * as core from "../../src/core";
import { parametersOf } from "../../src/core/describe";
import { faults, generate, wrapperFiles } from "../../scripts/lib/metadata";

test("the real generator reads every function of the catalogue out of the wrappers", async () => {
  const metadata = await generate(wrapperFiles());
  expect(faults(metadata)).toEqual([]);
  expect(metadata.functions.map((f) => f.id).sort()).toEqual(core.catalogue.map((f) => f.spec.id).sort());
  for (const { spec } of core.catalogue) {
    const made = metadata.functions.find((f) => f.id === spec.id)!;
    expect(made.parameters.map((p) => [p.name, p.description, p.optional === true])).toEqual(
      parametersOf(spec).map((p) => [p.name, p.text, p.optional]),
    );
    expect(made.parameters.map((p) => p.repeating === true)).toEqual(
      parametersOf(spec).map((p) => spec.args[p.name]?.kind === "rest"),
    );
  }
});

describe("the house rules catch what the generator lets pass", () => {
  const broken = async (source: string): Promise<string[]> => {
    const file = path.join(mkdtempSync(path.join(tmpdir(), "metadata-")), "broken.ts");
    writeFileSync(file, source);
    return faults(await generate([file]));
  };
  const doc = (lines: string) => `/**\n${lines}\n * @returns x\n */\n`;

  test("no description, optional before required, wrong types, ids with other signs", async () => {
    const found = await broken(
      doc(" * @customfunction A_B\n * @param [x] first") +
        "export function A_B(x?: any[][], y?: any[][]): any[][] { return [[x, y]]; }\n" +
        doc(" * Says.\n * @customfunction GOOD\n * @param x the x") +
        "export function GOOD(x: number): any[][] { return [[x]]; }\n",
    );
    expect(found.join("\n")).toMatch(/A_B: an id is three capital letters or more/);
    expect(found.join("\n")).toMatch(/A_B: has no description/);
    expect(found.join("\n")).toMatch(/A_B: y has no description/);
    expect(found.join("\n")).toMatch(/GOOD: x takes any range/);
  });

  test("a required argument behind an optional one, one that repeats and is not last, an id twice", () => {
    const p = (name: string, more = {}) => ({ name, description: "d", type: "any", dimensionality: "matrix", ...more });
    const f = (...parameters: ReturnType<typeof p>[]) => ({
      id: "FIT",
      name: "FIT",
      description: "d",
      parameters,
      result: { dimensionality: "matrix" },
    });
    expect(faults({ functions: [f(p("x", { optional: true }), p("y"))] })).toEqual([
      "FIT: y is required after an optional argument",
    ]);
    expect(faults({ functions: [f(p("x", { repeating: true }), p("y"))] })).toEqual(["FIT: x repeats and is not last"]);
    expect(faults({ functions: [f(), f()] })).toContain("FIT: declared twice");
    expect(faults({ functions: [{ ...f(), result: {} }] })).toEqual(["FIT: answers a range"]);
    expect(faults({ functions: [{ ...f(), id: "PV", name: "PV" }] })).toHaveLength(1);
  });
});
