import type { Span } from "../formula";
import type { PropertyKey, Values } from "../grade/properties";
import { boreAt, statedAt } from "../heat/derating";
import type { Duty } from "./duty";

/** By how much friction warms the bore above its surroundings, K; or the figure that is missing. */
export function boreRise({ pvLimit, highestTemperature }: Values, { isMoving, pv }: Duty): number | PropertyKey {
  if (!isMoving) return 0;
  if (pvLimit === undefined) return "pvLimit";
  if (highestTemperature === undefined || highestTemperature <= statedAt) return "highestTemperature";
  return boreAt(pv, pvLimit, highestTemperature, 0);
}

/** The temperatures that the bore takes on, from the cold surroundings at rest to the warm ones in motion. */
export function boreSpan(values: Values, duty: Duty): Span | PropertyKey {
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return rise;
  return rise === 0 ? duty.temperature : { low: duty.temperature.low, high: duty.temperature.high + rise };
}
