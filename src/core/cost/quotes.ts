import type { Answer, Column } from "../formula";
import { formula } from "../formula";
import { gradesArg, motions } from "../grades/model";
import { evaluateQuote, judgeOf } from "./evaluateQuote";
import type { Evaluation } from "./evaluateQuote";
import { labelOf } from "./quotePrice";
import { quotesArg } from "./quoteTable";
import type { Field, Quote, QuoteTable } from "./quoteTable";

const columns: readonly Column[] = [
  { name: "rank", kind: "measure" },
  { name: "part", kind: "text" },
  { name: "supplier", kind: "text" },
  { name: "grade", kind: "text" },
  { name: "bore", kind: "length" },
  { name: "length", kind: "length" },
  { name: "wall", kind: "length" },
  { name: "lot", kind: "count" },
  { name: "unit price", kind: "money" },
  { name: "landed cost", kind: "money" },
  { name: "currency", kind: "text" },
  { name: "shortest life", kind: "time" },
  { name: "parts per 1000 h", kind: "money" },
  { name: "lead time", kind: "days" },
  { name: "verdict", kind: "text" },
  { name: "notes", kind: "text" },
];

/**
 * Parts per 1000 h = landed cost over the shortest life, that of the grade's greatest wear rate. Every row of the table is in
 * the answer: ranked where it fits and nothing is missing, else below in the table's order with the reason.
 */
export const QUOTES = formula(
  {
    id: "QUOTES",
    text: "Quoted parts checked against one duty and ranked by the cost of parts per 1000 running hours, without labour and downtime (RUNCOST counts them); the rest below with the reason",
    args: {
      quotes: quotesArg,
      pressure: {
        kind: "pressure",
        symbol: "p",
        from: 0,
        text: "Mean pressure of the duty, taken for every part: where bores or lengths differ, compare like with like",
      },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed of the duty, taken for every part" },
      temperature: { kind: "span", text: "Temperature of the duty" },
      motion: { kind: "choice", choices: motions, default: "turning", optional: true, text: "Motion of the duty" },
      grades: gradesArg,
    },
    units: true,
    result: {
      shape: "table",
      text: "One row per quote, cheapest to run first, and notes on the whole table",
      columns,
    },
    source: { key: "own" },
    example: [
      [
        ["part", "supplier", "grade", "bore [mm]", "length [mm]", "price", "order quantity", "life allowance [mm]"],
        ["A-20", "Supplier A", "Demo Sorrel", 20, 15, 1.9, 200, 0.3],
        ["B-20", "Supplier B", "Demo Medlar", 20, 15, 2.4, 200, 0.3],
      ],
      0.5,
      0.1,
      "5 to 45",
    ],
    see: ["LANDED", "LIFEBAND", "RUNCOST", "VERDICT"],
  },
  ({ quotes: table, pressure, speed, temperature, motion, grades: library }, system = "metric"): Answer[][] => {
    const duty = { pressure, speed, temperature, motion };
    const setting = { duty, library, label: currencyOf(table), judge: judgeOf(duty, system) };
    const all = table.quotes.map((quote) => evaluateQuote(quote, setting));
    const ranked = all.filter((e) => e.cost !== undefined).sort((a, b) => a.cost! - b.cost!);
    const rest = all.filter((e) => e.cost === undefined);
    return [...rankedLines(ranked), ...rest.map((e) => line(e, "not ranked")), ...notesOn(table).map(noteLine)];
  },
);

/** The most frequent label of the rows, the first of equals. */
function currencyOf({ quotes }: QuoteTable): string | undefined {
  const counts = new Map<string, { label: string; count: number }>();
  for (const label of quotes.flatMap((quote) => labelOf(quote) ?? [])) {
    const entry = counts.get(label.toUpperCase()) ?? { label, count: 0 };
    counts.set(label.toUpperCase(), { ...entry, count: entry.count + 1 });
  }
  return [...counts.values()].reduce<{ label?: string; count: number }>((a, b) => (b.count > a.count ? b : a), {
    count: 0,
  }).label;
}

const areEqual = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.abs(b);

/** Parts of equal cost share a rank and keep the table's order. */
function rankedLines(ranked: readonly Evaluation[]): Answer[][] {
  let rank = 0;
  return ranked.map((e, i) => {
    const sameAsBefore = i > 0 && areEqual(e.cost!, ranked[i - 1]!.cost!);
    const sameAsNext = i < ranked.length - 1 && areEqual(ranked[i + 1]!.cost!, e.cost!);
    if (!sameAsBefore) rank = i + 1;
    const remarks = sameAsBefore || sameAsNext ? [...e.remarks, "equal cost: in the table's order"] : e.remarks;
    return line({ ...e, remarks }, rank);
  });
}

function line(e: Evaluation, rank: number | string): Answer[] {
  const { quote } = e;
  const cell = (...fields: Field[]) =>
    quote.faults.size === 0 ? undefined : fields.map((field) => quote.faults.get(field)).find(Boolean);
  return [
    rank,
    cell("part") ?? quote.part ?? "",
    cell("supplier") ?? quote.supplier ?? "",
    cell("grade") ?? quote.grade ?? "",
    cell("bore") ?? quote.bore ?? "",
    cell("length") ?? quote.length ?? "",
    cell("wall") ?? quote.wall ?? "",
    cell("orderQuantity", "leastOrder") ?? e.lot ?? "",
    cell("price", "pricePer") ?? e.unitPrice ?? "",
    cell("tooling", "plannedVolume", "freight", "duty") ?? e.landed ?? "",
    e.label ?? "",
    cell("allowance") ?? e.life ?? "",
    e.cost ?? "",
    cell("leadTime") ?? quote.leadTime ?? "",
    e.verdict,
    [...e.reasons, ...e.remarks].join("; "),
  ];
}

function notesOn({ quotes, unknownColumns }: QuoteTable): string[] {
  const differing = (["bore", "length"] as const).filter((field) => differ(quotes, field)).map((field) => `${field}s`);
  return [
    ...(unknownColumns.length > 0 ? [`columns not read: ${unknownColumns.join(", ")}`] : []),
    ...(differing.length > 0
      ? [`${differing.join(" and ")} differ: the duty's pressure and speed are taken for every part`]
      : []),
    "preliminary: figures are typical, not guaranteed; test in the application before buying",
  ];
}

/** Sizes more than 1 % apart: a nominal size in mm and its inch neighbour within that count as one. */
function differ(quotes: readonly Quote[], field: "bore" | "length"): boolean {
  let [least, greatest] = [Infinity, 0];
  for (const { [field]: size } of quotes) {
    if (size === undefined) continue;
    least = Math.min(least, size);
    greatest = Math.max(greatest, size);
  }
  return greatest > 1.01 * least;
}

const noteLine = (text: string): Answer[] =>
  columns.map(({ name }) => (name === "rank" ? "note" : name === "notes" ? text : ""));
