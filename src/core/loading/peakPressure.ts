import { formula } from "../formula";
import type { Lookup } from "../formula";
import { halfAngleOf, loadText } from "./conforming";
import {
  checkClearance,
  closingOf,
  confinedBetween,
  confinedLine,
  confinedStiffness,
  contactOf,
  layerArgs,
} from "./layer";
import type { Contact, Layer } from "./layer";

/**
 * Peak pressure at the bottom of the bore: of an elastic foundation whose depth solves Λ(t) = F/(L·K·R·c), and of a Hertzian line contact, the greater.
 * Against elements of the bonded wall (plane strain) −5 to +8 % for ν up to 0.4 and a wall up to 0.2 of the radius, up to 25 % high at 0.45;
 * the half angle ±20 %. Walls of 0.2 to 0.4 of the radius: −9 to +7 %, at 0.45 +2 to +22 %, the angle to +50 %. Soft ends add 3 to 18 % at mid-length,
 * so the figure may be low (unsafe) there. Not for a bore in a large block of polymer.
 */
export const PEAKPRESSURE = formula(
  {
    id: "PEAKPRESSURE",
    text: "Peak pressure in a bore with clearance and the half angle of contact, before wear: within −5 to +8 % for ν up to 0.4 and a wall up to a fifth of the radius, up to 25 % high at 0.45; the angle to 20 %. The ends, being softer, add 3 to 18 % at mid-length",
    args: layerArgs,
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "peak pressure", kind: "pressure", symbol: "p" },
        { name: "half angle of contact", kind: "angle", symbol: "α" },
      ],
      text: "Peak pressure, half angle of contact in degrees",
    },
    working: (values) => {
      if (values.load === 0) return ["p = 0", "α = 0"];
      if (trueContact(values).isFitted) return ["p = 4 / pi * F / (d * L)", "α = 90"];
      return [
        confinedLine,
        "Λ = 4 * F / (L * K_c * d * C)",
        `one = (${loadText("t")}) / Λ`,
        "p_F = K_c * C / 2 * (t - 1)",
        "p_H = 2 * sqrt(F * E * C / (2 * pi * L * (1 - ν^2))) / d",
        "p = max(p_F, p_H)",
        "α = acos(1 / t) * 180 / pi",
      ];
    },
    factors: { "90": "degrees, the half of the bore that is pressed" },
    between: {
      ...confinedBetween,
      Λ: { unit: "", text: "Load per length over stiffness, radius and radial clearance" },
      one: { unit: "", text: "Equation that t solves, its left side over its right" },
      p_F: { unit: "MPa", text: "Peak pressure of the elastic foundation" },
      p_H: { unit: "MPa", text: "Peak pressure of a Hertzian line contact" },
    },
    lookups: (values): Record<string, Lookup> => {
      const contact = trueContact(values);
      return contact.isFitted ? {} : { t: closingOf(contact, values) };
    },
    source: [
      { key: "johnson", at: "ch. 4, elastic foundation; line contact" },
      { key: "own", at: "the foundation's load in a bore with clearance" },
    ],
    example: [3000, 20, 20, 1.5, 0.06, 2500, 0.4],
    see: ["PRESSURE", "EDGEPRESSURE"],
  },
  (values) => {
    checkClearance(values);
    const { load, bore, length, clearance, modulus, poisson } = values;
    if (load === 0) return [0, 0];
    const contact = trueContact(values);
    const gap = clearance / 2;
    const line = Math.sqrt(((load / length) * modulus * gap) / (Math.PI * (1 - poisson ** 2))) / (bore / 2);
    const foundation = confinedStiffness(values) * contact.depth;
    return [Math.max(foundation, line), (halfAngleOf(contact.depth / gap) * 180) / Math.PI];
  },
);

const trueContact = (layer: Layer): Contact => contactOf(layer, confinedStiffness(layer), 0);
