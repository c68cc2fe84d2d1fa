import { isSpareRow } from "../cell";
import { checkDomain, excludesZero } from "../domain";
import type { Bounds } from "../domain";
import { BushError, clash, isMissing, mustBe, orList } from "../errors";
import type { Cell, TableArg } from "../formula";
import { splitHeading } from "../grade/properties";
import { readIn } from "../grade/readIn";
import type { Kind, System } from "../kinds";
import { normal } from "../names";
import { fromUnit } from "../units";
import { isLabel, readMoney } from "./money";
import type { Money } from "./money";

/** The columns of a quote table by heading; case, spaces, marks and the bracket do not count. */
const fields = {
  part: { heading: "part", kind: "text" },
  supplier: { heading: "supplier", kind: "text" },
  grade: { heading: "grade", kind: "text" },
  bore: { heading: "bore", kind: "length", above: 0 },
  length: { heading: "length", kind: "length", above: 0 },
  price: { heading: "price", kind: "money", above: 0 },
  pricePer: { heading: "price per", kind: "count", above: 0 },
  orderQuantity: { heading: "order quantity", kind: "count", above: 0 },
  leastOrder: { heading: "least order", kind: "count", from: 0 },
  tooling: { heading: "tooling", kind: "money", from: 0 },
  plannedVolume: { heading: "planned volume", kind: "count", above: 0 },
  freight: { heading: "freight per lot", kind: "money", from: 0 },
  duty: { heading: "duty %", kind: "percent", from: 0 },
  leadTime: { heading: "lead time", kind: "days", from: 0 },
  wall: { heading: "wall", kind: "length", above: 0 },
  allowance: { heading: "life allowance", kind: "length", above: 0 },
} as const satisfies Record<string, { heading: string; kind: "text" | Kind } & Omit<Bounds, "kind">>;

type Fields = typeof fields;
export type Field = keyof Fields;
const required: readonly Field[] = ["part", "supplier", "grade", "bore", "length", "price"];
const names = Object.keys(fields) as Field[];
const byHeading = new Map(names.map((field) => [normal(fields[field].heading), field]));

/** The word for a field in messages. */
export const headingOf = (field: Field): string => fields[field].heading;

type Read<K> = K extends "text" ? string : K extends "money" ? Money : number;
/** One quoted part in working units; a blank cell leaves its field out, and a cell that cannot be read is a fault. */
export type Quote = { readonly [F in Field]?: Read<Fields[F]["kind"]> } & {
  readonly faults: ReadonlyMap<Field, BushError>;
};

export interface QuoteTable {
  readonly quotes: readonly Quote[];
  /** Headings that name no field: not read, and said so. */
  readonly unknownColumns: readonly string[];
}

interface Column {
  readonly index: number;
  readonly field: Field;
  readonly unit?: string;
}

function readQuotes(cells: Cell[][], system: System, name: string): QuoteTable {
  const top = cells.findIndex((row) => !isSpareRow(row));
  const { columns, unknownColumns } = readHeadings(cells[top] ?? [], name);
  const rows = cells.slice(top + 1).filter((row) => !isSpareRow(row));
  if (rows.length === 0) throw clash(name, `${name} holds no row below its headings`);
  return { quotes: rows.map((row) => readQuote(row, columns, system)), unknownColumns };
}

function readHeadings(row: Cell[], name: string): { columns: Column[]; unknownColumns: string[] } {
  const columns: Column[] = [];
  const unknownColumns: string[] = [];
  row.forEach((cell, index) => {
    if (cell instanceof BushError) throw cell;
    if (cell === null) return;
    const { name: heading, unit } = splitHeading(String(cell));
    const field = byHeading.get(normal(heading));
    if (!field) unknownColumns.push(String(cell));
    else if (columns.some((c) => c.field === field)) throw clash(name, `${name} has two columns "${headingOf(field)}"`);
    else columns.push({ index, field, unit: unit && headingUnit(field, unit) });
  });
  const lacking = required.filter((field) => !columns.some((c) => c.field === field)).map(headingOf);
  if (lacking.length > 0) throw clash(name, `${name} has no column ${orList(lacking.map((word) => `"${word}"`))}`);
  return { columns, unknownColumns };
}

/** A heading's unit, checked before any row is read; "pieces" says nothing more than a count does. */
function headingUnit(field: Field, unit: string): string | undefined {
  const { heading, kind } = fields[field];
  if (kind === "text" || (kind === "count" && /^(pieces|pcs?)\.?$/i.test(unit))) return undefined;
  if (kind !== "money") fromUnit(`unit of ${heading}`, kind, 1, unit);
  else if (!isLabel(unit)) throw mustBe(`unit of ${heading}`, "a currency label", unit);
  return unit;
}

const noFaults: ReadonlyMap<Field, BushError> = new Map();

function readQuote(row: Cell[], columns: readonly Column[], system: System): Quote {
  const values: Partial<Record<Field, unknown>> = {};
  let faults = noFaults;
  for (const { index, field, unit } of columns) {
    const cell = row[index] ?? null;
    if (cell === null || isNoData(cell) || isBlankZero(field, cell)) continue;
    try {
      values[field] = readField(field, cell, unit, system);
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      faults = new Map([...faults, [field, error]]);
    }
  }
  return { ...(values as Omit<Quote, "faults">), faults };
}

/** A 0 where 0 is no value: some hosts hand a blank cell over as 0. */
function isBlankZero(field: Field, cell: Cell): boolean {
  const column = fields[field];
  return cell === 0 && column.kind !== "text" && excludesZero(column);
}

/** How people write that there is no value. */
const isNoData = (cell: Cell): boolean => typeof cell === "string" && /^(no data|n\/a|[-–—])$/i.test(cell);

function readField(field: Field, cell: Cell, unit: string | undefined, system: System): string | number | Money {
  const column = fields[field];
  const { heading } = column;
  if (cell instanceof BushError) throw cell;
  if (cell === null) throw isMissing(heading);
  if (column.kind === "text") return String(cell);
  if (typeof cell === "boolean") throw mustBe(heading, "a number", cell);
  if (column.kind === "money") return readMoney(heading, column, cell, unit);
  const value = readIn(heading, column.kind, cell, unit, system);
  checkDomain(heading, column, value, system, cell);
  return value;
}

const optionalHeadings = names.filter((field) => !required.includes(field)).map(headingOf);

export const quotesArg = {
  kind: "table",
  what: `a heading row (${required.map(headingOf).join(", ")}; where needed ${optionalHeadings.join(", ")}; units in brackets: "bore [in]") and one row per quote`,
  text: "Quoted parts",
  read: readQuotes,
} as const satisfies TableArg<QuoteTable>;
