import { LANDED } from "./landed";
import { differ } from "./money";
import type { Money } from "./money";
import { has, isRead } from "./quoteNotes";
import type { Notes } from "./quoteNotes";
import type { Quote } from "./quoteTable";

export interface QuotePrice {
  /** Pieces that have to be bought. */
  readonly lot?: number;
  readonly unitPrice?: number;
  readonly label?: string;
  /** There where nothing that it needs is missing. */
  readonly landed?: number;
}

/** The currency label of a row: that of its first labelled amount. */
export const labelOf = ({ price, tooling, freight }: Quote): string | undefined =>
  price?.label ?? tooling?.label ?? freight?.label;

const costs = (money: Money | undefined): boolean => money !== undefined && money.amount > 0;

/** A quote's price in the table's currency; freight needs the order quantity to share it, tooling the planned volume. */
export function priceOf(quote: Quote, tableLabel: string | undefined, notes: Notes): QuotePrice {
  const { price, pricePer = 1, tooling, plannedVolume, freight, duty } = quote;
  const before = notes.reasons.length;
  has(quote, "price", notes);
  for (const field of ["pricePer", "leastOrder", "tooling", "freight", "duty"] as const) isRead(quote, field, notes);
  (costs(freight) ? has : isRead)(quote, "orderQuantity", notes);
  (costs(tooling) ? has : isRead)(quote, "plannedVolume", notes);
  checkLabels(quote, tableLabel, notes);
  notes.remarks.push(...quote.remarks);
  const lot = lotOf(quote, notes);
  const unitPrice = price && !quote.faults.has("pricePer") ? price.amount / pricePer : undefined;
  const shown = { lot, unitPrice, label: labelOf(quote) ?? (price && tableLabel) };
  if (notes.reasons.length > before || unitPrice === undefined) return shown;
  const isSane = unitPrice > 0 && Number.isFinite(unitPrice);
  const landed = isSane
    ? LANDED({
        price: unitPrice,
        quantity: lot ?? 1,
        tooling: tooling?.amount,
        volume: plannedVolume,
        freight: freight?.amount,
        duty,
      })
    : NaN;
  if (Number.isFinite(landed)) return { ...shown, landed };
  notes.reasons.push("price: out of range, the landed cost is not a finite number");
  return { ...shown, unitPrice: undefined };
}

function checkLabels(quote: Quote, tableLabel: string | undefined, notes: Notes): void {
  const amounts = [quote.price, quote.tooling, quote.freight];
  const foreign = amounts.find((money) => differ(money?.label, tableLabel))?.label;
  if (foreign !== undefined) notes.reasons.push(`amount in ${foreign}, others in ${tableLabel}: never converted`);
  if (quote.price && labelOf(quote) === undefined && tableLabel !== undefined)
    notes.remarks.push(`no currency given, taken as ${tableLabel}`);
}

/** Where the least order is above what is wanted, the least order is bought. */
function lotOf({ orderQuantity, leastOrder = 0 }: Quote, notes: Notes): number | undefined {
  if (orderQuantity === undefined || leastOrder <= orderQuantity) return orderQuantity;
  notes.remarks.push(`the least order of ${leastOrder} is bought, not ${orderQuantity}`);
  return leastOrder;
}
