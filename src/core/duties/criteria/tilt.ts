import { edgeContact } from "../../contact/edgePressure";
import { measure } from "../../measure";
import { onSlope, onSlopeOf } from "../contacts";
import type { Layers } from "../contacts";
import { criterion } from "../criterion";
import type { Finding } from "../criterion";
import { fitProperties } from "../fitStates";

export const tilt = criterion(
  {
    id: "tilt",
    heading: "tilt",
    kind: "angle",
    text: "The slope of the shaft at the least clearance of the fit: with both ends of the bush touching it the shaft jams",
    ...onSlope,
    properties: fitProperties,
    source: { key: "geometry" },
  },
  (values, duty) => onSlopeOf(values, duty, touching),
);

function touching(layers: Layers, value: number): Finding {
  const layer = { ...layers.least, tilt: value };
  const { upper, isJammed } = edgeContact(layer);
  const limit = (Math.atan((layer.clearance + upper.depth) / layer.length) * 180) / Math.PI;
  const found = { figures: layers.figures, value, limit } as const;
  if (!isJammed) return { word: "fits", ...found };
  const say = (system: Parameters<typeof measure>[2]) =>
    `tilt ${measure("angle", value, system, 2)}: both ends of the bush touch the shaft at ${measure("angle", limit, system, 2)}`;
  return { word: "fails", ...found, say };
}
