import { kinds } from "../../kinds";
import type { Kind, System } from "../../kinds";
import { present } from "../../present";
import { Headings } from "../../table/entry";
import type { ValuesOf } from "../../table/entry";
import { splitHeading } from "../../table/heading";
import type { Curve } from "./curve";
import type { Media } from "./media";
import { body } from "./properties/body";
import { identity, remarks } from "./properties/identity";
import { limits } from "./properties/limits";
import { running } from "./properties/running";
import { suitability } from "./properties/suitability";
import type { PropertyEntry } from "./propertyEntry";

export const ratings = ["poor", "fair", "good"] as const;
export type Rating = (typeof ratings)[number];

/** Every property of a grade, in the order of tables. */
export const propertyList = {
  ...identity,
  ...limits,
  ...running,
  ...body,
  ...suitability,
  ...remarks,
} as const satisfies Record<string, PropertyEntry>;

type List = typeof propertyList;
export type PropertyKey = keyof List;

/** What the kinds that only grades have read as. */
export interface OwnKinds {
  readonly curve: Curve;
  readonly rating: Rating;
  readonly media: Media;
}

/** A grade's data in working units; a property without a value is "no data". The name and the kind are the grade's own. */
export type Values = Omit<ValuesOf<List, OwnKinds>, "grade" | "kind">;

export type Property = PropertyEntry & { readonly key: PropertyKey };

export const properties: readonly Property[] = (Object.keys(propertyList) as PropertyKey[]).map((key) => ({
  key,
  ...propertyList[key],
}));

const byKey = new Map(properties.map((p) => [p.key, p]));
export const property = (key: PropertyKey): Property => present(byKey.get(key));

/** The kind of a number's or a curve's values; `undefined` for words. */
export function kindOf(p: Property): Kind | undefined {
  switch (p.kind) {
    case "curve":
      return p.of;
    case "text":
    case "rating":
    case "choice":
    case "list":
    case "media":
      return undefined;
    default:
      return p.kind;
  }
}

export const propertyHeadings = new Headings<PropertyKey>(propertyList);

/** The property that a heading names, with or without its unit in brackets. */
export function propertyNamed(heading: string): Property | undefined {
  const key = propertyHeadings.find(splitHeading(heading).name);
  return key && property(key);
}

/** "PV limit [MPa·m/s]", "PV at temperature [°C: MPa·m/s]", "swelling saturated [ratio]". */
export function propertyHeading(p: Property, system: System): string {
  const kind = kindOf(p);
  const unit = kind === "percent" ? "ratio" : kind ? kinds[kind][system] : "";
  if (unit === "") return p.heading;
  return `${p.heading} [${p.kind === "curve" ? `${kinds.temperature[system]}: ` : ""}${unit}]`;
}
