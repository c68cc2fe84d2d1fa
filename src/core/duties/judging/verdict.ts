import { property } from "../../grades/model/properties";
import type { System } from "../../kinds";
import { percentText } from "../../measure";
import { present } from "../../present";
import { rounding, words } from "./criterion";
import type { Check, Finding, Word } from "./criterion";
import { field } from "../model/fields";

export interface Verdict {
  readonly word: Word;
  /** Of the worst word: surroundings outside the grade's temperatures, else the greatest use, else the first of the list. */
  readonly governing: Check;
  /** The governing use, or the greatest where the governing criterion has none; nothing where data are missing or the surroundings are outside. */
  readonly use?: number | undefined;
  /** The criterion with the greatest use, where the governing one is told in words. */
  readonly next?: Check | undefined;
}

const outside: ReadonlySet<string> = new Set(["highestTemperature", "lowestTemperature"]);

export function verdictOf(checks: readonly Check[]): Verdict {
  let worst = present(checks[0]);
  let top = worst;
  let isOutside: Check | undefined;
  let isUnknown = false;
  for (const check of checks) {
    if (isWorse(check, worst)) worst = check;
    if (isGreater(check, top)) top = check;
    if (check.word === "no data") isUnknown = true;
    if (check.word === "fails" && outside.has(check.criterion.id)) isOutside ??= check;
  }
  if (isOutside) return { word: isOutside.word, governing: isOutside, use: undefined, next: undefined };
  const use = isUnknown || isBeyond(worst) ? undefined : (worst.use ?? top.use);
  return { word: worst.word, governing: worst, use, next: nextOf(worst, top) };
}

/** The figure that follows where what governs is told in words. */
function nextOf({ word, say, use }: Check, top: Check): Check | undefined {
  if (word === "no data" || top.use === undefined) return undefined;
  return say !== undefined || use === undefined ? top : undefined;
}

/** A figure that fails without a limit, as where the temperature is beyond a curve: no ratio tells how far. */
const isBeyond = ({ word, value, limit }: Check): boolean =>
  word === "fails" && value !== undefined && limit === undefined;

const rankOf = Object.fromEntries(words.map((word, i) => [word, i])) as Readonly<Record<Word, number>>;

function isWorse(check: Check, than: Check): boolean {
  const step = rankOf[check.word] - rankOf[than.word];
  return step < 0 || (step === 0 && isGreater(check, than));
}

/** Beyond a rounding, so that the first of equals governs. */
const isGreater = (a: Check, b: Check): boolean => (a.use ?? -1) > (b.use ?? -1) + rounding * (b.use ?? 0);

/** "fits, PV 62 %", "care, shaft 150 HB, at least 300 HB wanted; PV 72 %", "no data, speed"; swelling is told in any case. */
export function verdictText(checks: readonly Check[], system: System, verdict = verdictOf(checks)): string {
  const { word, governing, next } = verdict;
  let text = `${word}, ${reasonOf(governing, system)}`;
  if (next && next !== governing) text += `; ${reasonOf(next, system, true)}`;
  // what fails does so by a limit that was not lowered, too
  const caveat = word === "fails" ? undefined : (governing.caveat ?? next?.caveat);
  if (caveat) text += `; ${caveat}`;
  for (const { tell } of checks) if (tell) text += `; ${tell(system)}`;
  return text;
}

/** A use from which on per cents say nothing, nor whether a number can still hold it. */
const beyondTelling = 1e6;

/** A check in a few words, its numbers in the sheet's units; `inPercent` where its words were said already. */
export function reasonOf(check: Check, system: System, inPercent = false): string {
  const { criterion, word, use, say } = check;
  if (say && !inPercent) return say(system);
  if (word === "no data") return missingReason(criterion.heading, missingText(check));
  if (use === undefined) return criterion.heading;
  return use < beyondTelling ? `${criterion.heading} ${percentText(use)}` : `${criterion.heading} far beyond its limit`;
}

/** "speed" where the speed limit is missing, "wear life: wear rate high" where the heading does not name it. */
const missingReason = (heading: string, missing: string): string =>
  missing.includes(heading) ? heading : `${heading}: ${missing}`;

/** The datum that is missing, as a phrase: "speed limit turning". */
export const missingText = ({ field: unstated, property: key }: Finding): string =>
  unstated ? field(unstated).heading : property(present(key)).heading;
