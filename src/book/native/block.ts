import { BushError } from "../../core/errors";
import { betweenOf, isNumberArg, isWhole, requiresOf, resultSymbols, workingOf } from "../../core/formula";
import type { Arg, Formula } from "../../core/formula";
import { boundsText } from "../../core/domain";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { sourceTexts } from "../../core/sources";
import { formulaText, unitText } from "../../core/teach/notation";
import { evaluate, readCondition, readLine } from "../../core/teach/working";
import type { Condition } from "../../core/teach/working";
import { labelOf } from "../../core/teach/worksheet";
import { gathered } from "../../edge/gathered";
import { readSingle } from "../../edge/read";
import { addressOf } from "../../port/address";
import type { BookCell } from "../book";
import { decidingArgs } from "./deciding";
import { conditionText, expression } from "./expression";
import { literal } from "./given";
import type { Given } from "./given";
import { givenCell, inSystem, isNear, numberFormula, wordFormula } from "./inputs";
import { present } from "../../core/present";

/** A call worked in a spreadsheet's own formulas, a row for each symbol; cells hold the present value beside their formula. */
export interface NativeBlock {
  readonly rows: readonly (readonly (BookCell | null)[])[];
  /** Where the answers stand, from the column of values on. */
  readonly answer: { readonly row: number; readonly cols: number };
  /** What the block holds for alone: "grade Demo Medlar". */
  readonly fixed: readonly string[];
}

/** The columns of a block. */
export const blockColumns = ["what", "symbol", "given", "value", "unit", "formula, range or source"] as const;
const valueColumn = blockColumns.indexOf("value");

type Row = readonly [
  what: string,
  symbol: string,
  given: BookCell | null,
  value: BookCell | null,
  unit: string,
  note: string,
];

/**
 * The working of a call from the corner on; undefined where the function has no plain working, reads ranges, or would
 * hold for none but the present numbers. Throws the call's own error.
 */
export function nativeBlock(
  f: Formula,
  given: readonly (Given | undefined)[],
  at: { readonly row: number; readonly col: number },
): NativeBlock | undefined {
  const args = Object.entries<Arg>(f.spec.args);
  if (!f.spec.working || args.some(([, arg], i) => isWhole(arg) && given[i] !== undefined)) return undefined;
  const call = readSingle(
    f,
    gathered(
      f,
      given.map((one) => one?.value ?? null),
    ),
  );
  const block = new Block(f, given, call, at);
  return block.isFree && block.holds ? block.finished() : undefined;
}

class Block {
  private readonly rows: Row[] = [];
  private readonly cells = new Map<string, string>();
  private readonly known = new Map<string, number>();
  private readonly deciding: ReadonlySet<string>;
  private readonly conditions: readonly Condition[];
  private readonly fixed: string[] = [];
  private readonly system: System;

  constructor(
    private readonly f: Formula,
    private readonly given: readonly (Given | undefined)[],
    private readonly call: ReturnType<typeof readSingle>,
    private readonly at: { readonly row: number; readonly col: number },
  ) {
    this.system = call.system;
    this.deciding = decidingArgs(f, call.values);
    this.conditions = requiresOf(f, call.values).map(readCondition);
    this.inputs();
    this.figures();
    this.lines();
  }

  /** Whether any number may change. */
  get isFree(): boolean {
    return Object.entries<Arg>(this.f.spec.args).some(
      ([name, arg], i) => isNumberArg(arg) && this.given[i] !== undefined && !this.deciding.has(name),
    );
  }

  get holds(): boolean {
    const value = (symbol: string) => this.known.get(symbol);
    return this.conditions.every(({ left, sign, right }) =>
      compare[sign](evaluate(left, value), evaluate(right, value)),
    );
  }

  finished(): NativeBlock {
    const { spec } = this.f;
    const answer = this.answers();
    const sources: Row[] = sourceTexts(spec.source).map((text) => ["Source", "", null, null, "", text]);
    const rows = [...this.rows.map(cellsOf), ...answer, ...sources.map(cellsOf)];
    return { rows, answer: { row: this.rows.length, cols: this.call.answers.length }, fixed: this.fixed };
  }

  private address(col: number): string {
    return addressOf(this.at.row + this.rows.length, this.at.col + col);
  }
  private define(symbol: string, value: number): void {
    this.cells.set(symbol, this.address(valueColumn));
    this.known.set(symbol, value);
  }
  private cellOf = (symbol: string): string => present(this.cells.get(symbol));

  private inputs(): void {
    Object.entries<Arg>(this.f.spec.args).forEach(([name, arg], i) => {
      const [given, value] = [this.given[i], this.call.values[name]];
      if (isWhole(arg) || (given === undefined && value === undefined)) return;
      const label = arg.label ?? labelOf(arg.text);
      if (isNumberArg(arg) && typeof value === "number") this.number(name, arg, given, value, label);
      else if (given) this.word(name, given, label);
    });
    const units = this.f.spec.units ? this.given[Object.keys(this.f.spec.args).length] : undefined;
    if (units) this.word("units", units, "Unit system");
  }

