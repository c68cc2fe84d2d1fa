import { excludesZero, checkDomain } from "../core/domain";
import { BushError, clash, isMissing, mustBe, orList } from "../core/errors";
import { isNumberArg, isSpill, isWhole, Measure, UnitLabel } from "../core/formula";
import type {
  Answer,
  Arg,
  ArgumentReader,
  Cell,
  ChoiceArg,
  Formula,
  ListArg,
  NumberArg,
  RestArg,
  SpillResult,
  TableArg,
} from "../core/formula";
import { readSpan } from "../core/span";
import { kinds, systems } from "../core/kinds";
import type { Kind, System } from "../core/kinds";
import { fromWorking, readQuantity, toWorking } from "../core/units";
import { matrixOf, plainCell } from "./cells";
import { office, toHostError } from "./host";
import type { Host } from "./host";

const unitsArg: ChoiceArg = {
  kind: "choice",
  choices: systems,
  default: "metric",
  optional: true,
  text: "Unit system",
};

/** An argument that combines element by element; a stride of 0 repeats its only row or column. */
interface Element {
  readonly name: string;
  readonly arg: Arg;
  readonly cells: unknown[][];
  readonly rows: number;
  readonly cols: number;
  readonly rowStride: 0 | 1;
  readonly colStride: 0 | 1;
}

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
    return new Call(f, given).run(host);
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
  /** Arguments whose blanks make a row blank. */
  private readonly deciding: Element[];

  constructor(
    private readonly f: Formula,
    given: readonly unknown[],
  ) {
    const args = Object.entries<Arg>(f.spec.args);
    args.forEach(([name, arg], i) => {
      if (isWhole(arg)) this.whole.push({ name, arg, raw: given[i], read: {} });
      else this.elements.push(element(name, arg, given[i]));
    });
    if (f.spec.units) this.units = element("units", unitsArg, given[args.length]);
    const combining = this.units ? [...this.elements, this.units] : this.elements;
    [this.rows, this.cols] = combinedShape(combining);
    const required = this.elements.filter((e) => !e.arg.optional);
    const ranged = required.filter((e) => e.rows * e.cols > 1);
    this.deciding = ranged.length > 0 ? ranged : required;
  }

  run(host: Host): unknown[][] {
    const { result } = this.f.spec;
    if (!isSpill(result)) return this.each((system, row, col) => this.scalar(system, row, col, host));
    return result.shape === "row" ? this.rowsOf(result, host) : this.tablesOf(result, host);
  }

  private each(cellAt: (system: System, row: number, col: number) => unknown): unknown[][] {
    const fixed = this.units && this.units.rows * this.units.cols > 1 ? undefined : this.systemAt(0, 0);
    const out = new Array<unknown[]>(this.rows);
    for (let row = 0; row < this.rows; row++) {
      const line = new Array<unknown>(this.cols);
      for (let col = 0; col < this.cols; col++) line[col] = cellAt(fixed ?? this.systemOrMetric(row, col), row, col);
      out[row] = line;
    }
    return out;
  }

  private systemAt(row: number, col: number): System {
    return this.units
      ? ((readElement(this.units, cellOf(this.units, row, col), "metric") ?? "metric") as System)
      : "metric";
  }
  private systemOrMetric(row: number, col: number): System {
    try {
      return this.systemAt(row, col);
    } catch {
      return "metric"; // the faulty units text is reported where the row is read
    }
  }

  private scalar(system: System, row: number, col: number, host: Host): unknown {
    try {
      const value = this.compute(system, row, col);
      return value === blank
        ? ""
        : this.out(value as Answer, this.f.spec.result as { kind: Kind | "text" | "measure" }, system, host);
    } catch (error) {
      return toHostError(host, asBushError(error, this.f));
    }
  }

  /** Rows of k values below each other; the arguments form one column. */
  private rowsOf(result: SpillResult, host: Host): unknown[][] {
    if (this.cols > 1)
      throw clash(this.rangedName(), `${this.rangedName()} must be one column here: each row answers several values`);
    const lines = this.each((system, row) => {
      try {
        const value = this.compute(system, row, 0);
        return value === blank ? [""] : this.line(value as Answer[], result, system, host);
      } catch (error) {
        return [toHostError(host, asBushError(error, this.f))];
      }
    }).map((line) => line[0] as unknown[]);
    return padded(lines);
  }

  /** One table; where several rows are asked for, their tables stand below each other, numbered in a first column. */
  private tablesOf(result: SpillResult, host: Host): unknown[][] {
    const many = this.rows * this.cols > 1;
    const heading = result.columns === "by property" ? [] : [result.columns.map((c) => c.name)];
    const blocks = this.each((system, row, col) => {
      try {
        const value = this.compute(system, row, col);
        return value === blank ? [[""]] : (value as Answer[][]).map((line) => this.line(line, result, system, host));
      } catch (error) {
        if (!many) throw error;
        return [[toHostError(host, asBushError(error, this.f))]];
      }
    }).flat() as unknown[][][];
    if (!many)
      return blocks[0]?.length === 1 && blocks[0][0]?.[0] === "" ? [[""]] : padded([...heading, ...(blocks[0] ?? [])]);
    const numbered = blocks.flatMap((block, i) =>
      block.map((line) => (line.length === 1 && line[0] === "" ? ["", ""] : [i + 1, ...line])),
    );
    return padded([...heading.map((line) => ["row", ...line]), ...numbered]);
  }

  private line(cells: readonly Answer[], result: SpillResult, system: System, host: Host): unknown[] {
    return cells.map((cell, i) =>
      this.out(
        cell,
        result.columns === "by property" ? { kind: "measure" } : (result.columns[i] ?? { kind: "measure" }),
        system,
        host,
      ),
    );
  }

  private compute(system: System, row: number, col: number): unknown {
    if (this.deciding.length > 0 && this.isBlankRow(row, col)) return blank;
    if (this.units && this.units.rows * this.units.cols > 1) this.systemAt(row, col);
    return this.f.calc(this.valuesAt(system, row, col));
  }

  private valuesAt(system: System, row: number, col: number): Record<string, unknown> {
    const values: Record<string, unknown> = {};
    for (const e of this.elements) values[e.name] = readElement(e, cellOf(e, row, col), system);
    for (const w of this.whole) values[w.name] = this.readWhole(w, system);
    return values;
  }

  private readWhole(w: Whole, system: System): unknown {
    return (w.read[system] ??= readWhole(w, system));
  }

  /** The values of a call for one row of inputs. */
  single(): ReturnType<ArgumentReader["read"]> {
    if (this.rows * this.cols > 1)
      throw clash(this.rangedName(), `${this.rangedName()} must be one value here, got a range`);
    const system = this.systemAt(0, 0);
    return { values: this.valuesAt(system, 0, 0), system };
  }

  /** All deciding cells blank, or 0 with at least one 0 that cannot be a value: some hosts hand a blank cell over as 0. */
  private isBlankRow(row: number, col: number): boolean {
    let zeros = 0;
    let impossible = false;
    for (const e of this.deciding) {
      const cell = cellOf(e, row, col);
      if (cell === null || cell === undefined || cell === "" || (typeof cell === "string" && cell.trim() === ""))
        continue;
      if (cell !== 0) return false;
      zeros++;
      impossible ||= isNumberArg(e.arg) && excludesZero(e.arg);
    }
    return zeros === 0 || impossible;
  }

  private out(value: Answer, result: { kind: Kind | "text" | "measure" }, system: System, host: Host): unknown {
    if (typeof value === "string") return value;
    if (value instanceof UnitLabel) return kinds[value.kind][system];
    if (value instanceof BushError) return toHostError(host, value);
    const measure = value instanceof Measure;
    const kind = measure ? value.kind : result.kind;
    const working = measure ? value.value : value;
    const shown = kind === "text" || kind === "measure" ? working : fromWorking(kind, working, system);
    return Number.isFinite(shown) ? shown : toHostError(host, this.notFinite());
  }

  private notFinite(): BushError {
    const names = this.elements.filter((e) => isNumberArg(e.arg)).map((e) => e.name);
    return clash(names[0] ?? "argument", `${orList(names)}: out of range, the answer is not a finite number`);
  }

  private rangedName(): string {
    return this.elements.find((e) => e.rows * e.cols > 1)?.name ?? "range";
  }
}

