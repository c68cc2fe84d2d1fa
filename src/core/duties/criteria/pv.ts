import { endsOf } from "../../grade/curve";
import { limitText, pvLimit } from "../../grade/limits";
import type { PropertyKey } from "../../grade/properties";
import { statedAt } from "../../heat/derating";
import { measure } from "../../measure";
import { criterion, figure, lacking, ratio } from "../criterion";
import type { Finding, Working } from "../criterion";
import type { Duty } from "../duty";

const derated: readonly PropertyKey[] = ["pvLimit", "highestTemperature"];
const byCurve: readonly PropertyKey[] = ["pvLimit", "pvCurve"];
const tellDerated: Finding["notes"] = () => ["limit derated for the surroundings by DERATEDPV: no PV curve is known"];

export const pv = criterion(
  {
    id: "pv",
    heading: "PV",
    kind: "pv",
    text: "Pressure without the impact factor times speed, of the greatest step, or with a time constant at its first-order peak, against the limit in these surroundings over the design factor: by the grade's curve, or derated",
    asked: "in motion",
    fields: [
      "load",
      "axialLoad",
      "designFactor",
      "motion",
      "temperature",
      "rpm",
      "swing",
      "stroke",
      "cycles",
      "time",
      "runningTime",
      "restTime",
      "timeConstant",
    ],
    properties: ["pvLimit", "pvCurve", "highestTemperature"],
    source: [
      { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
      {
        key: "own",
        at: "steady heat balance: the limit drove the bore to its highest temperature at 23 °C; first-order response",
      },
    ],
    asks: ({ isMoving }) => isMoving,
    working: (values, duty) => {
      const limit = pvLimit(values, duty.temperature);
      if (limit.state !== "known") return undefined;
      const value = valueWorking(duty);
      const known = {
        ...value.known,
        S: figure(duty.designFactor, "ratio", "Design factor"),
      };
      if (limit.how !== "derated")
        return {
          lines: [...value.lines, "Z = PV_a / S", "u = V / Z"],
          known: { ...known, PV_a: figure(limit.value, "pv", limitText("PV", limit)) },
        };
      return {
        lines: [...value.lines, "PV_a = PV_ref * (T_max - T) / (T_max - T_ref)", "Z = PV_a / S", "u = V / Z"],
        known: {
          ...known,
          PV_ref: figure(values.pvLimit!, "pv", "PV limit as stated"),
          T_max: figure(values.highestTemperature!, "temperature", "Highest temperature"),
          T: figure(duty.temperature.high, "temperature", "Surroundings"),
          T_ref: figure(statedAt, "temperature", "Temperature at which the limit is stated"),
        },
      };
    },
  },
  (values, { pv: value, temperature, designFactor }) => {
    const limit = pvLimit(values, temperature);
    const figures = values.pvCurve ? byCurve : derated;
    switch (limit.state) {
      case "missing":
        return lacking(limit.key, value);
      case "known":
        return ratio(
          figures,
          value,
          limit.value / designFactor,
          limit.key,
          limit.how === "derated" ? tellDerated : undefined,
        );
      case "hot":
        return {
          word: "fails",
          figures,
          value,
          property: limit.key,
          say: () => "PV: no heat can be shed in these surroundings",
        };
      case "beyond":
        return {
          word: "fails",
          figures,
          value,
          property: "pvCurve",
          say: (system) =>
            `PV: surroundings beyond its curve, which ends at ${measure("temperature", endsOf(values.pvCurve!).high, system)}`,
        };
    }
  },
);

/** Pressure times speed; as one figure where several steps or faces or a time constant make it. */
function valueWorking({ steps, pv }: Duty): Working {
  const { bore, face } = steps[0]!;
  if (steps.length > 1 || !bore || face || pv !== bore.pressure * bore.speed)
    return { lines: ["V = PV"], known: { PV: figure(pv, "pv", "Pressure times speed of the duty") } };
  return {
    lines: ["V = p * v"],
    known: {
      p: figure(bore.pressure, "pressure", "Mean pressure"),
      v: figure(bore.speed, "speed", "Mean sliding speed"),
    },
  };
}
