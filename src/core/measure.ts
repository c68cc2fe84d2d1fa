import { kinds } from "./kinds";
import type { Kind, System } from "./kinds";
import { fromWorking } from "./units/scale";

/** A number with so many digits; one that outgrew all that a number can hold is ∞. */
export function numberText(value: number, digits = 6): string {
  if (Math.abs(value) === Infinity) return value > 0 ? "∞" : "-∞";
  return String(Number(value.toPrecision(digits)));
}

/** A size in mm, whatever the sheet's system: zones and rings are written so. */
export const millimetres = (size: number): string => `${numberText(size, 7)} mm`;

/** A use in percent, whole numbers; more digits where it is small, or where rounding would hide on which side of 100 it is. */
export function percentText(use: number): string {
  const percent = use * 100;
  if (!Number.isFinite(percent)) return `${numberText(percent)} %`;
  if (percent > 0 && percent < 10) return `${Number(percent.toPrecision(2))} %`;
  let digits = 0;
  while (digits < 6 && Number(percent.toFixed(digits)) === 100) digits++;
  return `${Number(percent.toFixed(digits))} %`;
}

/** A working value with its unit in the sheet's system. */
export function measureText(kind: Kind, value: number, system: System, digits = 6): string {
  if (kind === "percent") return `${numberText(value * 100, digits)} %`;
  return `${numberText(fromWorking(kind, value, system), digits)} ${kinds[kind][system]}`.trim();
}
