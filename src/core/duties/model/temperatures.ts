import type { Span } from "../../formula";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { boreAt, statedAt } from "../../heat/derating";
import { isMissing } from "../judging/criterion";
import type { Duty } from "./duty";
import { pathRises } from "./heatPaths";

/** By how much friction warms the bore above its surroundings, K, as the PV limit of the grade implies; or the figure that is missing. */
export function impliedRise({ pvLimit, highestTemperature }: Values, { isMoving, pv }: Duty): number | PropertyKey {
  if (!isMoving) return 0;
  if (pvLimit === undefined) return "pvLimit";
  if (highestTemperature === undefined || highestTemperature <= statedAt) return "highestTemperature";
  return boreAt(pv, pvLimit, highestTemperature, 0);
}

/**
 * The same, or what the duty's own ways out for the heat give where that is more: of two ends the greater, as far as the
 * grade bears it. Beyond that the bore temperature itself is judged; a heavier duty never has a cooler bore.
 */
export function boreRise(values: Values, duty: Duty): number | PropertyKey {
  const implied = impliedRise(values, duty);
  if (typeof implied !== "number") return implied;
  const paths = pathRises(values, duty);
  if (paths === undefined || isMissing(paths)) return implied;
  const room = values.highestTemperature! - duty.temperature.high;
  return Math.max(implied, paths.least, Math.min(paths.greatest, room));
}

/** The temperatures that the bore takes on, from the cold surroundings at rest to the warm ones in motion. */
export function boreSpan(values: Values, duty: Duty): Span | PropertyKey {
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return rise;
  return rise === 0 ? duty.temperature : { low: duty.temperature.low, high: duty.temperature.high + rise };
}
