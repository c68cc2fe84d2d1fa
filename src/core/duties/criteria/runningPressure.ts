import { present } from "../../present";
import { criterion } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { pressureFinding, pressureWorking } from "./pressures";

/** The greatest pressure in the bore while it moves; nothing where it never does. */
function inMotion({ steps }: Duty): number | undefined {
  let most: number | undefined;
  for (const { motion, bore } of steps)
    if (motion !== "static" && bore) most = most === undefined ? bore.pressure : Math.max(most, bore.pressure);
  return most;
}

export const runningPressure = criterion(
  {
    id: "runningPressure",
    heading: "running pressure",
    kind: "pressure",
    text: "The greatest load in motion, times the impact factor, against the running limit over the design factor at the bore's temperature, a short peak included; the static limit never stands in",
    asked: "in motion",
    fields: ["load", "impactFactor", "designFactor", "bore", "length", "motion", "temperature", "peakTemperature"],
    properties: ["runningPressure", "pressureCurve", "pvLimit", "highestTemperature"],
    source: { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
    asks: (duty) => duty.isMoving && inMotion(duty) !== undefined,
    working: (values, duty) => pressureWorking("runningPressure", present(inMotion(duty)), values, duty),
  },
  (values, duty) => pressureFinding("runningPressure", present(inMotion(duty)), values, duty),
);
