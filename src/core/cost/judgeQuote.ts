import { found, isAskedFor, judge, missingText, verdictOf, verdictText, withValues } from "../duties";
import type { Check, FieldKey, FieldValues, NamedDuty, Word } from "../duties";
import { BushError } from "../errors";
import { gradeKey } from "../grades/model/library";
import { property } from "../grades/model";
import type { Grade } from "../grades/model";
import type { System } from "../kinds";
import { measureText } from "../measure";
import { fromWorking, toWorking } from "../units/scale";
import { quoteHeading } from "./quoteFields";
import type { QuoteField } from "./quoteFields";
import type { Quote } from "./quoteTable";

/** What a duty makes of one offered part with its own sizes. */
export interface Judged {
  readonly duty: NamedDuty;
  readonly checks: readonly Check[];
  readonly word: Word;
  readonly text: string;
  readonly use: number | undefined;
  /** Hours by the grade's greatest wear rate, h. */
  readonly life: number | undefined;
  /** Figures of the grade that would be needed. */
  readonly lacking: readonly string[];
  /** Fields that the duty would have to state. */
  readonly unstated: readonly string[];
  /** What else is to be said: a size taken from the duty, what it would take to hold. */
  readonly remarks: readonly string[];
}

/** The sizes of an offer as fields of the duty, and those that it must name itself. */
function sizesOf({ values }: Quote, { part, values: asked }: NamedDuty): { own: FieldValues; missing: QuoteField[] } {
  const { bore, length, wall, outside } = values;
  if (part === "washer") {
    const missing = (["bore", "outside"] as const).filter((field) => values[field] === undefined);
    return { own: { inner: bore, outer: outside }, missing };
  }
  const thickness = wall ?? (outside !== undefined && bore !== undefined ? (outside - bore) / 2 : undefined);
  const missing = (["bore", "length"] as const).filter((field) => values[field] === undefined);
  const taken = thickness ?? asked.wall;
  return { own: { bore, length, ...(taken === undefined ? {} : { wall: taken }) }, missing };
}

/** What an offer leaves out of its sizes; it is not judged without them. */
export const missingSizes = (quote: Quote, duty: NamedDuty): readonly QuoteField[] => sizesOf(quote, duty).missing;

const isWorn = ({ part, steps }: NamedDuty): boolean =>
  isAskedFor("allowance", part, steps.find((step) => step.motion !== "static")?.motion ?? "static");

/** Judged with its own sizes and wear allowance; throws where they contradict each other. */
export function judgeQuote(quote: Quote, duty: NamedDuty, grade: Grade, system: System): Judged {
  const { values } = quote;
  const { own } = sizesOf(quote, duty);
  checkSizes(quote);
  const dropped: readonly FieldKey[] = own.wall === undefined ? [] : ["outside"];
  const asksLife = duty.values.hours !== undefined || duty.values.allowance !== undefined;
  const allowance = values.allowance === undefined ? {} : { allowance: values.allowance };
  const wears = isWorn(duty);
  // checked against the wall in any case
  const whole = withValues(duty, { ...own, ...(wears ? allowance : {}) }, dropped);
  const asked = asksLife || values.allowance === undefined ? whole : withValues(duty, own, dropped);
  const checks = judge(grade, asked);
  const verdict = verdictOf(checks);
  const life = lifeOf(asked === whole ? checks : judge(grade, whole));
  const noData = checks.filter(({ word }) => word === "no data");
  const lacking = noData.filter((check) => check.property).map(missingText);
  const unstated = [...new Set(noData.filter((check) => check.field).map(missingText))];
  if (wears && grade.values.wearHigh === undefined) lacking.push(property("wearHigh").heading);
  return {
    duty: asked,
    checks,
    word: verdict.word,
    text: verdictText(checks, system, verdict),
    use: verdict.use,
    life,
    lacking: [...new Set(lacking)],
    unstated,
    remarks: [
      ...sizeRemarks(quote, duty, system),
      ...unstated.map((heading) => `the duty does not say ${heading}`),
      ...(verdict.word === "fails" ? whatItTakes(grade, asked, system) : []),
    ],
  };
}

const lifeOf = (checks: readonly Check[]): number | undefined => {
  const life = found(checks, "wearLife")?.limit;
  return life !== undefined && Number.isFinite(life) ? life : undefined;
};

/** Sizes more than this apart are not one size in two units. */
const alike = 0.01;

function checkSizes({ values: { bore, wall, outside } }: Quote): void {
  if (bore === undefined || outside === undefined) return;
  if (outside <= bore)
    throw new BushError("value", "outside", `outside of ${outside} mm is not above the bore of ${bore} mm`);
  if (wall !== undefined && Math.abs(bore + 2 * wall - outside) > alike * outside)
    throw new BushError(
      "value",
      "wall",
      `wall and outside contradict each other: ${bore} + 2 × ${wall} is not ${outside} mm`,
    );
}

function sizeRemarks({ values }: Quote, { values: asked, part }: NamedDuty, system: System): string[] {
  const remarks: string[] = [];
  const own = values.bore;
  const wanted = part === "washer" ? asked.inner : asked.bore;
  if (own !== undefined && typeof wanted === "number" && Math.abs(own - wanted) > alike * wanted)
    remarks.push(`bore ${measureText("length", own, system)}, the duty's is ${measureText("length", wanted, system)}`);
  if (values.wall === undefined && values.outside === undefined && typeof asked.wall === "number")
    remarks.push(`no ${quoteHeading("wall")}: the duty's ${measureText("length", asked.wall, system)} taken`);
  return remarks;
}

/** A bush longer than this many bores is no answer (common practice: care beyond two). */
const mostBores = 2;

/** "would hold with 22 mm length". */
function whatItTakes(grade: Grade, duty: NamedDuty, system: System): string[] {
  const { length, bore } = duty.values;
  if (typeof length !== "number" || typeof bore !== "number") return [];
  const holds = (tried: number): boolean => {
    try {
      const { word } = verdictOf(judge(grade, withValues(duty, { length: tried })));
      return word === "fits" || word === "care";
    } catch (error) {
      if (error instanceof BushError) return false;
      throw error;
    }
  };
  const longest = mostBores * bore;
  let [low, high] = [length, Math.min(length * 1.1, longest)];
  while (high < longest && !holds(high)) [low, high] = [high, Math.min(high * 1.1, longest)];
  if (!holds(high)) return [];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  // up to the next tenth of a millimetre or hundredth of an inch
  const steps = system === "metric" ? 10 : 100;
  const shown = Math.ceil(fromWorking("length", high, system) * steps) / steps;
  const rounded = toWorking("length", shown, system);
  return holds(rounded) ? [`would hold with ${measureText("length", rounded, system)} length`] : [];
}

/** One judging for each grade and size, however many offers name it. */
export function judgedOnce(system: System): typeof judgeQuote {
  const known = new Map<string, Judged>();
  const numbers = new Map<NamedDuty, number>();
  return (quote, duty, grade) => {
    const { bore, length, wall, outside, allowance } = quote.values;
    if (!numbers.has(duty)) numbers.set(duty, numbers.size);
    const key = [gradeKey(grade.name), numbers.get(duty), bore, length, wall, outside, allowance].join("|");
    const before = known.get(key);
    if (before) return before;
    const judged = judgeQuote(quote, duty, grade, system);
    known.set(key, judged);
    return judged;
  };
}
