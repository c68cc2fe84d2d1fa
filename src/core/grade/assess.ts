import type { Span } from "../formula";
import type { Kind } from "../kinds";
import type { Grade } from "./library";
import { limitKind, limitOf, speedKey } from "./limits";
import type { LimitKey, Motion } from "./limits";
import type { PropertyKey } from "./properties";
import { boreCloseIn } from "./swell";

/** What a bush has to bear, in working units. */
export interface Duty {
  readonly pressure: number;
  readonly speed: number;
  readonly temperature: Span;
  readonly motion: Motion;
  /** Divides the limits of pressure and PV; 1 unless given. */
  readonly designFactor?: number;
  /** Multiplies the load, and so pressure and PV; 1 unless given. */
  readonly impactFactor?: number;
  readonly wet?: boolean;
  readonly shock?: boolean;
  /** One of the shaft materials of `shafts`. */
  readonly shaft?: string;
  /** Brinell hardness of the shaft. */
  readonly hardness?: number;
  /** Length of the bush over its bore. */
  readonly lengthRatio?: number;
  /** Running hours wanted before the wear allowance (mm) is used up. */
  readonly wear?: { readonly hours: number; readonly allowance: number };
  /** A sleeve pressed into its housing: bore, outside and running clearance in the dry state, mm. */
  readonly fit?: { readonly bore: number; readonly outside: number; readonly clearance: number };
}

export type Criterion =
  | "static pressure"
  | "running pressure"
  | "speed"
  | "PV"
  | "lowest temperature"
  | "highest temperature"
  | "wear"
  | "moisture";

export interface Check {
  readonly criterion: Criterion;
  readonly kind: Kind;
  /** What the duty asks; missing where the grade's data do not allow it to be computed. */
  readonly value?: number;
  readonly limit?: number;
  /** value/limit; temperatures have a margin instead. */
  readonly use?: number;
  /** How far a temperature is inside its limit, K. */
  readonly margin?: number;
  readonly verdict: "OK" | "fails" | "no data";
  /** The property that the limit comes from, or that is missing. */
  readonly property: PropertyKey;
  /** Ends of the curve that the duty's temperature leaves. */
  readonly beyond?: Span;
}

/** A use of exactly 1 holds; conversion of units may leave it a rounding above. */
const rounding = 1e-9;

/** Limits are stated at room temperature, so a lowest temperature need not be known for a duty that is never colder. */
export const roomTemperature = 20;

/**
 * Every criterion that the duty asks of a grade, each with value, limit, use and verdict. At rest the static pressure
 * counts and neither speed nor PV; in motion the running pressure, the motion's speed and PV. Wear and moisture are
 * there where the duty asks for them. A datum that the grade lacks is "no data", never OK.
 */
export function assess(grade: Grade, duty: Duty): Check[] {
  const pressure = duty.pressure * (duty.impactFactor ?? 1);
  const factor = duty.designFactor ?? 1;
  const span = duty.temperature;
  const held =
    duty.motion === "static"
      ? [ratio("static pressure", "staticPressure", pressure, grade, span, factor)]
      : [
          ratio("running pressure", "runningPressure", pressure, grade, span, factor),
          ratio("speed", speedKey(duty.motion), duty.speed, grade, span, 1),
          ratio("PV", "pvLimit", pressure * duty.speed, grade, span, factor),
        ];
  return [
    ...held,
    ...temperatureChecks(grade, span),
    ...wearCheck(grade, duty, pressure),
    ...moistureCheck(grade, duty),
  ];
}

function ratio(criterion: Criterion, key: LimitKey, value: number, grade: Grade, span: Span, factor: number): Check {
  const kind = limitKind(key);
  const limit = limitOf(grade, key, span);
  if (limit.state === "missing") return { criterion, kind, value, verdict: "no data", property: limit.key };
  if (limit.state === "beyond")
    return { criterion, kind, value, verdict: "fails", property: limit.key, beyond: limit.ends };
  return held(criterion, kind, value, limit.value / factor, limit.key);
}

function held(criterion: Criterion, kind: Kind, value: number, limit: number, property: PropertyKey): Check {
  const use = value / limit;
  return { criterion, kind, value, limit, use, verdict: use <= 1 + rounding ? "OK" : "fails", property };
}

/** Both ends of the duty's range against both ends of the grade's. */
export function temperatureChecks({ values }: Grade, { low, high }: Span): Check[] {
  const { lowestTemperature, highestTemperature } = values;
  const needsLowest = lowestTemperature !== undefined || low < roomTemperature;
  return [
    ...(needsLowest ? [temperature("lowest temperature", "lowestTemperature", low, lowestTemperature, 1)] : []),
    temperature("highest temperature", "highestTemperature", high, highestTemperature, -1),
  ];
}

function temperature(
  criterion: Criterion,
  property: PropertyKey,
  value: number,
  limit: number | undefined,
  sign: 1 | -1,
): Check {
  const kind = "temperature";
  if (limit === undefined) return { criterion, kind, value, verdict: "no data", property };
  const margin = sign * (value - limit);
  return { criterion, kind, value, limit, margin, verdict: margin >= -rounding ? "OK" : "fails", property };
}

/** Hours wanted against the shortest life, that of the grade's high wear rate: t = h/(k·p·v·3600). */
function wearCheck({ values }: Grade, { wear, speed, motion }: Duty, pressure: number): Check[] {
  if (!wear || motion === "static") return [];
  const base = { criterion: "wear", kind: "time", value: wear.hours, property: "wearHigh" } as const;
  if (values.wearHigh === undefined) return [{ ...base, verdict: "no data" }];
  const use = (wear.hours * values.wearHigh * pressure * speed * 3600) / wear.allowance;
  // without load or speed nothing wears, and no finite life can be shown
  const limit = use > 0 ? { limit: wear.hours / use } : {};
  return [{ ...base, ...limit, use, verdict: use <= 1 + rounding ? "OK" : "fails" }];
}

/** In a wet duty the bore's close-in at saturation against the running clearance; a clearance of zero binds. */
function moistureCheck({ values }: Grade, { wet, fit }: Duty): Check[] {
  if (!wet) return [];
  const missing = (["swellingSaturated", ...(fit ? (["poisson"] as const) : [])] as const).find(
    (key) => values[key] === undefined,
  );
  const kind = "length";
  if (missing) return [{ criterion: "moisture", kind, verdict: "no data", property: missing }];
  if (!fit) return [];
  const closeIn = boreCloseIn(fit.bore, fit.outside, values.poisson!, values.swellingSaturated! / 100);
  const use = fit.clearance > 0 ? Math.max(0, closeIn) / fit.clearance : undefined;
  return [
    {
      criterion: "moisture",
      kind,
      value: closeIn,
      limit: fit.clearance,
      ...(use === undefined ? {} : { use }),
      verdict: use !== undefined && use < 1 - rounding ? "OK" : "fails",
      property: "swellingSaturated",
    },
  ];
}
