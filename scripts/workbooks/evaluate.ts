/**
 * What the formulas of a workbook answer: the add-in's functions by the core, and of Excel's own the few that the
 * workbooks use. Formulas run in the order in which they stand in the description.
 */
import { catalogue } from "../../src/core";
import { answer } from "../../src/edge/sheet";
import { addressOf, areaOf } from "../../src/port/address";
import type { Area } from "../../src/port/address";
import { gathered } from "../lib/gathered";
import type { FileBook, FileSheet, FileTable } from "./book";

export class CellError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}
export type Value = number | string | boolean | null | CellError;
type Grid = Value[][];

/** A formula with its answer; more than one cell spills. */
export interface Answered {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string;
  readonly grid: Grid;
}

const host = { error: (code: string, message?: string) => new CellError(code, message) };
const formulas = new Map(catalogue.map((f) => [f.spec.id, f]));

/** Every formula of a workbook with its answer, in order. */
export function evaluate(book: FileBook): Answered[] {
  const values = new Map<string, Value>();
  const tables = new Map<string, { sheet: string; area: Area; table: FileTable }>();
  const answers = new Map<string, Grid>();
  const key = (sheet: string, row: number, col: number) => `${sheet}!${addressOf(row, col)}`;
  for (const sheet of book.sheets) {
    for (const [at, { value }] of Object.entries(sheet.cells))
      if (value !== undefined) values.set(`${sheet.name}!${at}`, value);
    for (const table of sheet.tables ?? []) {
      const { row, col } = areaOf(table.at);
      [table.headings, ...table.rows].forEach((line, r) =>
        line.forEach((cell, c) => values.set(key(sheet.name, row + r, col + c), cell)),
      );
      tables.set(table.name, {
        sheet: sheet.name,
        table,
        area: { row, col, rows: table.rows.length + 1, cols: table.headings.length },
      });
    }
  }
  const read = (sheet: string, { row, col, rows, cols }: Area): Grid =>
    Array.from({ length: rows }, (_, r) =>
      Array.from({ length: cols }, (_, c) => values.get(key(sheet, row + r, col + c)) ?? null),
    );
  const out: Answered[] = [];
  for (const sheet of book.sheets) {
    for (const [at, { formula }] of Object.entries(sheet.cells)) {
      if (formula === undefined) continue;
      const grid = new Reader(formula.slice(1), {
        range: (name, address) => read(name ?? sheet.name, areaOf(address)),
        spill: (name, address) =>
          known(answers.get(`${name ?? sheet.name}!${address}`), `${address}# before its formula`),
        column: (name, column) => {
          const { sheet: on, table, area } = known(tables.get(name), `table ${name}`);
          if (column === "#All") return read(on, area);
          const index = table.headings.indexOf(column);
          if (index < 0) throw new Error(`table ${name} has no column ${column}`);
          return read(on, { ...area, row: area.row + 1, rows: area.rows - 1, col: area.col + index, cols: 1 });
        },
      }).run();
      const { row, col } = areaOf(at);
      checkRoom(sheet, at, grid, values);
      grid.forEach((line, r) => line.forEach((cell, c) => values.set(key(sheet.name, row + r, col + c), cell)));
      answers.set(`${sheet.name}!${at}`, grid);
      out.push({ sheet: sheet.name, at, formula, grid });
    }
  }
  return out;
}

function known<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`a formula reads ${what}, which is not there`);
  return value;
}

/** A workbook that opens on #SPILL! would be a poor example. */
function checkRoom(sheet: FileSheet, at: string, grid: Grid, values: ReadonlyMap<string, Value>): void {
  const { row, col } = areaOf(at);
  grid.forEach((line, r) =>
    line.forEach((_, c) => {
      const place = addressOf(row + r, col + c);
      const isOwn = r === 0 && c === 0;
      if (!isOwn && (values.has(`${sheet.name}!${place}`) || sheet.cells[place]?.formula))
        throw new Error(`${sheet.name}!${at} spills onto ${place}`);
    }),
  );
}

interface Sources {
  range(sheet: string | undefined, address: string): Grid;
  spill(sheet: string | undefined, address: string): Grid;
  column(table: string, column: string): Grid;
}

