import { LANDED } from "./landed";
import type { Money } from "../units/money";
import { breakAt } from "./priceBreaks";
import { rateBetween } from "./rates";
import type { Rates } from "./rates";
import type { Quote, QuoteTable } from "./quoteTable";

/** The currency in which offers are compared, and the rates that lead to it. */
export interface Currency {
  readonly target: string | undefined;
  readonly rates: Rates | undefined;
}

export interface Pricing {
  /** Pieces that have to be bought. */
  readonly quantity: number;
  readonly unitPrice: number;
  readonly landed: number;
  /** Goods alone. */
  readonly orderValue: number;
}

const amountsOf = ({ values, breaks }: Quote): Money[] => [
  ...breaks.map(({ price }) => price),
  ...[values.tooling, values.freight].filter((money) => money !== undefined),
];

/** The currency of an offer: that of its first amount that names one. */
export const quotedIn = (quote: Quote): string | undefined =>
  amountsOf(quote).find(({ currency }) => currency !== undefined)?.currency;

/** That of the rates, else the most frequent of the offers, the first of equals. */
export function currencyFor({ quotes }: QuoteTable, rates: Rates | undefined): Currency {
  const counts = new Map<string, number>();
  for (const quote of quotes) {
    const one = quotedIn(quote);
    if (one !== undefined) counts.set(one, (counts.get(one) ?? 0) + 1);
  }
  const frequent = [...counts].reduce<[string | undefined, number]>((a, b) => (b[1] > a[1] ? b : a), [undefined, 0])[0];
  return { target: rates?.base ?? frequent, rates };
}

/** The order quantity, else the least order, else the least with a price; where the least order is above it, that is bought. */
export function quantityOf({ orderQuantity, values, breaks }: Quote): { quantity: number; remark?: string } {
  const { leastOrder = 0 } = values;
  if (orderQuantity === undefined) {
    const quantity = leastOrder > 0 ? leastOrder : (breaks[0]?.from ?? 1);
    return { quantity, remark: `no order quantity: ${quantity} taken` };
  }
  if (leastOrder <= orderQuantity) return { quantity: orderQuantity };
  return { quantity: leastOrder, remark: `the least order of ${leastOrder} is bought, not ${orderQuantity}` };
}

/** An amount in the common currency; or why that cannot be said. */
function exchanged({ amount, currency: own }: Money, { target, rates }: Currency): number | string {
  // the first amount that names a currency makes one the common one
  if (own === undefined || target === undefined) return amount;
  const factor = rateBetween(own, target, rates);
  return factor === undefined ? `amount in ${own}, the others in ${target}: rates of both are wanted` : amount * factor;
}

/** Why an offer has no price at a quantity, before its amounts are looked at. */
function priceFault({ values: { tooling, plannedVolume } }: Quote, quantity: number): string | undefined {
  if (plannedVolume !== undefined && plannedVolume < quantity)
    return `planned volume of ${plannedVolume} is below the order of ${quantity}`;
  if (tooling && tooling.amount > 0 && plannedVolume === undefined)
    return "no data, planned volume: tooling is shared by it";
  return undefined;
}

/** What an offer costs at a quantity, in the common currency; or why that cannot be said. */
export function pricingAt(quote: Quote, quantity: number, currency: Currency): Pricing | string {
  const { values, breaks } = quote;
  const { pricePer = 1, tooling, freight, plannedVolume, customsDuty } = values;
  if (breaks.length === 0) return "no price";
  const reached = breakAt(breaks, quantity);
  if (!reached) return `no price for ${quantity} pieces`;
  const fault = priceFault(quote, quantity);
  if (fault !== undefined) return fault;
  const none: Money = { amount: 0 };
  const amounts = [reached.price, tooling ?? none, freight ?? none].map((money) => exchanged(money, currency));
  const open = amounts.find((amount) => typeof amount === "string");
  if (open !== undefined) return open;
  const [price, toolingCost, freightCost] = amounts as [number, number, number];
  const unitPrice = price / pricePer;
  const landed = LANDED.calc({
    ...{ price: unitPrice, quantity, tooling: toolingCost, volume: plannedVolume },
    ...{ freight: freightCost, duty: customsDuty ?? 0 },
  });
  const orderValue = unitPrice * quantity;
  if (!(unitPrice > 0) || !Number.isFinite(landed) || !Number.isFinite(orderValue))
    return "price: out of range, the landed cost is not a finite number";
  return { quantity, unitPrice, landed, orderValue };
}
