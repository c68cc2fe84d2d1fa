import type { Answer } from "../../formula";
import { words } from "../judging/criterion";
import type { Word } from "../judging/criterion";

/** How many points count for a share. */
export const sampleCount = 2048;

/** A corner of the bands, the point with each band at its likely value or its middle, or one that counts for the share. */
export type Point = "corner" | "likely" | "sample";

/** What one criterion, or the whole verdict, comes to over the points of a duty's bands. */
export class BandTally {
  private best = Infinity;
  private worst = -Infinity;
  private likely: number | undefined;
  /** The worst word. */
  private word: Word = "fits";
  /** Whether a point has no ratio to tell how far it is from its limit. */
  private isUntold = false;
  private hasData = true;
  private fails = 0;
  private failingSamples = 0;

  add(word: Word, use: number | undefined, point: Point): void {
    if (words.indexOf(word) < words.indexOf(this.word)) this.word = word;
    if (word === "no data") this.hasData = false;
    if (word === "fails") {
      this.fails++;
      if (point === "sample") this.failingSamples++;
    }
    if (point === "likely") this.likely = use;
    if (use === undefined) this.isUntold = true;
    else {
      this.best = Math.min(this.best, use);
      this.worst = Math.max(this.worst, use);
    }
  }

  /** Best, likely and worst use, the worst word, and how much of the band passes, over so many points. */
  answers(points: number): Answer[] {
    const { best, likely, worst, isUntold, word } = this;
    return [
      best === Infinity ? "" : best,
      likely ?? "",
      // where it is not told how far a point is beyond, the greatest ratio is not the worst
      isUntold ? "" : worst,
      word,
      this.share(points),
    ];
  }

  private share(points: number): string {
    if (this.fails === points) return "fails throughout";
    if (!this.hasData) return "no data";
    if (this.fails === 0) return "passes throughout";
    return shareText((sampleCount - this.failingSamples) / sampleCount);
  }
}

/** Whole percent; between the bounds nothing is certain. */
export function shareText(share: number): string {
  if (share < 0.01) return "<1 %";
  return share > 0.99 ? ">99 %" : `${Math.round(share * 100)} %`;
}
