import type { Span } from "../formula";
import type { Grade } from "./library";
import { limitOf } from "./limits";
import type { LimitKey } from "./limits";
import { property } from "./properties";
import type { PropertyKey } from "./properties";

/** What a limit in a working is, and the property it comes from where that is another: 'Limit of PV, from "PV at temperature"'. */
export function limitText(criterion: string, from: PropertyKey): string {
  const isOwn = criteria[from as LimitKey] === criterion;
  return `Limit of ${criterion}${isOwn ? "" : `, from "${property(from).heading}"`}`;
}

const criteria = {
  staticPressure: "static pressure",
  runningPressure: "running pressure",
  speedTurning: "speed",
  speedSwinging: "speed",
  speedLinear: "speed",
  pvLimit: "PV",
} satisfies Record<LimitKey, string>;

/** The texts of a grade's limits at a temperature. */
export const limitTexts =
  (grade: Grade, span: Span | undefined) =>
  (key: LimitKey): string =>
    limitText(criteria[key], limitOf(grade, key, span).key);
