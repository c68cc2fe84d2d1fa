import { exampleDuty } from "../duties";
import { formula } from "../formula";
import type { Answer } from "../formula";
import type { Grade, Library } from "../grades/model";
import type { System } from "../kinds";
import { measureText, percentText } from "../measure";
import { cautionsOf, standingCautions } from "../grades/cautionsOf";
import { evaluateAll } from "./evaluateQuote";
import type { Judged } from "./judgeQuote";
import type { Currency, Pricing } from "./pricing";
import { exampleOffers, offerArgs } from "./quotes";
import { rankQuotes } from "./rankQuotes";
import type { RankedQuote } from "./rankQuotes";
import { changeCost, changeCostBetween, isCosted, lifeShare, quantitiesBetween, rateAt } from "./turningPoints";
import type { Costed } from "./turningPoints";

type Line = readonly [what: string, answer: string];

export const DECISION = formula(
  {
    id: "DECISION",
    text: "Which offer to buy and why, the runner-up and what it costs more, what would turn the order round, and what to ask each supplier, line by line",
    args: offerArgs,
    units: true,
    result: {
      shape: "table",
      text: "One line per statement",
      columns: [
        { name: "decision", kind: "text" },
        { name: "answer", kind: "text" },
      ],
    },
    source: { key: "own", at: "the ranking of QUOTES; turning points solved on it" },
    example: [exampleOffers, exampleDuty, ""],
    see: ["QUOTES", "LANDED", "RUNCOST", "DUTYROOM"],
  },
  ({ quotes, ...given }, system = "metric"): Answer[][] => {
    const { all, currency } = evaluateAll(quotes, given, system);
    const ranked = rankQuotes(all);
    const best = ranked.find(isBuyable);
    return [
      ...(best ? boughtLines(best, ranked, currency, system) : nothingLines(ranked)),
      ...questionLines(ranked),
      ...unstatedLines(ranked),
      ...leftOutLines(ranked),
      ...rateLines(currency),
      ...cautionLines(best, system, given.grades),
    ].map((line) => [...line]);
  },
);

/** An offer that fits, with care or without; its grade is known, since it was judged. */
type Buyable = RankedQuote & { readonly pricing: Pricing; readonly judged: Judged; readonly grade: Grade };
const isBuyable = (e: RankedQuote): e is Buyable =>
  e.rank !== undefined && e.pricing !== undefined && e.judged !== undefined && (e.word === "fits" || e.word === "care");

/** Part, supplier and grade. */
function nameOf({ quote: { values, row } }: RankedQuote): string {
  const { part = `the offer in row ${row}`, supplier, grade } = values;
  return `${part}${supplier === undefined ? "" : ` from ${supplier}`}${grade === undefined ? "" : ` (${grade})`}`;
}

/** Two decimals; of small prices four digits. */
const money = (amount: number, { target }: Currency): string =>
  `${Math.abs(amount) >= 10 ? amount.toFixed(2) : Number(amount.toPrecision(4))} ${target ?? ""}`.trim();

function boughtLines(best: Buyable, ranked: readonly RankedQuote[], currency: Currency, system: System): Line[] {
  const { pricing, judged, yearly } = best;
  const next = ranked.filter(isBuyable).find((e) => e !== best);
  const costs = isCosted(best)
    ? `${money(best.cost, currency)} per 1000 h with labour and downtime, ${money(best.partsCost, currency)} of it parts`
    : "its life is not known, so that landed cost decides";
  return [
    ["buy", nameOf(best)],
    [
      "because",
      `${best.verdict}; ${costs}${best.word === "care" && ranked.every(({ word }) => word !== "fits") ? "; none fits without care" : ""}`,
    ],
    [
      "price",
      `${money(pricing.unitPrice, currency)} each for ${pricing.quantity}, ${money(pricing.landed, currency)} landed, order value ${money(pricing.orderValue, currency)}`,
    ],
    ...(judged.life === undefined ? [] : [["shortest life", measureText("time", judged.life, system, 3)] as const]),
    ...(yearly === undefined ? [] : [["cost a year", money(yearly, currency)] as const]),
    ...(best.remarks.length > 0 ? [["note", best.remarks.join("; ")] as const] : []),
    ...(next ? runnerUpLines(best, next, currency, system) : [["runner-up", "none: no other offer fits"] as const]),
  ];
}

