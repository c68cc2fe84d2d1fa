import type { Values } from "../../grades/model/properties";
import { criteria } from "../criteria";
import type { Check, Criterion, Finding } from "./criterion";
import type { Duty } from "../model/duty";

/** What every criterion that the duty asks finds of a grade's figures; a figure that is missing is "no data". */
export function assess(values: Values, duty: Duty): Check[] {
  const checks: Check[] = [];
  for (const criterion of criteria) {
    if (!criterion.asks(duty)) continue;
    const finding: Finding & { criterion?: Criterion; duty?: Duty } = criterion.check(values, duty, checks);
    // each finding is new, and a copy would cost as much as the judging
    finding.criterion = criterion;
    finding.duty = duty;
    checks.push(finding as Check);
  }
  return checks;
}
