import type { Formula } from "../../formula";
import type { Motion } from "../../grades/model/limits";
import { frictionRadius } from "../../heat/washerTorque";
import { PRESSURE } from "../../loading/pressure";
import { WASHERPRESSURE } from "../../loading/washerPressure";
import { SPEED } from "../../loading/speed";
import { STROKESPEED } from "../../loading/strokeSpeed";
import { SWINGSPEED } from "../../loading/swingSpeed";
import { present } from "../../present";
import type { ByFace, Face, Step } from "./duty";
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
export function callsOf(part: Part, motion: Motion, given: Given): ByFace<FaceCalls> {
  const { axialLoad } = given;
  if (part === "washer") {
    const [inner, outer] = [present(given.inner), present(given.outer)];
    return { face: ringCalls(present(given.load ?? axialLoad), inner, outer, (inner + outer) / 2, motion, given) };
  }
  const [d, length] = [present(given.bore), present(given.length)];
  const bore: FaceCalls = {
    pressure: { f: PRESSURE, values: { load: present(given.load), bore: d, length } },
    speed: speedCall(d, motion, given),
    area: d * length,
  };
  if (axialLoad === undefined) return { bore };
  const outer = present(given.flangeOutside);
  return { bore, face: ringCalls(axialLoad, d, outer, 2 * frictionRadius(d, outer), motion, given) };
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
      return { f: SPEED, values: { bore: diameter, rpm: present(rpm) } };
    case "swinging":
      return { f: SWINGSPEED, values: { bore: diameter, swing: present(swing), cycles: present(cycles) } };
    case "linear":
      return { f: STROKESPEED, values: { stroke: present(stroke), cycles: present(cycles) } };
    case "static":
      return undefined;
  }
}

/** The faces of a part under one step's load; a step of speed 0 is at rest. */
export function stepOf(part: Part, motion: Motion, given: Given): Step {
  const calls = callsOf(part, motion, given);
  const { time } = given;
  if (!calls.bore) {
    const face = faceOf(calls.face);
    return { motion: motionAt(face, motion), bore: undefined, face, time };
  }
  const bore = faceOf(calls.bore);
  return { motion: motionAt(bore, motion), bore, face: calls.face && faceOf(calls.face), time };
}

const motionAt = ({ speed }: Face, motion: Motion): Motion => (speed === 0 ? "static" : motion);

const faceOf = ({ pressure, speed, area }: FaceCalls): Face => ({
  pressure: numberOf(pressure),
  speed: speed ? numberOf(speed) : 0,
  area,
});

/** How the pressure of the greatest load at rest is worked, on a washer's face or in the bore. */
export function restCall(part: Part, { staticLoad, bore, length, inner, outer }: Given): Call | undefined {
  if (staticLoad === undefined) return undefined;
  return part === "washer"
    ? { f: WASHERPRESSURE, values: { load: staticLoad, inner: present(inner), outer: present(outer) } }
    : { f: PRESSURE, values: { load: staticLoad, bore: present(bore), length: present(length) } };
}

/** Pressure of the greatest load at rest. */
export function restPressure(part: Part, given: Given): number | undefined {
  const call = restCall(part, given);
  return call && numberOf(call);
}
