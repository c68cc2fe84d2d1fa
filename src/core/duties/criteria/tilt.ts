import { edgeContact } from "../../contact/edgePressure";
import { measure } from "../../measure";
import { isMissing, layersOf, slopeOf } from "../contacts";
import { criterion, lacking, unstated } from "../criterion";

export const tilt = criterion(
  {
    id: "tilt",
    heading: "tilt",
    kind: "angle",
    text: "The slope of the shaft at the least clearance of the fit: with both ends of the bush touching it the shaft jams",
    asked: "with a slope or a span",
    askedBy: ["slope", "span"],
    fields: ["slope", "span", "spanDiameter"],
    properties: ["compressiveModulus", "poisson", "expansion"],
    source: { key: "geometry" },
    asks: ({ given, part }) => part !== "washer" && (given.slope !== undefined || given.span !== undefined),
  },
  (values, duty) => {
    const layers = layersOf(values, duty);
    if (isMissing(layers)) return "field" in layers ? unstated(layers.field) : lacking(layers.property);
    const value = slopeOf(duty);
    if (typeof value === "string") return unstated(value);
    const layer = { ...layers.least, tilt: value };
    const { upper, isJammed } = edgeContact(layer);
    const limit = (Math.atan((layer.clearance + upper.depth) / layer.length) * 180) / Math.PI;
    const found = { figures: layers.figures, value, limit } as const;
    if (!isJammed) return { word: "fits", ...found };
    const say = (system: Parameters<typeof measure>[2]) =>
      `tilt ${measure("angle", value, system, 2)}: both ends of the bush touch the shaft at ${measure("angle", limit, system, 2)}`;
    return { word: "fails", ...found, say };
  },
);
