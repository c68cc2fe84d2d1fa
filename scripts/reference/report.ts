import type { Kind, Outcome, ReferenceCase } from "../../test/reference/case";
import type { ModelErrors } from "../../test/reference/measured/compare";
import { modelRows } from "./measuredTables";
import { row, table } from "./tables";

/** A check with what came of it. */
export interface Checked {
  readonly one: ReferenceCase;
  readonly outcome: Outcome;
}

const kinds: Readonly<Record<Kind, string>> = {
  "printed example":
    "a value as its source prints it, read there, computed by the formula that its reader would type and held to half of its last digit",
  measurement:
    "what somebody measured, predicted from its printed conditions alone; told as predicted over measured, below",
  "other method":
    "another method or another library for the same assumptions: it says how well the code solves them, not how true they are",
  definition: "what a unit or a word means",
  memory: "a printed value that was recalled, not re-read, so it counts for less",
};

/** docs/reference-checks.md: the checks of each family as a table, what was measured by model. */
export function referenceReport(all: readonly Checked[], measured: readonly ModelErrors[]): string {
  const families = [...new Set(all.map(({ one }) => one.family))];
  return [
    "<!-- Written by `npm run reference` from test/reference; edits here are lost. -->",
    "# Reference checks",
    [
      "Each line holds the core against something outside this project, of one of five kinds. `npm test` runs the same checks;",
      "`npm run oracle` has LibreOffice compute the quantities once more from the sources' equations.",
    ].join(" "),
    Object.entries(kinds)
      .map(([kind, text]) => `- *${kind}*: ${text}.`)
      .join("\n"),
    summary(all, measured, families),
    "## Measured\n\nPredicted over measured, the worst model on the unsafe side first. The documentation has a page for each.",
    modelRows(measured),
    "## Printed wrong\n\nThe source's own formula contradicts what it prints.",
    table(
      ["what", "source", "printed", "should be", "why"],
      all.flatMap(({ one: { what, source, expected, misprint } }) =>
        misprint ? [[what, source, String(expected), misprint.should, misprint.why]] : [],
      ),
    ),
    ...families.map((family) =>
      section(
        family,
        all.filter(({ one }) => one.family === family),
      ),
    ),
  ].join("\n\n");
}

function summary(all: readonly Checked[], measured: readonly ModelErrors[], families: readonly string[]): string {
  const names = Object.keys(kinds) as Kind[];
  const counts = families.map((family) =>
    names.map((kind) =>
      kind === "measurement"
        ? measured.filter(({ model }) => model.family === family).reduce((sum, { points }) => sum + points.length, 0)
        : all.filter(({ one }) => one.family === family && one.kind === kind).length,
    ),
  );
  const totals = names.map((_, i) => counts.reduce((sum, own) => sum + own[i]!, 0));
  const lines = [...families.map((family, i) => [family, ...counts[i]!]), ["all", ...totals]];
  return [row(["family", ...names]), row(["---", ...names.map(() => "--:")]), ...lines.map(row)].join("\n");
}

const section = (family: string, checks: readonly Checked[]): string =>
  [
    `## ${family}\n`,
    row(["what", "source", "kind", "unit", "expected", "computed", "difference"]),
    row(["---", "---", "---", "---", "--:", "--:", "--:"]),
    ...checks.map(({ one, outcome }) =>
      row([
        one.what,
        one.source,
        one.misprint ? `${one.kind}, printed wrong` : one.kind,
        one.unit,
        outcome.expected,
        outcome.computed,
        outcome.difference,
      ]),
    ),
  ].join("\n");
