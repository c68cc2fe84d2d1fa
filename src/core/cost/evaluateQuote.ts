import { BushError } from "../errors";
import { assess } from "../duties/judging/assess";
import { statedDuty } from "../duties/model/duty";
import type { Stated } from "../duties/model/duty";
import { verdictOf, verdictText } from "../duties/judging/verdict";
import { findGrade, property } from "../grades/model";
import type { Grade, Library } from "../grades/model";
import type { System } from "../kinds";
import { LIFE } from "../wear/life";
import { has, isRead } from "./quoteNotes";
import type { Notes } from "./quoteNotes";
import { priceOf } from "./quotePrice";
import type { QuotePrice } from "./quotePrice";
import type { Quote } from "./quoteTable";
import { RUNCOST } from "./runCost";

/** What a duty makes of one quote. */
export interface Evaluation extends QuotePrice, Notes {
  readonly quote: Quote;
  readonly verdict: string;
  /** Hours by the grade's greatest wear rate, where the part fits: beyond its limits the linear law says nothing. */
  readonly life?: number;
  /** Cost per 1000 running hours; there where the part fits and nothing is missing. */
  readonly cost?: number;
}

export interface Setting {
  readonly duty: Stated;
  readonly library: Library | undefined;
  /** The table's currency label, where it has one. */
  readonly label: string | undefined;
  readonly judge: (grade: Grade) => Judgement;
}

interface Judgement {
  readonly fits: boolean;
  readonly text: string;
}

/** A duty's verdict on each grade, found once however many quotes name it. */
export function judgeOf(stated: Stated, system: System): (grade: Grade) => Judgement {
  const known = new Map<Grade, Judgement>();
  const duty = statedDuty(stated);
  return (grade) => {
    const before = known.get(grade);
    if (before) return before;
    const checks = assess(grade.values, duty);
    const verdict = verdictOf(checks);
    const judgement = { fits: verdict.word === "fits", text: verdictText(checks, system, verdict) };
    known.set(grade, judgement);
    return judgement;
  };
}

export function evaluateQuote(quote: Quote, { duty, library, label, judge }: Setting): Evaluation {
  const notes: Notes = { reasons: [], remarks: [] };
  const grade = gradeOf(quote, library, notes);
  const judgement = grade && judge(grade);
  const fits = judgement?.fits === true;
  for (const field of ["part", "supplier", "wall", "leadTime"] as const) isRead(quote, field, notes);
  for (const field of ["bore", "length"] as const) has(quote, field, notes);
  const price = priceOf(quote, label, notes);
  const life = lifeOf(quote, duty, grade, notes);
  const { landed } = price;
  const isRanked = fits && notes.reasons.length === 0 && landed !== undefined && life !== undefined;
  return {
    quote,
    verdict: judgement?.text ?? "no data, grade",
    ...price,
    life: fits ? life : undefined,
    cost: isRanked ? RUNCOST({ landed, life }) : undefined,
    ...notes,
  };
}

function gradeOf(quote: Quote, library: Library | undefined, notes: Notes): Grade | undefined {
  if (!has(quote, "grade", notes)) return undefined;
  try {
    return findGrade(quote.grade!, library);
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    notes.reasons.push(error.message);
    return undefined;
  }
}

function lifeOf(quote: Quote, duty: Stated, grade: Grade | undefined, notes: Notes): number | undefined {
  const { pressure, speed, motion } = duty;
  const wears = motion !== "static" && pressure > 0 && speed > 0;
  if (!wears) notes.reasons.push(noWear);
  const hasAllowance = has(quote, "allowance", notes);
  const wearrate = grade?.values.wearHigh;
  if (grade && wearrate === undefined) notes.reasons.push(`no data, ${property("wearHigh").heading}`);
  const isFromBush = grade?.values.wearFrom === "bush";
  if (wearrate !== undefined && !isFromBush) notes.reasons.push(`no data, ${wearFrom}`);
  if (!wears || !hasAllowance || wearrate === undefined || !isFromBush) return undefined;
  const life = LIFE({ wearrate, pressure, speed, allowance: quote.allowance! });
  if (Number.isFinite(life)) return life;
  notes.reasons.push(noWear);
  return undefined;
}

/** A rate of flat tests, or of unknown ones, needs a clearance, which a quote does not have. */
const wearFrom = `${property("wearFrom").heading} (bush)`;
const noWear = "nothing wears in this duty: no cost per running hour";
