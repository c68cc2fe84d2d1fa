import type { PropertyKey } from "../../grades/model/properties";
import { measureText } from "../../measure";
import { present } from "../../present";
import { criterion, figure, lacking, rounding } from "../judging/criterion";
import { boreRise } from "../model/temperatures";

export const shortPeak = criterion(
  {
    id: "shortPeak",
    heading: "short peak",
    kind: "temperature",
    text: "The short peak of the surroundings plus the rise of the bore, against the grade's short-term highest temperature",
    asked: "with a short peak temperature",
    askedBy: ["peakTemperature"],
    fields: ["peakTemperature"],
    properties: ["shortTermTemperature", "pvLimit", "highestTemperature"],
    source: { key: "own", at: "the rise of the steady heat balance on top of the peak" },
    asks: ({ given }) => given.peakTemperature !== undefined,
    working: (values, duty) => {
      const rise = boreRise(values, duty);
      if (typeof rise !== "number" || values.shortTermTemperature === undefined) return undefined;
      return {
        lines: ["V = T_p + ΔT", "Z = T_s"],
        known: {
          T_p: figure(present(duty.given.peakTemperature), "temperature", "Short peak of the surroundings"),
          ΔT: figure(rise, "rise", "Rise of the bore"),
          T_s: figure(
            values.shortTermTemperature,
            "temperature",
            "Short-term highest temperature",
            "shortTermTemperature",
          ),
        },
      };
    },
  },
  (values, duty) => {
    const rise = boreRise(values, duty);
    if (typeof rise !== "number") return lacking(rise);
    const value = present(duty.given.peakTemperature) + rise;
    const limit = values.shortTermTemperature;
    if (limit === undefined) return lacking("shortTermTemperature", value);
    const found = {
      figures: duty.isMoving ? inMotion : atRest,
      value,
      limit,
      property: "shortTermTemperature",
    } as const;
    if (value <= limit + rounding) return { word: "fits", ...found };
    const say = (system: Parameters<typeof measureText>[2]) =>
      `short peak ${measureText("temperature", value, system, 4)} above ${measureText("temperature", limit, system, 4)}`;
    return { word: "fails", ...found, say };
  },
);
const atRest: readonly PropertyKey[] = ["shortTermTemperature"];
const inMotion: readonly PropertyKey[] = ["shortTermTemperature", "pvLimit", "highestTemperature"];
