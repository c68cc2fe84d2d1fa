import { readCell } from "../core/cell";
import { excludesZero } from "../core/domain";
import { BushError, clash, isMissing, mustBe, orList } from "../core/errors";
import { isNumberArg, isSpill, isWhole, Measure, UnitLabel } from "../core/formula";
import type {
  Answer,
  Arg,
  ArgumentReader,
  Cell,
  ChoiceArg,
  Column,
  Formula,
  ListArg,
  RestArg,
  Result,
  SpillResult,
  TableArg,
} from "../core/formula";
import { kinds, systems } from "../core/kinds";
import type { Kind, System } from "../core/kinds";
import { fromWorking } from "../core/units";
import { matrixOf, plainCell } from "./cells";
import { cellOf, checkCurrencies, combinedShape, element, isRange, readElement } from "./element";
import type { Element } from "./element";
import { office, toHostError } from "./host";
import type { Host } from "./host";
import { PlainRows } from "./plain";

const unitsArg: ChoiceArg = {
  kind: "choice",
  choices: systems,
  default: "metric",
  optional: true,
  text: "Unit system",
};

/** An argument read as a whole, once for each unit system that a row asks for. */
interface Whole {
  readonly name: string;
  readonly arg: ListArg | TableArg | RestArg;
  readonly raw: unknown;
  readonly read: Partial<Record<System, unknown>>;
}

/**
 * The one way from a host's arguments to a host's answer: ranges combine, blanks and errors stay in their row,
 * units convert at this edge, and nothing but finite numbers, text and host errors comes out.
 */
export function answer(f: Formula, given: readonly unknown[], host: Host = office): unknown[][] {
  try {
    return new Call(f, host.argument ? given.map(host.argument) : given, host).run();
  } catch (error) {
    return [[toHostError(host, asBushError(error, f))]];
  }
}

class Call {
  private readonly elements: Element[] = [];
  private readonly units: Element | undefined;
  private readonly whole: Whole[] = [];
  private readonly rows: number;
  private readonly cols: number;
  /** Arguments whose blanks make a row blank: the ranges among the required ones, or all of them where none is a range. */
  private readonly deciding: Element[];

  constructor(
    private readonly f: Formula,
    given: readonly unknown[],
    private readonly host: Host,
  ) {
    const args = Object.entries<Arg>(f.spec.args);
    args.forEach(([name, arg], i) => {
      if (isWhole(arg)) this.whole.push({ name, arg, raw: given[i], read: {} });
      else this.elements.push(element(name, arg, given[i]));
    });
    if (f.spec.units) this.units = element("units", unitsArg, given[args.length]);
    [this.rows, this.cols] = combinedShape(this.units ? [...this.elements, this.units] : this.elements);
    const required = this.elements.filter((e) => !e.arg.optional);
    const ranged = required.filter(isRange);
    this.deciding = ranged.length > 0 ? ranged : required;
  }

  run(): unknown[][] {
    const { result } = this.f.spec;
    if (!isSpill(result)) return this.scalars(result.kind);
    return result.shape === "row" ? this.rowsOf(result) : this.tablesOf(result);
  }

  /** One number or text for each place of the combined shape. */
  private scalars(kind: Kind | "text" | "measure"): unknown[][] {
    if (this.units && isRange(this.units)) return this.each((row, col) => this.scalarAt(row, col, kind));
    const system = this.systemAt(0, 0);
    const plain = new PlainRows(this.f, this.elements, system, () => this.wholeValues(system));
    // all answers first, their rows after: short-lived values then leave no row of the answer to be moved about
    const { rows, cols } = this;
    const flat = new Array<unknown>(rows * cols);
    for (let row = 0, at = 0; row < rows; row++)
      for (let col = 0; col < cols; col++) flat[at++] = this.fastAt(plain, row, col, kind, system);
    return rowsFrom(flat, rows, cols);
  }

  private fastAt(plain: PlainRows, row: number, col: number, kind: Kind | "text" | "measure", system: System): unknown {
    try {
      const values = plain.valuesAt(row, col);
      if (!values) return this.scalarAt(row, col, kind);
      return this.out(this.f.calc(values, system) as Answer, kind, system);
    } catch {
      return this.scalarAt(row, col, kind); // says what is wrong, or that the row is blank
    }
  }

  private scalarAt(row: number, col: number, kind: Kind | "text" | "measure"): unknown {
    try {
      const system = this.systemAt(row, col);
      const value = this.compute(system, row, col);
      return value === blank ? "" : this.out(value as Answer, kind, system);
    } catch (error) {
      return this.fault(error);
    }
  }

