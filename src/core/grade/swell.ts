import { closeInOf } from "../fit/lame";
import { runningState } from "../fit/running";

/**
 * How far the bore of a bush closes in when the bush, already pressed into a rigid housing, swells by the free linear
 * strain ε: κ·D·ε − d·ε with κ = 2·D·d/((D² + d²) − ν·(D² − d²)). A rigid housing errs on the safe side.
 */
export function boreCloseIn(bore: number, outside: number, poisson: number, strain: number): number {
  // in a rigid, unbounded housing the bush's own modulus cancels
  const rigid = { housing: Infinity, housingModulus: Infinity, housingPoisson: 0, bushModulus: 1 };
  const closeIn = closeInOf({ ...rigid, bore, outside, bushPoisson: poisson });
  const still = { clearance: 0, shaft: 0, shaftStrain: 0, interference: 0, housingStrain: 0 };
  return -runningState({ ...still, bore, outside, closeIn, bushStrain: strain }).clearance;
}
