import { noDatum, orList } from "../errors";
import { formula, isNumberArg, resultSymbols, workingOf } from "../formula";
import type { Arg, Formula, Lookup, Source } from "../formula";
import { isDimensional, kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { sourceTitle } from "../sources";
import { fromWorking } from "../units";
import { evaluate, splitLine, substitute } from "./working";

/** A symbol's value in working units and the unit's name. */
interface Known {
  readonly value: number;
  readonly unit: string;
}

/** The worked lines of one calculation; made for the formulas that it may be asked to show. */
export const stepsOf = (formulas: readonly Formula[]) =>
  formula(
    {
      id: "STEPS",
      family: "Units and teaching",
      text: "Worked lines of a calculation: inputs, formula, the numbers put in with their units, result, source. Worked in metric units; inch inputs and answers are converted in lines of their own",
      args: {
        calculation: { kind: "text", text: 'Name of a function of this add-in that answers a number: "PRESSURE"' },
        argument: { kind: "rest", text: "Its arguments in its own order, one value each" },
      },
      units: false,
      result: {
        shape: "table",
        text: "The working, line by line",
        columns: [
          { name: "step", kind: "text" },
          { name: "formula", kind: "text" },
          { name: "numbers", kind: "text" },
          { name: "result", kind: "measure" },
          { name: "unit", kind: "text" },
        ],
      },
      source: { key: "own" },
      example: ["PRESSURE", 800, 20, 15],
    },
    ({ calculation, argument }) => {
      const f = find(formulas, calculation);
      const { values, system } = argument.read(f);
      return [...inputs(f, values, system), ...lines(f, values, system), ...sources(f.spec.source)];
    },
  );

function find(formulas: readonly Formula[], name: string): Formula {
  const id = name
    .trim()
    .toUpperCase()
    .replace(/^=?(BUSH[._])?/, "")
    .replace(/\(.*$/, "");
  const f = formulas.find((candidate) => candidate.spec.id === id);
  if (!f) throw noDatum("calculation", `calculation must be a function of this add-in, got "${name.slice(0, 24)}"`);
  if (f.spec.working) return f;
  const some = orList(
    formulas.filter((other) => other.spec.working && other.spec.family === f.spec.family).map((other) => other.spec.id),
  );
  throw noDatum("calculation", `calculation ${id} has no formula to work${some ? `; try ${some}` : ""}`);
}

type Row = (string | number)[];

function inputs(f: Formula, values: Readonly<Record<string, unknown>>, system: System): Row[] {
  return Object.entries<Arg>(f.spec.args).flatMap(([name, arg]) => {
    const value = values[name];
    if (value === undefined || arg.kind === "table" || arg.kind === "list") return [];
    if (!isNumberArg(arg)) return [[arg.text, name, String(spanText(value)), "", ""]];
    return [
      [arg.text, arg.symbol, converted(arg.kind, value as number, system), value as number, kinds[arg.kind].metric],
    ];
  });
}

const spanText = (value: unknown): unknown =>
  typeof value === "object" && value !== null && "low" in value && "high" in value
    ? `${String(value.low)} to ${String(value.high)} °C`
    : value;

/** "250 lbf = 1112.055 N" where the sheet is in inch units, else the plain value. */
function converted(kind: Kind, value: number, system: System): string {
  const { metric, inch } = kinds[kind];
  const working = `${digits(value)} ${metric}`.trim();
  return system === "metric" || metric === inch
    ? working
    : `${digits(fromWorking(kind, value, system))} ${inch} = ${working}`;
}

function lines(f: Formula, values: Readonly<Record<string, unknown>>, system: System): Row[] {
  const { spec } = f;
  const results = resultSymbols(spec.result);
  const known = new Map<string, Known>();
  const rows: Row[] = [];
  for (const [name, arg] of Object.entries<Arg>(spec.args))
    if (isNumberArg(arg) && typeof values[name] === "number")
      known.set(arg.symbol, { value: values[name], unit: kinds[arg.kind].metric });
  for (const [symbol, { value: measure, text }] of Object.entries<Lookup>(spec.lookups?.(values) ?? {})) {
    const { value, kind } = measure;
    known.set(symbol, { value, unit: kinds[kind].metric });
    rows.push([text, symbol, converted(kind, value, system), value, kinds[kind].metric]);
  }
  for (const line of workingOf(f, values)) {
    const { symbol, expression } = splitLine(line);
    const value = evaluate(expression, new Map([...known].map(([name, { value }]) => [name, value])));
    const result = results.find((r) => r.symbol === symbol);
    const unit = result ? kinds[result.kind].metric : (spec.between?.[symbol]?.unit ?? "");
    rows.push([
      "Calculation",
      line,
      `${symbol} = ${substitute(expression, (name) => shown(known.get(name)))}`,
      value,
      unit,
    ]);
    known.set(symbol, { value, unit });
  }
  for (const { symbol, kind } of results) {
    const answer = known.get(symbol);
    if (system === "inch" && answer && isDimensional(kind))
      rows.push([
        "Answer in inch units",
        symbol,
        converted(kind, answer.value, system),
        fromWorking(kind, answer.value, system),
        kinds[kind].inch,
      ]);
  }
  return rows;
}

/** A number put into a formula, its unit in brackets so that a stroke in the unit is not read as a division. */
const shown = (known: Known | undefined): string | undefined => {
  if (!known) return undefined;
  const text = `${digits(known.value)}${known.unit ? ` [${known.unit}]` : ""}`;
  return known.value < 0 ? `(${text})` : text;
};

const digits = (value: number): string => String(Number(value.toPrecision(7)));

const sources = (source: Source | readonly Source[]): Row[] =>
  [source].flat().map((s) => ["Source", "", [sourceTitle(s.key), s.at].filter(Boolean).join(": "), "", ""]);
