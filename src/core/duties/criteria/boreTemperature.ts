import type { PropertyKey } from "../../grade/properties";
import { statedAt } from "../../heat/derating";
import { measure } from "../../measure";
import { criterion, figure, holds, inFigures, lacking, rounding } from "../criterion";
import type { Finding } from "../criterion";
import { boreRise } from "../temperatures";

/** Above this highest temperature, °C, friction that falls with heat makes the straight line err on the unsafe side. */
const straightUpTo = 150;
/** By how much the rise may then be above the line: 142 K measured where the line says 113 K. */
const bent = 1.25;

export const boreTemperature = criterion(
  {
    id: "boreTemperature",
    heading: "bore temperature",
    kind: "temperature",
    text: "Surroundings plus the rise that the PV implies, against the grade's highest temperature; above 150 °C care is told where friction that falls with heat may take it beyond",
    asked: "in motion",
    fields: ["temperature", "load", "motion"],
    properties: ["pvLimit", "highestTemperature"],
    source: { key: "own", at: "steady heat balance: the limit drove the bore to its highest temperature at 23 °C" },
    asks: ({ isMoving }) => isMoving,
    working: ({ pvLimit, highestTemperature: most }, { temperature, pv }) =>
      pvLimit === undefined || most === undefined || temperature.high >= most
        ? undefined
        : {
            lines: ["V = T + (T_max - T_ref) * PV / PV_ref", "Z = T_max", "u = (V - T) / (T_max - T)"],
            known: {
              T: figure(temperature.high, "temperature", "surroundings"),
              T_max: figure(most, "temperature", "highest temperature"),
              T_ref: figure(statedAt, "temperature", "temperature at which the limit is stated"),
              PV: figure(pv, "pv", "PV"),
              PV_ref: figure(pvLimit, "pv", "PV limit as stated"),
            },
          },
  },
  (values, duty) => {
    const rise = boreRise(values, duty);
    if (typeof rise !== "number") return lacking(rise);
    const surroundings = duty.temperature.high;
    const limit = values.highestTemperature!;
    const value = surroundings + rise;
    if (surroundings >= limit - rounding)
      return {
        word: "fails",
        figures,
        value,
        limit,
        property,
        say: () => "bore temperature: no room for friction heat",
      };
    const use = rise / (limit - surroundings);
    const { frictionLow, frictionHigh, pvLimit } = values;
    const share = frictionLow && frictionHigh ? Math.min(1, (duty.pv * frictionHigh) / (frictionLow * pvLimit!)) : 0;
    // a PV that is allowed drives no bore beyond the temperature that it was stated for
    const most = holds(use) ? limit : Infinity;
    const upper = share > 0 ? Math.min(most, surroundings + Math.max(rise, (limit - statedAt) * share)) : undefined;
    const notes = upper === undefined ? undefined : tellUpper;
    if (!holds(use)) return inFigures("fails", figures, value, limit, use, property, notes, upper);
    if (limit <= straightUpTo || surroundings + bent * rise <= limit)
      return inFigures("fits", figures, value, limit, use, property, notes, upper);
    const say = (system: Parameters<typeof measure>[2]) =>
      `bore ${measure("temperature", value, system, 4)}: friction that falls with heat may take it above ${measure("temperature", limit, system, 4)}`;
    return { word: "care", figures, value, limit, upper, use, property, notes, say };
  },
);
const figures: readonly PropertyKey[] = ["pvLimit", "highestTemperature"];
const property = "highestTemperature";
const tellUpper: Finding["notes"] = (system, { upper }) => [
  `up to ${measure("temperature", upper!, system, 4)} where friction is at its high figure`,
];
