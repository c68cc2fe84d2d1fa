import type { Layer } from "../contact/layer";
import { slopesOf, steepest } from "../contact/shaftSlope";
import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import { measure } from "../measure";
import { isMissing, unstated, withoutData } from "./criterion";
import type { CriterionSpec, Finding, Missing } from "./criterion";
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

/** By how much a load half way between two like bushes bends the shaft, degrees; 0 without a span. */
function bendOf(duty: Duty): number | FieldKey {
  const { span, spanDiameter, shaft } = duty.given;
  if (span === undefined) return 0;
  if (spanDiameter === undefined) return "spanDiameter";
  if (shaft === undefined) return "shaft";
  const { modulus } = findMetal("shaft", shaft);
  // each of the two bushes bears half of the load on the shaft
  const load = 2 * greatestLoad(duty);
  return slopesOf({ loadcase: "central", load, span, diameter: spanDiameter, modulus, inner: 0 })[0];
}

/** What `judge` finds at the slope of the shaft, degrees: what is given and what the load bends it by. A shaft bent beyond small slopes fails. */
export function onSlopeOf(values: Values, duty: Duty, judge: (layers: Layers, slope: number) => Finding): Finding {
  const bend = bendOf(duty);
  if (typeof bend === "number" && bend > steepest) return tooSteep(bend);
  const layers = layersOf(values, duty);
  if (isMissing(layers)) return withoutData(layers);
  if (typeof bend === "string") return unstated(bend);
  return judge(layers, (duty.given.slope ?? 0) + bend);
}

const tooSteep = (bend: number): Finding => ({
  word: "fails",
  figures: [],
  say: (system) =>
    `the load bends the shaft by ${measure("angle", bend, system, 3)} at the bush, above ${measure("angle", steepest, system)}`,
});

/** What the criteria on a sloping shaft have in common. */
export const onSlope: Pick<CriterionSpec, "asked" | "askedBy" | "fields" | "asks"> = {
  asked: "with a slope or a span",
  askedBy: ["slope", "span"],
  fields: ["slope", "span", "spanDiameter"],
  asks: ({ given, part }) => part !== "washer" && (given.slope !== undefined || given.span !== undefined),
};
