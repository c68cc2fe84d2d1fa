import { workedSteps } from "../src/core";
import { functionText, parametersOf, signatureOf } from "../src/core/describe";
import { isNumberArg } from "../src/core/formula";
import type { Arg, Formula } from "../src/core/formula";
import { kinds } from "../src/core/kinds";
import { sourceTitle } from "../src/core/sources";
import { answer } from "../src/edge/sheet";

/** docs/functions.md: every function with its arguments, formula, an executed example and its source. */
export function functionReference(catalogue: readonly Formula[]): string {
  const families = [...new Set(catalogue.map((f) => f.spec.family))];
  const index = families.map(
    (family) =>
      `- ${family}: ${membersOf(catalogue, family)
        .map((f) => `[${f.spec.id}](#${f.spec.id.toLowerCase()})`)
        .join(", ")}`,
  );
  const sections = families.map((family) => [`# ${family}`, ...membersOf(catalogue, family).map(section)].join("\n\n"));
  return `<!-- Written by \`npm run sync\` from the specs in src/core; edits here are lost. -->\n\n# Functions\n\n${index.join("\n")}\n\n${sections.join("\n\n")}\n`;
}

const membersOf = (catalogue: readonly Formula[], family: string) => catalogue.filter((f) => f.spec.family === family);

function section(f: Formula): string {
  const { spec } = f;
  const parameters = parametersOf(spec).map(
    (p) => `| ${p.optional ? `[${p.name}]` : p.name} | ${symbolOf(spec.args[p.name])} | ${cell(p.text)} |`,
  );
  const table =
    parameters.length > 0 ? [`| argument | symbol | meaning |\n|---|---|---|\n${parameters.join("\n")}`] : [];
  const lines = workingLines(f);
  const working =
    lines.length > 0 ? [`Formula, in N, mm, MPa, m/s, °C:\n\n\`\`\`text\n${lines.join("\n")}\n\`\`\``] : [];
  return [
    `## ${spec.id}`,
    `\`BUSH.${signatureOf(spec)}\``,
    `${functionText(spec)}.`,
    ...table,
    ...working,
    `Example: \`=BUSH.${spec.id}(${spec.example.map(typed).join(", ")})\` answers ${exampleAnswer(f)}`,
    `Source: ${[spec.source]
      .flat()
      .map((s) => [sourceTitle(s.key), s.at].filter(Boolean).join(", "))
      .join("; ")}`,
    ...(spec.see ? [`See also: ${spec.see.map((id) => `[${id}](#${id.toLowerCase()})`).join(", ")}`] : []),
  ].join("\n\n");
}

const symbolOf = (arg: Arg | undefined): string => (arg && isNumberArg(arg) ? arg.symbol : "");

/** An argument as a formula in a cell has it; a range as an array constant. */
function typed(value: unknown): string {
  if (Array.isArray(value)) return `{${value.map((row: unknown[]) => row.map(typed).join(",")).join(";")}}`;
  return typeof value === "string" ? `"${value}"` : String(value);
}

function exampleAnswer(f: Formula): string {
  const args = Object.values<Arg>(f.spec.args);
  const rest = args.findIndex((arg) => arg.kind === "rest");
  const given =
    rest < 0 ? f.spec.example : [...f.spec.example.slice(0, rest), f.spec.example.slice(rest).map((x) => [[x]])];
  const rows = answer(f, given, plainHost);
  const text = rows.map((row) => row.map(shown));
  if (rows.length === 1) return `${text[0]!.filter(Boolean).join(", ")}${unitAfter(f)}.`;
  const [heading, ...lines] = text;
  const few = lines.slice(0, 12);
  const table = [heading!, heading!.map(() => "---"), ...few]
    .map((row) => `| ${row.map(cell).join(" | ")} |`)
    .join("\n");
  return `a table${lines.length > few.length ? `, here its first ${few.length} rows of ${lines.length}` : ""}:\n\n${table}`;
}

function unitAfter({ spec: { result } }: Formula): string {
  return "symbol" in result && kinds[result.kind].metric ? ` ${kinds[result.kind].metric}` : "";
}

/** The formula's lines as they hold for the example, taken from its worked steps. */
function workingLines(f: Formula): string[] {
  if (!f.spec.working) return [];
  const steps = answer(workedSteps, [f.spec.id, f.spec.example.map((x) => (Array.isArray(x) ? x : [[x]]))], plainHost);
  return steps.filter(([what]) => what === "Calculation").map((line) => String(line[1]));
}

const plainHost = { error: (code: string, message?: string) => `${code} ${message ?? ""}` };

const shown = (value: unknown): string =>
  typeof value === "number" ? String(Number(value.toPrecision(6))) : String(value);
const cell = (text: string): string => text.replaceAll("|", "\\|");
