import { Measure } from "../formula";
import type { Lookup, Span } from "../formula";
import type { System } from "../kinds";
import { allowed } from "./allowed";
import { findGrade } from "./find";
import type { Library } from "./library";
import { limitTexts } from "./limitText";

/** What the three sizing functions look up: the limits of running pressure and, where anything moves, of PV. */
export interface SizingLimits {
  readonly pressure: number;
  readonly pv?: number;
}

interface Asked {
  readonly grade: string;
  readonly speed: number;
  readonly temperature?: Span | undefined;
  readonly grades?: Library | undefined;
}

export function sizingLimits({ grade, speed, temperature, grades }: Asked, system: System = "metric"): SizingLimits {
  const found = findGrade(grade, grades);
  const pressure = allowed(found, "runningPressure", temperature, system);
  return speed === 0 ? { pressure } : { pressure, pv: allowed(found, "pvLimit", temperature, system) };
}

/** The limits as symbols of a working. */
export function sizingLookups(asked: Asked): Record<string, Lookup> {
  const { pressure, pv } = sizingLimits(asked);
  const text = limitTexts(findGrade(asked.grade, asked.grades), asked.temperature);
  return {
    p_a: { value: new Measure(pressure, "pressure"), text: text("runningPressure") },
    ...(pv === undefined ? {} : { PV_a: { value: new Measure(pv, "pv"), text: text("pvLimit") } }),
  };
}

export const sizingTemperature = {
  kind: "span",
  optional: true,
  text: "Temperature of the duty; without it the limits count as they are given",
} as const;
