import { chooseDuty, likelyOf } from "../duties";
import type { DutyTable, NamedDuty, Word } from "../duties";
import { Band } from "../band";
import { BushError } from "../errors";
import { findGrade } from "../grades/model";
import type { Grade, Library } from "../grades/model";
import type { System } from "../kinds";
import { judgedOnce, missingSizes } from "./judgeQuote";
import type { Judged, judgeQuote } from "./judgeQuote";
import { currencyFor, pricingAt, quantityOf, quotedIn } from "./pricing";
import type { Currency, Pricing } from "./pricing";
import { quoteHeading } from "./quoteFields";
import type { QuoteField } from "./quoteFields";
import type { Quote, QuoteTable } from "./quoteTable";
import type { Rates } from "./rates";
import { RUNCOST } from "./runCost";

/** What one change of the part costs beside the part, and how much the duty runs. */
export interface Running {
  readonly labour: number;
  readonly downtime: number;
  /** Running hours a year: pieces a year times the hours that each has to run. */
  readonly hoursAYear: number | undefined;
}

/** An offer judged and costed. */
export interface Evaluation {
  readonly quote: Quote;
  readonly dutyName: string;
  readonly grade: Grade | undefined;
  readonly judged: Judged | undefined;
  readonly word: Word;
  readonly verdict: string;
  readonly pricing: Pricing | undefined;
  readonly running: Running;
  /** Cost per 1000 running hours with labour and downtime of each change. */
  readonly cost: number | undefined;
  readonly partsCost: number | undefined;
  readonly yearly: number | undefined;
  /** What keeps it out of the ranking. */
  readonly reasons: readonly string[];
  readonly remarks: readonly string[];
  /** What its supplier has to say. */
  readonly questions: readonly string[];
}

export interface Setting {
  readonly duties: DutyTable;
  /** The duty of every offer that names none. */
  readonly duty: unknown;
  readonly library: Library | undefined;
  readonly currency: Currency;
  readonly judge: typeof judgeQuote;
  readonly system: System;
}

export function evaluateAll(
  table: QuoteTable,
  given: { duties: DutyTable; duty: unknown; grades: Library | undefined; rates: Rates | undefined },
  system: System,
): { all: Evaluation[]; currency: Currency } {
  const { duties, duty, grades: library, rates } = given;
  const currency = currencyFor(table, rates);
  const setting = { duties, duty, library, currency, judge: judgedOnce(system), system };
  return { all: table.quotes.map((quote) => evaluateQuote(quote, setting)), currency };
}

/** The longest lead time that is believed, d. */
const threeYears = 1095;

/** What is said of an offer as it is evaluated. */
interface Notes {
  readonly reasons: string[];
  readonly remarks: string[];
  readonly questions: string[];
}

function evaluateQuote(quote: Quote, setting: Setting): Evaluation {
  const notes: Notes = { reasons: [], remarks: [...quote.remarks], questions: [] };
  const { reasons, remarks, questions } = notes;
  const { forDuty } = quote.values;
  noteFaults(quote, notes);
  const duty = attempt(() => chooseDuty(setting.duties, forDuty ?? setting.duty), reasons);
  const grade = gradeOf(quote, setting.library, remarks, questions);
  const missing = duty ? missingSizes(quote, duty) : [];
  questions.push(...missing.map(quoteHeading));
  const judged = missing.length === 0 ? judgedOf(quote, duty, grade, setting, notes) : undefined;
  const pricing = pricingOf(quote, setting.currency, reasons, remarks, questions);
  askForRest(quote, notes);
  const running = runningOf(duty);
  const costs = costsOf(pricing, judged?.life, running);
  if (pricing && costs.cost === undefined) noteNoLife(notes);
  const { word, text: verdict } = judged ?? { word: "no data", text: notJudged(reasons, grade, missing) };
  const dutyName = duty?.name ?? String(forDuty ?? "");
  return { quote, dutyName, grade, judged, running, word, verdict, pricing, ...costs, reasons, remarks, questions };
}

function noteFaults({ values: { leadTime }, faults }: Quote, { reasons, remarks }: Notes): void {
  for (const [field, fault] of faults) (field === "leadTime" ? remarks : reasons).push(faultText(field, fault));
  if (leadTime !== undefined && leadTime > threeYears)
    reasons.push(`lead time must be at most three years, got ${Math.round(leadTime)} d`);
}

