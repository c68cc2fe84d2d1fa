import { dutiesArg, dutyArg, exampleDuty } from "../duties";
import type { Answer, Column } from "../formula";
import { formula } from "../formula";
import { gradesArg } from "../grades/model";
import { evaluateAll } from "./evaluateQuote";
import type { Currency } from "./pricing";
import type { QuoteField } from "./quoteFields";
import { quotesArg } from "./quoteTable";
import type { QuoteTable } from "./quoteTable";
import { rankQuotes } from "./rankQuotes";
import type { RankedQuote } from "./rankQuotes";
import { ratesArg } from "./rates";

const columns: readonly Column[] = [
  { name: "rank", kind: "measure" },
  { name: "part", kind: "text" },
  { name: "supplier", kind: "text" },
  { name: "grade", kind: "text" },
  { name: "for duty", kind: "text" },
  { name: "bore", kind: "length" },
  { name: "length", kind: "length" },
  { name: "wall", kind: "length" },
  { name: "quantity", kind: "count" },
  { name: "unit price", kind: "money" },
  { name: "landed", kind: "money" },
  { name: "currency", kind: "text" },
  { name: "order value", kind: "money" },
  { name: "cost a year", kind: "money" },
  { name: "shortest life", kind: "time" },
  { name: "all in per 1000 h", kind: "money" },
  { name: "of it parts", kind: "money" },
  { name: "verdict", kind: "text" },
  { name: "use", kind: "ratio" },
  { name: "lead time", kind: "days" },
  { name: "reason or question", kind: "text" },
];

/** The arguments by which offers and what they are for are given. */
export const offerArgs = { quotes: quotesArg, duties: dutiesArg, duty: dutyArg, grades: gradesArg, rates: ratesArg };

export const exampleOffers = [
  [
    "part",
    "supplier",
    "grade",
    "bore [mm]",
    "length [mm]",
    "wall [mm]",
    "price [EUR]",
    "order quantity",
    "wear allowance [mm]",
  ],
  ["A-15", "Supplier A", "Demo Sorrel", 15, 20, 1.5, 1.9, 200, 0.3],
  ["B-15", "Supplier B", "Demo Medlar", 15, 20, 1.5, 2.4, 200, 0.3],
];

/**
 * All in per 1000 h = (landed + labour + downtime of one change) over the shortest life, that of the grade's greatest wear
 * rate; labour and downtime are the duty's. Cost a year = that times pieces a year times the hours wanted of each. Every
 * offer is in the answer, with its reason where it is not ranked.
 */
export const QUOTES = formula(
  {
    id: "QUOTES",
    text: "Offers, each with its own sizes judged by all criteria on a duty and costed: ranked fits, care, no data, fails, inside each by the cost of 1000 running hours with labour and downtime of each change; beside each what it would take, or what to ask",
    args: offerArgs,
    units: true,
    result: { shape: "table", text: "One row per offer, then notes on the whole table", columns },
    source: { key: "own" },
    example: [exampleOffers, exampleDuty, ""],
    see: ["DECISION", "LANDED", "LIFEBAND", "RUNCOST", "DUTIES"],
  },
  ({ quotes: table, ...given }, system = "metric"): Answer[][] => {
    const { all, currency } = evaluateAll(table, given, system);
    const ranked = rankQuotes(all);
    return [...ranked.map((e) => line(e, currency)), ...notesOn(table, ranked, currency).map(noteLine)];
  },
);

function line(e: RankedQuote, { target }: Currency): Answer[] {
  const { quote, pricing, judged } = e;
  const { values, faults } = quote;
  /** What a cell says, or the fault of the first field that keeps it from being said; blank where neither is known. */
  const cell = (value: number | string | undefined, ...fields: QuoteField[]): Answer =>
    fields.map((field) => faults.get(field)).find(Boolean) ?? value ?? "";
  return [
    e.rank ?? "not ranked",
    cell(values.part, "part"),
    cell(values.supplier, "supplier"),
    cell(values.grade, "grade"),
    e.dutyName,
    cell(values.bore, "bore"),
    cell(values.length, "length"),
    cell(values.wall, "wall"),
    cell(pricing?.quantity ?? quote.orderQuantity, "orderQuantity", "leastOrder"),
    cell(pricing?.unitPrice, "price", "pricePer", "breakFrom", "breakTo"),
    cell(pricing?.landed, "tooling", "plannedVolume", "freight", "customsDuty"),
    cell(pricing && target),
    cell(pricing?.orderValue),
    cell(e.yearly),
    cell(judged?.life, "allowance"),
    cell(e.cost),
    cell(e.partsCost),
    e.verdict,
    cell(judged?.use),
    // a lead time that cannot be read is a remark
    faults.has("leadTime") ? "" : cell(values.leadTime),
    reasonText(e),
  ];
}

/** Why it is not ranked, what is to be known, and what to ask for. */
export function reasonText({ reasons, remarks, questions, isEqual }: RankedQuote): string {
  const ask = questions.length > 0 ? [`ask for ${[...new Set(questions)].join(", ")}`] : [];
  const equal = isEqual ? ["equal cost: in the table's order"] : [];
  return [...reasons, ...remarks, ...equal, ...ask].join("; ");
}

function notesOn(
  { unknownColumns }: QuoteTable,
  ranked: readonly RankedQuote[],
  { target, rates }: Currency,
): string[] {
  const { running } = ranked.find(({ judged }) => judged !== undefined) ?? {};
  const used = [...(rates?.of ?? [])].filter(([code]) => code !== target);
  return [
    ...(unknownColumns.length > 0 ? [`columns not read: ${unknownColumns.join(", ")}`] : []),
    ...(running && running.labour + running.downtime === 0
      ? ["the duty states no labour and no downtime per change: dear changes may turn the order round"]
      : []),
    ...(running && running.hoursAYear === undefined
      ? ["cost a year: the duty has to state pieces a year and hours"]
      : []),
    ...used.map(
      ([code, { rate, date }]) => `${code} at ${rate}${target ? ` ${target}` : ""}${date ? ` of ${date}` : ""}`,
    ),
    "preliminary: figures are typical, not guaranteed; test in the application before buying",
  ];
}

const noteLine = (text: string): Answer[] =>
  columns.map(({ name }) => (name === "rank" ? "note" : name === "reason or question" ? text : ""));
