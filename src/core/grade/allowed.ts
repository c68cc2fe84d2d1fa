import { noDatum } from "../errors";
import type { Span } from "../formula";
import type { System } from "../kinds";
import { temperatureChecks } from "./assess";
import { lacks } from "./grade";
import type { Grade } from "./library";
import { curveKey, limitOf } from "./limits";
import type { LimitKey } from "./limits";
import { property } from "./properties";
import { measure, missingText, reasonOf } from "./verdict";

/**
 * A limit as one number: over a span of temperature, or as it is given without one. Beyond the grade's temperatures or
 * its curve, and where a datum is missing, there is no number: an error says why.
 */
export function allowed(grade: Grade, key: LimitKey, span: Span | undefined, system: System): number {
  if (span) requireTemperature(grade, span, system);
  const limit = limitOf(grade, key, span);
  if (limit.state === "known") return limit.value;
  const curve = curveKey(key);
  if (limit.state === "missing" && curve && grade.values[curve])
    throw noDatum("temperature", `temperature is missing: "${grade.name}" has its ${property(key).heading} as a curve`);
  if (limit.state === "missing") throw lacks(grade, property(limit.key).heading);
  const [low, high] = [limit.ends.low, limit.ends.high].map((end) => measure("temperature", end, system));
  throw noDatum(
    "temperature",
    `temperature must be inside the curve "${property(limit.key).heading}": ${low} to ${high}`,
  );
}

/** Throws unless the span lies within the temperatures that the grade is known to bear. */
function requireTemperature(grade: Grade, span: Span, system: System): void {
  const check = temperatureChecks(grade, span).find((c) => c.verdict !== "OK");
  if (check?.verdict === "no data") throw lacks(grade, missingText(check));
  if (check) throw noDatum("temperature", reasonOf(check, system));
}
