import { bushCompliance, fitPressureOf, housingCompliance, jointCompliance, narrowingOf } from "./lame";
import type { Ring } from "./lame";

/** A press fit as it is left by what came before: the set S is the interference that relaxation has used up for good, mm. */
export interface State {
  /** Interference, δ = δ₀ + D·e − S; zero or less is a loose bush. */
  readonly interference: number;
  /** Fit pressure, MPa. */
  readonly pressure: number;
  readonly set: number;
}

/**
 * The joint after a mismatch e of the free strains of bush and housing: δ = δ₀ + D·e − S, p = δ/(D·(c_h + c_b)). Exact for an
 * elastic ring; the modulus is that at room temperature, so that a hot bush is told too tight, never too loose.
 */
export function stateAt(ring: Ring, interference: number, mismatch: number, set: number): State {
  const now = interference + ring.outside * mismatch - set;
  return { interference: now, pressure: fitPressureOf(ring, Math.max(0, now)), set };
}

/** Share of the pressure that is left where the polymer keeps R of its modulus: R_e = (c_h + c_b)/(c_h + c_b/R). */
export function keptPressure(ring: Ring, kept: number): number {
  const [housing, bush] = [housingCompliance(ring), bushCompliance(ring)];
  return (housing + bush) / (housing + bush / kept);
}

/** A hold that leaves R of the modulus: the set grows by (1 − R_e)·δ. */
export function relax(ring: Ring, state: State, kept: number): State {
  const left = keptPressure(ring, kept);
  const set = state.set + (1 - left) * Math.max(0, state.interference);
  return { interference: state.interference, pressure: state.pressure * left, set };
}

/** The bore, from its free size: d·(1 + ε) − (k/c_b)·S − k·max(0, δ)/(c_h + c_b), k = 2·D·d/(E·(D² − d²)). It stays small although the grip is gone. */
export function boreIn(ring: Ring, freeBore: number, strain: number, { interference, set }: State): number {
  const k = narrowingOf(ring);
  const closedIn = (k * Math.max(0, interference)) / jointCompliance(ring);
  return freeBore * (1 + strain) - (k / bushCompliance(ring)) * set - closedIn;
}
