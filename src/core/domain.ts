import { clash, mustBe } from "./errors";
import { kinds } from "./kinds";
import { absoluteZero, fromWorking } from "./units/scale";
import type { System, Kind } from "./kinds";

export interface Bounds {
  readonly kind: Kind;
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  /** Pieces come whole. */
  readonly whole?: true;
}

/** The greatest percentage, as a ratio: a greater number was typed in per cent. */
const whole = 1;

/** Bounds as four plain values, ready for a loop; where none is given, every finite number lies inside. */
export function limitsOf({ kind, above, from, below, to }: Bounds) {
  return {
    least: above ?? from ?? (kind === "temperature" ? absoluteZero : -Number.MAX_VALUE),
    most: below ?? to ?? (kind === "percent" ? whole : Number.MAX_VALUE),
    withLeast: above === undefined,
    withMost: below === undefined,
  };
}

export function isInside(bounds: Bounds, value: number): boolean {
  if (bounds.whole && !Number.isInteger(value)) return false;
  const { least, most, withLeast, withMost } = limitsOf(bounds);
  return (value > least || (withLeast && value === least)) && (value < most || (withMost && value === most));
}

/** Throws where a working-unit value is not finite or outside its bounds; the message speaks the sheet's unit system. */
export function checkDomain(name: string, bounds: Bounds, value: number, system: System, found: unknown): void {
  if (isInside(bounds, value)) return;
  const error = mustBe(name, boundsText(bounds, system) || "a finite number", found);
  const isPerCent = bounds.kind === "percent" && Number(found) === value && isInside(bounds, value / 100);
  throw isPerCent ? clash(name, `${error.message}: type ${value} %`) : error;
}

/** Zero lies outside the domain, so a 0 may be a blank that the host handed over as 0. */
export const excludesZero = (bounds: Bounds): boolean => !isInside(bounds, 0);

function limitText(kind: Kind, limit: number, system: System): string {
  const isPercent = kind === "percent";
  const unit = isPercent ? "%" : kinds[kind][system];
  const number = Number((isPercent ? limit * 100 : fromWorking(kind, limit, system)).toPrecision(10));
  return unit === "°" || unit === "" ? `${number}${unit}` : `${number} ${unit}`;
}

const highestOf = ({ kind, to, below }: Bounds): number | undefined =>
  to ?? (kind === "percent" && below === undefined ? whole : undefined);

/** "above 0 mm", "from 0 to 0.5", "at most 10 %"; empty where there is no bound. */
export function boundsText(bounds: Bounds, system: System): string {
  const say = (limit: number) => limitText(bounds.kind, limit, system);
  const low = bounds.from ?? (bounds.kind === "temperature" ? absoluteZero : undefined);
  const high = highestOf(bounds);
  const parts: string[] = bounds.whole ? ["a whole number"] : [];
  if (bounds.above !== undefined) parts.push(`above ${say(bounds.above)}`);
  else if (low !== undefined && high !== undefined) return `from ${say(low)} to ${say(high)}`;
  else if (low !== undefined) parts.push(`${say(low)} or more`);
  if (bounds.below !== undefined) parts.push(`below ${say(bounds.below)}`);
  if (high !== undefined) parts.push(`at most ${say(high)}`);
  return parts.join(" and ");
}