const token =
  /\s*(?:("(?:[^"]|"")*")|(\d+\.?\d*(?:[eE][-+]?\d+)?)|([A-Za-z]\w*\[[^\]]*\])|((?:(?:'[^']+'|[A-Za-z]\w*)!)?\$?[A-Z]{1,2}\$?\d+(?::\$?[A-Z]{1,2}\$?\d+|#)?)(?![\w(])|([A-Za-z][\w.]*)(?=\()|(TRUE|FALSE)|(<>|<=|>=|[-+*/^&=<>(),%]))/y;

/** A recursive-descent reader of one formula. */
class Reader {
  private readonly tokens: { kind: number; text: string }[] = [];
  private at = 0;

  constructor(
    private readonly text: string,
    private readonly sources: Sources,
  ) {
    token.lastIndex = 0;
    while (token.lastIndex < text.length) {
      const start = token.lastIndex;
      const found = token.exec(text);
      if (!found) throw new Error(`cannot read ${text} at ${text.slice(start)}`);
      const kind = found.findIndex((group, i) => i > 0 && group !== undefined);
      this.tokens.push({ kind, text: found[kind]! });
    }
  }

  run(): Grid {
    const grid = this.level(0);
    if (this.at < this.tokens.length) throw new Error(`cannot read the end of ${this.text}`);
    return grid.map((line) => line.map((cell) => cell ?? 0));
  }

  private readonly operators: readonly Readonly<Record<string, (a: Value, b: Value) => Value>>[] = [
    {
      "=": (a, b) => same(a, b),
      "<>": (a, b) => !same(a, b),
      "<": (a, b) => Number(a) < Number(b),
      ">": (a, b) => Number(a) > Number(b),
      "<=": (a, b) => Number(a) <= Number(b),
      ">=": (a, b) => Number(a) >= Number(b),
    },
    { "&": (a, b) => `${a ?? ""}${b ?? ""}` },
    { "+": (a, b) => arithmetic(a, b, (x, y) => x + y), "-": (a, b) => arithmetic(a, b, (x, y) => x - y) },
    { "*": (a, b) => arithmetic(a, b, (x, y) => x * y), "/": (a, b) => arithmetic(a, b, (x, y) => x / y) },
    { "^": (a, b) => arithmetic(a, b, (x, y) => x ** y) },
  ];

  private level(depth: number): Grid {
    const here = this.operators[depth];
    if (!here) return this.atom();
    let left = this.level(depth + 1);
    for (;;) {
      const operator = this.tokens[this.at]?.kind === 7 ? here[this.tokens[this.at]!.text] : undefined;
      if (!operator) return left;
      this.at++;
      left = spread([left, this.level(depth + 1)], ([a, b]) => passing([a!, b!]) ?? operator(a!, b!));
    }
  }

  private atom(): Grid {
    const { kind, text } = this.tokens[this.at++] ?? { kind: 0, text: "" };
    if (kind === 1) return [[text.slice(1, -1).replaceAll('""', '"')]];
    if (kind === 2) return [[Number(text)]];
    if (kind === 3) return this.sources.column(text.slice(0, text.indexOf("[")), text.slice(text.indexOf("[") + 1, -1));
    if (kind === 4) return this.reference(text);
    if (kind === 5) return this.call(text);
    if (kind === 6) return [[text === "TRUE"]];
    if (text === "-") return spread([this.atom()], ([a]) => arithmetic(0, a!, (x, y) => x - y));
    if (text !== "(") throw new Error(`cannot read ${this.text}`);
    const inner = this.level(0);
    this.expect(")");
    return inner;
  }

  private expect(text: string): void {
    if (this.tokens[this.at++]?.text !== text) throw new Error(`${this.text}: ${text} expected`);
  }

  private reference(text: string): Grid {
    const [, sheet, address] = /^(?:'?([^'!]+)'?!)?(.*)$/.exec(text)!;
    return address!.endsWith("#")
      ? this.sources.spill(sheet, address!.slice(0, -1).replaceAll("$", ""))
      : this.sources.range(sheet, address!);
  }

  private call(name: string): Grid {
    this.expect("(");
    const given: Grid[] = [];
    while (this.tokens[this.at]?.text !== ")") {
      given.push(this.isEmptyArgument() ? [] : this.level(0));
      if (this.tokens[this.at]?.text === ",") this.at++;
    }
    this.at++;
    return name.startsWith("BUSH.") ? bush(name.slice(5), given) : native(name, given);
  }

  private isEmptyArgument = (): boolean => [",", ")"].includes(this.tokens[this.at]?.text ?? "");
}

