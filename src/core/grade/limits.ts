import type { Span } from "../formula";
import type { Kind } from "../kinds";
import { endsOf, leastOver } from "./curve";
import type { Grade } from "./library";
import { property } from "./properties";
import type { PropertyKey } from "./properties";

export const motions = ["turning", "swinging", "linear", "static"] as const;
export type Motion = (typeof motions)[number];

export type LimitKey =
  "staticPressure" | "runningPressure" | "speedTurning" | "speedSwinging" | "speedLinear" | "pvLimit";

/** A limit as far as the data go. */
export type Limit =
  | { readonly state: "known"; readonly value: number; readonly key: PropertyKey }
  /** The property that would be needed. */
  | { readonly state: "missing"; readonly key: PropertyKey }
  /** The duty's temperature leaves the curve. */
  | { readonly state: "beyond"; readonly key: PropertyKey; readonly ends: Span };

const speedKeys = { turning: "speedTurning", swinging: "speedSwinging", linear: "speedLinear" } as const;
export const speedKey = (motion: Exclude<Motion, "static">): LimitKey => speedKeys[motion];

const curveKeys = {
  staticPressure: "pressureCurve",
  runningPressure: "pressureCurve",
  pvLimit: "pvCurve",
} as const satisfies Partial<Record<LimitKey, PropertyKey>>;
export const curveKey = (key: LimitKey): "pressureCurve" | "pvCurve" | undefined =>
  (curveKeys as Partial<Record<LimitKey, "pressureCurve" | "pvCurve">>)[key];

export const limitKind = (key: LimitKey): Kind => property(key).kind as Kind;

/**
 * The limit over a span of temperature: the grade's limit, capped by its curve where it has one; without a span as it
 * is given. A running pressure limit that is not there falls back to the static one.
 */
export function limitOf({ values }: Grade, key: LimitKey, span?: Span): Limit {
  const used = key === "runningPressure" && values.runningPressure === undefined ? "staticPressure" : key;
  const given = values[used];
  const name = curveKey(key);
  const curve = name && values[name];
  if (!name || !curve || !span) return given === undefined ? { state: "missing", key } : known(given, used);
  const cap = leastOver(curve, span);
  if (cap === undefined) return { state: "beyond", key: name, ends: endsOf(curve) };
  return given !== undefined && given <= cap ? known(given, used) : known(cap, name);
}

const known = (value: number, key: PropertyKey): Limit => ({ state: "known", value, key });
