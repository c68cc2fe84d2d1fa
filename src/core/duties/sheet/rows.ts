import type { Answer, Source } from "../../formula";
import type { System } from "../../kinds";
import { sourceTexts } from "../../sources";
import { fromWorking } from "../../units/scale";
import { readLine, symbolsOf } from "../../teach/working";
import { factorWord, workedRows } from "../../teach/workedRows";
import type { Row } from "../../teach/workedRows";
import { knownFigures, workOf } from "../../teach/worksheet";
import type { Work } from "../../teach/worksheet";
import type { Working } from "../judging/criterion";
import type { Call } from "../model/faces";

/** A line of the record behind its section: what it is, formula, the numbers put in, result, unit, from where. */
export type Line = readonly [
  what: string,
  formula: string,
  numbers: string,
  result: Answer,
  unit: Answer,
  from: string,
];

export const wordLine = (what: string, result: Answer, from = ""): Line => [what, "", "", result, "", from];

export const sourcesText = (source: Source | readonly Source[]): string => sourceTexts(source).join("; ");

/**
 * Workings in the lines of one record: what a symbol stands for is told where it is first used and
 * where that changes; a line is told again where any part of it has changed.
 */
export class RecordWorkings {
  private readonly told = new Map<string, string>();

  constructor(readonly system: System) {}

  /** A criterion's working, behind one that leads to a figure of it. */
  working({ first, ...working }: Working, results: Work["results"]): Line[] {
    const { lines, known, between = {} } = working;
    const origin = (symbol: string): string =>
      known[symbol]?.origin ?? (known[symbol]?.property === undefined ? "" : "figure of the grade");
    return [
      ...(first ? this.working(first, []) : []),
      ...this.worked({ known: knownFigures(known, true), lines, between, results }, "", origin),
    ];
  }

  /** A formula's own working. */
  formula(call: Call): Line[] {
    return this.worked(callWork(call, this.system), sourcesText(call.f.spec.source));
  }

  /** `source` is that of the lines, `origin` that of each figure. */
  worked(work: Work, source: string, origin: (symbol: string) => string = () => ""): Line[] {
    const { given, lines } = workedRows(work, this.system);
    const results = new Set(work.results.map(({ symbol }) => symbol));
    const parts = new Map(work.lines.map(readLine).map(({ symbol, tree }) => [symbol, symbolsOf(tree)]));
    const changed = new Set<string>();
    const isKept = (line: Line): boolean => {
      const symbol = symbolOf(line);
      const isNew = this.isNew(line);
      if (isNew) changed.add(symbol);
      return isNew || results.has(symbol) || (parts.get(symbol) ?? []).some((part) => changed.has(part));
    };
    const shown = [
      ...[...given].map(([symbol, row]) => lineOf(row, origin(symbol))),
      ...lines.map((row) => lineOf(row, isFactor(row) ? "" : source)),
    ];
    return shown.filter(isKept);
  }

  /** Whether its symbol was last told with other words or another value. */
  private isNew(line: Line): boolean {
    const [what, , , result] = line;
    // a value that was converted may differ by a rounding
    const value = typeof result === "number" ? Number(result.toPrecision(10)) : String(result);
    const [symbol, meaning] = [symbolOf(line), `${what}|${value}`];
    if (this.told.get(symbol) === meaning) return false;
    this.told.set(symbol, meaning);
    return true;
  }
}

const symbolOf = ([, formula]: Line): string => formula.replace(/ = .*$/s, "");

/** A fixed number of a formula, which is no result. */
const isFactor = ([what]: Row): boolean => what === factorWord;

const lineOf = (row: Row, from: string): Line => {
  const [what, formula, numbers, result, unit] = row as [string, string, string, Answer, string];
  return [what, formula, numbers, isFactor(row) ? "" : result, unit, from];
};

/** The work of a formula for one number. */
export function callWork({ f, values }: Call, system: System): Work {
  const { kind } = f.spec.result as { kind: Parameters<typeof fromWorking>[0] };
  return workOf(f, { values, system, answers: [fromWorking(kind, f.calc(values) as number, system)] });
}
