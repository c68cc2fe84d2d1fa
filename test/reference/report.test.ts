import { readFileSync } from "node:fs";
import { referenceReport } from "../../scripts/reference/report";
import { referenceCases } from "./cases";
import { modelErrors } from "./measured/compare";

const text = readFileSync("docs/reference-checks.md", "utf8");
/** Up to the checks of the families, whose last digits may differ between machines. */
const head = (report: string): string => report.slice(0, report.indexOf(`\n## ${referenceCases[0]!.family}`));

test("docs/reference-checks.md lists every check: run `npm run reference` after changing one", () => {
  const checks = text.slice(head(text).length);
  for (const { what } of referenceCases) expect(checks).toContain(`| ${what} |`);
  expect(checks.match(/\| (printed example|other method|definition|memory)(, printed wrong)? \|/g)).toHaveLength(
    referenceCases.length,
  );
});

test("its counts, its misprints and what it says of every model are those of today", () => {
  const outcome = { expected: "", computed: "", difference: "", holds: true };
  const outcomes = referenceCases.map((one) => ({ one, outcome }));
  expect(head(text)).toBe(head(referenceReport(outcomes, modelErrors())));
});
