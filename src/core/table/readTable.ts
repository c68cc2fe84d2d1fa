import { isSpareRow } from "./cell";
import { BushError, clash } from "../errors";
import type { Cell } from "../formula";
import type { System } from "../kinds";
import { present } from "../present";
import { entryOf } from "./entry";
import type { Entry, EntryList, Headings, OwnReader, ValuesOf } from "./entry";
import { inOneMark } from "./decimals";
import type { Decimals } from "./decimals";
import { splitHeading } from "./heading";
import { readFilled } from "./readFilled";
import { percentRemark } from "./readValue";

export interface Column<K extends string = string> {
  /** Place in the row, from 0. */
  readonly index: number;
  /** As it stands in the sheet, its unit included. */
  readonly heading: string;
  /** The entry that it names; a column without one is kept and reported. */
  readonly key?: K;
  readonly unit?: string;
  /** Of several columns of one entry, what each is for: "price from 100". */
  readonly at?: number;
}

export interface Row<L extends EntryList, S = object> {
  /** Counted in the range, from 1. */
  readonly number: number;
  /** Working values; a blank cell and one that says "no data" are left out. */
  readonly values: ValuesOf<L, S>;
  /** What could not be read, by entry. */
  readonly faults: ReadonlyMap<keyof L & string, BushError>;
  /** What looks like a slip and was read as it stands. */
  readonly remarks: readonly string[];
  /** Values of the columns that one entry has several of. */
  readonly series: readonly (readonly [at: number, value: unknown])[];
  /** Columns that name no entry: heading and text. */
  readonly extra: readonly (readonly [heading: string, text: string])[];
}

export interface Table<L extends EntryList, S = object> {
  readonly columns: readonly Column<keyof L & string>[];
  /** Spare rows are left out. */
  readonly rows: readonly Row<L, S>[];
  /** How many rows the range has below its headings. */
  readonly height: number;
  /** Row of the headings, counted in the range from 1. */
  readonly top: number;
  /** One thing down two columns: its rows are entries. */
  readonly isCard: boolean;
  readonly unknownColumns: readonly string[];
}

export interface Reading<L extends EntryList> {
  readonly list: L;
  readonly headings: Headings<keyof L & string>;
  readonly system: System;
  /** The argument, for messages. */
  readonly name: string;
  readonly own?: OwnReader;
  /** How decimals are written; without it the cells decide, and each by itself where none does. */
  readonly decimals?: Decimals;
  /** A heading that is told by more than its name. */
  keyOf?(heading: string): (keyof L & string) | undefined;
  /** The entry that may have several columns, and which of them a heading is. */
  readonly series?: { readonly key: keyof L & string; at(heading: string): number | undefined };
  /** What a unit in a heading may say beside the units of its kind; a fault ends the reading. */
  checkUnit?(entry: Entry, unit: string): string | undefined;
}

/**
 * The one reader of tables and cards. A table has a heading row, its first row that is not blank, and a row for each
 * thing; a card has its headings down the first of two columns. Units stand in brackets behind a heading or in the cell
 * itself. A cell that cannot be read is a fault of its row, never a blank.
 */
export function readTable<const L extends EntryList, S = object>(cells: Cell[][], reading: Reading<L>): Table<L, S> {
  const { isOne, top, columns, below } = layOut(cells, reading);
  const read = below.flatMap((row, i) => (isSpareRow(row) ? [] : [readRow<L, S>(row, columns, top + i + 2, reading)]));
  const unknownColumns = columns.flatMap(({ key, heading }) => (key === undefined ? [heading] : []));
  return { columns, rows: read, height: below.length, top: top + 1, isCard: isOne, unknownColumns };
}

/** The heading row with its columns, and what stands below it in digits and points. */
function layOut<L extends EntryList>(cells: Cell[][], reading: Reading<L>) {
  const isOne = hasHeadingsDown(cells, reading);
  const rows = isOne ? turned(cells) : cells;
  const top = Math.max(
    0,
    rows.findIndex((row) => !isSpareRow(row)),
  );
  const columns = columnsOf(rows[top] ?? [], rows.slice(top + 1), reading);
  const below = inOneMark(rows.slice(top + 1), numberColumns(columns, reading), {
    name: reading.name,
    place: (row) => `${reading.name} row ${top + 2 + row}`,
    wanted: reading.decimals,
  });
  return { isOne, rows, top, columns, below };
}

/** The same cells with every numeral of them in digits and points, so that nobody has to ask again. */
export function inDigits<L extends EntryList>(cells: Cell[][], reading: Reading<L>): Cell[][] {
  const { isOne, rows, top, below } = layOut(cells, reading);
  if (!isOne) return [...rows.slice(0, top + 1), ...below];
  const [headings, values] = [present(rows[0]), present(below[0])];
  return headings.map((heading, i) => [heading, values[i] ?? null]);
}

/** Columns that hold numbers, alone or within a notation of theirs. */
export const numberColumns = <L extends EntryList>(
  columns: readonly Column<keyof L & string>[],
  { list }: Pick<Reading<L>, "list">,
): Column[] => columns.filter(({ key }) => key !== undefined && !wordKinds.has(entryOf(list, key).kind));
const wordKinds: ReadonlySet<string> = new Set(["text", "choice", "list", "zone", "rating", "media"]);

