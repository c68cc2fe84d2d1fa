import { betweenOf, isNumberArg, resultSymbols, workingOf } from "../formula";
import type { Arg, ArgumentReader, Formula, Lookup } from "../formula";
import { isDimensional, kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { conversion, inch } from "./conversion";
import type { Entry, Line } from "./conversion";
import { changed, inchUnit, readUnit, withFactor, withoutFactor } from "./dimension";
import { evaluate, readLine } from "./working";
import type { Tree } from "./working";

/** A calculation as it is worked on paper. */
export interface Worksheet {
  /** Arguments and what was looked up for them; a line where it is converted first. */
  readonly given: readonly (Entry | Line)[];
  readonly lines: readonly Line[];
  /** Figures that conversions put in. */
  readonly figures: readonly Entry[];
}
type Call = ReturnType<ArgumentReader["read"]>;

/**
 * In inch units where they are asked for and every line has a plain form in them; else in metric ones, with what is given
 * and what is found converted in lines of their own.
 */
export function worksheetOf(f: Formula, call: Call): Worksheet {
  const inches = call.system === "inch" ? worksheetIn("inch", f, call) : undefined;
  const sheet = inches ?? worksheetIn("metric", f, call)!;
  return inches || call.system === "metric" ? { ...sheet, figures: [] } : converted(f, sheet);
}

interface Plain {
  readonly given: readonly (Entry & { readonly kind: Kind })[];
  readonly lines: readonly Line[];
}

/** Undefined where a line has no plain form in inch units. */
function worksheetIn(system: System, f: Formula, { values, answers }: Call): Plain | undefined {
  const units = new Map<string, Units>();
  const known = new Map<string, number>();
  const enter = (symbol: string, value: number, of: Units): string => {
    units.set(symbol, of);
    known.set(symbol, value);
    // a function without a unit system takes lengths in any one unit, and so with the rest: none is shown
    return f.spec.units || of.metric === inchUnit(of.metric) ? of.shown : "";
  };
  const given = givenOf(f, values).map(({ kind, working, ...entry }) => {
    const value = system === "metric" ? working : inch(kind, working);
    const unit = enter(entry.symbol, value, { metric: kinds[kind].metric, shown: kinds[kind][system] });
    return { ...entry, kind, value, unit };
  });
  const lines: Line[] = [];
  const betweens = betweenOf(f, values);
  for (const { symbol, tree: written } of workingOf(f, values).map(readLine)) {
    const result = resultSymbols(f.spec.result).find((r) => r.symbol === symbol);
    const between = betweens[symbol];
    const metric = result ? kinds[result.kind].metric : (between?.unit ?? "");
    const of = { metric, shown: system === "metric" ? metric : inchUnit(metric) };
    const refitted = refit(written, of, units);
    if (!refitted && system === "inch") return undefined;
    const tree = refitted ?? written;
    const value = evaluate(tree, (name) => known.get(name));
    const answer = result && answers[result.at];
    if (system === "inch" && typeof answer === "number" && !isNear(value, answer)) return undefined;
    const text = result ? labelOf(result.name ?? f.spec.text) : (between?.text ?? "");
    lines.push({ text, symbol, value, unit: enter(symbol, value, of), tree });
  }
  return { given, lines };
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.abs(b) + 1e-12;

interface Known {
  readonly text: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly working: number;
}

/** Numbers among the arguments, then the figures looked up for them. */
function givenOf(f: Formula, values: Call["values"]): Known[] {
  const args = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]) => {
    const working = values[name];
    if (!isNumberArg(arg) || typeof working !== "number") return [];
    return [{ text: arg.label ?? labelOf(arg.text), symbol: arg.symbol, kind: arg.kind, working }];
  });
  const lookups = Object.entries<Lookup>(f.spec.lookups?.(values) ?? {});
  return [
    ...args,
    ...lookups.map(([symbol, { value, text }]) => ({ text, symbol, kind: value.kind, working: value.value })),
  ];
}

/** What it is, without the advice that may follow: "Specific wear rate, times your own factors". */
export function labelOf(text: string): string {
  const [first] = text.split(/[;:,]/) as [string];
  return first[0]!.toUpperCase() + first.slice(1).trim();
}

/** A symbol's unit in the metric system, which workings are written for, and in the one shown. */
interface Units {
  readonly metric: string;
  readonly shown: string;
}

/** A line with the numbers that only turn its metric units exchanged for those of the units shown. */
function refit(tree: Tree, of: Units, units: ReadonlyMap<string, Units>): Tree | undefined {
  const [metric, shown] = [readUnit(of.metric), readUnit(of.shown)];
  const named = (system: keyof Units) => (symbol: string) => readUnit(units.get(symbol)?.[system] ?? "");
  const plain = metric && changed(tree, metric, named("metric"), withoutFactor);
  return plain && shown && changed(plain, shown, named("shown"), withFactor);
}

/** A metric worksheet with its arguments converted from inch units, and its results into them. */
function converted(f: Formula, { given, lines }: Plain): Worksheet {
  const isArgument = new Set(Object.values<Arg>(f.spec.args).map((arg) => ("symbol" in arg ? arg.symbol : "")));
  const figures: Entry[] = [];
  const turned = (entry: Entry, kind: Kind, to: System): Line => {
    const made = conversion(entry, kind, to);
    figures.push(...made.figures);
    return made.line;
  };
  const starts = given.map((entry) =>
    isArgument.has(entry.symbol) && isDimensional(entry.kind) ? turned(entry, entry.kind, "metric") : entry,
  );
  const ends = resultSymbols(f.spec.result).flatMap(({ symbol, kind }) => {
    const line = lines.find((one) => one.symbol === symbol);
    return line && isDimensional(kind) ? [turned(line, kind, "inch")] : [];
  });
  return { given: starts, lines: [...lines, ...ends], figures };
}
