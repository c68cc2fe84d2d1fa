import { officePath } from "../../scripts/lib/office";
import { cases } from "../../scripts/oracle/cases";
import { catalogue } from "../../src/core";
import { run } from "../package/run";

/** Independent check: LibreOffice Calc computes the quantities from formulas written from the sources' equations. */

if (!officePath()) console.log("LibreOffice is not installed: the core is not compared with its formulas.");

(officePath() ? test : test.skip)("LibreOffice's formulas agree to 1e-10, and a value wrong by 1e-8 is caught", () => {
  const { code, out } = run("npm", ["run", "--silent", "oracle"]);
  expect(out).not.toContain("WRONG");
  expect(out.match(/^ok /gm)?.length).toBe(cases.flatMap((one) => one.formulas).length);
  expect(out).toContain("The wrong value was caught");
  expect(code).toBe(0);
});

test("every case names a function of the catalogue", () => {
  const ids = catalogue.map((f) => f.spec.id);
  for (const { id } of cases) expect(ids).toContain(id);
});
