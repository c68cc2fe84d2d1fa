import { clash } from "../errors";
import { millimetres, numberText } from "../measure";

/** A bush of bore and outside in a housing, and what both are made of. Diameters in one unit, moduli in one unit. */
export interface Ring {
  readonly bore: number;
  readonly outside: number;
  /** Outside diameter of the housing; Infinity where it is unbounded. */
  readonly housing: number;
  readonly bushModulus: number;
  readonly bushPoisson: number;
  readonly housingModulus: number;
  readonly housingPoisson: number;
}

/**
 * Bore close-in per unit of diametral interference, κ = (2·D·d/(E·(D² − d²))) / (ch + cb) with
 * ch = ((Dh² + D²)/(Dh² − D²) + νh)/Eh and cb = ((D² + d²)/(D² − d²) − ν)/E (Lamé, plane stress: the bush may lengthen).
 * That is not the safe side: held at its ends the bush closes in more. For it put in `heldAtEnds(ring)` and `heldStrain`.
 */
export const closeInOf = (ring: Ring): number => narrowingOf(ring) / jointCompliance(ring);

/** How far the bore closes in under a unit of pressure from outside, k = 2·D·d/(E·(D² − d²)) times D. */
export const narrowingOf = ({ bore: d, outside: D, bushModulus: E }: Ring): number =>
  (2 * D * d) / (E * (D * D - d * d));

/** Pressure between bush and housing, p = δ/(D·(ch + cb)). */
export const fitPressureOf = (ring: Ring, interference: number): number =>
  interference / (ring.outside * jointCompliance(ring));

/** Compressive hoop stress at the bore under a pressure from outside, 2·p·D²/(D² − d²). */
export const hoopStressOf = ({ bore: d, outside: D }: Ring, pressure: number): number =>
  (2 * pressure * D * D) / (D * D - d * d);

/** Widening of the joint's diameter per diameter and unit pressure, of the housing: ch. */
export function housingCompliance({ outside: D, housing: Dh, housingModulus, housingPoisson }: Ring): number {
  const widening = Dh === Infinity ? 1 : (Dh * Dh + D * D) / (Dh * Dh - D * D);
  return (widening + housingPoisson) / housingModulus;
}
/** The same of the bush: cb. */
export const bushCompliance = ({ bore: d, outside: D, bushModulus, bushPoisson }: Ring): number =>
  ((D * D + d * d) / (D * D - d * d) - bushPoisson) / bushModulus;
/** Of both: ch + cb. */
export const jointCompliance = (ring: Ring): number => housingCompliance(ring) + bushCompliance(ring);

/** Plane strain of a long bush that cannot lengthen: E/(1 − ν²) and ν/(1 − ν) stand for E and ν. */
export const heldAtEnds = (ring: Ring): Ring => ({
  ...ring,
  bushModulus: ring.bushModulus / (1 - ring.bushPoisson ** 2),
  bushPoisson: ring.bushPoisson / (1 - ring.bushPoisson),
});
/** The free strain of a bush held at its ends, ε_b + ν·(ε_b − ε_h): what it may not lengthen more than its housing goes into its diameter. Shoulders push and never pull. */
export const heldStrain = (bush: number, housing: number, bushPoisson: number): number =>
  bush + bushPoisson * Math.max(0, bush - housing);

/** Diameters must grow outwards; the error names the one that does not. */
export function checkDiameters(bore: number, outside: number, housing: number | undefined, housingName: string): void {
  if (bore >= outside)
    throw clash("bore", `bore must be below outside, got ${millimetres(bore)} and ${millimetres(outside)}`);
  if (housing !== undefined && outside >= housing)
    throw clash(
      housingName,
      `${housingName} must be above the bush's outside, got ${millimetres(housing)} and ${millimetres(outside)}`,
    );
}

/** Polymers yield at a strain of some 4 to 10 % (common practice, no source): beyond a tenth no elastic estimate means anything. */
export function checkStrain(interference: number, outside: number): void {
  const strain = interference / outside;
  if (strain > 0.1)
    throw clash(
      "interference",
      `interference over outside must be at most 0.1, got ${numberText(strain, 3)}: no bush stays elastic so far`,
    );
}
