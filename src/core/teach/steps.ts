import { BushError, noDatum, orList } from "../errors";
import { formula, isNumberArg, isWhole } from "../formula";
import type { Arg, ArgumentReader, Formula, NumberArg, Source, Span } from "../formula";
import type { Family } from "../families";
import { kinds } from "../kinds";
import type { System } from "../kinds";
import { sourceTexts } from "../sources";
import { fromWorking } from "../units/scale";
import { numberText } from "./notation";
import { labelOf, workOf } from "./worksheet";
import { workedRows } from "./workedRows";
import type { Row } from "./workedRows";

/** The worked lines of one calculation; made for the functions that it may be asked to show, which are not there yet when it is made. */
export const stepsOf = (families: () => readonly Family[]) =>
  formula(
    {
      id: "STEPS",
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
      const f = find(families(), calculation);
      const call = argument.read(f);
      const [first] = call.answers;
      if (first instanceof BushError && call.answers.every((answer) => answer instanceof BushError)) throw first;
      return [...worked(f, call), ...sources(f.spec.source)];
    },
  );

function find(families: readonly Family[], name: string): Formula {
  const id = name
    .trim()
    .toUpperCase()
    .replace(/^=?(BUSH[._])?/, "")
    .replace(/\(.*$/, "");
  const family = families.find(({ functions }) => Object.keys(functions).includes(id));
  const f = family?.functions[id];
  if (!family || !f)
    throw noDatum("calculation", `calculation must be a function of this add-in, got "${name.slice(0, 24)}"`);
  if (f.spec.working) return f;
  const some = orList(
    Object.values(family.functions)
      .filter((other) => other.spec.working)
      .map((other) => other.spec.id),
  );
  throw noDatum("calculation", `calculation ${id} has no formula to work${some ? `; try ${some}` : ""}`);
}

type Call = ReturnType<ArgumentReader["read"]>;

/** The arguments in their order, words among them; figures looked up, the lines of the formula. */
function worked(f: Formula, call: Call): Row[] {
  const { given, lines } = workedRows(workOf(f, call), call.system);
  const inputs = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]): Row[] => {
    if (!isNumberArg(arg)) return wordRow(name, arg, call);
    const row = given.get(arg.symbol);
    given.delete(arg.symbol);
    return row ? [row] : [];
  });
  return [...inputs, ...given.values(), ...lines];
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

const sources = (source: Source | readonly Source[]): Row[] =>
  sourceTexts(source).map((text) => ["Source", "", text, "", ""]);
