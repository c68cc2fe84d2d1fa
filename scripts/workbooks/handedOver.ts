/** A book of formulas as it is without the add-in. */
import type { Book, BookCell, BookSheet } from "../../src/book/book";
import { CellError } from "../../src/edge/host";
import type { Value } from "../../src/book/formula/values";
import type { HandedSheet } from "../../src/book/native/cells";
import { handOver } from "../../src/book/native/handOver";
import { addressOf, areaOf } from "../../src/port/address";
import type { ReadCell } from "../../src/port/sheet";
import type { FileBook } from "./book";
import { evaluate } from "./evaluate";

/** The book without a call of the add-in, with the list of what became of each. */
export function handedOver({ name, sheets, tables }: Book, file: string) {
  const read = readSheets(sheets);
  const { entries, added, ...handed } = handOver(
    read,
    tables.map(({ range, ...table }) => ({
      name: table.name,
      reference: table.name,
      place: { sheet: table.sheet, ...areaOf(range) },
    })),
  );
  const changed = sheets.map((sheet, i) => ({ ...sheet, cells: changedCells(sheet, read[i]!, handed.sheets[i]!) }));
  const book: FileBook = { file, title: `${name}, handed over`, sheets: [...changed, ...added] };
  return { book, entries };
}

/** What a host would read from the book's sheets. */
export function readSheets(sheets: readonly BookSheet[]): HandedSheet[] {
  const answers = evaluate({ file: "", title: "", sheets });
  return sheets.map(({ name, cells }) => {
    const lines: ReadCell[][] = [];
    const put = (row: number, col: number, cell: ReadCell): void => {
      while (lines.length <= row) lines.push([]);
      const line = lines[row]!;
      while (line.length <= col) line.push({ value: null, text: "" });
      line[col] = cell;
    };
    for (const [at, { value }] of Object.entries(cells)) {
      const { row, col } = areaOf(at);
      if (value !== undefined) put(row, col, { value, text: String(value) });
    }
    for (const { at, formula, grid } of answers.filter((answer) => answer.sheet === name)) {
      const { row, col } = areaOf(at);
      grid.forEach((line, r) =>
        line.forEach((value, c) =>
          put(row + r, col + c, {
            ...readCell(value),
            ...(r + c === 0 ? { formula } : { spilledFrom: { row, col, formula } }),
          }),
        ),
      );
    }
    return { name, cells: lines };
  });
}

const readCell = (value: Value): ReadCell =>
  value instanceof CellError
    ? {
        value: value.code,
        text: value.code,
        error: { code: value.code, ...(value.message && { message: value.message }) },
      }
    : { value, text: String(value ?? "") };

const valueOf = (value: string | number | boolean | null): string | number =>
  typeof value === "boolean" ? String(value).toUpperCase() : (value ?? "");

function changedCells({ cells }: BookSheet, before: HandedSheet, after: HandedSheet): Record<string, BookCell> {
  const out: Record<string, BookCell> = { ...cells };
  after.cells.forEach((line, row) =>
    line.forEach(({ formula, value }, col) => {
      const was = before.cells[row]?.[col];
      if (formula === was?.formula && !was?.spilledFrom) return;
      const at = addressOf(row, col);
      const { look, format } = cells[at] ?? {};
      const said = { value: valueOf(value), ...(formula && { formula }) };
      out[at] = { ...(look && { look }), ...(format && { format }), ...said };
    }),
  );
  return out;
}
