import type { Outcome, ReferenceCase } from "../../test/reference/case";

/** A check with what came of it. */
export interface Checked {
  readonly one: ReferenceCase;
  readonly outcome: Outcome;
}

/** docs/reference-checks.md: the checks of each family as a table. */
export function referenceReport(all: readonly Checked[]): string {
  const families = [...new Set(all.map(({ one }) => one.family))];
  return [
    "<!-- Written by `npm run reference` from test/reference/cases; edits here are lost. -->",
    "# Reference checks",
    [
      "Each line holds the core against something outside this project. *Published*: a value as its source prints it, held to half of",
      "its last digit. *Independent*: another method or another library. *Memory*: the printed value was recalled, not re-read, so it",
      "counts for less. *Common practice*: the trade does it so, no source is claimed. `npm test` runs the same checks; `npm run oracle`",
      "has LibreOffice compute the quantities once more from the sources' equations.",
    ].join(" "),
    summary(all, families),
    ...families.map((family) =>
      section(
        family,
        all.filter(({ one }) => one.family === family),
      ),
    ),
  ].join("\n\n");
}

function summary(all: readonly Checked[], families: readonly string[]): string {
  const rows = families.map((family) => {
    const own = all.filter(({ one }) => one.family === family);
    const read = own.filter(({ one }) => one.kind === "published" && !one.memory).length;
    const other = own.filter(({ one }) => one.kind === "independent").length;
    const memory = own.filter(({ one }) => one.memory).length;
    const practice = own.filter(({ one }) => one.kind === "common practice").length;
    return row([family, read, other, memory, practice]);
  });
  return [
    row(["family", "published, read", "independent", "published, from memory", "common practice"]),
    row(["---", "--:", "--:", "--:", "--:"]),
    ...rows,
  ].join("\n");
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
        one.memory ? `${one.kind} (memory)` : one.kind,
        one.unit,
        outcome.expected,
        outcome.computed,
        outcome.difference,
      ]),
    ),
  ].join("\n");

const row = (cells: readonly (string | number)[]): string =>
  `| ${cells.map((cell) => String(cell).replaceAll("|", "\\|")).join(" | ")} |`;
