import { field, fieldHeadings, fields, motionOf } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import { kinds } from "../../core/kinds";
import { keysOf } from "../../core/keyed";
import { present } from "../../core/present";
import { keyOf } from "../../core/table/readTable";
import type { Area } from "../../port/address";
import type { Place, ReadCell, SheetPort } from "../../port/sheet";
import { unitOf } from "../state/fields";
import { eachOf, keysAt } from "../state/form";
import { isReadable } from "../state/readDuty";
import type { Form, Texts } from "../state/form";
import type { Origin } from "../state/origin";
import { withUnit } from "../state/quantity";
import { plainCells } from "../state/useLibrary";
import { dutyAt, readCells, textOf } from "./dutyRows";
import type { DutyCells, DutyRow, FoundDuty } from "./dutyRows";

/** How far up a heading row is looked for, how far down the table is followed, and how far right both may reach. */
const above = 500;
const below = 500;
const across = 100;

export interface FromRow {
  /** The whole form, and where it stands: fields that the row does not name are empty. */
  readonly origin: Origin;
  /** Headings of the fields that were read. */
  readonly read: readonly string[];
  /** Sentences on what the row says and does not count, or cannot be read. */
  readonly unread: readonly string[];
  /** Row of the headings, counted from 1 as the sheet does. */
  readonly headingRow: number;
}

/** What was done, for the person who asked for it. */
export const fromRowText = ({ headingRow, read, unread }: FromRow): string =>
  [`Read by the headings in row ${headingRow}: ${read.join(", ")}.`, ...unread].join(" ");

/** The duty in the selected row, found by the headings above it or beside it; throws a sentence where there is none to read. */
export async function readSelectedRow(port: SheetPort, system: System): Promise<FromRow> {
  const place = await port.selection();
  if (!place) throw new Error("Select one cell of the row to read.");
  const top = Math.max(0, place.row - above);
  const at = place.row - top;
  const area: Place = { sheet: place.sheet, row: top, col: 0, rows: at + 1 + below, cols: across };
  const cells = await port.read(area);
  if (!cells[at] || cells[at].every(({ value }) => value === null)) throw new Error(`Row ${place.row + 1} is empty.`);
  const found = tableAt(cells, at, place.col) ?? cardAt(cells, at);
  if (!found)
    throw new Error(
      `No headings above row ${place.row + 1} name at least two of: load, bore, length, rpm, temperature, motion.`,
    );
  const table: Place = { ...found, sheet: place.sheet, row: top + found.row };
  const inside = cells
    .slice(found.row, found.row + found.rows)
    .map((row) => row.slice(found.col, found.col + found.cols));
  const read = readCells(plainCells(inside), system);
  const duty = dutyAt(read, read.isCard ? 2 : at - found.row + 1);
  if (!duty) throw new Error(`Row ${place.row + 1} holds no duty.`);
  return { ...formOf(read, duty, plainCells(inside), table, system), headingRow: top + found.row + 1 };
}

const isFilled = ({ value }: ReadCell): boolean => value !== null;
const keyIn = ({ value }: ReadCell): FieldKey | undefined =>
  typeof value === "string" ? keyOf(value, fieldHeadings) : undefined;

/** The table around a row: from the nearest row above that names two fields down to the first row that is blank. */
function tableAt(cells: readonly ReadCell[][], at: number, selected: number): Area | undefined {
  for (let row = at - 1; row >= 0; row--) {
    const found = besideEachOther(present(cells[row])).filter(({ keys }) => keys.size > 1);
    const most = Math.max(...found.map(({ keys }) => keys.size));
    const chosen =
      found.find(({ col, end }) => selected >= col && selected < end) ?? found.find(({ keys }) => keys.size === most);
    if (!chosen) continue;
    const { col, end } = chosen;
    const blank = cells.findIndex((line, r) => r > at && !line.slice(col, end).some(isFilled));
    return { row, col, rows: (blank < 0 ? cells.length : blank) - row, cols: end - col };
  }
  return undefined;
}

interface Run {
  readonly col: number;
  /** Behind its last column. */
  end: number;
  readonly keys: Set<FieldKey>;
  /** What a formula answers is no duty to read. */
  readonly isAnswer: boolean;
}

/** Headings of one table after the other: where a field is named again, as beside the answer of DUTIES, another begins. */
function besideEachOther(row: readonly ReadCell[]): Run[] {
  const runs: Run[] = [];
  row.forEach((cell, col) => {
    if (!isFilled(cell)) return;
    const key = keyIn(cell);
    const isAnswer = (cell.spilledFrom ?? cell.formula) !== undefined;
    const last = runs.at(-1);
    const isNext = last?.isAnswer === isAnswer && (key === undefined || !last.keys.has(key));
    const run: Run = isNext ? last : { col, end: col, keys: new Set(), isAnswer };
    if (run !== last) runs.push(run);
    run.end = col + 1;
    if (key !== undefined && !isAnswer) run.keys.add(key);
  });
  return runs;
}

