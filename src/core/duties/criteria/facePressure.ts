import type { PressureKey } from "../../grades/model/limits";
import type { Values } from "../../grades/model/properties";
import { criterion, worse } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { pressureFinding, pressureWorking } from "./pressures";

/** The greatest pressures on the face, at rest and in motion. */
function onFace({ part, steps, restPressure }: Duty): readonly (readonly [PressureKey, number])[] {
  let resting = part === "washer" ? restPressure : undefined;
  let running: number | undefined;
  for (const { motion, face } of steps) {
    if (!face) continue;
    if (motion === "static") resting = Math.max(resting ?? 0, face.pressure);
    else running = Math.max(running ?? 0, face.pressure);
  }
  return [
    ...(resting === undefined ? [] : [["staticPressure", resting] as const]),
    ...(running === undefined ? [] : [["runningPressure", running] as const]),
  ];
}

/** The face's worst case and what was found there. */
const worstOn = (values: Values, duty: Duty) =>
  onFace(duty)
    .map(([key, pressure]) => ({ key, pressure, finding: pressureFinding(key, pressure, values, duty) }))
    .reduce((a, b) => (worse(a.finding, b.finding) === a.finding ? a : b));

export const facePressure = criterion(
  {
    id: "facePressure",
    heading: "face pressure",
    kind: "pressure",
    text: "The axial load on the flange's or washer's face, times the impact factor, against the limit at rest or in motion over the design factor",
    asked: "with an axial load, or on a washer",
    fields: [
      "load",
      "axialLoad",
      "staticLoad",
      "impactFactor",
      "designFactor",
      "inner",
      "outer",
      "bore",
      "flangeOutside",
      "temperature",
      "peakTemperature",
    ],
    properties: ["staticPressure", "runningPressure", "pressureCurve", "pvLimit", "highestTemperature"],
    source: { key: "geometry", at: "area of a ring" },
    asks: ({ steps }) => steps.some(({ face }) => face !== undefined),
    working: (values, duty) => {
      const { key, pressure } = worstOn(values, duty);
      return pressureWorking(key, pressure, values, duty);
    },
  },
  (values, duty) => worstOn(values, duty).finding,
);
