/** Sizes hold at this temperature, and bushes are pressed in at it (ISO 1), °C. */
export const assemblyTemperature = 20;

/** A pressed bush and its shaft, and how they grow. Lengths in mm, strains as fractions. */
export interface Running {
  /** Clearance right after pressing, at the reference temperature. */
  readonly clearance: number;
  readonly bore: number;
  readonly shaft: number;
  readonly outside: number;
  /** Interference of bush and housing at assembly; negative where the bush is loose. */
  readonly interference: number;
  /** κ, bore close-in per unit of interference. */
  readonly closeIn: number;
  /** Free strain of the bush, heat and moisture together. */
  readonly bushStrain: number;
  readonly housingStrain: number;
  readonly shaftStrain: number;
}

/**
 * Interference δ(T) = δ₀ + D·(ε − εh); the bore changes by d·ε − κ·(max(0, δ(T)) − max(0, δ₀)), the shaft by ds·εs.
 * A bush whose interference is used up grows freely: its clearance is still right, but nothing holds it any more.
 */
export function runningState(r: Running): { readonly clearance: number; readonly interference: number } {
  const interference = r.interference + r.outside * (r.bushStrain - r.housingStrain);
  const boreChange = r.bore * r.bushStrain - r.closeIn * (Math.max(0, interference) - Math.max(0, r.interference));
  return { clearance: r.clearance + boreChange - r.shaft * r.shaftStrain, interference };
}
