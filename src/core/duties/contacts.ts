import type { Layer } from "../contact/layer";
import { shaftSlope } from "../contact/shaftSlope";
import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import type { Duty } from "./duty";
import type { FieldKey } from "./fields";
import { fitStates, isMissingIn, wallOf } from "./fitStates";
import type { Missing } from "./fitStates";

/** The bush as an elastic layer under the greatest load, impact included, at the least and at the greatest clearance of its fit. */
export interface Layers {
  readonly least: Layer;
  readonly greatest: Layer;
  readonly figures: readonly PropertyKey[];
}
export const isMissing = (found: Layers | Missing): found is Missing => !("least" in found);

export function layersOf(values: Values, duty: Duty): Layers | Missing {
  const states = fitStates(values, duty);
  if (isMissingIn(states)) return states;
  const { steps, restPressure = 0, impactFactor, given } = duty;
  const area = given.bore! * given.length!;
  const pressure = Math.max(restPressure, ...steps.map(({ bore }) => bore?.pressure ?? 0));
  const layer = (clearance: number): Layer => ({
    load: pressure * area * impactFactor,
    bore: given.bore!,
    length: given.length!,
    wall: wallOf(given)!,
    clearance: Math.max(0, clearance),
    modulus: values.compressiveModulus!,
    // at 0.5 the model of a layer that can only be squeezed has no stiffness to give
    poisson: Math.min(values.poisson!, 0.499),
  });
  const all = [...states.forClearance, ...states.forGrip];
  return {
    least: layer(Math.min(...all.map(({ clearance }) => clearance.least))),
    greatest: layer(Math.max(...all.map(({ clearance }) => clearance.greatest))),
    figures: states.figures,
  };
}

/** Slope of the shaft at the bush, degrees: what is given, and what a load half way between two like bushes bends it by. */
export function slopeOf({ given, steps, restPressure = 0, impactFactor }: Duty): number | FieldKey {
  const { slope = 0, span, spanDiameter, shaft, bore, length } = given;
  if (span === undefined) return slope;
  if (spanDiameter === undefined) return "spanDiameter";
  if (shaft === undefined) return "shaft";
  const pressure = Math.max(restPressure, ...steps.map((step) => step.bore?.pressure ?? 0));
  // each of the two bushes bears half of the load on the shaft
  const load = 2 * pressure * bore! * length! * impactFactor;
  const [bent] = shaftSlope.calc({
    loadcase: "central",
    load,
    span,
    diameter: spanDiameter,
    modulus: findMetal("shaft", shaft).modulus,
    position: undefined,
    inner: 0,
  }) as [number, number];
  return slope + bent;
}
