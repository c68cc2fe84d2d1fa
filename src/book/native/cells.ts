import type { NamedTable, Place, ReadCell } from "../../port/sheet";
import { areaOf } from "../../port/address";
import { referencesIn } from "../../port/references";
import type { BookSheet } from "../book";
import { Reader } from "../formula/reader";
import { CellError } from "../../edge/host";
import { isOneRange } from "./given";
import type { Grid, Value } from "../formula/values";
import { present } from "../../core/present";

/** A sheet of a workbook as it was read, from its first cell on. */
export interface HandedSheet {
  readonly name: string;
  readonly cells: readonly (readonly ReadCell[])[];
}

const empty: ReadCell = { value: null, text: "" };

/** The cells of a workbook, with what formulas over them answer. */
export class Cells {
  private readonly byName: ReadonlyMap<string, HandedSheet>;

  constructor(
    sheets: readonly HandedSheet[],
    private readonly tables: readonly NamedTable[],
  ) {
    this.byName = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  }

  read({ sheet, row, col, rows, cols }: Place): ReadCell[][] {
    const found = this.byName.get(sheet.toLowerCase());
    if (!found) throw new Error(`there is no sheet ${sheet}`);
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: cols }, (__, c) => found.cells[row + r]?.[col + c] ?? empty),
    );
  }

  /** Where the named tables stand that a formula names. */
  named(formula: string): Place[] {
    const plain = formula.replaceAll(/"(?:[^"]|"")*"/g, '""');
    return this.tables
      .filter(({ name }) => new RegExp(`(^|[^\\p{L}\\p{N}_.!'])${name}(?![\\p{L}\\p{N}_.(!])`, "iu").test(plain))
      .map(({ place }) => place);
  }

  /** What an expression on a sheet answers now, an error by its code; throws where it uses what the reader does not know. */
  answer(expression: string, sheet: string): unknown[][] {
    const [area] = isOneRange(expression) ? referencesIn(expression, sheet) : [];
    if (area) return this.read(area).map((line) => line.map(({ value }) => value));
    const range = (name: string | undefined, address: string): Grid =>
      this.read({ sheet: name ?? sheet, ...areaOf(address) }).map((line) => line.map(valueOf));
    return new Reader(expression, {
      range,
      spill: (_, address) => unknown(`${address}#`),
      column: (table) => unknown(table),
    })
      .run()
      .map((line) => line.map((cell) => (cell instanceof CellError ? cell.code : cell)));
  }
}

const unknown = (what: string): never => {
  throw new Error(`${what} is not followed`);
};

const valueOf = ({ value, error }: ReadCell): Value => (error ? new CellError(error.code, error.message) : value);

/** The cells of a described sheet whose answers are known. */
export function readCells({ cells }: BookSheet): ReadCell[][] {
  const lines: ReadCell[][] = [];
  for (const [at, { value = null, formula }] of Object.entries(cells)) {
    const { row, col } = areaOf(at);
    while (lines.length <= row) lines.push([]);
    const line = present(lines[row]);
    while (line.length <= col) line.push(empty);
    line[col] = { value, text: String(value ?? ""), ...(formula !== undefined && { formula }) };
  }
  return lines;
}

/** The cells into which a formula at a place answers, itself the first. */
export function answerArea(cells: HandedSheet["cells"], row: number, col: number): { rows: number; cols: number } {
  const isOwn = (cell: ReadCell | undefined): boolean => cell?.spilledFrom?.row === row && cell.spilledFrom.col === col;
  let [rows, cols] = [1, 1];
  while (isOwn(cells[row]?.[col + cols])) cols++;
  while (isOwn(cells[row + rows]?.[col])) rows++;
  return { rows, cols };
}
