import list from "../../../data/properties.json";
import type { Bounds } from "../domain";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import type { Curve } from "./curve";

export type Rating = "poor" | "fair" | "good";
export const ratings: readonly Rating[] = ["poor", "fair", "good"];

/** A grade's data in working units; a property without a value is "no data". */
export interface Values {
  family?: string;
  description?: string;
  staticPressure?: number;
  runningPressure?: number;
  speedTurning?: number;
  speedSwinging?: number;
  speedLinear?: number;
  pvLimit?: number;
  lowestTemperature?: number;
  highestTemperature?: number;
  shortTermTemperature?: number;
  pressureCurve?: Curve;
  pvCurve?: Curve;
  frictionLow?: number;
  frictionHigh?: number;
  wearLow?: number;
  wearHigh?: number;
  compressiveStrength?: number;
  compressiveModulus?: number;
  poisson?: number;
  expansion?: number;
  conductivity?: number;
  water50?: number;
  waterSaturated?: number;
  swelling50?: number;
  swellingSaturated?: number;
  density?: number;
  shock?: Rating;
  edgeLoad?: Rating;
  dirt?: Rating;
  damping?: Rating;
  softShaft?: Rating;
  roughShaft?: Rating;
  chemicals?: Rating;
  vacuum?: Rating;
  shafts?: readonly string[];
  shaftHardness?: number;
  source?: string;
  notes?: string;
}
export type PropertyKey = "grade" | "kind" | keyof Values;

/** One entry of data/properties.json; bounds are in working units, wide enough for any real part, so that a slip shows. */
export interface Property extends Omit<Bounds, "kind"> {
  readonly key: PropertyKey;
  readonly heading: string;
  readonly kind: Kind | "text" | "rating" | "list" | "curve";
  /** Kind of a curve's values. */
  readonly of?: Kind;
  readonly group: string;
  readonly text: string;
  /** The usual test. */
  readonly method?: string;
}

export const properties = list as readonly Property[];

/** The kind of a number's or a curve's values; `undefined` for words. */
export function kindOf({ kind, of }: Property): Kind | undefined {
  if (kind === "curve") return of;
  return kind === "text" || kind === "rating" || kind === "list" ? undefined : kind;
}

/** Case, spaces, hyphens and other marks do not count in a heading. */
export const normal = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

const byName = new Map(properties.flatMap((p) => [p.heading, p.key].map((name) => [normal(name), p] as const)));
const byKey = new Map(properties.map((p) => [p.key, p]));

export const property = (key: PropertyKey): Property => byKey.get(key)!;

/** The property that a heading names, with or without its unit in brackets. */
export const propertyNamed = (heading: string): Property | undefined => byName.get(normal(splitHeading(heading).name));

/** "PV limit [psi*ft/min]" as name and unit; round brackets serve too. */
export function splitHeading(heading: string): { name: string; unit?: string } {
  const found = /^(.*?)\s*(?:\[([^\]]*)\]|\((.*)\))\s*$/.exec(heading);
  if (!found) return { name: heading.trim() };
  const unit = (found[2] ?? found[3] ?? "").trim();
  return { name: found[1]!.trim(), ...(unit && unit !== "-" && unit !== "–" ? { unit } : {}) };
}

/** "PV limit [MPa·m/s]", "PV at temperature [°C: MPa·m/s]". */
export function headingOf(p: Property, system: System): string {
  const kind = kindOf(p);
  const unit = kind ? kinds[kind][system] : "";
  if (unit === "") return p.heading;
  return `${p.heading} [${p.kind === "curve" ? `${kinds.temperature[system]}: ` : ""}${unit}]`;
}
