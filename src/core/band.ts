import { behindNumber } from "./numbers";

/** A number known within bounds: any value between its ends alike, or, with `likely`, values about that one the most (triangular). */
export class Band {
  constructor(
    readonly low: number,
    readonly high: number,
    readonly likely?: number,
  ) {}
}

/** What stands between the two ends of a range. */
export const between = /\s+(?:to|bis|à|a)\s+|\s*(?:\.\.\.?|…)\s*|\s+[–—]\s+/i;

/** The two ends of "640 to 960", "5 bis 45", "5 à 45", "−20 – 60", "−20…60"; nothing where the text names one value. */
export function splitEnds(text: string): [string, string] | undefined {
  const [low = "", high = "", ...more] = text.split(between).map((part) => part.trim());
  return low !== "" && high !== "" && more.length === 0 ? [low, high] : undefined;
}

/** Two ends, a unit behind one of them counting for both. */
export function inOneUnit([first, second]: readonly [string, string]): [string, string] {
  const [own, other] = [behindNumber(first), behindNumber(second)];
  return [own === "" ? `${first} ${other}`.trim() : first, other === "" ? `${second} ${own}`.trim() : second];
}

/** The parts of "800 ± 20 %" and "800 +/- 50": the likely value and what it may be off by. */
export function splitTolerance(text: string): [string, string] | undefined {
  const [likely, off, ...more] = text.split(/\s*(?:±|\+\/-|\+-)\s*/);
  return likely !== undefined && off !== undefined && more.length === 0 ? [likely, off] : undefined;
}
