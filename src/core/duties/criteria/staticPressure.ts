import { present } from "../../present";
import { criterion } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { pressureFinding, pressureWorking } from "./pressures";

/** The greatest pressure in the bore at rest; nothing where it never rests. */
function atRest({ part, steps, restPressure }: Duty): number | undefined {
  let most = part === "washer" ? undefined : restPressure;
  for (const { motion, bore } of steps) if (motion === "static" && bore) most = Math.max(most ?? 0, bore.pressure);
  return most;
}

export const staticPressure = criterion(
  {
    id: "staticPressure",
    heading: "static pressure",
    kind: "pressure",
    text: "The greatest load at rest, times the impact factor, against the static limit over the design factor; in a cycle at the bore's highest temperature",
    asked: "at rest, with a static load, or in a step at rest",
    askedBy: ["staticLoad"],
    fields: [
      "load",
      "staticLoad",
      "impactFactor",
      "designFactor",
      "bore",
      "length",
      "motion",
      "temperature",
      "peakTemperature",
    ],
    properties: ["staticPressure", "pressureCurve", "pvLimit", "highestTemperature"],
    source: { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
    asks: (duty) => atRest(duty) !== undefined,
    working: (values, duty) => pressureWorking("staticPressure", present(atRest(duty)), values, duty),
  },
  (values, duty) => pressureFinding("staticPressure", present(atRest(duty)), values, duty),
);
