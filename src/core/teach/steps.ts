import { BushError, noDatum, orList } from "../errors";
import { formula, isNumberArg, isWhole, resultSymbols } from "../formula";
import type { Arg, ArgumentReader, Formula, NumberArg, Source, Span } from "../formula";
import { kinds } from "../kinds";
import type { System } from "../kinds";
import { sourceTitle } from "../sources";
import { fromWorking } from "../units";
import type { Entry, Line } from "./conversion";
import { digitsFor } from "./digits";
import { formulaText, numberText, numeric, quantityText, stepsText, unitText, written } from "./notation";
import { numbersOf } from "./working";
import type { Tree } from "./working";
import { labelOf, worksheetOf } from "./worksheet";

/** The worked lines of one calculation; made for the formulas that it may be asked to show. */
export const stepsOf = (formulas: readonly Formula[]) =>
  formula(
    {
      id: "STEPS",
      family: "Units and teaching",
      text: "Worked lines of a calculation: inputs, formula, the numbers put in with their units, result, source; in inch units where asked, and where a formula has no plain form in them converted in lines of their own",
      args: {
        calculation: { kind: "text", text: 'Name of a function of this add-in that answers a number: "PRESSURE"' },
        argument: { kind: "rest", text: "Its arguments in its own order, one value each" },
      },
      units: false,
      result: {
        shape: "table",
        text: "The working, line by line; the calculation's own error where it has no answer",
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
      const call = argument.read(f);
      const [first] = call.answers;
      if (first instanceof BushError && call.answers.every((answer) => answer instanceof BushError)) throw first;
      return [...worked(f, call), ...sources(f.spec.source)];
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

type Row = (string | number | BushError)[];
type Call = ReturnType<ArgumentReader["read"]>;

/** Inputs, figures looked up, the lines of the formula; conversions where it is worked in other units than asked for. */
function worked(f: Formula, call: Call): Row[] {
  const { given, lines, figures } = worksheetOf(f, call);
  const entries = new Map<string, Entry>([...figures, ...given, ...lines].map((entry) => [entry.symbol, entry]));
  const worded = [...given, ...lines].filter(isLine);
  const digits = digitsFor(worded, new Map([...entries].map(([symbol, { value }]) => [symbol, value])));
  const quantity = (symbol: string) => ({ ...entries.get(symbol)!, digits: digits.get(symbol)! });
  const style = numeric(quantity);
  const answers = answerCells(f, call, lines);

  const row = (entry: Entry | Line): Row => {
    const { text, symbol, value, unit } = entry;
    const shown = quantityText(quantity(symbol));
    if (!isLine(entry)) return [text, symbol, shown, value, unitText(unit)];
    const name = entry.converts ?? symbol;
    const answer = answers.get(symbol);
    const isNumber = Number.isFinite(value) && !(answer instanceof BushError);
    return [
      text,
      entry.converts ?? formulaText(symbol, entry.tree),
      isNumber ? `${name} = ${written(entry.tree, style)} = ${shown}` : "",
      answer ?? (isNumber ? value : ""),
      unitText(unit),
    ];
  };
  const ofArgument = new Map(given.map((entry) => [entry.symbol, entry]));
  const inputs = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]): Row[] => {
    if (!isNumberArg(arg)) return wordRow(name, arg, call);
    const entry = ofArgument.get(arg.symbol);
    ofArgument.delete(arg.symbol);
    return entry ? [row(entry)] : [];
  });
  const told = new Set<string>();
  return [
    ...inputs,
    ...[...ofArgument.values()].map(row),
    ...lines.flatMap((line) => [row(line), ...factorRows(f, line.tree, told)]),
  ];
}

const isLine = (entry: Entry | Line): entry is Line => "tree" in entry;

/** The calculation's own answers for the last line of each result, to the last digit. */
function answerCells(f: Formula, { answers }: Call, lines: readonly Line[]): Map<string, number | BushError> {
  return new Map(
    resultSymbols(f.spec.result).flatMap(({ symbol, at }) => {
      const last = lines.findLast((line) => (line.converts ?? line.symbol) === symbol);
      return last ? [[last.symbol, answers[at] as number | BushError] as const] : [];
    }),
  );
}

/** An argument in words; ranges are left to the figures looked up in them. */
function wordRow(name: string, arg: Exclude<Arg, NumberArg>, { values, system }: Call): Row[] {
  const value = values[name];
  if (value === undefined || isWhole(arg)) return [];
  return [[arg.label ?? labelOf(arg.text), name, wordsOf(arg, value, system), "", ""]];
}

function wordsOf(arg: Arg, value: unknown, system: System): string {
  if (arg.kind === "span") return spanText(value as Span, system);
  return arg.kind === "notation" && arg.show ? arg.show(value, system) : String(value);
}

function spanText({ low, high }: Span, system: System): string {
  const [from, to] = [low, high].map((end) => numberText(fromWorking("temperature", end, system), 7));
  return `${from === to ? from : `${from} to ${to}`} ${kinds.temperature[system]}`;
}

/** What each fixed number of a line is for, told once: it turns units, or the spec has a word on it. */
function factorRows({ spec }: Formula, tree: Tree, told: Set<string>): Row[] {
  return numbersOf(tree).flatMap(({ value, steps }): Row[] => {
    const meaning = steps ? stepsText(steps) : (spec.factors?.[value] ?? everywhere[value]);
    const number = numberText(value, 12);
    if (meaning === undefined || told.has(number + meaning)) return [];
    told.add(number + meaning);
    return [["Fixed factor", number, meaning, value, ""]];
  });
}

/** What a fixed number means wherever a working has it. */
const everywhere: Readonly<Record<number, string>> = { 180: "degrees of π radians" };

const sources = (source: Source | readonly Source[]): Row[] =>
  [source].flat().map((s) => ["Source", "", [sourceTitle(s.key), s.at].filter(Boolean).join(": "), "", ""]);
