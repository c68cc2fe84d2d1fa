import { percentText } from "../../measure";
import { present } from "../../present";
import { criterion, lacking } from "../judging/criterion";
import type { Duty } from "../model/duty";

const swellingOf = ({ given }: Duty) =>
  given.moisture === "wet" ? "swellingSaturated" : given.moisture === "humid" ? "swelling50" : undefined;

export const moisture = criterion(
  {
    id: "moisture",
    heading: "moisture",
    kind: "percent",
    text: "The linear swelling of the bush in these surroundings must be known; it is told with its size",
    asked: "in humid or wet surroundings",
    askedBy: ["moisture"],
    fields: ["moisture"],
    properties: ["swelling50", "swellingSaturated"],
    source: { key: "own", at: "what swelling takes of the clearance has to be looked at" },
    asks: (duty) => swellingOf(duty) !== undefined,
  },
  (values, duty) => {
    const property = present(swellingOf(duty));
    const value = values[property];
    if (value === undefined) return lacking(property);
    const tell = value > 0 ? () => `swells ${percentText(value)}` : undefined;
    return { word: "fits", figures: [property], value, property, tell };
  },
);
