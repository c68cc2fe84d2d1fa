import { measureText } from "../../measure";
import { criterion, inFigures, lacking, rounding } from "../judging/criterion";

/** Limits are stated at room temperature: only a colder duty asks how cold the material may become, °C (ISO 1). */
export const roomTemperature = 20;

export const lowestTemperature = criterion(
  {
    id: "lowestTemperature",
    heading: "lowest temperature",
    kind: "temperature",
    text: "The colder end of the surroundings against the grade's lowest temperature",
    asked: "in surroundings colder than 20 °C",
    fields: ["temperature"],
    properties: ["lowestTemperature"],
    source: { key: "own", at: "the grade's temperatures bound every other figure" },
    asks: ({ temperature }) => temperature.low < roomTemperature,
  },
  ({ lowestTemperature: limit }, { temperature }) => {
    const value = temperature.low;
    if (limit === undefined) return lacking("lowestTemperature", value);
    if (value >= limit - rounding) return inFigures("fits", figures, value, limit, undefined, "lowestTemperature");
    const say = (system: Parameters<typeof measureText>[2]) =>
      `temperature ${measureText("temperature", value, system)} below ${measureText("temperature", limit, system)}`;
    return { word: "fails", figures, value, limit, property: "lowestTemperature", say };
  },
);
const figures = ["lowestTemperature"] as const;
