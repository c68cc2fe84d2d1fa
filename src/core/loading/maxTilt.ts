import { noDatum } from "../errors";
import { formula, Measure } from "../formula";
import type { Lookup } from "../formula";
import { isFitted as isFittedAt, loadOf, meanLoadOf, summedLoadOf, summedLoadText } from "./conforming";
import { checkClearance, confinedBetween, confinedLine, confinedStiffness, layerArgs, loadNumberOf } from "./layer";
import type { Layer } from "./layer";

interface Limited extends Layer {
  readonly pressure: number;
}

/**
 * EDGEPRESSURE turned round for its upper figure, with t = 1 + p/(K·c): θ = K·R·c²·J(t)/F where the shaft then has partly lifted, else the root of
 * (J(t) − J(t − θL/c))/θ = F/(K·R·c²); 0 where a true shaft already presses harder. Low, the safe side, as that figure is high.
 */
export const MAXTILT = formula(
  {
    id: "MAXTILT",
    text: "Tilt of the shaft at which the upper edge pressure reaches a pressure, such as the compressive strength; 0 where a true shaft already exceeds it. Low, the safe side: that figure is 7 to 110 % high once the shaft has partly lifted. #N/A where the shaft touches both ends first",
    args: {
      ...layerArgs,
      load: { kind: "force", symbol: "F", above: 0, text: "Radial load" },
      pressure: { kind: "pressure", symbol: "p", above: 0, text: "Edge pressure allowed" },
    },
    units: true,
    result: { kind: "angle", symbol: "φ" },
    working: (values) => {
      const tilt = tiltOf(values);
      if (tilt.lie === "too much") return ["φ = 0"];
      return [confinedLine, ...slopeLines(tilt), "φ = θ * 180 / pi"];
    },
    between: {
      ...confinedBetween,
      u: { unit: "mm", text: "Depth at the edge" },
      t: { unit: "", text: "Depth at the edge over half of the clearance, plus one" },
      b: { unit: "", text: "The same at the far end" },
      one: { unit: "", text: "Equation that D solves, its left side over its right" },
      θ: { unit: "", text: "Slope of the shaft, radians" },
    },
    lookups: (values): Record<string, Lookup> => {
      const { slope, lie, isFitted } = tiltOf(values);
      if (lie !== "full length" || isFitted) return {};
      const value = new Measure((slope * values.length) / (values.clearance / 2), "ratio");
      return { D: { value, text: "Fall of the shaft along the bush over half of the clearance, found by iteration" } };
    },
    source: [
      { key: "johnson", at: "ch. 4, elastic foundation" },
      { key: "own", at: "its integral over a tilted shaft" },
    ],
    example: [800, 20, 15, 1.5, 0.08, 2500, 0.4, 40],
    see: ["EDGEPRESSURE", "SHAFTSLOPE", "FREETILT"],
  },
  (values) => {
    checkClearance(values);
    const { slope, depth } = tiltOf(values);
    if (slope * values.length > values.clearance + depth)
      throw noDatum("pressure", "pressure is not reached before the shaft touches both ends of the bush");
    return (slope * 180) / Math.PI;
  },
);

/** The slope that presses the edge to the pressure, and how the shaft then lies. */
interface Tilt {
  readonly slope: number;
  readonly depth: number;
  readonly lie: "too much" | "partly lifted" | "full length";
  /** The clearance is nothing beside the depth. */
  readonly isFitted: boolean;
}

function tiltOf(values: Limited): Tilt {
  const { length, clearance, pressure } = values;
  const stiffness = confinedStiffness(values);
  const depth = pressure / stiffness;
  const isFitted = isFittedAt(clearance, depth);
  const gap = clearance / 2;
  const slope = isFitted
    ? fittedSlope(values, stiffness, depth)
    : (fallOf(depth / gap, loadNumberOf(values, stiffness)) * gap) / length;
  const lie = slope <= 0 ? "too much" : depth < slope * length ? "partly lifted" : "full length";
  return { slope: Math.max(0, slope), depth, lie, isFitted };
}

/** The shaft lies on the whole length; below 0 where a true one already lies deeper. */
const fittedSlope = ({ load, bore, length }: Layer, stiffness: number, depth: number): number =>
  (2 * (depth - (4 * load) / (Math.PI * stiffness * bore * length))) / length;

/** The fall of the shaft along the bush, in units of the gap, at which a depth carries a load number; 0 where it carries less. */
function fallOf(x: number, load: number): number {
  if (load >= loadOf(x)) return 0;
  const lifted = summedLoadOf(x) / load;
  if (lifted >= x) return lifted;
  let [low, high] = [0, x];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (meanLoadOf(x, middle) > load) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function slopeLines({ lie, isFitted }: Tilt): string[] {
  if (isFitted) return ["u = p / K_c", "θ = 2 * (u - 4 * F / (pi * K_c * d * L)) / L"];
  const t = "t = 1 + p / (K_c * C / 2)";
  if (lie === "partly lifted") return [t, `θ = K_c * d / 2 * (C / 2)^2 * (${summedLoadText("t")}) / F`];
  return [
    t,
    "b = t - D",
    `one = (${summedLoadText("t")} - (${summedLoadText("b")})) / D / (F / (L * K_c * d / 2 * C / 2))`,
    "θ = D * C / 2 / L",
  ];
}
