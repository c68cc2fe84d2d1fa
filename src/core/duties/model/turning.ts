import { BushError } from "../../errors";
import { halved } from "../../grades/halved";
import { present } from "../../present";
import { words } from "../judging/criterion";
import type { Word } from "../judging/criterion";
import type { Movable } from "./movable";
import type { Verdict } from "../judging/verdict";

/** A duty with one number elsewhere, as it is judged. */
export interface Moved {
  /** How many corners the duty's bands have. */
  readonly corners: number;
  /** The word of the verdict by its place from the worst, over all corners or at one; −1 where there is no such duty. */
  rankAt(value: number, corner?: number): number;
  /** The verdict, or why there is no such duty. */
  verdictAt(value: number): Verdict | BushError;
}

/** Where the word of a verdict turns. */
export interface Turn {
  /** The last value at which the word holds, or the end of the path that alone has another. */
  readonly at: number;
  /** Whether it is that end. */
  readonly isEnd: boolean;
  /** The word beyond it; none where there is no duty. */
  readonly word: Word | undefined;
  /** The criterion that turned it, or why there is no duty beyond. */
  readonly stoppedBy: string;
  /** Whether the verdict, further out, never turns back: better after it was worse, or worse after it was better. */
  readonly isMonotone: boolean;
}

/** The way that a number is moved: down or up. */
export type Way = -1 | 1;

/** From 1 to 1000, four to the decade. */
const strides = Array.from({ length: 13 }, (_, i) => 10 ** (i / 4));

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
export function turnOf(moved: Moved, start: number, path: readonly number[]): Turn | undefined {
  const here = moved.rankAt(start);
  const ranks: number[] = [];
  for (const point of path) {
    const rank = moved.rankAt(point);
    ranks.push(rank);
    if (rank < 0) break;
  }
  const first = ranks.findIndex((rank) => rank !== here);
  if (first < 0) return undefined;
  const [before, turned] = [start, ...path].slice(first);
  const bracket = [present(before), present(turned)] as const;
  const [last, beyond] = neighbours(moved, here, bracket, 1e-18 * Math.abs(start));
  const isMonotone = goesOneWay([here, ...ranks.filter((rank) => rank >= 0)]);
  const isUp = beyond > last;
  const off = 1e-7 * Math.max(Math.abs(last), Math.abs(start));
  const end = present(path[path.length - 1]);
  // where the end of the path alone is different, that is the limit
  const isEnd = beyond === end && Math.abs(last - end) <= 1e-15 * Math.abs(start);
  const at = isEnd ? end : last;
  const after = seenFrom(moved, beyond, isUp ? Math.min(beyond + off, end) : Math.max(beyond - off, end));
  if (after instanceof BushError) return { at, isEnd, word: undefined, stoppedBy: after.message, isMonotone };
  // the worst of the worse side is what turns a verdict
  const isWorse = words.indexOf(after.word) < here;
  const { governing } = isWorse ? after : (seenFrom(moved, last, isUp ? last - off : last + off) as Verdict);
  return { at, isEnd, word: after.word, stoppedBy: governing.criterion.heading, isMonotone };
}

/** The verdict at a value. Criteria that turn together do so a rounding apart; which of them governs is seen farther off. */
function seenFrom(moved: Moved, value: number, farther: number): Verdict | BushError {
  const [near, far] = [moved.verdictAt(value), moved.verdictAt(farther)];
  const isSame = !(near instanceof BushError) && !(far instanceof BushError) && near.word === far.word;
  return isSame ? far : near;
}

const goesOneWay = (ranks: readonly number[]): boolean => {
  const moves = ranks.slice(1).map((rank, i) => rank - present(ranks[i]));
  return moves.every((move) => move <= 0) || moves.every((move) => move >= 0);
};

/**
 * Two neighbours between which the word turns, by halving. A single corner of the bands decides: one that is worse
 * beyond or, where all become better, one that holds before. It is halved alone, and again with another one where that
 * decides earlier.
 */
function neighbours(
  moved: Moved,
  here: number,
  [from, to]: readonly [number, number],
  finest: number,
): readonly [number, number] {
  const corners = Array.from({ length: moved.corners }, (_, corner) => corner);
  let [inside, outside] = [from, to];
  for (;;) {
    const isWorse = moved.rankAt(outside) < here;
    const isHeld = (value: number, corner: number) =>
      isWorse ? moved.rankAt(value, corner) >= here : moved.rankAt(value, corner) <= here;
    const deciding = present(corners.find((corner) => (isWorse ? !isHeld(outside, corner) : isHeld(inside, corner))));
    const [last, next] = halved((value) => isHeld(value, deciding), inside, outside, finest);
    if (isWorse && moved.rankAt(last) !== here) outside = last;
    else if (!isWorse && moved.rankAt(next) === here) inside = next;
    else return [last, next];
  }
}
