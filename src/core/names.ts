import { orList, show } from "./errors";

/** Case, spaces, hyphens and other marks do not count. */
export const normal = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/** The words for a name that is not known: the nearest that are, else what to do. */
export function unknownName(argument: string, name: string, names: readonly string[], otherwise: string): string {
  const near = nearest(name, names);
  return `${argument} ${show(name)} is unknown; ${near.length > 0 ? `nearest: ${orList(near)}` : otherwise}`;
}

const suggested = 3;
/** Pairs of names whose keystrokes are counted out for one name: a tall list of names that are all alike takes no longer. */
const countedOut = 4000;

/** Up to three names that contain, or are contained in, or are few keystrokes from the one given; of a tall list, the nearest of those counted out. */
export function nearest(name: string, names: readonly string[]): string[] {
  const wanted = comparable(name);
  if (wanted.text === "") return [];
  const found: { readonly name: string; readonly far: number }[] = [];
  let farthest = Math.max(1, Math.floor(wanted.text.length / 3));
  let pairs = countedOut;
  for (const candidate of comparables(names)) {
    let far = settled(wanted, candidate, farthest);
    if (far === undefined && pairs-- > 0) far = keystrokes(wanted.text, candidate.text, farthest);
    if (far === undefined || far > farthest) continue;
    const behind = found.findIndex((other) => other.far > far);
    found.splice(behind < 0 ? found.length : behind, 0, { name: candidate.name, far });
    found.splice(suggested);
    // of a hundred thousand names only a nearer one is worth counting out
    const [, , last] = found;
    if (last) farthest = last.far - 1;
    if (farthest < 0) break;
  }
  return found.map((one) => one.name);
}

/** A name as it is compared, with the letters and digits in it as bits, some of which share one. */
interface Comparable {
  readonly name: string;
  readonly text: string;
  readonly letters: number;
}

function comparable(name: string): Comparable {
  const text = normal(name);
  let letters = 0;
  for (let i = 0; i < text.length; i++) letters |= 1 << (text.charCodeAt(i) & 31);
  return { name, text, letters };
}

const known = new WeakMap<readonly string[], readonly Comparable[]>();
/** A list that is asked again and again is made comparable once. */
function comparables(names: readonly string[]): readonly Comparable[] {
  const list = known.get(names) ?? names.map(comparable);
  known.set(names, list);
  return list;
}

/**
 * Keystrokes from one to the other where that is settled without counting them out: a name inside the other is one away, and
 * each letter that the other lacks is a keystroke, which makes most pairs of a long list too far.
 */
function settled(a: Comparable, b: Comparable, most: number): number | undefined {
  if (a.text === b.text) return 0;
  const [missing, surplus] = [bitsOf(b.letters & ~a.letters), bitsOf(a.letters & ~b.letters)];
  const mayContain = (missing === 0 || surplus === 0) && a.text.length > 1 && b.text.length > 1;
  if (mayContain && (a.text.includes(b.text) || b.text.includes(a.text))) return 1;
  return Math.max(missing, surplus, Math.abs(a.text.length - b.text.length)) > most ? Infinity : undefined;
}
function bitsOf(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}

/** One row of the table of distances, used again for each pair: a hundred thousand new ones keep the engine busy clearing up. */
const row: number[] = [];

/** The edit distance, row by row over one text, in the band of cells that may be within `most`; infinite as soon as none of a row is. */
function keystrokes(a: string, b: string, most: number): number {
  for (let j = 0; j <= b.length; j++) row[j] = j;
  for (let i = 1; i <= a.length; i++) {
    const from = Math.max(1, i - most);
    const letter = a.charCodeAt(i - 1);
    let before = row[from - 1] ?? Infinity;
    let left = from === 1 ? i : Infinity;
    let least = left;
    row[from - 1] = left;
    for (let j = from; j <= Math.min(b.length, i + most); j++) {
      const above = j < i + most ? (row[j] ?? Infinity) : Infinity;
      left = Math.min(above + 1, left + 1, letter === b.charCodeAt(j - 1) ? before : before + 1);
      row[j] = left;
      before = above;
      if (left < least) least = left;
    }
    if (least > most) return Infinity;
  }
  return row[b.length] ?? Infinity;
}
