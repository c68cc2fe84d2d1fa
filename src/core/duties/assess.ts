import type { Values } from "../grade/properties";
import { criteria } from "./criteria";
import type { Check } from "./criterion";
import type { Duty } from "./duty";

/** What every criterion that the duty asks finds of a grade's figures; a figure that is missing is "no data". */
export function assess(values: Values, duty: Duty): Check[] {
  const checks: Check[] = [];
  for (const criterion of criteria) {
    if (!criterion.asks(duty)) continue;
    const { word, figures, value, limit, upper, use, property, field, say, tell, notes } = criterion.check(
      values,
      duty,
      checks,
    );
    checks.push({ criterion, word, figures, value, limit, upper, use, property, field, say, tell, notes });
  }
  return checks;
}
