import { execFileSync } from "node:child_process";
import path from "node:path";
import generic from "../../data/grades/generic.json";

const root = path.join(__dirname, "../..");

test("the generic library held by property is the same library", () => {
  const code = `
    import byColumn from "./scripts/lib/byColumn.mjs";
    import { readFileSync } from "node:fs";
    const text = byColumn(readFileSync("data/grades/generic.json", "utf8"));
    const { default: held } = await import("data:text/javascript," + encodeURIComponent(text));
    console.log(JSON.stringify(held));`;
  const said = execFileSync("node", ["--input-type=module", "-e", code], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1e7,
  });
  expect(JSON.parse(said)).toEqual(generic);
});
