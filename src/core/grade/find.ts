import { noDatum, orList, show } from "../errors";
import { gradeKey, standardLibrary } from "./library";
import type { Grade, Library } from "./library";
import { normal, properties, propertyNamed } from "./properties";
import type { Property } from "./properties";

/** The grade of that name; an unknown one is an error that suggests the nearest names and never picks one. */
export function findGrade(name: string, library: Library = standardLibrary()): Grade {
  const found = library.byName.get(gradeKey(name));
  if (found) return found;
  throw noDatum(
    "grade",
    unknown(
      "grade",
      name,
      library.grades.map((g) => g.name),
      "GRADES() lists the library",
    ),
  );
}

/** The property of that heading; `argument` is the one that names it. */
export function findProperty(heading: string, argument = "property"): Property {
  const found = propertyNamed(heading);
  if (found) return found;
  throw noDatum(
    argument,
    unknown(
      argument,
      heading,
      properties.map((p) => p.heading),
      "GRADES() shows the headings",
    ),
  );
}

function unknown(argument: string, name: string, names: readonly string[], otherwise: string): string {
  const near = nearest(name, names);
  return `${argument} ${show(name)} is unknown; ${near.length > 0 ? `nearest: ${orList(near)}` : otherwise}`;
}

const suggested = 3;

/** Up to three names that contain, or are contained in, or are few keystrokes from the one given. */
export function nearest(name: string, names: readonly string[]): string[] {
  const wanted = normal(name);
  if (wanted === "") return [];
  const farthest = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .map((candidate) => ({ candidate, far: distance(wanted, normal(candidate), farthest) }))
    .filter(({ far }) => far <= farthest)
    .sort((a, b) => a.far - b.far)
    .slice(0, suggested)
    .map(({ candidate }) => candidate);
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
    row = next;
  }
  return row[b.length]!;
}
