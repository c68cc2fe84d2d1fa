import { closeInOf } from "../fit/lame";
import { runningState } from "../fit/running";

/**
 * How far the bore of a bush closes in when the bush, already pressed into a rigid housing, swells by the free linear
 * strain ε: κ·D·ε − d·ε with κ = 2·D·d/((D² + d²) − ν·(D² − d²)). The rigid housing is the safe side, the bush free to
 * lengthen is not: held at its ends, one of 20/23 mm and ν 0.4 that swells by 2 % closes in by 0.143, not 0.082 mm.
 */
export function boreCloseIn(bore: number, outside: number, poisson: number, strain: number): number {
  // in a rigid, unbounded housing the bush's own modulus cancels
  const rigid = { housing: Infinity, housingModulus: Infinity, housingPoisson: 0, bushModulus: 1 };
  const closeIn = closeInOf({ ...rigid, bore, outside, bushPoisson: poisson });
  const still = { clearance: 0, shaft: 0, shaftStrain: 0, interference: 0, housingStrain: 0 };
  return -runningState({ ...still, bore, outside, closeIn, bushStrain: strain }).clearance;
}
