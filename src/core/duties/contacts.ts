import type { Layer } from "../contact/layer";
import { shaftSlope } from "../contact/shaftSlope";
import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import { isMissing } from "./criterion";
import type { CriterionSpec, Missing } from "./criterion";
import type { Duty } from "./duty";
import type { FieldKey } from "./fields";
import { wallOf } from "./fitAssembly";
import { fitStates } from "./fitStates";

/** The bush as an elastic layer under the greatest load, impact included, at the least and at the greatest clearance of its fit. */
export interface Layers {
  readonly least: Layer;
  readonly greatest: Layer;
  readonly figures: readonly PropertyKey[];
}

/** The greatest load on the bore, N, impact included. */
function greatestLoad({ steps, restPressure = 0, impactFactor, given }: Duty): number {
  const pressure = Math.max(restPressure, ...steps.map(({ bore }) => bore?.pressure ?? 0));
  return pressure * given.bore! * given.length! * impactFactor;
}

export function layersOf(values: Values, duty: Duty): Layers | Missing {
  const states = fitStates(values, duty);
  if (isMissing(states)) return states;
  const { given } = duty;
  const load = greatestLoad(duty);
  const layer = (clearance: number): Layer => ({
    load,
    bore: given.bore!,
    length: given.length!,
    wall: wallOf(given)!,
    clearance: Math.max(0, clearance),
    modulus: values.compressiveModulus!,
    // at 0.5 the model of a layer that can only be squeezed has no stiffness to give
    poisson: Math.min(values.poisson!, 0.499),
  });
  const clearances = states.states.map(({ clearance }) => clearance);
  return {
    least: layer(Math.min(...clearances.map(({ least }) => least))),
    greatest: layer(Math.max(...clearances.map(({ greatest }) => greatest))),
    figures: states.figures,
  };
}

/** Slope of the shaft at the bush, degrees: what is given, and what a load half way between two like bushes bends it by. */
export function slopeOf(duty: Duty): number | FieldKey {
  const { slope = 0, span, spanDiameter, shaft } = duty.given;
  if (span === undefined) return slope;
  if (spanDiameter === undefined) return "spanDiameter";
  if (shaft === undefined) return "shaft";
  const [bent] = shaftSlope.calc({
    loadcase: "central",
    // each of the two bushes bears half of the load on the shaft
    load: 2 * greatestLoad(duty),
    span,
    diameter: spanDiameter,
    modulus: findMetal("shaft", shaft).modulus,
    position: undefined,
    inner: 0,
  }) as [number, number];
  return slope + bent;
}

/** What the criteria on a sloping shaft have in common. */
export const onSlope: Pick<CriterionSpec, "asked" | "askedBy" | "fields" | "asks"> = {
  asked: "with a slope or a span",
  askedBy: ["slope", "span"],
  fields: ["slope", "span", "spanDiameter"],
  asks: ({ given, part }) => part !== "washer" && (given.slope !== undefined || given.span !== undefined),
};
