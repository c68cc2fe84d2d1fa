import demo from "../../../../data/grades/demo.json";
import generic from "../../../../data/grades/generic.json";
import { present } from "../../present";
import type { Label } from "./labels";
import { weakest } from "./labels";
import type { Origin } from "./origin";
import type { PropertyKey, Values } from "./properties";
import { publishedOrigin, publishedMedia, publishedValue } from "./published";
import type { PublishedMedia, PublishedValue } from "./published";
import { readProperty } from "./readProperty";

export type GradeKind = "generic" | "demo" | "own";

/** The words that tell the kinds apart wherever a grade is shown. */
export const kindText: Record<GradeKind, string> = {
  generic: "generic family",
  demo: "invented for the demo",
  own: "own",
};

export interface Grade {
  readonly name: string;
  readonly kind: GradeKind;
  readonly values: Values;
  readonly origins: { readonly [K in PropertyKey]?: Origin };
  /** Columns of a user's table that are no property: kept as they are. */
  readonly extra: readonly (readonly [heading: string, text: string])[];
}

export interface Library {
  /** The user's rows alone. */
  readonly own: readonly Grade[];
  /** Where a grade is looked for that nobody named: the own rows, without any the generic families; "demo" asks for the invented. */
  readonly scope: readonly Grade[];
  /** What a table of grades lists: own grades first, a built-in grade of the same name giving way to them; or the invented ones. */
  readonly grades: readonly Grade[];
  /** Every grade that can be named. */
  readonly byName: ReadonlyMap<string, Grade>;
  /** Their names as written. */
  readonly names: readonly string[];
  /** Headings of the user's table that name no property. */
  readonly unknownColumns: readonly string[];
}

/**
 * How well a grade's figure is founded, of its media the weakest rating, of those named where any are; family and description
 * are this library's own words.
 */
export function labelOf({ kind, origins, values }: Grade, key: PropertyKey, media?: readonly string[]): Label {
  if (kind === "generic" && key === "media") return weakestRating(values, media);
  if (kind === "generic") return origins[key]?.label ?? "common practice";
  return kind === "own" ? "own" : "invented";
}

function weakestRating({ media = [] }: Values, named?: readonly string[]): Label {
  const counted = named ? media.filter(({ medium }) => named.includes(medium)) : media;
  return weakest(counted.map(({ origin }) => present(origin).label)) ?? "common practice";
}

/** Case and space do not count in a grade's name. */
export const gradeKey = (name: string): string => name.toLowerCase().replace(/\s+/g, "");

/** The built-in grades behind the user's own, where there are any; "demo" puts the invented ones forward. */
export function libraryOf(rows: readonly Grade[] | "demo" = [], unknownColumns: readonly string[] = []): Library {
  const { families, invented } = builtIn();
  const own = rows === "demo" ? [] : rows;
  const byName = new Map<string, Grade>();
  for (const grade of [...own, ...families, ...invented])
    if (!byName.has(gradeKey(grade.name))) byName.set(gradeKey(grade.name), grade);
  const named = [...byName.values()];
  const names = named.map(({ name }) => name);
  if (rows === "demo") return { own, scope: invented, grades: invented, byName, names, unknownColumns };
  return { own, scope: own.length > 0 ? own : families, grades: named, byName, names, unknownColumns };
}

let standard: Library | undefined;
/** The library of a sheet without own grades. */
export const standardLibrary = (): Library => (standard ??= libraryOf());

let loaded: { readonly families: readonly Grade[]; readonly invented: readonly Grade[] } | undefined;
const builtIn = () =>
  (loaded ??= {
    families: (generic.grades as PublishedEntry[]).map(publishedGrade),
    invented: demo.grades.map(inventedGrade),
  });

interface Entry {
  readonly grade: string;
  readonly family: string;
  readonly description: string;
  readonly values: object;
}

interface PublishedEntry extends Entry {
  readonly media: readonly PublishedMedia[];
}

function publishedGrade({ grade, family, description, values, media }: PublishedEntry): Grade {
  const entries = Object.entries(values) as [PropertyKey, PublishedValue][];
  return {
    name: grade,
    kind: "generic",
    values: {
      family,
      description,
      ...Object.fromEntries(entries.map(([key, published]) => [key, publishedValue(key, published)])),
      media: publishedMedia(media),
    },
    origins: Object.fromEntries(entries.map(([key, published]) => [key, publishedOrigin(key, published)])),
    extra: [],
  };
}

/** An invented grade is written in working units. */
function inventedGrade({ grade, family, description, values }: Entry): Grade {
  const read = Object.entries(values).map(([key, value]: [string, number | string]) => [
    key,
    typeof value === "number" ? value : readProperty(key as PropertyKey, value, undefined, "metric"),
  ]);
  return {
    name: grade,
    kind: "demo",
    values: { family, description, ...Object.fromEntries(read) },
    origins: {},
    extra: [],
  };
}
