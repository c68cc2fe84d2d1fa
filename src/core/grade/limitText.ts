import type { Span } from "../formula";
import type { Grade } from "./library";
import { limitOf } from "./limits";
import type { LimitKey } from "./limits";
import { property } from "./properties";
import type { PropertyKey } from "./properties";

/** What a limit in a working is, and where it comes from: "Limit of PV: PV at temperature". */
export const limitText = (criterion: string, from: PropertyKey): string =>
  `Limit of ${criterion}: ${property(from).heading}`;

const criteria = {
  staticPressure: "static pressure",
  runningPressure: "running pressure",
  speedTurning: "speed",
  speedSwinging: "speed",
  speedLinear: "speed",
  pvLimit: "PV",
} as const satisfies Record<LimitKey, string>;

/** The texts of a grade's limits at a temperature. */
export const limitTexts =
  (grade: Grade, span: Span | undefined) =>
  (key: LimitKey): string =>
    limitText(criteria[key], limitOf(grade, key, span).key);
