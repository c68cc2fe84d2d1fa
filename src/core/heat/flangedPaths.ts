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
