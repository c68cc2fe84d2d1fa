import { areaOf } from "../../src/port/address";
import type { Place } from "../../src/port/sheet";
import { catalogue } from "../../src/core";
import type { Arg } from "../../src/core/formula";
import { onTheWire } from "./cells";
import type { CellValue } from "./cells";
import type { Call } from "./excelHost";
import type { Sheet, Workbook } from "./workbook";

/** Answers a call that stands among another's arguments. */
type Ask = (call: Call) => Promise<CellValue[][]>;

/** A formula that is a call of the add-in, as Excel makes the call of it: arguments as ranges, what is left out at the end left out. */
export async function callOf(formula: string, book: Workbook, sheet: Sheet, ask: Ask): Promise<Call> {
  const [, name, inside] = /^=?BUSH\.([A-Z]+)\((.*)\)$/s.exec(formula) ?? [];
  if (name === undefined) throw new Error(`the emulated workbook computes calls of the add-in alone, not ${formula}`);
  const given = await Promise.all(
    split(inside!).map(async (text) =>
      text.startsWith("BUSH.")
        ? (await ask(await callOf(text, book, sheet, ask))).map((line) => line.map(onTheWire))
        : argument(text, book, sheet),
    ),
  );
  const args = Object.values<Arg>(catalogue.find(({ spec }) => spec.id === name)!.spec.args);
  const rest = args.findIndex(({ kind }) => kind === "rest");
  return { name, args: rest < 0 ? given : [...given.slice(0, rest), given.slice(rest)] };
}

/** Arguments between commas; a comma in quotes, brackets or an inner call is none. */
function split(inside: string): string[] {
  if (inside.trim() === "") return [];
  const parts = [""];
  let depth = 0;
  for (const [piece] of inside.matchAll(/"(?:[^"]|"")*"|'[^']*'|\[[^\]]*\]|./gs)) {
    if (piece === "(") depth++;
    if (piece === ")") depth--;
    if (piece === "," && depth === 0) parts.push("");
    else parts[parts.length - 1] += piece;
  }
  return parts.map((text) => text.trim());
}

function argument(text: string, book: Workbook, sheet: Sheet): unknown[][] | null {
  if (text === "") return null;
  const quoted = /^"(.*)"$/s.exec(text);
  if (quoted) return [[quoted[1]!.replaceAll('""', '"')]];
  if (/^(TRUE|FALSE)$/.test(text)) return [[text === "TRUE"]];
  if (Number.isFinite(Number(text))) return [[Number(text)]];
  return cellsOf(book, placeOf(text, book, sheet)).map((line) => line.map((cell) => onTheWire(cell ?? "")));
}

/** "B3:D9", "'Own grades'!$A$1:$C$4", "Duties[#All]", "Duties[load]". */
function placeOf(text: string, book: Workbook, sheet: Sheet): Place {
  const [, table, column] = /^(\w+)\[([^\]]+)\]$/.exec(text) ?? [];
  if (table !== undefined) {
    const { place } = book.tables.find(({ name }) => name === table)!;
    if (column === "#All") return place;
    const [headings] = cellsOf(book, { ...place, rows: 1 });
    const col = headings!.indexOf(column);
    if (col < 0) throw new Error(`${table} has no column ${column}`);
    return { ...place, row: place.row + 1, rows: place.rows - 1, col: place.col + col, cols: 1 };
  }
  const [, quoted, bare, area] = /^(?:(?:'([^']+)'|(\w+))!)?([$A-Z\d:]+)$/.exec(text) ?? [];
  if (area === undefined) throw new Error(`the emulated workbook cannot read ${text}`);
  return { sheet: quoted ?? bare ?? sheet.name, ...areaOf(area) };
}

function cellsOf(book: Workbook, { sheet, row, col, rows, cols }: Place): (CellValue | undefined)[][] {
  const cells = book.find(sheet)!;
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: cols }, (__, c) => cells.valueAt(row + r, col + c)),
  );
}
