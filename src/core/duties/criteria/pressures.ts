import type { PressureKey } from "../../grade/limits";
import { limitText, pressureLimit } from "../../grade/limits";
import type { PropertyKey, Values } from "../../grade/properties";
import { endsOf } from "../../grade/curve";
import { measure } from "../../measure";
import { figure, lacking, ratio } from "../criterion";
import type { Finding, Working } from "../criterion";
import type { Duty } from "../duty";
import { boreSpan } from "../temperatures";

const plain: Readonly<Record<PressureKey, readonly PropertyKey[]>> = {
  staticPressure: ["staticPressure"],
  runningPressure: ["runningPressure"],
};
/** With a curve, at rest and in motion. */
const withCurve: Readonly<Record<PressureKey, readonly PropertyKey[]>> = {
  staticPressure: ["staticPressure", "pressureCurve"],
  runningPressure: ["runningPressure", "pressureCurve"],
};
const warmed: typeof withCurve = {
  staticPressure: ["staticPressure", "pressureCurve", "pvLimit", "highestTemperature"],
  runningPressure: ["runningPressure", "pressureCurve", "pvLimit", "highestTemperature"],
};
const whatOf = { staticPressure: "static pressure", runningPressure: "running pressure" } as const;
const notLowered = (): readonly string[] => ["pressure limit not lowered for temperature: no curve is known"];

/** The limit over the temperatures of the bore, divided by the design factor; or why there is none. */
function limitFor(key: PressureKey, values: Values, duty: Duty) {
  if (!values.pressureCurve) return pressureLimit(values, key, duty.temperature);
  const span = boreSpan(values, duty);
  return typeof span === "string" ? ({ state: "missing", key: span } as const) : pressureLimit(values, key, span);
}

/** A pressure, impact factor included, against a limit of pressure at the temperature of the bore. */
export function pressureFinding(key: PressureKey, pressure: number, values: Values, duty: Duty): Finding {
  const value = pressure * duty.impactFactor;
  const limit = limitFor(key, values, duty);
  const figures = !values.pressureCurve ? plain[key] : duty.isMoving ? warmed[key] : withCurve[key];
  switch (limit.state) {
    case "missing":
      return lacking(limit.key, value);
    case "known":
      return ratio(
        figures,
        value,
        limit.value / duty.designFactor,
        limit.key,
        values.pressureCurve ? undefined : notLowered,
      );
    default: {
      const { high } = endsOf(values.pressureCurve!);
      const say = (system: Parameters<typeof measure>[2]) =>
        `pressure: the bore is beyond the curve, which ends at ${measure("temperature", high, system)}`;
      return { word: "fails", figures, value, property: "pressureCurve", say };
    }
  }
}

/** p = F/A is the caller's; here it is multiplied by the impact factor and set against the limit over the design factor. */
export function pressureWorking(key: PressureKey, pressure: number, values: Values, duty: Duty): Working | undefined {
  const limit = limitFor(key, values, duty);
  if (limit.state !== "known") return undefined;
  return {
    lines: ["V = p * K", "Z = p_a / S", "u = V / Z"],
    known: {
      p: figure(pressure, "pressure", "Mean pressure"),
      K: figure(duty.impactFactor, "ratio", "Impact factor"),
      p_a: figure(limit.value, "pressure", limitText(whatOf[key], limit)),
      S: figure(duty.designFactor, "ratio", "Design factor"),
    },
  };
}
