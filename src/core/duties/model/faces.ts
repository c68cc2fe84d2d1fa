import type { Formula } from "../../formula";
import type { Motion } from "../../grades/model/limits";
import { frictionRadius } from "../../heat/washerTorque";
import { PRESSURE } from "../../loading/pressure";
import { WASHERPRESSURE } from "../../loading/washerPressure";
import { SPEED } from "../../loading/speed";
import { STROKESPEED } from "../../loading/strokeSpeed";
import { SWINGSPEED } from "../../loading/swingSpeed";
import type { Face, Step } from "./duty";
import type { Given, Part } from "./fields";

/** A formula for one number and what it takes. */
export interface Call {
  readonly f: Formula;
  readonly values: Readonly<Record<string, number>>;
}
/** How a face's pressure and, in motion, its sliding speed are worked. */
export interface FaceCalls {
  readonly pressure: Call;
  readonly speed: Call | undefined;
  readonly area: number;
}

const numberOf = ({ f, values }: Call): number => f.calc(values) as number;

/** The formulas of a part under one step's load: of a sleeve its bore, of a washer its face, of a flanged bush both. */
export function callsOf(part: Part, motion: Motion, given: Given): { bore?: FaceCalls; face?: FaceCalls } {
  const { load, axialLoad, bore: d, length, inner, outer, flangeOutside } = given;
  if (part === "washer")
    return { face: ringCalls(load ?? axialLoad!, inner!, outer!, (inner! + outer!) / 2, motion, given) };
  const bore: FaceCalls = {
    pressure: { f: PRESSURE, values: { load: load!, bore: d!, length: length! } },
    speed: speedCall(d!, motion, given),
    area: d! * length!,
  };
  if (axialLoad === undefined) return { bore };
  const face = ringCalls(axialLoad, d!, flangeOutside!, 2 * frictionRadius(d!, flangeOutside!), motion, given);
  return { bore, face };
}

function ringCalls(load: number, inner: number, outer: number, at: number, motion: Motion, given: Given): FaceCalls {
  return {
    pressure: { f: WASHERPRESSURE, values: { load, inner, outer } },
    speed: speedCall(at, motion, given),
    area: (Math.PI / 4) * (outer ** 2 - inner ** 2),
  };
}

function speedCall(diameter: number, motion: Motion, { rpm, swing, stroke, cycles }: Given): Call | undefined {
  switch (motion) {
    case "turning":
      return { f: SPEED, values: { bore: diameter, rpm: rpm! } };
    case "swinging":
      return { f: SWINGSPEED, values: { bore: diameter, swing: swing!, cycles: cycles! } };
    case "linear":
      return { f: STROKESPEED, values: { stroke: stroke!, cycles: cycles! } };
    case "static":
      return undefined;
  }
}

/** The faces of a part under one step's load; a step of speed 0 is at rest. */
export function stepOf(part: Part, motion: Motion, given: Given): Step {
  const { bore, face } = callsOf(part, motion, given);
  const { time } = given;
  const step = { ...(bore ? { bore: faceOf(bore) } : {}), ...(face ? { face: faceOf(face) } : {}), time };
  return { motion: (step.bore ?? step.face)!.speed === 0 ? "static" : motion, ...step };
}

const faceOf = ({ pressure, speed, area }: FaceCalls): Face => ({
  pressure: numberOf(pressure),
  speed: speed ? numberOf(speed) : 0,
  area,
});

/** How the pressure of the greatest load at rest is worked, on a washer's face or in the bore. */
export function restCall(part: Part, { staticLoad, bore, length, inner, outer }: Given): Call | undefined {
  if (staticLoad === undefined) return undefined;
  return part === "washer"
    ? { f: WASHERPRESSURE, values: { load: staticLoad, inner: inner!, outer: outer! } }
    : { f: PRESSURE, values: { load: staticLoad, bore: bore!, length: length! } };
}

/** Pressure of the greatest load at rest. */
export function restPressure(part: Part, given: Given): number | undefined {
  const call = restCall(part, given);
  return call && numberOf(call);
}