function readWhole({ name, arg, raw }: Whole, system: System): unknown {
  if (arg.kind === "rest")
    return { read: (f) => new Call(f, Array.isArray(raw) ? raw : []).single() } satisfies ArgumentReader;
  const cells = isAbsent(raw) ? [] : matrixOf(raw).map((line) => line.map(plainCell));
  if (cells.every((line) => line.every((cell) => cell === null))) {
    if (!arg.optional) throw isMissing(name);
    return undefined;
  }
  return arg.kind === "list" ? readList(name, arg, cells, system) : arg.read(cells, system, name);
}

const blank = Symbol("blank row");

const isAbsent = (raw: unknown): boolean => raw === null || raw === undefined;

function element(name: string, arg: Arg, raw: unknown): Element {
  const cells = matrixOf(raw);
  const rows = cells.length;
  const cols = cells[0]?.length ?? 1;
  return { name, arg, cells, rows, cols, rowStride: rows > 1 ? 1 : 0, colStride: cols > 1 ? 1 : 0 };
}

const cellOf = (e: Element, row: number, col: number): unknown =>
  (e.cells[row * e.rowStride] as unknown[])[col * e.colStride];

/** One shape, one row, one column or one value combine; anything else is an error that names both. */
function combinedShape(elements: readonly Element[]): [number, number] {
  const tallest = elements.reduce<Element | undefined>((a, b) => (b.rows > (a?.rows ?? 1) ? b : a), undefined);
  const widest = elements.reduce<Element | undefined>((a, b) => (b.cols > (a?.cols ?? 1) ? b : a), undefined);
  const rows = tallest?.rows ?? 1;
  const cols = widest?.cols ?? 1;
  for (const e of elements) {
    const other = e.rows !== 1 && e.rows !== rows ? tallest : e.cols !== 1 && e.cols !== cols ? widest : undefined;
    if (other)
      throw clash(e.name, `${other.name} (${size(other)}) and ${e.name} (${size(e)}) cannot combine: give equal sizes`);
  }
  return [rows, cols];
}
const size = (e: Element): string => `${e.rows}×${e.cols}`;

