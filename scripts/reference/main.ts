/** `npm run reference`: every check against something outside the project, printed and written to docs/reference-checks.md. */
import { writeFileSync } from "node:fs";
import { referenceCases } from "../../test/reference/cases";
import { outcomeOf } from "../../test/reference/case";
import { referenceReport } from "./report";

const outcomes = referenceCases.map((one) => ({ one, outcome: outcomeOf(one) }));
for (const { one, outcome } of outcomes)
  console.log(
    `${outcome.holds ? "ok   " : "WRONG"} ${one.what}: ${outcome.expected} expected, ${outcome.computed} computed`,
  );
const wrong = outcomes.filter(({ outcome }) => !outcome.holds).length;
console.log(`${outcomes.length} checks, ${wrong} wrong.`);
if (wrong > 0) process.exit(1);
writeFileSync("docs/reference-checks.md", `${referenceReport(outcomes)}\n`);
