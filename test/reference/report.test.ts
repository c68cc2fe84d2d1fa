import { readFileSync } from "node:fs";
import { referenceCases } from "./cases";

test("docs/reference-checks.md lists every check: run `npm run reference` after changing one", () => {
  const text = readFileSync("docs/reference-checks.md", "utf8");
  const checks = text.slice(text.indexOf("\n## "));
  for (const { what } of referenceCases) expect(checks).toContain(`| ${what} |`);
  expect(checks.match(/\| (published|independent|common practice)( \(memory\))? \|/g)).toHaveLength(
    referenceCases.length,
  );
});
