/**
 * `npm run reference`: every check against something outside the project and every model against what was measured, printed and written
 * to docs/reference-checks.md. An example off by more than half of its last printed digit fails it.
 */
import { writeFileSync } from "node:fs";
import { referenceCases } from "../../test/reference/cases";
import { outcomeOf } from "../../test/reference/case";
import { modelErrors } from "../../test/reference/measured/compare";
import { referenceReport } from "./report";

const outcomes = referenceCases.map((one) => ({ one, outcome: outcomeOf(one) }));
for (const { one, outcome } of outcomes)
  console.log(
    `${outcome.holds ? "ok   " : "WRONG"} ${one.what}: ${outcome.expected} ${one.misprint ? `printed, should be ${one.misprint.should} (${one.misprint.why})` : "expected"}, ${outcome.computed} computed`,
  );
const measured = modelErrors();
for (const { model, points, median, least, greatest, unsafe, beyond } of measured)
  console.log(
    points.length === 0
      ? `none  ${model.title}: no measurement found`
      : `      ${model.title}: predicted over measured ${median.toFixed(2)} in the middle, ${least.toFixed(2)} to ${greatest.toFixed(2)}; ${unsafe} of ${points.length} on the unsafe side, ${beyond} by more than the scatter`,
  );
const wrong = outcomes.filter(({ outcome }) => !outcome.holds).length;
console.log(`${outcomes.length} checks, ${wrong} wrong.`);
if (wrong > 0) process.exit(1);
writeFileSync("docs/reference-checks.md", `${referenceReport(outcomes, measured)}\n`);
