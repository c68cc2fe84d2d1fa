import { depthOf, loadText } from "../loading/conforming";
import misses from "../../../data/misses.json";
import { formula, Measure } from "../formula";
import type { Lookup } from "../formula";
import { isFitted } from "../loading/conforming";
import { conformityArgs, shapingClearance, sinkOf } from "./conformity";

/**
 * h = k·p·s for a rate from bush tests. A rate from flat tests used so gives at least 21 % too little; with "flat" the depth is that
 * at the bottom of a bore with clearance, exact for a rigid shaft, a load fixed to the bush and a rate that does not change.
 */
export const WEAR = formula(
  {
    id: "WEAR",
    text: `Wear depth after a sliding distance, load fixed to the bush and the shaft moving; a rate from flat tests needs from and clearance, without them the depth is at least 21 % too small. One rate for other pressures and speeds was up to ${misses.wear.oneRate} times too low`,
    args: {
      wearrate: {
        kind: "wearRate",
        symbol: "k",
        from: 0,
        text: "Specific wear rate; with your own factors from WEARRATE where you have them",
      },
      pressure: { kind: "pressure", symbol: "p", from: 0, text: "Mean pressure on the projected area" },
      distance: { kind: "distance", symbol: "s", from: 0, text: "Sliding distance" },
      ...conformityArgs,
    },
    units: true,
    result: { kind: "length", symbol: "h", label: "Wear depth" },
    working: (values) => {
      const clearance = shapingClearance(values);
      const flat = "h0 = k * p * s * 1000";
      if (clearance === undefined) return ["h = k * p * s * 1000"];
      if (isFitted(clearance, flatWear(values))) return [flat, "h = 4 / pi * h0"];
      return [flat, "Λ = 4 * h0 / C", `one = (${loadText("t")}) / Λ`, "h = C / 2 * (t - 1)"];
    },
    between: {
      h0: { unit: "mm", text: "Wear depth of a flat face" },
      Λ: { unit: "", text: "That depth over a quarter of the clearance" },
      one: { unit: "", text: "Equation that t solves, its left side over its right" },
    },
    lookups: (values): Record<string, Lookup> => {
      const clearance = shapingClearance(values);
      if (clearance === undefined || isFitted(clearance, flatWear(values))) return {};
      const t = 1 + depthOf((4 * flatWear(values)) / clearance);
      return { t: { value: new Measure(t, "ratio"), text: "Depth of contact as 1 + 2·h/C, found by iteration" } };
    },
    source: [
      { key: "archard", at: "linear wear law, as a depth per area" },
      { key: "own", at: "the same law at each place of a bore under a rigid shaft" },
    ],
    example: [2e-6, 2.67, 20, "flat", 0.08],
    see: ["WEARRATE", "LIFE", "LIFEBAND"],
  },
  (values) => {
    const clearance = shapingClearance(values);
    return clearance === undefined ? flatWear(values) : sinkOf(flatWear(values), clearance);
  },
);

/** k·p·s, mm. */
const flatWear = ({ wearrate, pressure, distance }: { wearrate: number; pressure: number; distance: number }): number =>
  wearrate * pressure * distance * 1000;