/** A card whose headings stand down one column, the values to their right. */
function cardAt(cells: readonly ReadCell[][], at: number): Area | undefined {
  const col = present(cells[at]).findIndex((cell) => keyIn(cell) !== undefined);
  if (col < 0) return undefined;
  const isLine = (row: readonly ReadCell[] | undefined): boolean => {
    const cell = row?.[col];
    return cell !== undefined && keyIn(cell) !== undefined;
  };
  let [first, last] = [at, at];
  while (isLine(cells[first - 1])) first--;
  while (isLine(cells[last + 1])) last++;
  return last > first ? { row: first, col, rows: last - first + 1, cols: 2 } : undefined;
}

function formOf(
  table: DutyCells,
  { rows, duty }: FoundDuty,
  cells: Cell[][],
  place: Place,
  system: System,
): Omit<FromRow, "headingRow"> {
  const form: Form = withMotions(rows, (row) => textsOf(table, row, cells, system));
  const origin: Origin = {
    table: place,
    ...(duty === undefined ? {} : { duty }),
    rows: rows.map(({ number }) => place.row + number - 1),
    form,
  };
  const lines = form.map((line, row) => ({ line, asked: new Set(keysAt(form, row)) }));
  const stated = [...new Set(form.flatMap(keysOf))];
  const idle = stated.filter((key) => lines.every(({ line, asked }) => line[key] === undefined || !asked.has(key)));
  const faults = rows.flatMap((row) =>
    [...row.faults].map(([key, { code, message }]) =>
      code === "passed" ? `${field(key).heading}: ${message}.` : `${message}.`,
    ),
  );
  const unknown = table.unknownColumns.filter((heading) => !heading.startsWith("column "));
  return {
    origin,
    read: stated
      .filter((key) => !idle.includes(key) && !rows.some((row) => row.faults.has(key)))
      .map((key) => field(key).heading),
    unread: [
      ...faults,
      ...(idle.length > 0
        ? [`Not asked of this part and motion: ${idle.map((key) => field(key).heading).join(", ")}.`]
        : []),
      ...(unknown.length > 0 ? [`Of no known heading: ${unknown.join(", ")}.`] : []),
    ],
  };
}

const cellUnder = ({ isCard }: DutyCells, { number }: DutyRow, cells: Cell[][], index: number): Cell =>
  (isCard ? cells.filter((line) => line[0] !== null)[index]?.[1] : cells[number - 1]?.[index]) ?? null;

/** What a row says as it would be typed into the form; what cannot be read too, so that it is marked there. */
function textsOf(table: DutyCells, row: DutyRow, cells: Cell[][], system: System): Texts {
  const texts: Partial<Record<FieldKey, string>> = {};
  for (const { key, index, unit } of table.columns) {
    if (key === undefined) continue;
    const cell = cellUnder(table, row, cells, index);
    const value = row.values[key];
    if (value === undefined && !row.faults.has(key)) continue;
    const text = typeof value === "string" ? value : typedText(key, textOf(cell), unit, system);
    // a 0 or a percentage that a sheet leaves in doubt is not settled by being typed here
    if (value !== undefined || !isReadable(key, text, system)) texts[key] = text;
  }
  return texts;
}

/** A cell's text with the unit of its heading where the form would take it in another. */
function typedText(key: FieldKey, text: string, unit: string | undefined, system: System): string {
  const { kind } = field(key);
  const isNumber = kind === "span" || kind === "zone" || kind in kinds;
  return isNumber && unit !== undefined && unit !== unitOf(key, system) ? withUnit(text, unit) : text;
}

/** Part and motion as they follow from what is filled: the form always has both. */
function withMotions(rows: FoundDuty["rows"], textsIn: (row: DutyRow) => Texts): Form {
  let before: FieldValues = {};
  return eachOf(rows, (row, i) => {
    const { values, faults } = row;
    const texts = textsIn(row);
    if (faults.has("motion")) return texts;
    const isTold = [values, before].some((v) => v.motion ?? v.rpm ?? v.swing ?? v.stroke);
    const motion = isTold ? motionOf(values, before) : "turning";
    const isSame = before.motion === motion;
    before = { motion };
    const { inner, outer, bore, part } = values;
    const isWasher = part === undefined && bore === undefined && (inner ?? outer) !== undefined;
    return {
      ...texts,
      ...(i === 0 && texts.part === undefined && { part: isWasher ? "washer" : fields.part.default }),
      ...(i > 0 && isSame ? {} : { motion }),
    };
  });
}
