import { edgeContact, EDGEPRESSURE } from "../../loading/edgePressure";
import { confinedStiffness, edgeStiffness } from "../../loading/layer";
import type { Values } from "../../grades/model/properties";
import { percentText } from "../../measure";
import {
  againstStrength,
  contactWorking,
  greatestLoad,
  loadWorking,
  onSlope,
  onSlopeOf,
  slopeWorking,
  tilted,
} from "../model/contacts";
import type { Layers } from "../model/contacts";
import { criterion, figure, holds, joined, lacking, together, worse } from "../judging/criterion";
import type { Finding, Working } from "../judging/criterion";
import { fitProperties } from "../fit/states";

/** The grade's rating for edge load: poor fails, whatever the pressure; fair is care. */
function ratingOf({ edgeLoad }: Values): Finding {
  if (edgeLoad === undefined) return lacking("edgeLoad");
  const found = { figures: ["edgeLoad"], property: "edgeLoad" } as const;
  if (edgeLoad === "good") return { word: "fits", ...found };
  return { word: edgeLoad === "poor" ? "fails" : "care", ...found, say: () => `edge load ${edgeLoad}` };
}

/** The pressure at the edge, lower and upper figure, at the greatest clearance of the fit. */
function pressureOf(values: Values, layers: Layers, tilt: number): Finding {
  const layer = { ...layers.greatest, tilt };
  const { lower, upper, isJammed } = edgeContact(layer);
  const limit = values.compressiveStrength;
  if (limit === undefined) return lacking("compressiveStrength");
  const figures = [...layers.figures, "compressiveStrength"] as const;
  if (isJammed) return { word: "fails", figures, limit, say: () => "edge pressure: both ends touch the shaft" };
  const [least, value] = [edgeStiffness(layer) * lower.depth, confinedStiffness(layer) * upper.depth];
  const use = value / limit;
  const found = { figures, value, limit, use, property: "compressiveStrength" } as const;
  if (holds(use)) return { word: "fits", ...found };
  const word = holds(least / limit) ? "care" : "fails";
  const say = () => `edge pressure ${percentText(least / limit)} to ${percentText(use)} of the compressive strength`;
  return { word, ...found, say };
}

/** Rating and pressure: where the rating alone has the word, what the pressure takes up stays told beside it. */
function beside(rating: Finding, pressure: Finding): Finding {
  const { say, use } = pressure;
  const isRated = rating.word !== "no data" && worse(rating, pressure) === rating;
  if (!isRated || use === undefined || rating.say === undefined) return together([rating, pressure]);
  const rated = rating.say;
  const told = say ?? (() => `edge pressure ${percentText(use)}`);
  return {
    ...pressure,
    word: rating.word,
    // a poor rating fails whatever the pressure: no ratio tells by how much
    use: rating.word === "fails" ? undefined : use,
    room: () => [-use],
    figures: [...rating.figures, ...pressure.figures],
    say: (system) => `${rated(system)}; ${told(system)}`,
  };
}

/** Both figures over the compressive strength. */
const shares = (strength: number): Working => ({
  lines: ["w_low = p_low / σ_c", "w_high = p_high / σ_c"],
  known: { σ_c: figure(strength, "pressure", "Compressive strength", "compressiveStrength") },
  between: {
    w_low: { unit: "", text: "Lower edge pressure over the compressive strength" },
    w_high: { unit: "", text: "Upper edge pressure over the compressive strength" },
  },
});

export const edgePressure = criterion(
  {
    id: "edgePressure",
    heading: "edge pressure",
    kind: "pressure",
    text: "The pressure at the edge of the bush under the shaft's slope, at the greatest clearance of the fit, against the compressive strength: fails where even the lower figure exceeds it, care where the upper does; and the grade's rating for edge load",
    ...onSlope,
    properties: ["edgeLoad", "compressiveStrength", ...fitProperties],
    source: [
      { key: "johnson", at: "ch. 4, elastic foundation" },
      { key: "practice", at: "rating for edge load" },
    ],
    working: (values, duty) => {
      const found = tilted(values, duty);
      if (!found || values.edgeLoad === undefined) return undefined;
      const { layers, slope } = found;
      const pressure = pressureOf(values, layers, slope);
      if (pressure.value === undefined || pressure.limit === undefined) return undefined;
      const layer = { ...layers.greatest, tilt: slope };
      const { lines, known } = againstStrength("p_high", pressure.limit);
      const { use } = beside(ratingOf(values), pressure);
      return joined(
        loadWorking(layer, duty),
        slopeWorking(duty, slope),
        contactWorking(EDGEPRESSURE, layer, layers.states, "greatest"),
        shares(pressure.limit),
        { lines: use === undefined ? lines.filter((one) => !one.startsWith("u = ")) : lines, known },
      );
    },
  },
  (values, duty) =>
    beside(
      ratingOf(values),
      onSlopeOf(values, duty, greatestLoad(duty), (layers, slope) => pressureOf(values, layers, slope)),
    ),
);
