import { clash } from "../errors";
import { Measure } from "../formula";
import type { Lookup, NumberArg } from "../formula";
import { isFitted as isFittedAt, tiltedDepthOf } from "./conforming";

/** The arguments of a bush as an elastic layer between a rigid shaft and a rigid housing. */
export const layerArgs = {
  load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
  bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
  length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
  wall: { kind: "length", symbol: "w", above: 0, text: "Wall thickness of the bush" },
  clearance: { kind: "length", symbol: "C", from: 0, text: "Diametral running clearance; below bore" },
  modulus: { kind: "pressure", symbol: "E", above: 0, text: "Compressive modulus of the bush" },
  poisson: { kind: "ratio", symbol: "ν", from: 0, below: 0.5, text: "Poisson's ratio of the bush" },
} as const satisfies Record<string, NumberArg>;

export interface Layer {
  readonly load: number;
  readonly bore: number;
  readonly length: number;
  readonly wall: number;
  readonly clearance: number;
  readonly modulus: number;
  readonly poisson: number;
}

/** A clearance as wide as the bore leaves no shaft. */
export function checkClearance({ clearance, bore }: Layer): void {
  if (clearance >= bore)
    throw clash(
      "clearance",
      `clearance must be below bore, got ${Number(clearance.toPrecision(7))} mm: no shaft is left`,
    );
}

/** Pressure per depth of a layer that may swell out at its ends, plane stress across its wall: E/(1 − ν²)/w. */
export const edgeStiffness = ({ modulus, poisson, wall }: Layer): number => modulus / (1 - poisson ** 2) / wall;

/** Pressure per depth of a layer that can only be squeezed: E·(1 − ν)/((1 + ν)·(1 − 2ν))/w. */
export const confinedStiffness = ({ modulus, poisson, wall }: Layer): number =>
  (modulus * (1 - poisson)) / ((1 + poisson) * (1 - 2 * poisson)) / wall;

export const edgeLine = "K_e = E / (1 - ν^2) / w";
export const confinedLine = "K_c = E * (1 - ν) / ((1 + ν) * (1 - 2 * ν)) / w";
export const edgeBetween = {
  K_e: { unit: "MPa/mm", text: "Pressure per depth of a layer that may swell out at its ends" },
} as const;
export const confinedBetween = {
  K_c: { unit: "MPa/mm", text: "Pressure per depth of a layer that can only be squeezed" },
} as const;

/** Load per length over K·R·c: the Λ of a shaft that lies true. */
export const loadNumberOf = ({ load, bore, length, clearance }: Layer, stiffness: number): number =>
  load / (length * stiffness * (bore / 2) * (clearance / 2));

/**
 * Depth at the deep end where the clearance is nothing, the shaft lying on the whole length; one that lifted off would touch the other side
 * of the bore, which is outside the model.
 */
const fittedDepth = ({ load, bore, length }: Layer, stiffness: number, slope: number): number =>
  (4 * load) / (Math.PI * stiffness * bore * length) + (slope * length) / 2;

/** How a rigid shaft of a slope, rad, lies on the layer: depth at the deep end and length in contact, mm. */
export interface Contact {
  readonly depth: number;
  readonly length: number;
  readonly isLifted: boolean;
  /** The clearance is nothing beside the depth, or nothing presses: no iteration was needed. */
  readonly isFitted: boolean;
}

export function contactOf(layer: Layer, stiffness: number, slope: number): Contact {
  const fitted = fittedDepth(layer, stiffness, slope);
  const isFitted = layer.load === 0 || isFittedAt(layer.clearance, fitted);
  const gap = layer.clearance / 2;
  const rise = slope * layer.length;
  const pressed = isFitted ? fitted : gap * tiltedDepthOf(loadNumberOf(layer, stiffness), rise / gap);
  const depth = layer.load === 0 ? 0 : pressed;
  const isLifted = depth < rise;
  return { depth, length: isLifted ? depth / slope : layer.length, isLifted, isFitted };
}

/** For a working: t = 1 + depth/(C/2), which an iteration found. */
export const closingOf = ({ depth }: Contact, { clearance }: Layer, of = "contact"): Lookup => ({
  value: new Measure(1 + depth / (clearance / 2), "ratio"),
  text: `Depth of ${of} over half of the clearance, plus one, found by iteration`,
});
