import type { Answer, Source } from "../../formula";
import type { System } from "../../kinds";
import { sourceTitle } from "../../sources";
import { fromWorking } from "../../units";
import { workedRows } from "../../teach/workedRows";
import type { Row } from "../../teach/workedRows";
import { knownFigures, workOf } from "../../teach/worksheet";
import type { Work } from "../../teach/worksheet";
import type { Working } from "../criterion";
import type { Call } from "../faces";

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

export const sourcesText = (source: Source | readonly Source[]): string =>
  [source]
    .flat()
    .map((s) => [sourceTitle(s.key), s.at].filter(Boolean).join(": "))
    .join("; ");

/** Workings in the lines of one record: what a figure is stands where it is first used. */
export class Record {
  private readonly told = new Set<string>();

  constructor(readonly system: System) {}

  /** A criterion's working; a working that leads to one of its figures stands in front, unless it stands above already. */
  working({ first, ...working }: Working, results: Work["results"]): Line[] {
    const before = first ? this.working(first, []).filter((line) => this.isNew(line)) : [];
    const { lines, known, between = {} } = working;
    const origin = (symbol: string): string =>
      known[symbol]?.origin ?? (known[symbol]?.property === undefined ? "" : "figure of the grade");
    return [...before, ...this.worked({ known: knownFigures(known, true), lines, between, results }, "", origin)];
  }

  /** A formula's own working. */
  formula(call: Call): Line[] {
    return this.worked(callWork(call, this.system), sourcesText(call.f.spec.source));
  }

  /** `source` is that of the lines, `origin` that of each figure. */
  worked(work: Work, source: string, origin: (symbol: string) => string = () => ""): Line[] {
    const { given, lines } = workedRows(work, this.system);
    const known = [...given].map(([symbol, row]) => lineOf(row, origin(symbol))).filter((line) => this.isNew(line));
    const last = lines.length - 1;
    return [...known, ...lines.map((row, i) => lineOf(row, i === last ? source : ""))];
  }

  /** Told above already, in the same words and numbers. */
  private isNew([what, formula, numbers]: Line): boolean {
    const key = JSON.stringify([what, formula, numbers]);
    if (this.told.has(key)) return false;
    this.told.add(key);
    return true;
  }
}

const lineOf = ([what, formula, numbers, result, unit]: Row, from: string): Line => [
  what as string,
  formula as string,
  numbers as string,
  result!,
  unit!,
  from,
];

/** The work of a formula for one number. */
export function callWork({ f, values }: Call, system: System): Work {
  const { kind } = f.spec.result as { kind: Parameters<typeof fromWorking>[0] };
  return workOf(f, { values, system, answers: [fromWorking(kind, f.calc(values) as number, system)] });
}
