import type { PressureKey } from "../../grades/model/limits";
import { pressureLimit } from "../../grades/model/limits";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { statedAt } from "../../heat/derating";
import { measureText } from "../../measure";
import type { Span } from "../../formula";
import { figure, joined, lacking, ratio } from "../judging/criterion";
import type { Finding, Working } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { limitWorking } from "../judging/limitWorking";
import { whereOf } from "../judging/pvWorking";
import { boreSpan } from "../model/temperatures";

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
const notLowered = "pressure limit not lowered for temperature";
const tellNotLowered = (): readonly string[] => [`${notLowered}: no curve is known`];

/** The limit over the temperatures of the bore, divided by the design factor; or why there is none. */
function limitFor(key: PressureKey, values: Values, duty: Duty) {
  if (!values.pressureCurve) return pressureLimit(values, key, duty.temperature);
  const span = boreSpan(values, duty);
  return typeof span === "string" ? ({ state: "missing", key: span } as const) : pressureLimit(values, key, span);
}

/** Whether the bore may be warmer than a limit is stated at; it is where nothing tells. */
function isWarm(values: Values, duty: Duty): boolean {
  const span = boreSpan(values, duty);
  return typeof span === "string" || span.high > statedAt;
}

/** A pressure, impact factor included, against a limit of pressure at the temperature of the bore. */
export function pressureFinding(key: PressureKey, pressure: number, values: Values, duty: Duty): Finding {
  const value = pressure * duty.impactFactor;
  const limit = limitFor(key, values, duty);
  const figures = !values.pressureCurve ? plain[key] : duty.isMoving ? warmed[key] : withCurve[key];
  switch (limit.state) {
    case "missing":
      return lacking(limit.key, value);
    case "known": {
      const isLowered = values.pressureCurve !== undefined;
      const caveat = isLowered || !isWarm(values, duty) ? undefined : notLowered;
      const notes = isLowered ? undefined : tellNotLowered;
      return ratio(figures, value, limit.value / duty.designFactor, limit.key, notes, caveat);
    }
    case "beyond": {
      const { high } = limit.ends;
      const say = (system: Parameters<typeof measureText>[2]) =>
        `pressure: the bore is beyond the curve, which ends at ${measureText("temperature", high, system)}`;
      return { word: "fails", figures, value, property: "pressureCurve", say };
    }
  }
}

/** p = F/A is the caller's; here it is multiplied by the impact factor and set against the limit over the design factor. */
export function pressureWorking(key: PressureKey, pressure: number, values: Values, duty: Duty): Working | undefined {
  const limit = limitFor(key, values, duty);
  if (limit.state !== "known") return undefined;
  const span = values.pressureCurve ? (boreSpan(values, duty) as Span) : duty.temperature;
  return joined(
    {
      lines: ["V = p * K"],
      known: {
        p: figure(pressure, "pressure", `Mean pressure${placeOf(key, pressure, duty)}`),
        K: figure(duty.impactFactor, "ratio", "Impact factor"),
      },
    },
    limitWorking(
      "p_a",
      "pressure",
      whatOf[key],
      limit,
      values,
      span,
      duty.isMoving ? "bore temperature" : "surroundings",
    ),
    { lines: ["Z = p_a / S", "u = V / Z"], known: { S: figure(duty.designFactor, "ratio", "Design factor") } },
  );
}

/** Which of several pressures it is. */
function placeOf(key: PressureKey, pressure: number, { steps, restPressure }: Duty): string {
  const isStatic = key === "staticPressure";
  if (isStatic && pressure === restPressure) return " under the static load";
  const at = steps.findIndex(
    ({ motion, bore, face }) =>
      (motion === "static") === isStatic && (bore?.pressure === pressure || face?.pressure === pressure),
  );
  return whereOf(steps, at);
}
