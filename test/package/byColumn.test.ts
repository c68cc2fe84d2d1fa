import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";

const root = path.join(__dirname, "../..");

test("the generic library held by property is the same library", () => {
  const file = path.join(root, "data/grades/generic.json");
  const code = `
    import { packed } from "./scripts/build/lean/byColumn.mjs";
    import { unpacked } from "./scripts/build/lean/unpacked.mjs";
    import { readFileSync } from "node:fs";
    const library = JSON.parse(readFileSync(${JSON.stringify(file)}, "utf8"));
    console.log(JSON.stringify(unpacked(JSON.parse(JSON.stringify(packed(library))))));`;
  const said = execFileSync("node", ["--input-type=module", "-e", code], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1e7,
  });
  expect(JSON.parse(said)).toEqual(JSON.parse(readFileSync(file, "utf8")));
});

test("the demo grades with their properties named once are the same grades", () => {
  const file = path.join(root, "data/grades/demo.json");
  const code = `
    import { byKey } from "./scripts/build/lean/byColumn.mjs";
    import { readFileSync } from "node:fs";
    const made = byKey(readFileSync(${JSON.stringify(file)}, "utf8"));
    const { default: library } = await import("data:text/javascript," + encodeURIComponent(made));
    console.log(JSON.stringify(library));`;
  const said = execFileSync("node", ["--input-type=module", "-e", code], { cwd: root, encoding: "utf8" });
  expect(JSON.parse(said)).toEqual(JSON.parse(readFileSync(file, "utf8")));
});

test.each(["deviations", "tolerances"])("the table of %s held by steps is the same table", (name) => {
  const file = path.join(root, `data/iso286/${name}.json`);
  const code = `
    import { bySteps } from "./scripts/build/lean/steps.mjs";
    import { readFileSync } from "node:fs";
    const made = bySteps(readFileSync(${JSON.stringify(file)}, "utf8"));
    const { default: table } = await import("data:text/javascript," + encodeURIComponent(made));
    console.log(JSON.stringify(table));`;
  const said = execFileSync("node", ["--input-type=module", "-e", code], { cwd: root, encoding: "utf8" });
  const { source: _, ...tables } = JSON.parse(readFileSync(file, "utf8")) as Record<string, unknown>;
  expect(JSON.parse(said)).toEqual(tables);
});
