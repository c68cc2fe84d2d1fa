import demo from "../../../../data/grades/demo.json";
import generic from "../../../../data/grades/generic.json";
import { fromUnit } from "../../units";
import type { Label } from "./labels";
import { kindOf, property } from "./properties";
import type { PropertyKey, Values } from "./properties";
import { readProperty } from "./readProperty";

export type GradeKind = "generic" | "demo" | "own";

/** The words that tell the kinds apart wherever a grade is shown. */
export const kindText: Record<GradeKind, string> = {
  generic: "generic family",
  demo: "invented for the demo",
  own: "own",
};

/** Where a published value comes from. */
export interface Origin {
  /** A key of data/sources.json. */
  readonly source: string;
  readonly at: string;
  readonly label: Exclude<Label, "own" | "invented">;
  readonly condition?: string;
  /** The number and unit that the source prints. */
  readonly printed: string;
}

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
  /** Headings of the user's table that name no property. */
  readonly unknownColumns: readonly string[];
}

/** How well a grade's figure is founded; its family and description are this library's own words. */
export function labelOf({ kind, origins }: Grade, key: PropertyKey): Label {
  if (kind === "generic") return origins[key]?.label ?? "common practice";
  return kind === "own" ? "own" : "invented";
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
  if (rows === "demo") return { own, scope: invented, grades: invented, byName, unknownColumns };
  return { own, scope: own.length > 0 ? own : families, grades: [...byName.values()], byName, unknownColumns };
}

let standard: Library | undefined;
/** The library of a sheet without own grades. */
export const standardLibrary = (): Library => (standard ??= libraryOf());

let loaded: { readonly families: readonly Grade[]; readonly invented: readonly Grade[] } | undefined;
const builtIn = () =>
  (loaded ??= { families: generic.grades.map(publishedGrade), invented: demo.grades.map(inventedGrade) });

interface PublishedValue extends Omit<Origin, "printed"> {
  readonly value: number;
  readonly unit: string;
}
interface Entry {
  readonly grade: string;
  readonly family: string;
  readonly description: string;
  readonly values: object;
}

function publishedGrade({ grade, family, description, values }: Entry): Grade {
  const entries = Object.entries(values) as [PropertyKey, PublishedValue][];
  const numbers = entries.map(([key, { value, unit }]) => [key, fromUnit(key, kindOf(property(key))!, value, unit)]);
  const origins = entries.map(([key, { value, unit, ...origin }]) => [
    key,
    { ...origin, printed: `${value} ${unit}`.trim() },
  ]);
  return {
    name: grade,
    kind: "generic",
    values: { family, description, ...Object.fromEntries(numbers) },
    origins: Object.fromEntries(origins),
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
