import type { Ranked } from "../../core/duties";
import { BushError, orFault } from "../../core/errors";
import { kindOf, kindText, properties, property } from "../../core/grades/model";
import type { GradeKind, PropertyKey } from "../../core/grades/model";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { readIn } from "../../core/table/readValue";

export interface Filter {
  readonly text: string;
  readonly kind: GradeKind | "";
  /** Keeps grades whose property is known and at least, or at most, the bound. */
  readonly property: PropertyKey | "";
  readonly side: "least" | "most";
  readonly bound: string;
}
export const noFilter: Filter = { text: "", kind: "", property: "", side: "least", bound: "" };

export type Order = "rank" | "name" | PropertyKey;

/** Properties that are one number. */
export const numberProperties = properties.filter((p) => kindOf(p) !== undefined && p.kind !== "curve");

const collator = new Intl.Collator("en", { numeric: true });

export interface Filtered {
  readonly list: readonly Ranked[];
  readonly fault?: string;
}

/** The grades that pass, in the order asked for; grades without the datum stand last and are left out by a bound on it. */
export function filterRanked(ranked: readonly Ranked[], filter: Filter, order: Order, system: System): Filtered {
  const bound = boundOf(filter, system);
  if (bound instanceof BushError) return { list: ranked, fault: bound.message };
  const words = filter.text.toLowerCase().split(/\s+/).filter(Boolean);
  const list = ranked.filter(({ grade }) => {
    if (filter.kind && grade.kind !== filter.kind) return false;
    const text =
      `${grade.name} ${kindText[grade.kind]} ${grade.values.family ?? ""} ${grade.values.description ?? ""}`.toLowerCase();
    if (!words.every((word) => text.includes(word))) return false;
    if (bound === undefined) return true;
    const value = numberOf(grade.values, filter.property);
    return value !== undefined && (filter.side === "least" ? value >= bound : value <= bound);
  });
  return { list: sorted(list, order) };
}

/** The unit of a bound that names none: the one in which the pane shows the property. */
export function boundUnit(key: PropertyKey, system: System): string {
  const kind = present(kindOf(property(key)));
  return kind === "percent" ? "%" : kinds[kind][system];
}

function boundOf({ property: key, bound }: Filter, system: System): number | undefined | BushError {
  if (key === "" || bound.trim() === "") return undefined;
  const p = property(key);
  return orFault(() => readIn(p.heading, present(kindOf(p)), bound, boundUnit(key, system) || undefined, system));
}

const numberOf = (values: Ranked["grade"]["values"], key: string): number | undefined => {
  const value = (values as Record<string, unknown>)[key];
  return typeof value === "number" ? value : undefined;
};

function sorted(list: readonly Ranked[], order: Order): readonly Ranked[] {
  if (order === "rank") return list;
  if (order === "name") return [...list].sort((a, b) => collator.compare(a.grade.name, b.grade.name));
  const value = ({ grade }: Ranked) => numberOf(grade.values, order) ?? -Infinity;
  return [...list].sort((a, b) => value(b) - value(a) || 0);
}
