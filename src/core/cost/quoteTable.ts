import { BushError, clash, orList } from "../errors";
import type { Cell, TableArg } from "../formula";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { currencyOf, readMoney } from "../units/money";
import type { Money } from "../units/money";
import { normal } from "../names";
import type { Entry, OwnReader, ValuesOf } from "../table/entry";
import { readTable } from "../table/readTable";
import type { Reading, Row } from "../table/readTable";
import { fromUnit } from "../units/scale";
import { readLeadTime } from "./leadTime";
import { inOrder, readPieces } from "./priceBreaks";
import type { Pieces, PriceBreak } from "./priceBreaks";
import { breakOf, quoteFieldOf, quoteFields, quoteHeadings } from "./quoteFields";
import type { QuoteField } from "./quoteFields";

export interface QuoteKinds {
  readonly amount: Money;
  readonly lead: number;
  readonly pieces: number | Pieces;
}
type Fields = typeof quoteFields;
type QuoteRow = Row<Fields, QuoteKinds>;
/** The rows of one offer. */
type Rows = [QuoteRow, ...QuoteRow[]];

/** One offered part in working units; a blank cell leaves its field out, and a cell that cannot be read is a fault. */
export interface Quote {
  /** Its first row, counted in the range. */
  readonly row: number;
  readonly values: ValuesOf<Fields, QuoteKinds>;
  readonly orderQuantity: number | undefined;
  /** Least quantity first; a price without a break holds from the first piece. */
  readonly breaks: readonly PriceBreak<Money>[];
  readonly faults: ReadonlyMap<QuoteField, BushError>;
  /** What looks like a slip and was read as it stands. */
  readonly remarks: readonly string[];
}

export interface QuoteTable {
  readonly quotes: readonly Quote[];
  /** Headings that name no field: not read, and said so. */
  readonly unknownColumns: readonly string[];
}

const readOwn: OwnReader = (entry, cell, unit) => {
  const { heading, kind } = entry;
  if (kind === "lead") return readLeadTime(heading, { ...entry, kind: "days" }, cell, unit);
  if (kind === "pieces") return readPieces(heading, { ...entry, kind: "count" }, cell);
  return readMoney(heading, { ...entry, kind: "money" }, cell, unit);
};

/** A heading's unit, checked before any row is read; "pieces" says nothing more than a count does. */
function headingUnit({ heading, kind }: Entry, unit: string): string | undefined {
  const name = `unit of ${heading}`;
  const isCount = kind === "count" || kind === "pieces";
  if (kind === "text" || (isCount && /^(pieces|pcs?)\.?$/i.test(unit))) return undefined;
  if (kind === "amount") return currencyOf(name, unit);
  if (kind === "lead") readLeadTime(name, { kind: "days" }, 1, unit);
  else fromUnit(name, kind in kinds ? (kind as Kind) : "count", 1, unit);
  return unit;
}

/** How offers are read, whoever reads them. */
export const quoteReading = {
  list: quoteFields,
  headings: quoteHeadings,
  own: readOwn,
  checkUnit: headingUnit,
  keyOf: quoteFieldOf,
  series: { key: "price", at: breakOf },
} as const satisfies Omit<Reading<Fields>, "system" | "name">;

export function readQuotes(cells: Cell[][], system: System, name: string): QuoteTable {
  const { columns, rows, unknownColumns } = readTable<Fields, QuoteKinds>(cells, { ...quoteReading, system, name });
  const lacking = (["grade", "price"] as const).filter((field) => !columns.some(({ key }) => key === field));
  if (lacking.length > 0) throw clash(name, `${name} has no column ${orList(lacking.map((word) => `"${word}"`))}`);
  if (rows.length === 0) throw clash(name, `${name} holds no row below its headings`);
  return { quotes: groupsOf(rows).map((group) => quoteOf(name, group)), unknownColumns };
}

/** Rows of price breaks below each other for one part of one supplier are one offer. */
function groupsOf(rows: readonly QuoteRow[]): Rows[] {
  const groups: Rows[] = [];
  for (const row of rows) {
    const group = groups[groups.length - 1];
    if (
      group &&
      isBreak(row) &&
      isBreak(group[0]) &&
      (["part", "supplier", "grade"] as const).every(isSame(row, group[0]))
    )
      group.push(row);
    else groups.push([row]);
  }
  return groups;
}
const isBreak = ({ values }: QuoteRow): boolean =>
  values.breakFrom !== undefined || typeof values.orderQuantity === "object";
const isSame =
  (row: QuoteRow, first: QuoteRow) =>
  (field: "part" | "supplier" | "grade"): boolean =>
    row.values[field] === undefined || normal(row.values[field]) === normal(first.values[field] ?? "");

function quoteOf(name: string, group: Readonly<Rows>): Quote {
  const [first] = group;
  const { orderQuantity } = first.values;
  const faults = new Map(group.flatMap((row) => [...row.faults]));
  let breaks: PriceBreak<Money>[] = [];
  try {
    breaks = inOrder(name, group.flatMap(breaksOf), ({ amount, currency = "" }) => `${amount} ${currency}`.trim());
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    faults.set("price", error);
  }
  return {
    row: first.number,
    values: first.values,
    orderQuantity: typeof orderQuantity === "number" ? orderQuantity : undefined,
    breaks,
    faults,
    remarks: group.flatMap(({ remarks }) => remarks),
  };
}

function breaksOf({ values, series }: QuoteRow): PriceBreak<Money>[] {
  const { price, breakFrom, breakTo, orderQuantity } = values;
  const columns = series.map(([from, value]) => ({ from, price: value as Money }));
  if (price === undefined) return columns;
  const pieces = breakFrom ?? (typeof orderQuantity === "object" ? orderQuantity : 1);
  const from = typeof pieces === "number" ? { from: pieces } : pieces;
  return [...columns, { ...from, ...(breakTo === undefined ? {} : { to: breakTo }), price }];
}

export const quotesArg = {
  kind: "table",
  what: 'a heading row (part, supplier, grade, bore, length, wall, price, order quantity, least order, customs duty, lead time …; units in brackets: "bore [in]", "price [EUR]"; price breaks as "price from 100" or in rows) and one row per offer',
  text: "Offers",
  read: readQuotes,
} as const satisfies TableArg<QuoteTable>;
