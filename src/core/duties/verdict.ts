import { property } from "../grade/properties";
import type { System } from "../kinds";
import { percentText } from "../measure";
import { rounding, words } from "./criterion";
import type { Check, Word } from "./criterion";
import { field } from "./fields";

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
  const word = words.find((candidate) => checks.some((check) => check.word === candidate))!;
  const worst = checks.filter((check) => check.word === word);
  const isOutside = checks.find(({ criterion, word: found }) => found === "fails" && outside.has(criterion.id));
  const governing = isOutside ?? greatest(worst);
  const top = greatest(checks);
  const isUnknown = checks.some((check) => check.word === "no data");
  const use = isOutside || isUnknown ? undefined : (governing.use ?? top.use);
  const isTold = governing.say !== undefined || governing.use === undefined;
  const next = isTold && !isOutside && word !== "no data" && top.use !== undefined ? top : undefined;
  return { word, governing, use, next };
}

/** The check with the greatest use, the first of equals; the first of all where none has a use. */
const greatest = (checks: readonly Check[]): Check =>
  checks.reduce((a, b) => ((b.use ?? -1) > (a.use ?? -1) + rounding * Math.abs(a.use ?? 0) ? b : a));

/** "fits, PV 62 %", "care, shaft 150 HB, at least 300 HB wanted; PV 72 %", "no data, speed"; swelling is told in any case. */
export function verdictText(checks: readonly Check[], system: System, verdict = verdictOf(checks)): string {
  const { word, governing, next } = verdict;
  const told = checks.flatMap((check) => (check.tell ? [check.tell(system)] : []));
  const ratio = next && next !== governing ? [reasonOf(next, system, true)] : [];
  return `${word}, ${[reasonOf(governing, system), ...ratio, ...told].join("; ")}`;
}

/** A check in a few words, its numbers in the sheet's units; `inPercent` where its words were said already. */
export function reasonOf(check: Check, system: System, inPercent = false): string {
  const { criterion, word, use, say, property: key, field: unstated } = check;
  if (say && !inPercent) return say(system);
  if (word === "no data") return missingReason(criterion.heading, unstated ? field(unstated).heading : property(key!).heading);
  return use === undefined ? criterion.heading : `${criterion.heading} ${percentText(use)}`;
}

/** "speed" where the speed limit is missing, "wear life: wear rate high" where the heading does not name it. */
const missingReason = (heading: string, missing: string): string =>
  missing.includes(heading) ? heading : `${heading}: ${missing}`;

/** The datum that is missing, as a phrase: "speed limit turning". */
export const missingText = ({ field: unstated, property: key }: Check): string =>
  unstated ? field(unstated).heading : property(key!).heading;
