import { shaftConductance, wallConductance } from "./paths";
import type { Paths } from "./paths";

/** A flanged bush on a metal shaft whose shoulder bears on the flange, in working units. */
export interface FlangedPaths extends Omit<Paths, "endlength" | "ends" | "housingpath"> {
  readonly flangeoutside: number;
  readonly flangethickness: number;
  /** Length of the shaft in the air behind the sleeve, and beyond the shoulder. */
  readonly farend: number;
  readonly shoulderend: number;
}

/** W/K: the ways out beside sleeve and flange, along the shaft between them, and N = G₁ + G₂ + G₁·G₂/G_c. */
export interface FlangedNodes {
  readonly sleeve: number;
  readonly flange: number;
  readonly between: number;
  readonly sum: number;
}

/**
 * Shaft and bush as two nodes, the middle of the sleeve and the shoulder: G₁ = κ·G_w + far end with L/(3·λ·A), G₂ = κ·G_f + end beyond the shoulder,
 * G_c = λ·A/(L/2 + t), G_f = λ_b·π/4·(Do² − D²)/t, κ = G_h/(G_w + G_f + G_h): 1 with the housing at ambient (Infinity), 0 with none.
 * Rise of the hotter 2 to 9 % high (safe) against volumes in space. Needs shaft and shoulder of metal and the flange flat on the housing.
 */
export function flangedNodes(paths: FlangedPaths, housingpath: number): FlangedNodes {
  const { bore, length, wall, flangeoutside, flangethickness, bushconductivity, shaftconductivity } = paths;
  const flangeArea = ((Math.PI / 4) * (flangeoutside ** 2 - (bore + 2 * wall) ** 2)) / 1e6;
  const throughFlange = (bushconductivity * flangeArea) / (flangethickness / 1000);
  const throughWall = wallConductance(paths);
  const share = 1 / (1 + (throughWall + throughFlange) / housingpath);
  const far = shaftConductance({ ...paths, endlength: paths.farend, ends: 1 });
  const shoulder = shaftConductance({ ...paths, length: 0, endlength: paths.shoulderend, ends: 1 });
  const along = (shaftconductivity * Math.PI * (bore / 1000) ** 2) / 4;
  const between = along / ((length / 2 + flangethickness) / 1000);
  const sleeve = share * throughWall + far;
  const flange = share * throughFlange + shoulder;
  return { sleeve, flange, between, sum: sleeve + flange + (sleeve * flange) / between };
}

/** Rise of the sleeve, K: (Q + G₂·Q_r/G_c)/N, for heat made on the sleeve and on the flange. */
export const sleeveRise = ({ flange, between, sum }: FlangedNodes, onSleeve: number, onFlange: number): number =>
  (onSleeve + onFlange + (flange * onSleeve) / between) / sum;

/** Rise of the flange, K: (Q + G₁·Q_a/G_c)/N. */
export const flangeRise = ({ sleeve, between, sum }: FlangedNodes, onSleeve: number, onFlange: number): number =>
  (onSleeve + onFlange + (sleeve * onFlange) / between) / sum;

/**
 * The working of both rises from the friction μ and load times speed W of each surface, behind the lines of the paths, of which `alone` is the
 * conductance that the sleeve has without its flange: it is never cooler than so. Without a known way out through the housing the least rise has the
 * housing at ambient, the greatest none.
 */
export const nodeLines = (hasEnds: boolean, housing: "known" | "least" | "greatest", alone: string): string[] => [
  ...(hasEnds ? [] : ["A = pi * d^2 / 4000000"]),
  "Gf = λb * pi / 4 * (Do^2 - (d + 2 * w)^2) / (1000 * t_f)",
  `κ = ${{ known: "Gh / (Gw + Gf + Gh)", least: "1", greatest: "0" }[housing]}`,
  `G_1 = κ * Gw${hasEnds ? " + 1 / (1 / Ge + L / 1000 / (3 * λs * A))" : ""}`,
  `G_2 = κ * Gf${hasEnds ? " + Ge" : ""}`,
  "G_c = λs * A / ((L / 2 + t_f) / 1000)",
  "N = G_1 + G_2 + G_1 * G_2 / G_c",
  "Q_r = μ * W_r",
  "Q_a = μ * W_a",
  `ΔT_s = max(Q_r / ${alone}, (Q_r + Q_a + G_2 * Q_r / G_c) / N)`,
  "ΔT_f = (Q_r + Q_a + G_1 * Q_a / G_c) / N",
];
export const nodeBetween = {
  A: { unit: "m²", text: "Cross-section of the shaft" },
  Gf: { unit: "W/K", text: "Thermal conductance of the flange" },
  κ: { unit: "", text: "Share of the way through the housing" },
  G_1: { unit: "W/K", text: "Ways out beside the sleeve" },
  G_2: { unit: "W/K", text: "Ways out beside the flange" },
  G_c: { unit: "W/K", text: "Along the shaft between the two" },
  N: { unit: "W/K", text: "Sum for both nodes" },
  Q_r: { unit: "W", text: "Friction heat of the sleeve" },
  Q_a: { unit: "W", text: "Friction heat of the flange" },
  ΔT_s: { unit: "K", text: "Rise of the sleeve, no less than it has alone" },
  ΔT_f: { unit: "K", text: "Rise of the flange" },
} as const;
