import { capitalised } from "../capitalised";
import type { BushError } from "../errors";
import { betweenOf, isNumberArg, resultSymbols, workingOf } from "../formula";
import type { Arg, ArgumentReader, Between, Formula, Lookup } from "../formula";
import { isDimensional, kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { present } from "../present";
import { conversion, inch } from "./conversion";
import type { Entry, Line } from "./conversion";
import { changed, inchUnit, readUnit, withFactor, withoutFactor } from "./dimension";
import { evaluate, readLine } from "./working";
import type { Tree } from "./working";

/** What is to be worked: what is known, the lines that lead on from it, and what they end in. */
export interface Work {
  readonly known: readonly Known[];
  readonly lines: readonly string[];
  /** The symbols that lines define on the way to the results. */
  readonly between: Readonly<Record<string, Between>>;
  readonly results: readonly Result[];
  /** Fixed numbers of the lines that do not just turn units: what each is. */
  readonly factors?: Readonly<Record<string, string>> | undefined;
  /** Whether it takes lengths in any one unit, and so with the rest: none is shown. */
  readonly isUnitless?: boolean;
}
export interface Known {
  readonly text: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** In working units. */
  readonly working: number;
  /** Whether it stands in the sheet, in the sheet's units. */
  readonly isTyped: boolean;
}
/** A symbol that the lines end in, and what the calculation itself answers for it, in the sheet's units. */
export interface Result {
  readonly symbol: string;
  readonly kind: Kind;
  readonly text: string;
  readonly answer: number | string | BushError | undefined;
}

/** A calculation as it is worked on paper. */
export interface Worksheet {
  /** What is known; a line where it is converted first. */
  readonly given: readonly (Entry | Line)[];
  readonly lines: readonly Line[];
  /** Figures that conversions put in. */
  readonly figures: readonly Entry[];
}
type Call = ReturnType<ArgumentReader["read"]>;

/** The work of a formula for one call of it. */
export function workOf(f: Formula, { values, answers }: Call): Work {
  const { spec } = f;
  return {
    known: knownOf(f, values),
    lines: workingOf(f, values),
    between: betweenOf(f, values),
    results: resultSymbols(spec.result).map(({ symbol, kind, at, name }) => ({
      symbol,
      kind,
      text: labelOf(name ?? spec.text),
      answer: answers[at],
    })),
    factors: spec.factors,
    isUnitless: !spec.units,
  };
}

/** Numbers among the arguments, then the figures looked up for them. */
function knownOf(f: Formula, values: Call["values"]): Known[] {
  const args = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]) => {
    const working = values[name];
    if (!isNumberArg(arg) || typeof working !== "number") return [];
    return [{ text: arg.label ?? labelOf(arg.text), symbol: arg.symbol, kind: arg.kind, working, isTyped: true }];
  });
  return [...args, ...knownFigures(f.spec.lookups?.(values) ?? {}, false)];
}

/** Figures under their symbols. */
export const knownFigures = (figures: Readonly<Record<string, Lookup>>, isTyped: boolean): Known[] =>
  Object.entries(figures).map(([symbol, { value, text }]) => ({
    text,
    symbol,
    kind: value.kind,
    working: value.value,
    isTyped,
  }));

/**
 * In inch units where they are asked for and every line has a plain form in them; else in metric ones, with what is given
 * and what is found converted in lines of their own.
 */
export function worksheetOf(work: Work, system: System): Worksheet {
  const inches = system === "inch" ? worksheetIn("inch", work) : undefined;
  const sheet = inches ?? present(worksheetIn("metric", work));
  return inches || system === "metric" ? { ...sheet, figures: [] } : converted(work, sheet);
}

interface Plain {
  readonly given: readonly (Entry & Pick<Known, "kind" | "isTyped">)[];
  readonly lines: readonly Line[];
}

/** Undefined where a line has no plain form in inch units. */
function worksheetIn(
  system: System,
  { known: figures, between, results, isUnitless, ...work }: Work,
): Plain | undefined {
  const units = new Map<string, Units>();
  const known = new Map<string, number>();
  const enter = (symbol: string, value: number, of: Units): string => {
    units.set(symbol, of);
    known.set(symbol, value);
    return isUnitless && of.metric !== inchUnit(of.metric) ? "" : of.shown;
  };
  const given = figures.map(({ working, ...entry }) => {
    const { kind } = entry;
    const value = system === "metric" ? working : inch(kind, working);
    const unit = enter(entry.symbol, value, { metric: kinds[kind].metric, shown: kinds[kind][system] });
    return { ...entry, value, unit };
  });
  const lines: Line[] = [];
  for (const { symbol, tree: written } of work.lines.map(readLine)) {
    const result = results.find((r) => r.symbol === symbol);
    const { unit: metric, text } = result
      ? { unit: kinds[result.kind].metric, text: result.text }
      : lineOf(between[symbol]);
    const of = { metric, shown: system === "metric" ? metric : inchUnit(metric) };
    const refitted = refit(written, of, units);
    const tree = refitted ?? written;
    const value = evaluate(tree, (name) => known.get(name));
    if (system === "inch" && !(refitted && agrees(value, result?.answer))) return undefined;
    lines.push({ text, symbol, value, unit: enter(symbol, value, of), tree });
  }
  return { given, lines };
}

const lineOf = (between: Between | undefined): Between => between ?? { unit: "", text: "" };

/** Whether a line ends in what the calculation itself answers, where it answers a number. */
const agrees = (value: number, answer: Result["answer"]): boolean =>
  typeof answer !== "number" || isNear(value, answer);

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.abs(b) + 1e-12;

/** What it is, without the advice that may follow: "Specific wear rate, times your own factors". */
export function labelOf(text: string): string {
  const [first] = text.split(/[;:,]/) as [string];
  return capitalised(first.trim());
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

/** A metric worksheet with what was typed converted from inch units, and its results into them. */
function converted({ results }: Work, { given, lines }: Plain): Worksheet {
  const figures: Entry[] = [];
  const turned = (entry: Entry, kind: Kind, to: System): Line => {
    const made = conversion(entry, kind, to);
    figures.push(...made.figures);
    return made.line;
  };
  const starts = given.map((entry) =>
    entry.isTyped && isDimensional(entry.kind) ? turned(entry, entry.kind, "metric") : entry,
  );
  const ends = results.flatMap(({ symbol, kind }) => {
    const line = lines.find((one) => one.symbol === symbol);
    return line && isDimensional(kind) ? [turned(line, kind, "inch")] : [];
  });
  return { given: starts, lines: [...lines, ...ends], figures };
}