/** "duties row 3"; of a card the argument alone. */
export const placeOf = (name: string, number: number, { isCard: isOne }: { readonly isCard: boolean }): string =>
  isOne ? name : `${name} row ${number}`;

/** Whether it is a card: a known heading in front of each of the first two rows, and none beside the first. More than two columns are none. */
function hasHeadingsDown<L extends EntryList>(cells: Cell[][], { headings, name }: Reading<L>): boolean {
  const filled = cells.filter((row) => !isSpareRow(row));
  const names = (cell: Cell | undefined) => typeof cell === "string" && keyOf(cell, headings) !== undefined;
  const [[first, ...beside] = [], [second] = []] = filled;
  if (beside.length === 0 || !names(first) || beside.some(names) || !names(second)) return false;
  if (beside.length === 1) return true;
  throw clash(
    name,
    `${name} has headings down its first column: a card has two columns, a table its headings in its first row`,
  );
}

const turned = (cells: Cell[][]): Cell[][] => {
  const filled = cells.filter((row) => !isSpareRow(row));
  return [filled.map(([heading]) => heading ?? null), filled.map((row) => row[1] ?? null)];
};

/** The entry that a heading names, its unit left out. */
export const keyOf = <K extends string>(heading: string, headings: Headings<K>): K | undefined =>
  headings.find(splitHeading(heading).name);

/** More columns than any list has, and a heading longer than any name. */
const mostColumns = 500;
const longestHeading = 300;

/** The columns of a heading row; two for one entry, and a unit that does not suit, are errors. */
export function columnsOf<L extends EntryList>(
  row: readonly Cell[],
  below: readonly (readonly Cell[])[],
  reading: Reading<L>,
): Column<keyof L & string>[] {
  const { name } = reading;
  const columns: Column<keyof L & string>[] = [];
  const filled = row.filter((cell) => cell !== null && cell !== 0).length;
  if (filled > mostColumns) throw clash(name, `${name} has ${filled} headings, at most ${mostColumns} are read`);
  row.forEach((cell, index) => {
    if (cell instanceof BushError) throw cell;
    if (cell === null || cell === 0) {
      // a column without a heading, which some hosts hand over as 0, counts only where something stands in it
      if (below.some((line) => line[index] !== null && line[index] !== undefined && line[index] !== 0))
        columns.push({ index, heading: `column ${index + 1}` });
      return;
    }
    columns.push(columnOf(String(cell), index, columns, reading));
  });
  return columns;
}

/** The column under a heading, which no column before it may name too. */
function columnOf<L extends EntryList>(
  heading: string,
  index: number,
  before: readonly Column<keyof L & string>[],
  reading: Reading<L>,
): Column<keyof L & string> {
  const { list, headings, name, series } = reading;
  if (heading.length > longestHeading)
    throw clash(
      name,
      `${name}, column ${index + 1}: a heading has at most ${longestHeading} characters, got ${heading.length}`,
    );
  const at = series?.at(heading);
  const key = series && at !== undefined ? series.key : (reading.keyOf?.(heading) ?? keyOf(heading, headings));
  if (key === undefined) return { index, heading };
  const entry = entryOf(list, key);
  const other = before.find((c) => c.key === key && c.at === at);
  if (other) throw clash(name, `${name} has two columns for "${entry.heading}" (one is "${other.heading}")`);
  const unit = suitedUnit(heading, entry, reading);
  return { ...{ index, heading, key }, ...(unit === undefined ? {} : { unit }), ...(at === undefined ? {} : { at }) };
}

function suitedUnit<L extends EntryList>(heading: string, entry: Entry, { checkUnit }: Reading<L>): string | undefined {
  const { unit } = splitHeading(heading);
  return unit === undefined || !checkUnit ? unit : checkUnit(entry, unit);
}

const noFaults: ReadonlyMap<never, BushError> = new Map<never, BushError>();
const noRemarks: readonly string[] = [];
const noSeries: Row<EntryList>["series"] = [];

function readRow<L extends EntryList, S>(
  row: readonly Cell[],
  columns: readonly Column<keyof L & string>[],
  number: number,
  { list, system, own }: Reading<L>,
): Row<L, S> {
  const values: Record<string, unknown> = {};
  const extra: [string, string][] = [];
  let remarks = noRemarks;
  let series = noSeries;
  let faults: Map<keyof L & string, BushError> | undefined;
  for (const { index, heading, key, unit, at } of columns) {
    const cell = row[index] ?? null;
    if (cell === null) continue;
    if (key === undefined) {
      extra.push([heading, textOf(cell)]);
      continue;
    }
    const entry = entryOf(list, key);
    try {
      const value = readFilled(entry, cell, unit, system, own);
      if (value === undefined) continue;
      if (at === undefined) values[key] = value;
      else series = [...series, [at, value]];
      const remark = percentRemark(entry, cell, unit);
      if (remark !== undefined) remarks = [...remarks, remark];
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      (faults ??= new Map()).set(key, error);
    }
  }
  return { number, values: values as ValuesOf<L, S>, faults: faults ?? noFaults, remarks, series, extra };
}

const textOf = (cell: Cell): string => (cell instanceof BushError ? cell.argument : String(cell));