  private fault(error: unknown): unknown {
    return toHostError(this.host, asBushError(error, this.f));
  }

  private each<T>(at: (row: number, col: number) => T): T[][] {
    return Array.from({ length: this.rows }, (_, row) => Array.from({ length: this.cols }, (__, col) => at(row, col)));
  }

  /** Rows of k values below each other; the arguments form one column. */
  private rowsOf(result: SpillResult): unknown[][] {
    if (this.cols > 1) {
      const wide = this.nameWhere((e) => e.cols > 1);
      throw clash(wide, `${wide} must be one column here: each row answers several values`);
    }
    const lines = this.each((row) => {
      try {
        const system = this.systemAt(row, 0);
        const value = this.compute(system, row, 0);
        return value === blank ? [""] : this.line(value as Answer[], result, system);
      } catch (error) {
        return [this.fault(error)];
      }
    });
    return padded(lines.flat());
  }

  /** One table; where several rows are asked for, their tables stand below each other, numbered in a first column. */
  private tablesOf(result: SpillResult): unknown[][] {
    const many = this.rows * this.cols > 1;
    const system = this.units && isRange(this.units) ? undefined : this.systemAt(0, 0);
    const heading = result.columns === "by property" ? [] : [result.columns.map((c) => headingOf(c, system))];
    const blocks = this.each((row, col) => this.table(row, col, result, many)).flat();
    if (!many) return blocks[0] === undefined ? [[""]] : padded([...heading, ...blocks[0]]);
    const numbered = blocks.flatMap((block, i) => block?.map((line) => [i + 1, ...line]) ?? [["", ""]]);
    return padded([...heading.map((line) => ["row", ...line]), ...numbered]);
  }

  /** The table of one place; nothing for a blank row. */
  private table(row: number, col: number, result: SpillResult, many: boolean): unknown[][] | undefined {
    try {
      const system = this.systemAt(row, col);
      const value = this.compute(system, row, col);
      return value === blank ? undefined : (value as Answer[][]).map((line) => this.line(line, result, system));
    } catch (error) {
      if (!many) throw error;
      return [[this.fault(error)]];
    }
  }

  private line(cells: readonly Answer[], result: SpillResult, system: System): unknown[] {
    return cells.map((cell, i) => this.out(cell, kindAt(result, i), system));
  }

  private systemAt(row: number, col: number): System {
    return this.units ? (readElement(this.units, cellOf(this.units, row, col), "metric") as System) : "metric";
  }

  private compute(system: System, row: number, col: number): unknown {
    if (this.deciding.length > 0 && this.isBlankRow(row, col)) return blank;
    return this.f.calc(this.valuesAt(system, row, col), system);
  }

  private valuesAt(system: System, row: number, col: number): Record<string, unknown> {
    const values: Record<string, unknown> = {};
    for (const e of this.elements) values[e.name] = readElement(e, cellOf(e, row, col), system);
    checkCurrencies(this.elements, row, col);
    return Object.assign(values, this.wholeValues(system));
  }

  private wholeValues(system: System): Record<string, unknown> {
    return Object.fromEntries(this.whole.map((w) => [w.name, (w.read[system] ??= readWhole(w, system, this.host))]));
  }

  /** The values of a call for one row of inputs, and its answer. */
  single(): ReturnType<ArgumentReader["read"]> {
    if (this.rows * this.cols > 1) {
      const ranged = this.nameWhere(isRange);
      throw clash(ranged, `${ranged} must be one value here, got a range`);
    }
    const system = this.systemAt(0, 0);
    const values = this.valuesAt(system, 0, 0);
    const cells = [this.f.calc(values, system) as Answer | Answer[]].flat();
    return { values, system, answers: cells.map((cell, i) => this.plain(cell, kindAt(this.f.spec.result, i), system)) };
  }

  /** All deciding cells blank, or 0 with at least one 0 that cannot be a value: some hosts hand a blank cell over as 0. */
  private isBlankRow(row: number, col: number): boolean {
    let zeros = 0;
    let impossible = false;
    for (const e of this.deciding) {
      const cell = cellOf(e, row, col);
      if (cell === 0) {
        zeros++;
        impossible ||= isNumberArg(e.arg) && excludesZero(e.arg);
      } else if (plainCell(cell) !== null) return false;
    }
    return zeros === 0 || impossible;
  }

