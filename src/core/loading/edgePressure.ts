import { noDatum } from "../errors";
import { formula } from "../formula";
import type { Answer, Lookup } from "../formula";
import { loadText, summedLoadText } from "./conforming";
import {
  checkClearance,
  closingOf,
  confinedBetween,
  confinedLine,
  confinedStiffness,
  contactOf,
  edgeBetween,
  edgeLine,
  edgeStiffness,
  layerArgs,
} from "./layer";
import type { Contact, Layer } from "./layer";

interface Tilted extends Layer {
  readonly tilt: number;
}
export interface EdgeContact {
  readonly lower: Contact;
  readonly upper: Contact;
  /** The far end touches the other side of the bore, which the model leaves out. */
  readonly isJammed: boolean;
}

/** The contact of a tilted shaft by the soft layer, whose edge pressure is the lower, and by the stiff one. */
export function edgeContact(layer: Tilted): EdgeContact {
  const slope = (layer.tilt * Math.PI) / 180;
  const lower = contactOf(layer, edgeStiffness(layer), slope);
  const upper = contactOf(layer, confinedStiffness(layer), slope);
  return { lower, upper, isJammed: slope * layer.length > layer.clearance + upper.depth };
}

/**
 * Elastic foundation between a rigid shaft and a rigid housing: J(t) − J(t − θL/c) = F·θ/(K·R·c²) with J = 0 where the shaft has lifted off.
 * Against elements of a layer with free ends, lifted: the upper figure +7 to +27 % (ν 0.3), +26 to +57 % (0.4), +41 to +110 % (0.45), always
 * safe; the lower −5 to +17 % (ν up to 0.4), −14 to +21 % (0.45). Without tilt both are low at mid-length: 5, 12, 18 %.
 */
export const EDGEPRESSURE = formula(
  {
    id: "EDGEPRESSURE",
    text: "Pressure at the edge of a bush under a tilted shaft, before wear beds it in: compare with the compressive strength. The upper figure is safe, 7 to 110 % above where partly lifted and the more the higher Poisson's ratio; the lower is within −14 to +21 %",
    args: {
      ...layerArgs,
      tilt: {
        kind: "angle",
        symbol: "φ",
        from: 0,
        to: 45,
        text: "Slope of the shaft in the bush; degrees, as from SHAFTSLOPE",
      },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "lower edge pressure", kind: "pressure", symbol: "p_low" },
        { name: "upper edge pressure", kind: "pressure", symbol: "p_high" },
        { name: "length in contact", kind: "length", symbol: "ℓ" },
        { name: "contact", kind: "text" },
      ],
      text: 'Lower and upper edge pressure, length in contact (upper), "full length", "partly lifted" or "both ends touch", where the model ends: #N/A',
    },
    working: (values) => {
      const { lower, upper } = edgeContact(values);
      return [
        "θ = φ * pi / 180",
        edgeLine,
        confinedLine,
        ...depthLines(lower, values, "e"),
        ...depthLines(upper, values, "c"),
        "p_low = K_e * u_e",
        "p_high = K_c * u_c",
        upper.isLifted ? "ℓ = u_c / θ" : "ℓ = L",
      ];
    },
    between: {
      θ: { unit: "", text: "Slope of the shaft, radians" },
      ...edgeBetween,
      ...confinedBetween,
      b_e: { unit: "", text: "The same at the far end of the soft layer" },
      b_c: { unit: "", text: "The same at the far end of the stiff layer" },
      one_e: { unit: "", text: "Equation that t_e solves, its left side over its right" },
      one_c: { unit: "", text: "Equation that t_c solves, its left side over its right" },
      u_e: { unit: "mm", text: "Depth at the edge of the soft layer" },
      u_c: { unit: "mm", text: "Depth at the edge of the stiff layer" },
    },
    lookups: (values): Record<string, Lookup> => {
      const { lower, upper } = edgeContact(values);
      return {
        ...(lower.isFitted ? {} : { t_e: closingOf(lower, values, "the soft layer") }),
        ...(upper.isFitted ? {} : { t_c: closingOf(upper, values, "the stiff layer") }),
      };
    },
    source: [
      { key: "johnson", at: "ch. 4, elastic foundation" },
      { key: "own", at: "its integral over a tilted shaft" },
    ],
    example: [800, 20, 15, 1.5, 0.08, 2500, 0.4, 0.1],
    see: ["SHAFTSLOPE", "MAXTILT", "PEAKPRESSURE", "FREETILT"],
  },
  (values): Answer[] => {
    checkClearance(values);
    const { lower, upper, isJammed } = edgeContact(values);
    if (isJammed) return [outside(), outside(), outside(), "both ends touch"];
    return [
      edgeStiffness(values) * lower.depth,
      confinedStiffness(values) * upper.depth,
      upper.length,
      upper.isLifted ? "partly lifted" : "full length",
    ];
  },
);

const outside = () => noDatum("tilt", "tilt: the shaft touches both ends of the bush, which this model leaves out");

/** The depth at the edge: in closed form, or with the equation that its t solves. */
function depthLines({ isFitted, isLifted }: Contact, { load, tilt }: Tilted, i: "e" | "c"): string[] {
  if (load === 0) return [`u_${i} = 0`];
  if (isFitted) return [`u_${i} = 4 * F / (pi * K_${i} * d * L) + θ * L / 2`];
  const radial = `K_${i} * d / 2`;
  const [t, far] = [`t_${i}`, `b_${i}`];
  const depth = `u_${i} = C / 2 * (${t} - 1)`;
  if (tilt === 0) return [`one_${i} = (${loadText(t)}) / (F / (L * ${radial} * C / 2))`, depth];
  const right = `(F * θ / (${radial} * (C / 2)^2))`;
  return isLifted
    ? [`one_${i} = (${summedLoadText(t)}) / ${right}`, depth]
    : [
        `${far} = ${t} - θ * L / (C / 2)`,
        `one_${i} = (${summedLoadText(t)} - (${summedLoadText(far)})) / ${right}`,
        depth,
      ];
}
