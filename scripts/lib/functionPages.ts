import { familyList, functions } from "../../src/core";
import { functionText, parametersOf, signatureOf } from "../../src/core/describe";
import { isNumberArg, isSpill, resultSymbols } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { kinds } from "../../src/core/kinds";
import type { Kind, System } from "../../src/core/kinds";
import { sourceTitle } from "../../src/core/sources";
import { plainHost } from "../../src/edge/host";
import { answer } from "../../src/edge/sheet";
import { gathered } from "../../src/edge/gathered";

/** docs/functions.md: every function with its arguments, formula, an executed example and its source. */
export function functionReference(): string {
  const families = familyList.map(({ title, functions: own }) => ({ title, members: Object.values(own) }));
  const index = families.map(({ title, members }) => {
    const rows = members.map((f) => {
      const { id, text } = f.spec;
      return `| [\`${signatureOf(f.spec)}\`](#${id.toLowerCase()}) | ${text.replaceAll("|", "\\|")} |`;
    });
    return `**${title}**\n\n| function | answer |\n|---|---|\n${rows.join("\n")}`;
  });
  const sections = families.map(({ title, members }) => [`# ${title}`, ...members.map(section)].join("\n\n"));
  return `<!-- Written by \`npm run sync\` from the specs in src/core; edits here are lost. -->\n\n# Functions\n\nWritten as \`BUSH.NAME\` in Excel and the local sheet, \`BUSH_NAME\` in Google Sheets. Arguments in brackets are optional.\n\n${index.join("\n\n")}\n\n${sections.join("\n\n")}\n`;
}

/** One function's section, its own heading included; links lead to headings of the same page. */
const section = (f: Formula): string =>
  [`## ${f.spec.id}`, ...descriptionOf(f), ...seeAlso(f, (id) => `#${id.toLowerCase()}`)].join("\n\n");

/** What a function is: signature, words, arguments, formula, an executed example, source; in paragraphs of Markdown. */
export function descriptionOf(f: Formula): string[] {
  const { spec } = f;
  const parameters = parametersOf(spec).map(
    (p) => `| ${p.optional ? `[${p.name}]` : p.name} | ${symbolOf(spec.args[p.name])} | ${cell(p.text)} |`,
  );
  const table =
    parameters.length > 0 ? [`| argument | symbol | meaning |\n|---|---|---|\n${parameters.join("\n")}`] : [];
  return [
    `\`BUSH.${signatureOf(spec)}\``,
    `${functionText(spec)}.`,
    ...table,
    ...formulaOf(f),
    `Example: ${answered(f, spec.example)}`,
    `Source: ${[spec.source]
      .flat()
      .map((s) => [sourceTitle(s.key), s.at].filter(Boolean).join(", "))
      .join("; ")}`,
  ];
}

/** The closely related functions as one paragraph; none where there are none. */
export const seeAlso = ({ spec }: Formula, addressOf: (id: string) => string): string[] =>
  spec.see ? [`See also: ${spec.see.map((id) => `[${id}](${addressOf(id)})`).join(", ")}`] : [];

const symbolOf = (arg: Arg | undefined): string => (arg && isNumberArg(arg) ? arg.symbol : "");

/** An argument as a formula in a cell has it; a range as an array constant. */
function typed(value: unknown): string {
  if (Array.isArray(value)) return `{${value.map((row: unknown[]) => row.map(typed).join(",")).join(";")}}`;
  return typeof value === "string" ? `"${value}"` : String(value);
}

/** A call as typed and what it answers, in Markdown: `=BUSH.X(…)` answers …; arguments metric unless `units` says inch. */
export function answered(f: Formula, given: readonly unknown[], units: System = "metric"): string {
  const formula = `\`=BUSH.${f.spec.id}(${given.map(typed).join(", ")}${units === "inch" ? ', "inch"' : ""})\``;
  const rows = rowsOf(f, given, units);
  const text = rows.map((row) => row.map(shown));
  if (rows.length === 1) return `${formula} answers ${labelled(f, text[0]!, units)}.`;
  const [heading, ...lines] = text;
  const few = lines.slice(0, 12);
  const table = [heading!, heading!.map(() => "---"), ...few]
    .map((row) => `| ${row.map(cell).join(" | ")} |`)
    .join("\n");
  return `${formula} answers a table${lines.length > few.length ? `, here its first ${few.length} rows of ${lines.length}` : ""}:\n\n${table}`;
}

/** The answer's cells; an error reads "#VALUE! message". */
export function rowsOf(f: Formula, given: readonly unknown[], units: System): unknown[][] {
  const handed = gathered(f, given);
  const room = Object.keys(f.spec.args).map((_, i) => handed[i] ?? null);
  return answer(f, [...room, units], plainHost);
}

/** One row of an answer in words: its unit behind a number, its column's name before each of several. */
function labelled({ spec: { result } }: Formula, cells: readonly string[], units: System): string {
  const kindUnit = (kind: string): string => (kind in kinds ? kinds[kind as Kind][units] : "");
  if (!isSpill(result)) return `${cells[0]} ${kindUnit(result.kind)}`.trim();
  const { columns } = result;
  if (columns === "by property" || cells.length !== columns.length) return cells.filter(Boolean).join(", ");
  return columns.map(({ name, kind }, i) => `${name} ${cells[i]} ${kindUnit(kind)}`.trim()).join(", ");
}

/** The formula's lines as they hold for the example, taken from its worked steps, and what the symbols are that no argument explains. */
function formulaOf(f: Formula): string[] {
  const { id, args, example, working } = f.spec;
  if (!working) return [];
  const steps = answer(functions.STEPS, [id, example.map((x) => (Array.isArray(x) ? x : [[x]]))], plainHost)
    .slice(1)
    .map(([text, line]) => ({ text: String(text), line: String(line), symbol: String(line).split(" = ")[0]! }));
  const lines = steps.map(({ line }) => line).filter((line) => line.includes("="));
  const results = resultSymbols(f.spec.result).map(({ symbol }) => symbol);
  const known = new Set([...Object.keys(args), ...Object.values<Arg>(args).map(symbolOf), ...results]);
  const others = steps.filter(({ symbol }) => /\p{L}/u.test(symbol) && !known.has(symbol));
  return [
    `Formula, in N, mm, MPa, m/s, °C:\n\n\`\`\`text\n${lines.join("\n")}\n\`\`\``,
    ...(others.length > 0 ? [`In it ${others.map(({ symbol, text }) => `\`${symbol}\`: ${text}`).join("; ")}.`] : []),
  ];
}

const shown = (value: unknown): string =>
  typeof value === "number" ? String(Number(value.toPrecision(6))) : String(value);
export const cell = (text: string): string => text.replaceAll("|", "\\|");
