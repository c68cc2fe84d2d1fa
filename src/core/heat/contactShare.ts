import { formula } from "../formula";

/** Conductivity of the air in the gap, W/(m·K) (Incropera, thermophysical properties of gases at 300 K (memory)). */
const air = 0.027;

/**
 * f = 1/√(1 + (λb/λ_air)·C/w): from where shaft and bore touch the heat spreads along a thin wall and leaks through the gap, a fin in the round.
 * 1.2 % too high (unsafe) against one solution in two dimensions. For walls that are thin beside the bore.
 */
export const CONTACTSHARE = formula(
  {
    id: "CONTACTSHARE",
    text: "Share of the bore that passes heat on to the wall, from the air gap of the clearance; 1.2 % too high against one solution in two dimensions. For thin walls",
    args: {
      clearance: { kind: "length", symbol: "C", from: 0, text: "Diametral clearance" },
      wall: { kind: "length", symbol: "w", above: 0, text: "Wall thickness of the bush" },
      conductivity: { kind: "conductivity", symbol: "λb", above: 0, text: "Thermal conductivity of the bush" },
    },
    units: true,
    result: { kind: "ratio", symbol: "f" },
    working: [`f = 1 / sqrt(1 + λb / ${air} * C / w)`],
    factors: { [String(air)]: "W/(m·K), conductivity of air" },
    source: { key: "own", at: "wall and air gap as a fin in the round" },
    example: [0.08, 1.5, 0.25],
    see: ["RUNTEMP", "HEATPV"],
  },
  ({ clearance, wall, conductivity }) => 1 / Math.sqrt(1 + ((conductivity / air) * clearance) / wall),
);
