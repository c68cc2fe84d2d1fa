import type { Layer } from "../../loading/layer";
import { slopesOf, steepest } from "../../loading/shaftSlope";
import { findMetal } from "../../fit/metals";
import type { Between, Formula } from "../../formula";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { kinds } from "../../kinds";
import { measureText } from "../../measure";
import { present } from "../../present";
import { workOf } from "../../teach/worksheet";
import { figure, isMissing, metalFigure, unstated, withoutData } from "../judging/criterion";
import type { CriterionSpec, Finding, Known, Missing, Working } from "../judging/criterion";
import type { Duty } from "./duty";
import type { FieldKey } from "./fields";
import { fitStates, narrowest, widest } from "../fit/states";
import type { FitStates } from "../fit/states";
import { fitWorking } from "../fit/working";

/** The bush as an elastic layer under a load, at the least and at the greatest clearance of its fit. */
export interface Layers {
  readonly least: Layer;
  readonly greatest: Layer;
  readonly states: FitStates;
  readonly figures: readonly PropertyKey[];
}

/** The greatest load on the bore, N, impact included. */
export function greatestLoad({ steps, restPressure = 0, impactFactor, given }: Duty): number {
  const pressure = Math.max(restPressure, ...steps.map(({ bore }) => bore?.pressure ?? 0));
  return pressure * present(given.bore) * present(given.length) * impactFactor;
}

/** The least load of all steps on the bore, N: a blow or a static load does not last. */
export const leastLoad = ({ steps, given }: Duty): number =>
  Math.min(...steps.map(({ bore }) => bore?.pressure ?? 0)) * present(given.bore) * present(given.length);

export function layersOf(values: Values, duty: Duty, load = greatestLoad(duty)): Layers | Missing {
  const states = fitStates(values, duty);
  if (isMissing(states)) return states;
  const { wall, modulus, poisson, ring } = widest(states).course.assembly;
  const layer = (clearance: number): Layer => ({
    load,
    bore: ring.bore,
    length: present(duty.given.length),
    wall,
    clearance: Math.max(0, clearance),
    modulus,
    // at 0.5 the model of a layer that can only be squeezed has no stiffness to give
    poisson: Math.min(poisson, 0.499),
  });
  return {
    least: layer(narrowest(states).clearance.least),
    greatest: layer(widest(states).clearance.greatest),
    states,
    figures: states.figures,
  };
}

/** The lines of a formula for the contact of a layer under a load F; what they end in are symbols for later lines. */
export function contactWorking(f: Formula, layer: Layer, states: FitStates, end: "least" | "greatest"): Working {
  const { known, lines, between, results } = workOf(f, { values: { ...layer }, system: "metric", answers: [] });
  const figures = known.map(({ symbol, working, kind, text }): [string, Known] => [
    symbol,
    figure(working, kind, symbol === "C" ? clearanceText[end] : text, propertyOf[symbol]),
  ]);
  const ends = results.map(({ symbol, kind, text }): [string, Between] => [symbol, { unit: kinds[kind].metric, text }]);
  return {
    lines,
    known: Object.fromEntries(figures.filter(([symbol]) => symbol !== "F" && symbol !== "φ")),
    between: { ...between, ...Object.fromEntries(ends) },
    first: end === "least" ? fitWorking(narrowest(states), end) : fitWorking(widest(states), end),
  };
}
const clearanceText = { least: "Least clearance of the fit", greatest: "Greatest clearance of the fit" } as const;
const propertyOf: Readonly<Record<string, PropertyKey>> = { E: "compressiveModulus", ν: "poisson" };

/** The end of a working: a pressure against the compressive strength. */
export const againstStrength = (pressure: string, strength: number): Working => ({
  lines: [`V = ${pressure}`, "Z = σ_c", "u = V / Z"],
  known: { σ_c: figure(strength, "pressure", "Compressive strength", "compressiveStrength") },
});

