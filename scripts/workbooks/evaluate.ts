/**
 * What the formulas of a workbook answer: the add-in's functions by the core, and of Excel's own the few that the
 * workbooks use. Formulas run in the order in which they stand in the description.
 */
import { Reader } from "../../src/book/formula/reader";
import type { Grid, Value } from "../../src/book/formula/values";
import { addressOf, areaOf } from "../../src/port/address";
import type { Area } from "../../src/port/address";
import type { FileBook, FileSheet, FileTable } from "./book";

/** A formula with its answer; more than one cell spills. */
export interface Answered {
  readonly sheet: string;
  readonly at: string;
  readonly formula: string;
  readonly grid: Grid;
}

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
    for (const [at, { formula, value }] of Object.entries(sheet.cells)) {
      if (formula === undefined) continue;
      // an answer that is known is not computed once more
      if (value !== undefined) {
        out.push({ sheet: sheet.name, at, formula, grid: [[value]] });
        continue;
      }
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
