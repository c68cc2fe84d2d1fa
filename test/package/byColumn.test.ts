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
