import misses from "../../../../data/misses.json";
import type { Span } from "../../formula";
import { valueAt } from "../../grades/model/curve";
import type { Curve } from "../../grades/model/curve";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { boreAt, statedAt } from "../../heat/derating";
import type { System } from "../../kinds";
import { measureText } from "../../measure";
import { present } from "../../present";
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
  const room = present(values.highestTemperature) - duty.temperature.high;
  return Math.max(implied, paths.least, Math.min(paths.greatest, room));
}

const { at90, at150, at250 } = misses.boreLowBy;
/** By how much measured bores were warmer than the straight line has them, K, over the highest temperature of the bush, °C. */
const measured: Curve = [
  { at: statedAt, value: 0 },
  { at: 90, value: at90 },
  { at: 150, value: at150 },
  { at: 250, value: at250 },
];
/** Hotter than was measured it rises as between the last two points. */
const lowBy = (highest: number): number =>
  valueAt(measured, highest) ?? at250 + ((at250 - at150) * (highest - 250)) / (250 - 150);

/**
 * How much warmer than `boreRise` the bore may be, K, since friction that falls with heat is higher below the PV limit: as was
 * measured, but no more than as much again, and never beyond the grade's highest temperature, which the limit was stated for.
 */
export function riseUntold(values: Values, duty: Duty): number {
  const implied = impliedRise(values, duty);
  const told = boreRise(values, duty);
  if (typeof implied !== "number" || typeof told !== "number") return 0;
  const highest = values.highestTemperature;
  if (highest === undefined) return 0;
  const warmer = Math.min(implied + Math.min(implied, lowBy(highest)), highest - duty.temperature.high);
  return Math.max(0, warmer - told);
}

/** Says of a state that its bore is so much warmer than told. */
export const warmerText = (by: number, system: System): string =>
  `with the bore ${measureText("rise", by, system, 2)} warmer than its PV implies, as was measured`;

/**
 * The temperatures that the bore takes on, from the cold surroundings at rest to the warm ones in motion, and in a short peak;
 * beyond its highest temperature a grade states no figure but the peak that it bears.
 */
export function boreSpan(values: Values, duty: Duty): Span | PropertyKey {
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return rise;
  const { temperature, given } = duty;
  const peak = Math.min((given.peakTemperature ?? -Infinity) + rise, values.highestTemperature ?? Infinity);
  return { low: temperature.low, high: Math.max(temperature.high + rise, peak) };
}
