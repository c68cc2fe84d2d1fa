import { measureText } from "../../measure";
import { criterion, inFigures, lacking, rounding } from "../judging/criterion";

export const highestTemperature = criterion(
  {
    id: "highestTemperature",
    heading: "highest temperature",
    kind: "temperature",
    text: "The warmer end of the surroundings against the grade's highest temperature; in motion there must be room for friction heat below it",
    asked: "always",
    fields: ["temperature"],
    properties: ["highestTemperature"],
    source: { key: "own", at: "the grade's temperatures bound every other figure" },
    asks: () => true,
  },
  ({ highestTemperature: limit }, { temperature, isMoving }) => {
    const value = temperature.high;
    if (limit === undefined) return lacking("highestTemperature", value);
    const isAbove = value > limit + rounding;
    const isAt = isMoving && value >= limit - rounding;
    if (!isAbove && !isAt) return inFigures("fits", figures, value, limit, undefined, "highestTemperature");
    return {
      word: "fails",
      figures,
      value,
      limit,
      property: "highestTemperature",
      say: (system) => {
        const [found, most] = [value, limit].map((t) => measureText("temperature", t, system));
        return isAbove ? `temperature ${found} above ${most}` : `temperature ${found} leaves no room for friction heat`;
      },
    };
  },
);
const figures = ["highestTemperature"] as const;
