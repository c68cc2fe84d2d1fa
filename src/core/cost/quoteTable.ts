import { clash, mustBe, orList } from "../errors";
import type { BushError } from "../errors";
import type { Cell, TableArg } from "../formula";
import type { Kind, System } from "../kinds";
import { Headings } from "../table/entry";
import type { Entry, OwnReader, ValuesOf } from "../table/entry";
import { readTable } from "../table/readTable";
import { fromUnit } from "../units";
import { isLabel, readMoney } from "./money";
import type { Money } from "./money";

/** The columns of a quote table; an amount carries its currency. */
const fields = {
  part: { heading: "part", kind: "text" },
  supplier: { heading: "supplier", kind: "text" },
  grade: { heading: "grade", kind: "text" },
  bore: { heading: "bore", kind: "length", above: 0 },
  length: { heading: "length", kind: "length", above: 0 },
  price: { heading: "price", kind: "amount", above: 0 },
  pricePer: { heading: "price per", kind: "count", above: 0 },
  orderQuantity: { heading: "order quantity", kind: "count", above: 0 },
  leastOrder: { heading: "least order", kind: "count", from: 0 },
  tooling: { heading: "tooling", kind: "amount", from: 0 },
  plannedVolume: { heading: "planned volume", kind: "count", above: 0 },
  freight: { heading: "freight per lot", kind: "amount", from: 0 },
  duty: { heading: "duty", kind: "percent", from: 0 },
  leadTime: { heading: "lead time", kind: "days", from: 0 },
  wall: { heading: "wall", kind: "length", above: 0 },
  allowance: { heading: "life allowance", kind: "length", above: 0 },
} as const satisfies Record<string, Entry>;

export type Field = keyof typeof fields;
const required: readonly Field[] = ["part", "supplier", "grade", "bore", "length", "price"];
const names = Object.keys(fields) as Field[];
const headings = new Headings<Field>(fields);

/** The word for a field in messages. */
export const headingOf = (field: Field): string => fields[field].heading;

/** One quoted part in working units; a blank cell leaves its field out, and a cell that cannot be read is a fault. */
export type Quote = ValuesOf<typeof fields, { amount: Money }> & {
  readonly faults: ReadonlyMap<Field, BushError>;
  /** What looks like a slip and was read as it stands. */
  readonly remarks: readonly string[];
};

export interface QuoteTable {
  readonly quotes: readonly Quote[];
  /** Headings that name no field: not read, and said so. */
  readonly unknownColumns: readonly string[];
}

const readAmount: OwnReader = (entry, cell, label) =>
  readMoney(entry.heading, { ...entry, kind: "money" }, cell, label);

function readQuotes(cells: Cell[][], system: System, name: string): QuoteTable {
  const reading = { list: fields, headings, system, name, own: readAmount, checkUnit: headingUnit };
  const { columns, rows, unknownColumns } = readTable<typeof fields, { amount: Money }>(cells, reading);
  const lacking = required.filter((field) => !columns.some(({ key }) => key === field)).map(headingOf);
  if (lacking.length > 0) throw clash(name, `${name} has no column ${orList(lacking.map((word) => `"${word}"`))}`);
  if (rows.length === 0) throw clash(name, `${name} holds no row below its headings`);
  return { quotes: rows.map(({ values, faults, remarks }) => ({ ...values, faults, remarks })), unknownColumns };
}

/** A heading's unit, checked before any row is read; "pieces" says nothing more than a count does. */
function headingUnit({ heading, kind }: Entry, unit: string): string | undefined {
  if (kind === "text" || (kind === "count" && /^(pieces|pcs?)\.?$/i.test(unit))) return undefined;
  if (kind !== "amount") fromUnit(`unit of ${heading}`, kind as Kind, 1, unit);
  else if (!isLabel(unit)) throw mustBe(`unit of ${heading}`, "a currency label", unit);
  return unit;
}

const optionalHeadings = names
  .filter((field) => !required.includes(field))
  .map((field) => (fields[field].kind === "percent" ? `${headingOf(field)} %` : headingOf(field)));

export const quotesArg = {
  kind: "table",
  what: `a heading row (${required.map(headingOf).join(", ")}; where needed ${optionalHeadings.join(", ")}; units in brackets: "bore [in]") and one row per quote`,
  text: "Quoted parts",
  read: readQuotes,
} as const satisfies TableArg<QuoteTable>;