function runnerUpLines(best: Buyable, next: Buyable, currency: Currency, system: System): Line[] {
  const name = nameOf(next);
  if (!isCosted(best) || !isCosted(next)) {
    const more = next.pricing.landed - best.pricing.landed;
    const of = isCosted(best) ? "its life is not known" : `${money(more, currency)} more landed`;
    return [["runner-up", `${name}: ${next.verdict}; ${of}`]];
  }
  const more = next.cost / best.cost - 1;
  const yearly =
    best.yearly === undefined || next.yearly === undefined
      ? ""
      : `, ${money(next.yearly - best.yearly, currency)} a year`;
  const step =
    more >= 0
      ? `${percentText(more)} dearer${yearly}`
      : `cheaper by ${percentText(-more)}${yearly}, but ${next.verdict}`;
  return [
    ["runner-up", `${name}: ${next.verdict}; ${money(next.cost, currency)} per 1000 h, ${step}`],
    ...(more > 0 ? turningLines(best, next, currency, system) : []),
  ];
}

/** What would make the runner-up the cheaper, each alone, all else equal. */
function turningLines(best: Costed, next: Costed, currency: Currency, system: System): Line[] {
  const lines: Line[] = [];
  const change = changeCostBetween(best, next);
  const now = changeCost(best);
  if (change !== undefined)
    lines.push([
      "turns round",
      `labour and downtime of one change ${change < now ? "below" : "above"} ${money(change, currency)}, now ${money(now, currency)}`,
    ]);
  else lines.push(["turns round", "by no labour or downtime of a change"]);
  const share = lifeShare(best, next);
  lines.push([
    "turns round",
    `life below ${percentText(share)} of that counted: ${measureText("time", share * best.judged.life, system, 3)}`,
  ]);
  const { below, above } = quantitiesBetween(best, next, currency);
  if (below !== undefined) lines.push(["turns round", `orders of ${below} pieces or fewer`]);
  if (above !== undefined) lines.push(["turns round", `orders of ${above} pieces or more`]);
  if (below === undefined && above === undefined) lines.push(["turns round", "by no order quantity that both quoted"]);
  const rate = rateAt(best, next, currency);
  if (rate)
    lines.push([
      "turns round",
      `${rate.code} ${rate.at < rate.now ? "below" : "above"} ${Number(rate.at.toPrecision(4))} ${currency.target ?? ""}, now ${rate.now}`.trim(),
    ]);
  return lines;
}

function nothingLines(ranked: readonly RankedQuote[]): Line[] {
  const nearest = ranked.find(({ rank }) => rank !== undefined);
  return [
    ["buy", "none of these yet: no offer fits"],
    ...(nearest ? [["nearest", [nameOf(nearest), nearest.verdict, ...nearest.remarks].join("; ")] as const] : []),
  ];
}

/** A sentence for each supplier that can be sent as it stands. */
function questionLines(ranked: readonly RankedQuote[]): Line[] {
  const bySupplier = new Map<string, string[]>();
  for (const { quote, questions } of ranked) {
    if (questions.length === 0) continue;
    const { part = `row ${quote.row}`, supplier = "the supplier" } = quote.values;
    const asked = bySupplier.get(supplier) ?? [];
    bySupplier.set(supplier, [...asked, `for ${part}: ${[...new Set(questions)].join(", ")}`]);
  }
  return [...bySupplier].map(([supplier, asked]) => [`ask ${supplier}`, `Please state ${asked.join("; ")}.`]);
}

/** What no supplier can tell: fields that the duty leaves open, each with the offers that it keeps from being judged. */
function unstatedLines(ranked: readonly RankedQuote[]): Line[] {
  const byField = new Map<string, string[]>();
  for (const one of ranked)
    for (const heading of one.judged?.unstated ?? [])
      byField.set(heading, [...(byField.get(heading) ?? []), nameOf(one)]);
  return [...byField].map(([heading, names]) => ["state in the duty", `${heading}, to judge ${names.join(", ")}`]);
}

const leftOutLines = (ranked: readonly RankedQuote[]): Line[] =>
  ranked
    .filter(({ rank }) => rank === undefined)
    .map((e) => ["not ranked", `${nameOf(e)}: ${e.reasons.join("; ") || e.remarks.join("; ")}`]);

const rateLines = ({ target, rates }: Currency): Line[] =>
  [...(rates?.of ?? [])]
    .filter(([code]) => code !== target)
    .map(([code, { rate, date }]) => [
      "rate",
      `${code} at ${rate}${target ? ` ${target}` : ""}${date ? ` of ${date}` : ""}`,
    ]);

function cautionLines(best: Buyable | undefined, system: System, library: Library | undefined): Line[] {
  const cautions = best
    ? cautionsOf(best.grade, best.judged.duty.moving, best.judged.checks, system, library)
    : standingCautions;
  return cautions.map((caution) => ["caution", caution]);
}
