import type { Word } from "../duties";
import type { Evaluation } from "./evaluateQuote";
import type { Pricing } from "./pricing";

const order: Readonly<Record<Word, number>> = { fits: 0, care: 1, "no data": 2, fails: 3 };

export interface RankedQuote extends Evaluation {
  /** From 1; nothing where a price or a row's fault keeps it out. */
  readonly rank: number | undefined;
  readonly isEqual: boolean;
}

type Priced = Evaluation & { readonly pricing: Pricing };
const isRanked = (e: Evaluation): e is Priced => e.reasons.length === 0 && e.pricing !== undefined;

/** By verdict, inside each by cost per 1000 hours, those without a known life behind by landed cost; equals keep the table's order. */
function compare(a: Priced, b: Priced): number {
  const byWord = order[a.word] - order[b.word];
  if (byWord !== 0) return byWord;
  const byLife = Number(a.cost === undefined) - Number(b.cost === undefined);
  if (byLife !== 0) return byLife;
  const [one, other] =
    a.cost === undefined || b.cost === undefined ? [a.pricing.landed, b.pricing.landed] : [a.cost, b.cost];
  return Math.abs(one - other) <= 1e-9 * Math.abs(other) ? 0 : one - other;
}

/** Every offer: ranked, then the rest in the table's order with the reason. */
export function rankQuotes(all: readonly Evaluation[]): RankedQuote[] {
  const sorted = all.filter(isRanked).sort(compare);
  let rank = 0;
  const ranked = sorted.map((e, i) => {
    const [before, next] = [sorted[i - 1], sorted[i + 1]];
    const sameAsBefore = before !== undefined && compare(before, e) === 0;
    const sameAsNext = next !== undefined && compare(e, next) === 0;
    if (!sameAsBefore) rank = i + 1;
    return { ...e, rank, isEqual: sameAsBefore || sameAsNext };
  });
  return [...ranked, ...all.filter((e) => !isRanked(e)).map((e) => ({ ...e, rank: undefined, isEqual: false }))];
}