/** The load F on a layer, the greatest or the least of the duty. */
export function loadWorking({ load }: Layer, duty: Duty): Working {
  const { impactFactor: K } = duty;
  if (load !== greatestLoad(duty)) return { lines: [], known: { F: figure(load, "force", "Least load on the bore") } };
  return {
    lines: ["F = F_0 * K"],
    known: {
      F_0: figure(load / K, "force", "Greatest load on the bore"),
      K: figure(K, "ratio", "Impact factor"),
    },
    between: { F: { unit: "N", text: "Greatest load, impact included" } },
  };
}

/** The slope of the shaft, φ; `load` defines F, which bends it where a span is given. */
export function slopeWorking(duty: Duty, slope: number): Working {
  const { slope: stated = 0, span, spanDiameter, shaft } = duty.given;
  if (span === undefined) return { lines: [], known: { φ: figure(slope, "angle", "Slope of the shaft") } };
  return {
    lines: ["F_s = 2 * F", "I = pi * d_w^4 / 64", "φ_b = F_s * l_s^2 / (16 * E_s * I) * 180 / pi", "φ = φ_0 + φ_b"],
    known: {
      d_w: figure(present(spanDiameter), "length", "Diameter of the shaft between the bushes"),
      l_s: figure(span, "length", "Distance of the two bushes"),
      E_s: metalFigure(findMetal("shaft", present(shaft)), "modulus", "Modulus of the shaft"),
      φ_0: figure(stated, "angle", "Slope of the shaft without load"),
    },
    between: {
      F_s: { unit: "N", text: "Load half way between the two bushes" },
      I: { unit: "mm⁴", text: "Second moment of area of the shaft" },
      φ_b: { unit: "°", text: "Slope that the load bends the shaft to" },
      φ: { unit: "°", text: "Slope of the shaft" },
    },
  };
}

/** By how much a load on each of two like bushes bends the shaft half way between them, degrees; 0 without a span. */
function bendOf(duty: Duty, onBush: number): number | FieldKey {
  const { span, spanDiameter, shaft } = duty.given;
  if (span === undefined) return 0;
  if (spanDiameter === undefined) return "spanDiameter";
  if (shaft === undefined) return "shaft";
  const { modulus } = findMetal("shaft", shaft);
  // each of the two bushes bears half of the load on the shaft
  const load = 2 * onBush;
  return slopesOf({ loadcase: "central", load, span, diameter: spanDiameter, modulus, inner: 0 })[0];
}

/** What `judge` finds at the slope of the shaft, degrees: what is given and what the load bends it by. A shaft bent beyond small slopes fails. */
export function onSlopeOf(
  values: Values,
  duty: Duty,
  load: number,
  judge: (layers: Layers, slope: number) => Finding,
): Finding {
  const bend = bendOf(duty, load);
  if (typeof bend === "number" && bend > steepest) return tooSteep(bend);
  const layers = layersOf(values, duty, load);
  if (isMissing(layers)) return withoutData(layers);
  if (typeof bend === "string") return unstated(bend);
  return judge(layers, (duty.given.slope ?? 0) + bend);
}

/** Layers and slope of the shaft, degrees, where a working can start from them. */
export function tilted(
  values: Values,
  duty: Duty,
  load = greatestLoad(duty),
): { readonly layers: Layers; readonly slope: number } | undefined {
  const bend = bendOf(duty, load);
  const layers = layersOf(values, duty, load);
  if (isMissing(layers) || typeof bend === "string" || bend > steepest) return undefined;
  return { layers, slope: (duty.given.slope ?? 0) + bend };
}

const tooSteep = (bend: number): Finding => ({
  word: "fails",
  figures: [],
  say: (system) =>
    `the load bends the shaft by ${measureText("angle", bend, system, 3)} at the bush, above ${measureText("angle", steepest, system)}`,
});

/** What the criteria on a sloping shaft have in common. */
export const onSlope: Pick<CriterionSpec, "asked" | "askedBy" | "fields" | "asks"> = {
  asked: "with a slope or a span",
  askedBy: ["slope", "span"],
  fields: ["slope", "span", "spanDiameter"],
  asks: ({ given, part }) => part !== "washer" && (given.slope !== undefined || given.span !== undefined),
};
