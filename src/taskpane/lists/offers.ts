import { quoteFieldKeys, quoteFields, quoteReading, readQuotes } from "../../core/cost";
import type { QuoteField } from "../../core/cost";
import { clash } from "../../core/errors";
import { kinds } from "../../core/kinds";
import type { Kind } from "../../core/kinds";
import { measureText } from "../../core/measure";
import type { Judged, Sort } from "./sort";

const fieldOf = (key: string) => quoteFields[key as QuoteField];
const inUnits: ReadonlySet<string> = new Set(["length", "amount", "percent", "lead"]);
const name = "offers";

/** Offers: a row with a fault stays, since QUOTES lists it with its reason. */
export const offers: Sort = {
  kind: "offers",
  one: "offer",
  sheet: "Offers",
  reading: quoteReading,
  keys: quoteFieldKeys,
  words: {
    part: ["name", "product", "designation", "type", "model", "reference", "code"],
    supplier: ["company", "firm", "offer of", "offer from"],
    grade: ["polymer", "resin", "mix"],
    bore: ["d", "d1", "inner", "shaft diameter", "inner dia", "inside dia"],
    outside: ["d2", "outer", "outer dia", "outside dia"],
    length: ["l", "b", "b1", "overall length"],
    wall: ["t", "s", "s3", "thickness"],
    price: ["cost", "rate", "unit cost", "amount", "offer"],
    orderQuantity: ["lots of", "batch", "batch size", "volume offered"],
    leastOrder: ["minimum", "min"],
    tooling: ["tool", "tools", "mould", "one-off cost"],
    freight: ["transport", "delivery cost"],
    leadTime: ["weeks", "dispatch", "ships in"],
    allowance: ["wear depth", "usable wear"],
  },
  needs: {
    grade: "Set one column to grade: the material of each part.",
    price: "Set one column to price.",
  },
  owner: "supplier",
  dropsFaulty: false,
  takesUnit: (key) => inUnits.has(fieldOf(key).kind),
  headingOf(key, unit, system) {
    const { heading, kind } = fieldOf(key);
    const own = unit || (kind === "lead" ? "d" : kind in kinds ? kinds[kind as Kind][system] : "");
    return own === "" ? heading : `${heading} [${own}]`;
  },
  checkUnit(key, unit) {
    const field = fieldOf(key);
    if (unit !== "") quoteReading.checkUnit(field, unit);
    else if (field.kind === "percent") throw clash(name, `${field.heading}: say whether it is in % or a ratio`);
  },
  told(key, value, system) {
    const { kind } = fieldOf(key);
    if (kind === "amount") {
      const { amount, currency = "without a currency" } = value as { amount: number; currency?: string };
      return `${amount} ${currency}`;
    }
    if (kind === "lead") return measureText("days", value as number, system);
    if (kind === "count" || (kind === "pieces" && typeof value === "number")) return `${value as number} pieces`;
    if (kind in kinds) return measureText(kind as Kind, value as number, system);
    if (typeof value !== "object" || value === null) return String(value);
    const { from, to } = value as { from: number; to?: number };
    return to === undefined ? `from ${from} pieces` : `${from} to ${to} pieces`;
  },
  judge(cells, system): Judged {
    const { quotes } = readQuotes(cells, system, name);
    const faults = quotes.flatMap(({ row, faults: own }) => [...own.values()].map(({ message }) => ({ row, message })));
    return { count: quotes.length, faults };
  },
};
