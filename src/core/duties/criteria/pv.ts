import { pvLimit } from "../../grades/model/limits";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { statedAt } from "../../heat/derating";
import { measureText } from "../../measure";
import { present } from "../../present";
import { criterion, figure, joined, lacking, ratio } from "../judging/criterion";
import type { Finding, Working } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { limitWorking } from "../judging/limitWorking";
import { pvWorking } from "../judging/pvWorking";

const derated: readonly PropertyKey[] = ["pvLimit", "highestTemperature"];
const byCurve: readonly PropertyKey[] = ["pvLimit", "pvCurve"];
const tellDerated: Finding["notes"] = () => ["limit derated for the surroundings by DERATEDPV: no PV curve is known"];

/** The limit in warmer surroundings, by the heat balance. */
const deratedWorking = ({ pvLimit: stated, highestTemperature }: Values, { temperature }: Duty): Working => ({
  lines: ["PV_a = PV_ref * (T_max - T) / (T_max - T_ref)"],
  known: {
    PV_ref: figure(present(stated), "pv", "PV limit as stated", "pvLimit"),
    T_max: figure(present(highestTemperature), "temperature", "Highest temperature", "highestTemperature"),
    T: figure(temperature.high, "temperature", "Surroundings"),
    T_ref: figure(statedAt, "temperature", "Temperature at which the limit is stated"),
  },
  between: { PV_a: { unit: "MPa·m/s", text: "Limit of PV, derated for the surroundings" } },
});

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
      const known = { S: figure(duty.designFactor, "ratio", "Design factor") };
      const end = { lines: ["Z = PV_a / S", "u = V / Z"], known };
      if (limit.how === "derated") return joined(pvWorking(duty), deratedWorking(values, duty), end);
      return joined(
        pvWorking(duty),
        limitWorking("PV_a", "pv", "PV", limit, values, duty.temperature, "surroundings"),
        end,
      );
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
            `PV: surroundings beyond its curve, which ends at ${measureText("temperature", limit.ends.high, system)}`,
        };
    }
  },
);