function readElement(e: Element, raw: unknown, system: System): unknown {
  const { name, arg } = e;
  // the fast path: a plain number meets neither text nor unit algebra
  if (typeof raw === "number" && isNumberArg(arg))
    return checked(name, arg, toWorking(arg.kind, raw, system), system, raw);
  const cell = plainCell(raw);
  if (cell instanceof BushError) throw cell.argument === "cell" ? mustBe(name, "a number or text", raw) : cell;
  if (cell === null) {
    if (!arg.optional) throw isMissing(name);
    return "default" in arg ? arg.default : undefined;
  }
  return readGiven(name, arg, cell, system);
}

function readGiven(name: string, arg: Arg, cell: number | string | boolean, system: System): unknown {
  if (isNumberArg(arg)) return checked(name, arg, readNumber(name, arg.kind, cell, system), system, cell);
  switch (arg.kind) {
    case "choice":
      return readChoice(name, arg, cell);
    case "text":
      if (typeof cell === "boolean") throw mustBe(name, "text", cell);
      return String(cell);
    case "span":
      return readSpan(name, cell, system);
    case "notation":
      return arg.read(cell, system, name);
    default:
      return cell;
  }
}

function readNumber(name: string, kind: Kind, cell: number | string | boolean, system: System): number {
  if (typeof cell === "string") return readQuantity(name, kind, cell, system);
  if (typeof cell === "boolean") throw mustBe(name, "a number", cell);
  return toWorking(kind, cell, system);
}

function checked(name: string, arg: NumberArg, value: number, system: System, found: unknown): number {
  checkDomain(name, arg, value, system, found);
  return value;
}

function readChoice(name: string, arg: ChoiceArg, cell: number | string | boolean): string {
  const word = String(cell).toLowerCase();
  const choice = arg.choices.find((c) => c.toLowerCase() === word);
  if (choice === undefined) throw mustBe(name, orList(arg.choices.map((c) => `"${c}"`)), cell);
  return choice;
}

/** A range as one list, read row by row; blanks keep their place. */
function readList(name: string, arg: ListArg, cells: Cell[][], system: System): unknown[] {
  return cells.flat().map((cell, i) => {
    if (cell === null) return undefined;
    const place = `${name} ${i + 1}`;
    if (cell instanceof BushError) throw cell;
    if (arg.of === "text") return String(cell);
    const value = readNumber(place, arg.of, cell, system);
    checkDomain(place, { kind: arg.of, from: arg.from, above: arg.above }, value, system, cell);
    return value;
  });
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
  return new BushError(
    "value",
    first,
    `${first}: ${f.spec.id} cannot compute this: ${error instanceof Error ? error.message : String(error)}`,
  );
}