  private number(
    name: string,
    arg: Arg & { kind: keyof typeof kinds; symbol: string },
    given: Given | undefined,
    working: number,
    label: string,
  ): void {
    const isFixed = this.deciding.has(name);
    const unit = kinds[arg.kind].metric;
    const range = boundsText(arg, "metric");
    if (isFixed && given) this.fixed.push(`${name} ${String(given.value ?? "")}`.trim());
    const note = isFixed && given ? "holds for this value alone" : given ? range : "left out: the default";
    const value = given
      ? {
          value: working,
          formula: numberFormula({ arg, given: given.value, working, system: this.system, isFixed }, this.address(2)),
        }
      : { value: working };
    this.define(arg.symbol, working);
    this.rows.push([label, arg.symbol, given ? givenCell(given) : null, value, unitText(unit), note]);
  }

  private word(name: string, given: Given, label: string): void {
    const value = typeof given.value === "number" || typeof given.value === "string" ? given.value : "";
    this.fixed.push(`${name} ${value === "" ? "left blank" : value}`);
    const formula = wordFormula(value, this.address(2));
    this.rows.push([label, "", givenCell(given), { value, formula }, "", "holds for this alone"]);
  }

  /** Looked up: the values stand as they were found. */
  private figures(): void {
    for (const [symbol, { value, text }] of Object.entries(this.f.spec.lookups?.(this.call.values) ?? {})) {
      this.define(symbol, value.value);
      const note = `looked up for ${this.fixed.join(", ")}`;
      this.rows.push([text, symbol, null, { value: value.value }, unitText(kinds[value.kind].metric), note]);
    }
  }

  private lines(): void {
    const results = resultSymbols(this.f.spec.result);
    const between = betweenOf(this.f, this.call.values);
    for (const { symbol, tree } of workingOf(this.f, this.call.values).map(readLine)) {
      const result = results.find((one) => one.symbol === symbol);
      const value = evaluate(tree, (name) => this.known.get(name));
      const formula = `=${expression(tree, this.cellOf)}`;
      this.define(symbol, value);
      const text = result ? labelOf(result.name ?? this.f.spec.text) : (between[symbol]?.text ?? "");
      const unit = result ? kinds[result.kind].metric : (between[symbol]?.unit ?? "");
      this.rows.push([text, symbol, null, { value, formula }, unitText(unit), formulaText(symbol, tree)]);
    }
  }

  /** The answers side by side in the sheet's units, refused where the function refuses; their units below them. */
  private answers(): (BookCell | null)[][] {
    const results = new Map(resultSymbols(this.f.spec.result).map((one) => [one.at, one]));
    const names = [...results.values()].map(({ name }) => labelOf(name ?? this.f.spec.text));
    const conditions = requiresOf(this.f, this.call.values);
    const cells = this.call.answers.map((answer, i): BookCell => {
      const result = results.get(i);
      if (answer instanceof BushError) return { value: "#N/A", formula: "=NA()", look: "result" };
      const tests = this.conditions.map((one) => conditionText(one, this.cellOf));
      const shown = result ? inSystem(result.kind, this.cellOf(result.symbol), this.system) : literal(answer);
      // words hold for the present numbers alone
      const all = result ? tests : [...tests, ...this.unchanged()];
      return {
        value: answer,
        formula: `=${this.guarded(all.length > 0 ? `IF(AND(${all.join(",")}),${shown},NA())` : shown)}`,
        look: "result",
      };
    });
    const units = this.call.answers.map((_, i): BookCell => {
      const result = results.get(i);
      return { value: result ? unitText(kinds[result.kind][this.system]) : "", look: "quiet" };
    });
    const label: BookCell = { value: names.length > 1 ? `Answers: ${names.join(", ")}` : "Answer", look: "label" };
    const while_: BookCell | null =
      conditions.length > 0 ? { value: `while ${conditions.join(", ")}`, look: "quiet" } : null;
    return [
      [label, while_, null, ...cells],
      [null, null, null, ...units],
    ];
  }

  private unchanged(): string[] {
    return Object.entries<Arg>(this.f.spec.args).flatMap(([name, arg]) => {
      const value = this.call.values[name];
      return isNumberArg(arg) && typeof value === "number" ? [isNear(this.cellOf(arg.symbol), value)] : [];
    });
  }

  /** Nothing is answered while an input is refused. */
  private guarded(formula: string): string {
    const last = this.rows.map(([, , given]) => given !== null).lastIndexOf(true);
    if (last < 0) return formula;
    const [from, to] = [0, last].map((row) => addressOf(this.at.row + row, this.at.col + valueColumn));
    return `IF(SUMPRODUCT(--ISERROR(${from}:${to}))=0,${formula},NA())`;
  }
}

const compare = {
  "<": (a: number, b: number) => a < b,
  "<=": (a: number, b: number) => a <= b,
  ">": (a: number, b: number) => a > b,
  ">=": (a: number, b: number) => a >= b,
  "=": (a: number, b: number) => a === b,
} as const;

const text = (value: string): BookCell | null => (value === "" ? null : { value });
const cellsOf = ([what, symbol, given, value, unit, note]: Row): (BookCell | null)[] => [
  text(what),
  text(symbol),
  given && { ...given, look: "input" },
  value && { ...value, look: "result" },
  text(unit),
  text(note),
];