/** An offer that has a reason against it is not judged. */
function judgedOf(
  quote: Quote,
  duty: NamedDuty | undefined,
  grade: Grade | undefined,
  { judge, system }: Setting,
  notes: Notes,
): Judged | undefined {
  if (!duty || !grade || notes.reasons.length > 0) return undefined;
  const judged = attempt(() => judge(quote, duty, grade, system), notes.reasons);
  if (!judged) return undefined;
  notes.remarks.push(...judged.remarks);
  notes.questions.push(...judged.lacking.map((figure) => `${figure} of ${grade.name}`));
  return judged;
}

function noteNoLife({ reasons, remarks }: Notes): void {
  if (reasons.length === 0) remarks.push("no life known: ranked by landed cost");
}

function askForRest({ values: { wall, outside, leadTime } }: Quote, { questions }: Notes): void {
  if (wall === undefined && outside === undefined) questions.push(quoteHeading("wall"));
  if (leadTime === undefined) questions.push(quoteHeading("leadTime"));
}

const notJudged = (reasons: readonly string[], grade: Grade | undefined, missing: readonly QuoteField[]): string =>
  reasons.length > 0 ? "cannot be judged" : `no data, ${grade ? missing.map(quoteHeading).join(", ") : "grade"}`;

const faultText = (field: QuoteField, fault: BushError): string =>
  fault.code === "passed" ? `${quoteHeading(field)} holds ${fault.argument}` : fault.message;

/** What goes wrong becomes a reason of the offer, and stays in its row. */
function attempt<T>(run: () => T, reasons: string[]): T | undefined {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    reasons.push(error.message);
    return undefined;
  }
}

function gradeOf(
  quote: Quote,
  library: Library | undefined,
  remarks: string[],
  questions: string[],
): Grade | undefined {
  const { grade } = quote.values;
  if (grade !== undefined) {
    const found = attempt(() => findGrade(grade, library), remarks);
    if (!found) questions.push(`limits and wear rate of ${grade}`);
    return found;
  }
  if (!quote.faults.has("grade")) questions.push(quoteHeading("grade"));
  return undefined;
}

function pricingOf(
  quote: Quote,
  currency: Currency,
  reasons: string[],
  remarks: string[],
  questions: string[],
): Pricing | undefined {
  if (quote.breaks.length === 0 && !quote.faults.has("price")) questions.push(quoteHeading("price"));
  const { quantity, remark } = quantityOf(quote);
  if (remark) remarks.push(remark);
  if (quote.breaks.length > 0 && quotedIn(quote) === undefined && currency.target !== undefined)
    remarks.push(`no currency given, taken as ${currency.target}`);
  const isPriceFault = (
    [
      "price",
      "pricePer",
      "tooling",
      "freight",
      "customsDuty",
      "plannedVolume",
      "orderQuantity",
      "leastOrder",
      "breakFrom",
      "breakTo",
    ] as const
  ).some((field) => quote.faults.has(field));
  if (isPriceFault) return undefined;
  const pricing = pricingAt(quote, quantity, currency);
  if (typeof pricing !== "string") return pricing;
  reasons.push(pricing);
  return undefined;
}

function costsOf(pricing: Pricing | undefined, life: number | undefined, { labour, downtime, hoursAYear }: Running) {
  if (!pricing || life === undefined) return { cost: undefined, partsCost: undefined, yearly: undefined };
  const cost = RUNCOST.calc({ landed: pricing.landed, life, labour, downtime });
  const partsCost = RUNCOST.calc({ landed: pricing.landed, life, labour: 0, downtime: 0 });
  return { cost, partsCost, yearly: hoursAYear === undefined ? undefined : (cost * hoursAYear) / 1000 };
}

/** Of a band the likely value. */
const one = (value: number | Band | undefined): number | undefined => (value instanceof Band ? likelyOf(value) : value);

function runningOf(duty: NamedDuty | undefined): Running {
  const { labour, downtime, piecesAYear, hours } = duty?.values ?? {};
  const [pieces, each] = [one(piecesAYear), one(hours)];
  return {
    labour: one(labour) ?? 0,
    downtime: one(downtime) ?? 0,
    hoursAYear: pieces === undefined || each === undefined ? undefined : pieces * each,
  };
}
