import demo from "../../../data/grades/demo.json";
import generic from "../../../data/grades/generic.json";
import { fromUnit } from "../units";
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
  /** Own grades first; a built-in grade of the same name gives way to them. */
  readonly grades: readonly Grade[];
  readonly byName: ReadonlyMap<string, Grade>;
  /** What is looked at where no grade is named: the user's own rows, else the generic families. */
  readonly scope: readonly Grade[];
  /** Headings of the user's table that name no property. */
  readonly unknownColumns: readonly string[];
}

/** Case and space do not count in a grade's name. */
export const gradeKey = (name: string): string => name.toLowerCase().replace(/\s+/g, "");

/** The built-in grades, behind the user's own where there are any. */
export function libraryOf(own: readonly Grade[] = [], unknownColumns: readonly string[] = []): Library {
  const byName = new Map<string, Grade>();
  for (const grade of [...own, ...builtIn()])
    if (!byName.has(gradeKey(grade.name))) byName.set(gradeKey(grade.name), grade);
  const scope = own.length > 0 ? own : builtIn().filter(({ kind }) => kind === "generic");
  return { grades: [...byName.values()], byName, scope, unknownColumns };
}

let standard: Library | undefined;
/** The library of a sheet without own grades. */
export const standardLibrary = (): Library => (standard ??= libraryOf());

/** The invented grades, asked for by the word "demo". */
export const demoLibrary = (): Library => ({
  ...standardLibrary(),
  scope: builtIn().filter(({ kind }) => kind === "demo"),
});

let loaded: readonly Grade[] | undefined;
const builtIn = (): readonly Grade[] => (loaded ??= [...generic.grades.map(published), ...demo.grades.map(invented)]);

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

function published({ grade, family, description, values }: Entry): Grade {
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
function invented({ grade, family, description, values }: Entry): Grade {
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
