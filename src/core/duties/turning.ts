import { BushError } from "../errors";
import { words } from "./criterion";
import type { Word } from "./criterion";
import type { Movable } from "./movable";
import type { Verdict } from "./verdict";

/** What a duty comes to with a number elsewhere: its verdict, or why there is no such duty. */
export type Outcome = Verdict | BushError;
/** The outcome at a value, over all corners of the duty's bands or at one of them. */
export type OutcomeAt = (value: number, corner?: number) => Outcome;

/** Where the word of a verdict turns. */
export interface Turn {
  /** The last value at which the word holds. */
  readonly at: number;
  /** The word beyond it; none where there is no duty. */
  readonly word: Word | undefined;
  /** The criterion that turned it, or why there is no duty beyond. */
  readonly stoppedBy: string;
  /** Whether the verdict, further out, never turns back: better after it was worse, or worse after it was better. */
  readonly isMonotone: boolean;
}

/** The way that a number is moved: down or up. */
export type Way = -1 | 1;

/** From 1 to 1000, five to the decade. */
const strides = Array.from({ length: 16 }, (_, i) => 10 ** (i / 5));

/** Coarse points from a value to the end of its domain, or to a thousand times it; temperatures to 1000 K from it. */
export function pathOf({ kind, value, least, most }: Omit<Movable, "label" | "to">, way: Way): number[] {
  const end = way < 0 ? least : most;
  const points = strides.map((stride) => {
    if (kind === "temperature") return value + way * stride;
    return value === 0 ? way * 1e-6 * stride ** 4 : value * stride ** way;
  });
  const isBefore = (point: number) => Number.isFinite(point) && (end === undefined || way * (end - point) > 0);
  const between = points.filter((point) => point !== value && isBefore(point));
  return end === undefined || end === value ? between : [...between, end];
}

/** Where the word of the verdict turns first on a path; nothing where it never does. */
export function turnOf(
  outcomeAt: OutcomeAt,
  corners: number,
  start: number,
  path: readonly number[],
): Turn | undefined {
  const { word } = outcomeAt(start) as Verdict;
  const seen: Outcome[] = [];
  for (const point of path) {
    const outcome = outcomeAt(point);
    seen.push(outcome);
    if (outcome instanceof BushError) break;
  }
  const first = seen.findIndex((outcome) => !holds(outcome, word));
  if (first < 0) return undefined;
  const bracket = [first === 0 ? start : path[first - 1]!, path[first]!] as const;
  const [last, next] = neighbours(outcomeAt, corners, word, bracket, 1e-18 * Math.abs(start));
  const [before, after] = [outcomeAt(last) as Verdict, outcomeAt(next)];
  const found = { at: last, isMonotone: goesOneWay([rankOf(before), ...seen.map(rankOf)]) };
  if (after instanceof BushError) return { ...found, word: undefined, stoppedBy: after.message };
  // the worst of the worse side is what turns a verdict
  const { governing } = rankOf(after) < rankOf(before) ? after : before;
  return { ...found, word: after.word, stoppedBy: governing.criterion.heading };
}

const holds = (outcome: Outcome, word: Word): boolean => !(outcome instanceof BushError) && outcome.word === word;
/** From the worst; where there is no duty worse than any. */
const rankOf = (outcome: Outcome): number => (outcome instanceof BushError ? -1 : words.indexOf(outcome.word));

const goesOneWay = (ranks: readonly number[]): boolean => {
  const moves = ranks.slice(1).map((rank, i) => rank - ranks[i]!);
  return moves.every((move) => move <= 0) || moves.every((move) => move >= 0);
};

/**
 * Two neighbours between which the word turns, by halving. A single corner of the bands decides: one that is worse
 * beyond, or, where all become better, one that holds before. It is halved alone, and again with another one where that
 * decides earlier.
 */
function neighbours(
  outcomeAt: OutcomeAt,
  corners: number,
  word: Word,
  [from, to]: readonly [number, number],
  finest: number,
): readonly [number, number] {
  const rank = words.indexOf(word);
  let [inside, outside] = [from, to];
  for (;;) {
    const isWorse = rankOf(outcomeAt(outside)) < rank;
    const isHeld = (value: number, corner: number) => {
      const found = rankOf(outcomeAt(value, corner));
      return isWorse ? found >= rank : found <= rank;
    };
    const all = Array.from({ length: corners }, (_, corner) => corner);
    const deciding = all.find((corner) => (isWorse ? !isHeld(outside, corner) : isHeld(inside, corner)))!;
    const [last, next] = halved((value) => isHeld(value, deciding), inside, outside, finest);
    if (isWorse && !holds(outcomeAt(last), word)) outside = last;
    else if (!isWorse && holds(outcomeAt(next), word)) inside = next;
    else return [last, next];
  }
}

/** Halves until no double lies between, or nothing that counts. */
function halved(isHeld: (value: number) => boolean, inside: number, outside: number, finest: number): [number, number] {
  while (Math.abs(outside - inside) > finest) {
    const middle = inside + (outside - inside) / 2;
    if (middle === inside || middle === outside) break;
    if (isHeld(middle)) inside = middle;
    else outside = middle;
  }
  return [inside, outside];
}
