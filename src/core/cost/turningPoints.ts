import type { Evaluation } from "./evaluateQuote";
import type { Judged } from "./judgeQuote";
import { pricingAt, quotedIn } from "./pricing";
import type { Currency, Pricing } from "./pricing";
import { RUNCOST } from "./runCost";

/** An offer whose price and life are known, with its cost per 1000 hours; of two the cheaper first. */
export type Costed = Evaluation & {
  readonly pricing: Pricing;
  readonly judged: Judged & { readonly life: number };
  readonly cost: number;
  readonly partsCost: number;
};
/** Costs are there where price and life are. */
export const isCosted = (e: Evaluation): e is Costed => e.cost !== undefined;

/** What labour and downtime of one change cost now. */
export const changeCost = ({ running: { labour, downtime } }: Evaluation): number => labour + downtime;

/**
 * Labour and downtime of one change, W, at which both cost alike: (L1 + W)/t1 = (L2 + W)/t2. Nothing where that is no
 * amount of money, or the lives are alike.
 */
export function changeCostBetween(best: Costed, next: Costed): number | undefined {
  const [t1, t2] = [best.judged.life, next.judged.life];
  if (Math.abs(t1 - t2) <= 1e-9 * t1) return undefined;
  const at = (next.pricing.landed * t1 - best.pricing.landed * t2) / (t2 - t1);
  return at > 0 ? at : undefined;
}

/** The share of its life at which the best costs as much as the next. */
export const lifeShare = (best: Costed, next: Costed): number => best.cost / next.cost;

const costAt = (e: Costed, quantity: number, currency: Currency): number | undefined => {
  const pricing = pricingAt(e.quote, Math.max(quantity, e.quote.values.leastOrder ?? 0), currency);
  if (typeof pricing === "string") return undefined;
  const { labour, downtime } = e.running;
  return RUNCOST.calc({ landed: pricing.landed, life: e.judged.life, labour, downtime });
};

/** Twenty doublings lead from one piece to a million. */
const doublings = 20;

/** The pieces an order at which the next becomes cheaper: the nearest below and above the present quantity, both ordered alike. */
export function quantitiesBetween(best: Costed, next: Costed, currency: Currency): { below?: number; above?: number } {
  const turned = (quantity: number): boolean => {
    const [one, other] = [costAt(best, quantity, currency), costAt(next, quantity, currency)];
    return one !== undefined && other !== undefined && other < one * (1 - 1e-9);
  };
  const now = best.pricing.quantity;
  const marks = [best, next].flatMap(({ quote }) => [
    ...quote.breaks.map(({ from }) => from),
    ...(quote.values.leastOrder ? [quote.values.leastOrder] : []),
  ]);
  const tried = [
    ...new Set([
      ...marks.flatMap((mark) => [mark - 1, mark]),
      ...Array.from({ length: doublings }, (_, i) => Math.round(now * 2 ** (i + 1))),
      ...Array.from({ length: doublings }, (_, i) => Math.round(now / 2 ** (i + 1))),
    ]),
  ]
    .filter((quantity) => quantity >= 1 && quantity <= 1e9)
    .sort((a, b) => a - b);
  const search = (order: readonly number[]): number | undefined => {
    let before = now;
    for (const quantity of order) {
      if (turned(quantity)) return closeIn(before, quantity);
      before = quantity;
    }
    return undefined;
  };
  /** The first whole number that turns, between one that does not and one that does. */
  const closeIn = (stays: number, turns: number): number => {
    while (Math.abs(turns - stays) > 1) {
      const middle = Math.round((stays + turns) / 2);
      if (turned(middle)) turns = middle;
      else stays = middle;
    }
    return turns;
  };
  if (turned(now)) return {};
  const above = search(tried.filter((quantity) => quantity > now));
  const below = search(tried.filter((quantity) => quantity < now).reverse());
  return { ...(below === undefined ? {} : { below }), ...(above === undefined ? {} : { above }) };
}

/** The rate of a currency at which both cost alike; the costs are linear in it. */
export function rateAt(
  best: Costed,
  next: Costed,
  { target, rates }: Currency,
): { code: string; now: number; at: number } | undefined {
  const code = [quotedIn(best.quote), quotedIn(next.quote)].find((one) => one !== undefined && one !== target);
  const now = code === undefined ? undefined : rates?.of.get(code);
  if (code === undefined || !now || !rates) return undefined;
  const difference = (factor: number): number | undefined => {
    const of = new Map([...rates.of, [code, { ...now, rate: now.rate * factor }]]);
    const currency = { target, rates: { ...rates, of } };
    const [one, other] = [best, next].map((e) => costAt(e, e.pricing.quantity, currency));
    return one === undefined || other === undefined ? undefined : one - other;
  };
  const [here, there] = [difference(1), difference(2)];
  if (here === undefined || there === undefined) return undefined;
  const factor = 1 - here / (there - here);
  // a rate of nothing turns no order round, nor what rounding leaves of it
  return factor > 1e-9 && Number.isFinite(factor) ? { code, now: now.rate, at: now.rate * factor } : undefined;
}