/** An argument left out is null; STEPS takes the arguments behind its first as one list. */
function bush(id: string, given: readonly Grid[]): Grid {
  const f = formulas.get(id);
  if (!f) throw new Error(`no function BUSH.${id}`);
  const raw = given.map((grid) => (grid.length === 0 ? null : grid.map((line) => line.map(asGiven))));
  return answer(f, gathered(f, raw), host) as Grid;
}
const asGiven = (cell: Value): unknown => (cell instanceof CellError ? cell.code : cell);

function native(name: string, given: readonly Grid[]): Grid {
  const numbers = () => given.flat(2).filter((cell): cell is number => typeof cell === "number");
  const one = (calculate: (x: number) => number): Grid =>
    spread([given[0]!], ([a]) => passing([a!]) ?? arithmetic(a!, 0, calculate));
  switch (name) {
    case "PI":
      return [[Math.PI]];
    case "MIN":
      return [[Math.min(...numbers())]];
    case "MAX":
      return [[Math.max(...numbers())]];
    case "SUMPRODUCT":
      return [
        [
          given[0]!
            .flat()
            .reduce<number>((sum, _, i) => sum + given.reduce((p, g) => p * Number(g.flat()[i] ?? 0), 1), 0),
        ],
      ];
    case "SUM":
      return [[numbers().reduce((a, b) => a + b, 0)]];
    case "SQRT":
      return one(Math.sqrt);
    case "LN":
      return one(Math.log);
    case "ABS":
      return one(Math.abs);
    case "ATAN":
      return one(Math.atan);
    case "DEGREES":
      return one((x) => (x * 180) / Math.PI);
    case "ROUND": {
      const by = 10 ** Number(given[1]![0]![0]);
      return one((x) => (Math.sign(x) * Math.round(Math.abs(x) * by)) / by);
    }
    case "REPT":
      return spread(
        [given[0]!, given[1]!],
        ([text, times]) => passing([text!, times!]) ?? String(text).repeat(Number(times)),
      );
    case "IFERROR":
      return spread([given[0]!, given[1]!], ([a, b]) => (a instanceof CellError ? b! : a!));
    case "ROWS":
      return [[given[0]!.length]];
    case "IF": {
      const [tests, yes, no = [[false]]] = given as [Grid, Grid, Grid?];
      // one test chooses a whole range, as Excel has it
      if (tests.length === 1 && tests[0]!.length === 1) {
        const error = passing(tests[0]!);
        return error ? [[error]] : tests[0]![0] ? yes : no;
      }
      return spread([tests, yes, no], ([test, a, b]) => passing([test!]) ?? (test ? a! : b!));
    }
    case "INDEX":
      return index(given[0]!, Number(given[1]![0]![0]), Number(given[2]?.[0]?.[0] ?? 1));
    case "MATCH": {
      const place = given[1]!.flat().findIndex((cell) => same(cell, given[0]![0]![0]!));
      return [[place < 0 ? new CellError("#N/A") : place + 1]];
    }
    default:
      throw new Error(`${name} is not among the functions that the workbooks use`);
  }
}

function index(grid: Grid, row: number, col: number): Grid {
  return [[grid[row - 1]?.[col - 1] ?? null]];
}

const same = (a: Value, b: Value): boolean =>
  typeof a === "string" && typeof b === "string" ? a.toLowerCase() === b.toLowerCase() : (a ?? "") === (b ?? "");
const passing = (cells: readonly Value[]): CellError | undefined => cells.find((cell) => cell instanceof CellError);

function arithmetic(a: Value, b: Value, calculate: (x: number, y: number) => number): Value {
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  if (typeof a === "string" || typeof b === "string") return new CellError("#VALUE!");
  const value = calculate(Number(a ?? 0), Number(b ?? 0));
  return Number.isFinite(value)
    ? value
    : new CellError(value === Infinity || value === -Infinity ? "#DIV/0!" : "#NUM!");
}

/** Element by element, as Excel combines ranges. */
function spread(grids: readonly Grid[], calculate: (cells: Value[]) => Value): Grid {
  const rows = Math.max(...grids.map((grid) => grid.length));
  const cols = Math.max(...grids.map((grid) => grid[0]?.length ?? 1));
  const cell = (grid: Grid, r: number, c: number): Value => {
    const line = grid[grid.length === 1 ? 0 : r];
    const value = line?.[line.length === 1 ? 0 : c];
    return value === undefined ? new CellError("#N/A") : value;
  };
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: cols }, (_, c) => calculate(grids.map((grid) => cell(grid, r, c)))),
  );
}
