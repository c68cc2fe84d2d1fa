import { orList, show } from "./errors";

/** Case, spaces, hyphens and other marks do not count. */
export const normal = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/** The words for a name that is not known: the nearest that are, else what to do. */
export function unknownName(argument: string, name: string, names: readonly string[], otherwise: string): string {
  const near = nearest(name, names);
  return `${argument} ${show(name)} is unknown; ${near.length > 0 ? `nearest: ${orList(near)}` : otherwise}`;
}

const suggested = 3;

/** Up to three names that contain, or are contained in, or are few keystrokes from the one given. */
export function nearest(name: string, names: readonly string[]): string[] {
  const wanted = normal(name);
  if (wanted === "") return [];
  const found: { readonly at: number; readonly far: number }[] = [];
  let farthest = Math.max(1, Math.floor(wanted.length / 3));
  const candidates = normalsOf(names);
  for (let at = 0; at < candidates.length && farthest >= 0; at++) {
    const far = distance(wanted, candidates[at]!, farthest);
    if (far > farthest) continue;
    const behind = found.findIndex((other) => other.far > far);
    found.splice(behind < 0 ? found.length : behind, 0, { at, far });
    found.splice(suggested);
    // of a hundred thousand names only a nearer one is worth counting out
    if (found.length === suggested) farthest = found.at(-1)!.far - 1;
  }
  return found.map(({ at }) => names[at]!);
}

const normals = new WeakMap<readonly string[], readonly string[]>();
/** A list that is asked again and again is made comparable once. */
function normalsOf(names: readonly string[]): readonly string[] {
  const known = normals.get(names) ?? names.map(normal);
  normals.set(names, known);
  return known;
}

/** Keystrokes from one to the other, not counted out where they must be above `most`; a name inside the other is one away. */
function distance(a: string, b: string, most: number): number {
  if (a === b) return 0;
  if (a.length > 1 && b.length > 1 && (a.includes(b) || b.includes(a))) return 1;
  if (Math.abs(a.length - b.length) > most) return Infinity;
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    if (Math.min(...next) > most) return Infinity;
    row = next;
  }
  return row[b.length]!;
}
