import { boundsText } from "./domain";
import { orList } from "./errors";
import { isNumberArg } from "./formula";
import type { Arg, Spec } from "./formula";
import { isDimensional, kinds, systems } from "./kinds";
import type { Kind } from "./kinds";

/** The words for an argument or a function, made from its spec: hints, docs and the pane show the same text. */

/** "N (lbf)", or the one unit that both systems share; empty for plain numbers. */
export function unitText(kind: Kind): string {
  const { metric, inch } = kinds[kind];
  return isDimensional(kind) ? `${metric} (${inch})` : metric;
}

/** "Bore of the bush; mm (in), above 0 mm" */
export function argumentText(arg: Arg): string {
  return [`${arg.text}`, details(arg)].filter(Boolean).join("; ");
}

function details(arg: Arg): string {
  if (isNumberArg(arg))
    return join(
      unitText(arg.kind),
      boundsText(arg, "metric"),
      arg.default === undefined ? "" : `default ${withUnit(arg.kind, arg.default)}`,
    );
  switch (arg.kind) {
    case "choice":
      return join(
        orList(arg.choices.map((c) => `"${c}"`)),
        arg.default === undefined ? "" : `default "${arg.default}"`,
      );
    case "span":
      return `${unitText("temperature")}, one value or lowest and highest as text "-20 to 60"`;
    case "list":
      return arg.of === "text"
        ? "a range"
        : join(unitText(arg.of), boundsText({ kind: arg.of, from: arg.from, above: arg.above }, "metric"));
    case "table":
    case "notation":
      return arg.what;
    default:
      return "";
  }
}

const join = (...parts: string[]): string => parts.filter(Boolean).join(", ");
const withUnit = (kind: Kind, value: number): string => `${value} ${kinds[kind].metric}`.trim();

/** The argument that every dimensional function has last. */
export const unitsText = `Unit system of plain numbers and of the answer; ${orList(systems.map((s) => `"${s}"`))}, default "metric". Text with its own unit overrides it`;

export interface Parameter {
  readonly name: string;
  readonly text: string;
  readonly optional: boolean;
}

/** A function's parameters in order, `units` included. */
export function parametersOf(spec: Spec): Parameter[] {
  const own = Object.entries(spec.args).map(([name, arg]) => ({
    name,
    text: argumentText(arg),
    optional: arg.optional === true,
  }));
  return spec.units ? [...own, { name: "units", text: unitsText, optional: true }] : own;
}

/** "PRESSURE(load, bore, length, [units])" */
export function signatureOf(spec: Spec): string {
  const words = parametersOf(spec).map((p) => (p.optional ? `[${p.name}]` : p.name));
  return `${spec.id}(${words.join(", ")})`;
}

/** What the answer is, with its unit. */
export function resultText({ result }: Spec): string {
  if ("shape" in result || result.kind === "text" || result.kind === "measure") return result.text ?? "";
  return [result.text ?? "", unitText(result.kind)].filter(Boolean).join(", ");
}

/** The hint's sentence: what it computes and in which unit it answers. */
export function functionText(spec: Spec): string {
  const answer = resultText(spec);
  return answer
    ? `${spec.text}. Answers ${answer.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())}`
    : spec.text;
}
