import { clash } from "../errors";
import type { NumberArg } from "../formula";
import type { Quantity } from "../kinds";

/** Part of the bore that carries load and so passes heat on: half of it (common practice, conservative). */
export const halfOfBore = 0.5;

/** Arguments that describe the two ways out for the heat; shared by the estimates that use them. */
export const bushArgs = {
  bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
  length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
  wall: { kind: "length", symbol: "w", above: 0, text: "Wall thickness of the bush" },
} as const satisfies Record<string, NumberArg>;

export const pathArgs = {
  bushconductivity: { kind: "conductivity", symbol: "λb", above: 0, text: "Thermal conductivity of the bush" },
  shaftconductivity: { kind: "conductivity", symbol: "λs", above: 0, text: "Thermal conductivity of the shaft" },
  ends: {
    kind: "count",
    symbol: "ne",
    from: 0,
    to: 2,
    default: 1,
    optional: true,
    text: "How many ends of the shaft stand far out into the air",
  },
  film: {
    kind: "film",
    symbol: "h",
    above: 0,
    default: 10,
    optional: true,
    text: "Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual",
  },
} as const satisfies Record<string, NumberArg>;

/** The working of both paths; ends in G, W/K. */
export const pathLines = [
  `Gw = ${halfOfBore} * 2 * pi * λb * L / 1000 / ln((d + 2 * w) / d)`,
  "P = pi * d / 1000",
  "A = pi * d^2 / 4000000",
  "Gs = ne * sqrt(h * P * λs * A)",
  "G = Gw + Gs",
] as const;
export const pathFactors = { [String(halfOfBore)]: "part of the bore that carries load and passes heat" };
export const pathUnits = {
  Gw: { unit: "W/K", text: "Thermal conductance of the wall" },
  P: { unit: "m", text: "Perimeter of the shaft" },
  A: { unit: "m²", text: "Cross-section of the shaft" },
  Gs: { unit: "W/K", text: "Thermal conductance of the shaft's ends" },
  G: { unit: "W/K", text: "Thermal conductance of wall and shaft together" },
} as const;

/** W/K through the wall into the housing: radial conduction in a cylinder, times the part of the bore in contact. */
export function wallConductance(bush: {
  bore: Quantity<"length">;
  length: Quantity<"length">;
  wall: Quantity<"length">;
  bushconductivity: Quantity<"conductivity">;
  contact?: number;
}): number {
  const { bore, length, wall, bushconductivity, contact = halfOfBore } = bush;
  return (contact * 2 * Math.PI * bushconductivity * (length / 1000)) / Math.log1p((2 * wall) / bore);
}

/** W/K along the shaft into the air: each end that stands out is a fin without end. */
export function shaftConductance(shaft: {
  bore: Quantity<"length">;
  shaftconductivity: Quantity<"conductivity">;
  ends: Quantity<"count">;
  film: Quantity<"film">;
}): number {
  const { bore, shaftconductivity, ends, film } = shaft;
  if (!Number.isInteger(ends)) throw clash("ends", `ends must be 0, 1 or 2, got ${ends}`);
  const diameter = bore / 1000;
  const perimeter = Math.PI * diameter;
  const area = (Math.PI / 4) * diameter ** 2;
  return ends * Math.sqrt(film * perimeter * shaftconductivity * area);
}