  private out(value: Answer, kind: Kind | "text" | "measure", system: System): unknown {
    const cell = this.plain(value, kind, system);
    return typeof cell === "object" ? toHostError(this.host, cell) : cell;
  }

  /** An answer in the sheet's units. */
  private plain(value: Answer, kind: Kind | "text" | "measure", system: System): number | string | BushError {
    if (typeof value === "number") return this.number(value, kind, system);
    if (value instanceof Measure) return this.number(value.value, value.kind, system);
    return value instanceof UnitLabel ? kinds[value.kind][system] : value;
  }

  private number(value: number, kind: Kind | "text" | "measure", system: System): number | BushError {
    const shown =
      system === "metric" || kind === "text" || kind === "measure" ? value : fromWorking(kind, value, system);
    // no sheet shows a −0 as 0, and 0 + −0 is 0
    return Number.isFinite(shown) ? shown + 0 : this.notFinite();
  }

  private notFinite(): BushError {
    const all = Object.entries<Arg>(this.f.spec.args);
    const numbers = all.filter(([, arg]) => isNumberArg(arg) || arg.kind === "list");
    const names = (numbers.length > 0 ? numbers : all).map(([name]) => name);
    return clash(names[0] ?? "argument", `${orList(names)}: out of range, the answer is not a finite number`);
  }

  private nameWhere(is: (e: Element) => boolean): string {
    return [...this.elements, this.units!].find(is)!.name;
  }
}

const blank = Symbol("blank row");

/** The kind of an answer's cell at a place in its row. */
function kindAt(result: Result, at: number): Kind | "text" | "measure" {
  if (!isSpill(result)) return result.kind;
  return result.columns === "by property" ? "measure" : (result.columns[at]?.kind ?? "measure");
}

/** "bore [mm]"; where each row names its own unit system, the heading names none. */
function headingOf({ name, kind }: Column, system: System | undefined): string {
  const unit = system && kind !== "text" && kind !== "measure" ? kinds[kind][system] : "";
  return unit ? `${name} [${unit}]` : name;
}

function readWhole({ name, arg, raw }: Whole, system: System, host: Host): unknown {
  if (arg.kind === "rest")
    return { read: (f) => new Call(f, Array.isArray(raw) ? raw : [], host).single() } satisfies ArgumentReader;
  const cells =
    raw === null || raw === undefined ? [] : matrixOf(raw).map((line) => line.map((cell) => tableCell(name, cell)));
  if (cells.every((line) => line.every((cell) => cell === null))) {
    if (!arg.optional) throw isMissing(name);
    return undefined;
  }
  return arg.kind === "list" ? readList(name, arg, cells, system) : arg.read(cells, system, name);
}

/** A table's cell; an object without a plain value is told by the table's name. */
function tableCell(name: string, raw: unknown): Cell {
  const cell = plainCell(raw);
  return cell instanceof BushError && cell.code === "value"
    ? mustBe(`a cell of ${name}`, "a number or text", raw)
    : cell;
}

/** A range as one list, read row by row; blanks keep their place. */
function readList(name: string, arg: ListArg, cells: Cell[][], system: System): unknown[] {
  const { of } = arg;
  return cells.flat().map((cell, i) => {
    if (cell === null) return undefined;
    if (cell instanceof BushError) throw cell;
    return of === "text" ? String(cell) : readCell(`${name} ${i + 1}`, { ...arg, kind: of }, cell, system);
  });
}

function rowsFrom(flat: readonly unknown[], rows: number, cols: number): unknown[][] {
  const out = new Array<unknown[]>(rows);
  for (let row = 0; row < rows; row++) out[row] = cols === 1 ? [flat[row]] : flat.slice(row * cols, (row + 1) * cols);
  return out;
}

function padded(lines: unknown[][]): unknown[][] {
  const width = lines.reduce((most, line) => Math.max(most, line.length), 1);
  return lines.map((line) =>
    line.length === width ? line : [...line, ...Array<string>(width - line.length).fill("")],
  );
}

/** Anything unforeseen still leaves as an error of ours, never as a number or a crash of the host. */
function asBushError(error: unknown, f: Formula): BushError {
  if (error instanceof BushError) return error;
  const first = Object.keys(f.spec.args)[0] ?? "argument";
  const message = error instanceof Error ? error.message : String(error);
  return new BushError("value", first, `${first}: ${f.spec.id} cannot compute this: ${message}`);
}
