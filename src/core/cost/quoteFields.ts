import { Headings } from "../table/entry";
import type { Entry } from "../table/entry";
import { splitHeading } from "../table/heading";
import { normal } from "../names";

const pieces = <const H extends string>(heading: H, also: readonly string[], from: 0 | 1 = 1) =>
  ({ heading, also, kind: "count", whole: true, from }) as const;
const amount = <const H extends string>(heading: H, also: readonly string[]) =>
  ({ heading, also, kind: "amount", from: 0 }) as const;
const size = <const H extends string>(heading: H, also: readonly string[]) =>
  ({ heading, also, kind: "length", above: 0 }) as const;

/** What a row of an offer may say, and the trade's other words for it; an amount carries its currency. */
export const quoteFields = {
  part: {
    heading: "part",
    also: ["part no", "part number", "item", "item no", "article", "article no", "order code", "order no"],
    kind: "text",
  },
  supplier: { heading: "supplier", also: ["vendor", "seller", "offered by", "from supplier"], kind: "text" },
  grade: { heading: "grade", also: ["material", "compound", "material grade"], kind: "text" },
  forDuty: { heading: "for duty", also: ["application", "used for"], kind: "text" },
  bore: size("bore", ["inside diameter", "inner diameter", "bore diameter", "ID", "inside"]),
  length: size("length", ["bush length", "width"]),
  wall: size("wall", ["wall thickness"]),
  outside: size("outside", ["outside diameter", "outer diameter", "OD"]),
  price: {
    heading: "price",
    also: ["unit price", "price each", "price per piece", "piece price", "net price", "price per unit"],
    kind: "amount",
    above: 0,
  },
  pricePer: pieces("price per", ["per", "price unit", "price basis", "price per pieces"]),
  breakFrom: {
    ...pieces("from quantity", ["from", "from qty", "qty from", "quantity from", "price break", "break quantity"]),
    kind: "pieces",
  },
  breakTo: pieces("to quantity", ["to", "to qty", "qty to", "quantity to"]),
  orderQuantity: {
    ...pieces("order quantity", ["qty", "quantity", "order qty", "pieces", "lot", "lot size"]),
    kind: "pieces",
  },
  leastOrder: pieces(
    "least order",
    ["MOQ", "minimum order", "minimum order quantity", "min order", "min qty", "minimum quantity"],
    0,
  ),
  tooling: amount("tooling", [
    "tooling charge",
    "tooling charges",
    "tooling cost",
    "tool cost",
    "mould cost",
    "mold cost",
  ]),
  plannedVolume: pieces("planned volume", ["volume", "total volume", "tooling volume"]),
  freight: amount("freight per lot", ["freight", "shipping", "shipping cost", "carriage", "freight cost"]),
  customsDuty: {
    heading: "customs duty",
    also: ["import duty", "customs", "tariff"],
    kind: "percent",
    from: 0,
  },
  leadTime: {
    heading: "lead time",
    also: ["delivery time", "delivery", "availability"],
    kind: "lead",
    from: 0,
  },
  allowance: size("wear allowance", ["life allowance", "allowance"]),
} as const satisfies Record<string, Entry>;

export type QuoteField = keyof typeof quoteFields;
export const quoteFieldKeys = Object.keys(quoteFields) as QuoteField[];
export const quoteHeadings = new Headings<QuoteField>(quoteFields);

/** The word for a field in messages. */
export const quoteHeading = (field: QuoteField): string => quoteFields[field].heading;

/** "duty" is the one that a part is for; with a percent sign it is the customs' share. */
export function quoteFieldOf(heading: string): QuoteField | undefined {
  const { name, unit } = splitHeading(heading);
  if (normal(name) !== "duty") return quoteHeadings.find(name);
  return unit === "%" || unit === "ratio" ? "customsDuty" : "forDuty";
}

const breakHeading = /^(?:unit )?price\s*(?:from|at|for|@)\s*(\d{1,9})\s*\+?\s*(?:pcs|pieces)?$/i;

/** The pieces from which a column's price holds: "price from 100 [EUR]". */
export function breakOf(heading: string): number | undefined {
  const found = breakHeading.exec(splitHeading(heading).name);
  return found ? Number(found[1]) : undefined;
}
