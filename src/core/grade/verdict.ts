import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { fromWorking } from "../units";
import type { Check } from "./assess";
import { property } from "./properties";

export interface Verdict {
  readonly word: "fits" | "fails" | "no data";
  /** A failure that has no ratio (temperature), else the largest use; the first missing datum where nothing fails. */
  readonly governing: Check;
  /** The largest use; `undefined` where a failure has no ratio or a datum is missing. */
  readonly use?: number;
}

/** A failure that is sure outweighs a datum that is missing; a missing datum outweighs every criterion that holds. */
export function verdictOf(checks: readonly Check[]): Verdict {
  const failed = checks.filter((c) => c.verdict === "fails");
  const unknown = checks.filter((c) => c.verdict === "no data");
  const largest = largestUse(checks);
  const noRatio = failed.find((c) => c.criterion.endsWith("temperature")) ?? failed.find((c) => c.use === undefined);
  if (noRatio) return { word: "fails", governing: noRatio };
  const use = unknown.length > 0 ? {} : { use: largest.use! };
  if (failed.length > 0) return { word: "fails", governing: largestUse(failed), ...use };
  return unknown[0] ? { word: "no data", governing: unknown[0] } : { word: "fits", governing: largest, ...use };
}

const largestUse = (checks: readonly Check[]): Check =>
  checks.reduce((a, b) => ((b.use ?? -1) > (a.use ?? -1) ? b : a));

/** "fits, PV 62 %", "fails, temperature 110 °C above 90 °C", "no data, speed". */
export const verdictText = (verdict: Verdict, system: System): string =>
  `${verdict.word}, ${reasonOf(verdict.governing, system)}`;

/** A check in a few words, its numbers in the sheet's units. */
export function reasonOf(check: Check, system: System): string {
  const { criterion, value, limit, use, verdict, beyond } = check;
  if (verdict === "no data") return criterion;
  if (beyond) {
    const ends = `${measure("temperature", beyond.low, system)} to ${measure("temperature", beyond.high, system)}`;
    return `${criterion}: temperature outside its curve (${ends})`;
  }
  if (check.margin !== undefined) {
    const [low, word] = criterion === "lowest temperature" ? [true, "below"] : [false, "above"];
    const told = measure("temperature", value!, system);
    return verdict === "fails"
      ? `temperature ${told} ${word} ${measure("temperature", limit!, system)}`
      : `temperature ${told} ${low ? "not below" : "not above"} ${measure("temperature", limit!, system)}`;
  }
  return use === undefined ? `${criterion}: no clearance to begin with` : `${criterion} ${percentText(use)}`;
}

/** The datum that is missing, as a phrase: "speed limit turning". */
export const missingText = (check: Check): string => property(check.property).heading;

/** A use in percent, whole numbers; more digits where it is small, or where rounding would hide on which side of 100 it is. */
export function percentText(use: number): string {
  const percent = use * 100;
  if (percent > 0 && percent < 10) return `${Number(percent.toPrecision(2))} %`;
  let digits = 0;
  while (digits < 6 && use !== 1 && Number(percent.toFixed(digits)) === 100) digits++;
  return `${Number(percent.toFixed(digits))} %`;
}

export function measure(kind: Kind, value: number, system: System, digits = 6): string {
  return `${Number(fromWorking(kind, value, system).toPrecision(digits))} ${kinds[kind][system]}`.trim();
}
