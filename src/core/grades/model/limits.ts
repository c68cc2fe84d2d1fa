import type { Span } from "../../formula";
import { pvAt, statedAt } from "../../heat/derating";
import { endsOf, leastOver } from "./curve";
import type { Curve } from "./curve";
import type { PropertyKey, Values } from "./properties";

export const motions = ["turning", "swinging", "linear", "static"] as const;
export type Motion = (typeof motions)[number];

export type PressureKey = "staticPressure" | "runningPressure";
export type SpeedKey = "speedTurning" | "speedSwinging" | "speedLinear";
export type LimitKey = PressureKey | SpeedKey | "pvLimit";

interface KnownLimit {
  readonly state: "known";
  readonly value: number;
  readonly key: PropertyKey;
  /** How it comes from the figure of the grade, where it is not that figure itself. */
  readonly how: "curve" | "derated" | undefined;
}
/** A limit of pressure or speed, as far as the data go. */
export type ColdLimit =
  | KnownLimit
  /** The property that would be needed. */
  | { readonly state: "missing"; readonly key: PropertyKey }
  /** The temperature leaves the curve at its hot end. */
  | { readonly state: "beyond"; readonly key: PropertyKey; readonly ends: Span };
export type Limit =
  | ColdLimit
  /** The surroundings are as hot as the material may ever be, or as where its curve is down to 0: no PV is left. */
  | { readonly state: "hot"; readonly key: PropertyKey };

const speedKeys = { turning: "speedTurning", swinging: "speedSwinging", linear: "speedLinear" } as const;
export const speedKey = (motion: Exclude<Motion, "static">): SpeedKey => speedKeys[motion];

const known = (value: number, key: PropertyKey, how?: KnownLimit["how"]): KnownLimit => ({
  state: "known",
  value,
  key,
  how,
});

/** A figure capped by the least of a curve over a span of temperature. */
function capped(
  given: number,
  key: PropertyKey,
  curve: Curve,
  name: "pressureCurve" | "pvCurve",
  span: Span,
): ColdLimit {
  const cap = leastOver(curve, span);
  if (cap === undefined) return { state: "beyond", key: name, ends: endsOf(curve) };
  return given <= cap ? known(given, key) : known(cap, name, "curve");
}

/** A pressure limit over a span of temperature. The curve lowers the figure and never stands in for one that is missing. */
export function pressureLimit(values: Values, key: PressureKey, span: Span): ColdLimit {
  const given = values[key];
  if (given === undefined) return { state: "missing", key };
  const { pressureCurve } = values;
  return pressureCurve ? capped(given, key, pressureCurve, "pressureCurve", span) : known(given, key);
}

export function speedLimit(values: Values, motion: Exclude<Motion, "static">): ColdLimit {
  const key = speedKeys[motion];
  const given = values[key];
  return given === undefined ? { state: "missing", key } : known(given, key);
}

/** By how much a temperature may be off once it was converted, K. */
const converted = 1e-9;

/** The PV limit in surroundings of a span of temperature: by its curve, or derated by the heat balance where there is none. */
export function pvLimit(values: Values, span: Span): Limit {
  const { pvLimit: given, highestTemperature: highest } = values;
  if (given === undefined) return { state: "missing", key: "pvLimit" };
  if (highest !== undefined && span.high >= highest - converted) return { state: "hot", key: "highestTemperature" };
  if (values.pvCurve) {
    const limit = capped(given, "pvLimit", values.pvCurve, "pvCurve", span);
    return limit.state === "known" && limit.value === 0 ? { state: "hot", key: "pvCurve" } : limit;
  }
  // at 23 °C, where PV limits are stated, there must be room for friction heat
  if (highest === undefined || highest <= statedAt) return { state: "missing", key: "highestTemperature" };
  const derated = pvAt(given, highest, span.high);
  return derated === given ? known(given, "pvLimit") : known(derated, "pvLimit", "derated");
}
