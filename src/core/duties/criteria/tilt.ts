import { edgeContact, EDGEPRESSURE } from "../../loading/edgePressure";
import { measureText } from "../../measure";
import { readLine } from "../../teach/working";
import type { Values } from "../../grades/model/properties";
import type { Duty } from "../model/duty";
import {
  contactWorking,
  greatestLoad,
  leastLoad,
  loadWorking,
  onSlope,
  onSlopeOf,
  slopeWorking,
  tilted,
} from "../model/contacts";
import type { Layers } from "../model/contacts";
import { criterion, joined, worse } from "../judging/criterion";
import type { Finding, Working } from "../judging/criterion";
import { fitProperties } from "../fit/states";

/** Of the lines of an edge pressure those for the depth of the stiff layer. */
const depthSymbols: ReadonlySet<string> = new Set(["θ", "K_c", "b_c", "one_c", "u_c"]);
const touchingLines: Working = { lines: ["V = φ", "Z = atan((C + u_c) / L) * 180 / pi"], known: {} };

export const tilt = criterion(
  {
    id: "tilt",
    heading: "tilt",
    kind: "angle",
    text: "The slope of the shaft at the least clearance of the fit: with both ends of the bush touching it the shaft jams. At the least load, and with a span at the greatest too",
    ...onSlope,
    properties: fitProperties,
    source: { key: "geometry" },
    working: (values, duty) => {
      const found = tilted(values, duty, hardest(values, duty).load);
      if (!found) return undefined;
      const { layers, slope } = found;
      const layer = { ...layers.least, tilt: slope };
      const { lines, ...contact } = contactWorking(EDGEPRESSURE, layer, layers.states, "least");
      const ofDepth = lines.filter((line) => depthSymbols.has(readLine(line).symbol));
      return joined(loadWorking(layer, duty), slopeWorking(duty, slope), { ...contact, lines: ofDepth }, touchingLines);
    },
  },
  (values, duty) => hardest(values, duty).finding,
);

/** What is found under the least load or, where that is worse as it bends the shaft further, under the greatest. */
function hardest(values: Values, duty: Duty): { readonly load: number; readonly finding: Finding } {
  const loads = duty.given.span === undefined ? [leastLoad(duty)] : [greatestLoad(duty), leastLoad(duty)];
  const found = loads.map((load) => ({ load, finding: onSlopeOf(values, duty, load, touching) }));
  return found.reduce((a, b) => (worse(a.finding, b.finding) === a.finding ? a : b));
}

function touching(layers: Layers, value: number): Finding {
  const layer = { ...layers.least, tilt: value };
  const { upper, isJammed } = edgeContact(layer);
  const limit = (Math.atan((layer.clearance + upper.depth) / layer.length) * 180) / Math.PI;
  const found = { figures: layers.figures, value, limit } as const;
  if (!isJammed) return { word: "fits", ...found };
  const say = (system: Parameters<typeof measureText>[2]) =>
    `tilt ${measureText("angle", value, system, 2)}: both ends of the bush touch the shaft at ${measureText("angle", limit, system, 2)}`;
  return { word: "fails", ...found, say };
}
