import type { Motion } from "../grade/limits";
import { frictionRadius } from "../heat/washerTorque";
import { sleevePressure } from "../load/pressure";
import { washerPressure } from "../load/washerPressure";
import { turningSpeed } from "../motion/speed";
import { strokeSpeed } from "../motion/strokeSpeed";
import { swingSpeed } from "../motion/swingSpeed";
import type { Face, Step } from "./duty";
import type { Given, Part } from "./fields";

/** The faces of a part under one step's load; a step of speed 0 is at rest. */
export function stepOf(part: Part, motion: Motion, given: Given): Step {
  const { load, axialLoad, bore: d, length, inner, outer, flangeOutside, time } = given;
  if (part === "washer") {
    const face = ringFace(load ?? axialLoad!, inner!, outer!, (inner! + outer!) / 2, motion, given);
    return { motion: face.speed === 0 ? "static" : motion, face, time };
  }
  const bore: Face = {
    pressure: sleevePressure.calc({ load: load!, bore: d!, length: length! }),
    speed: speedAt(d!, motion, given),
    area: d! * length!,
  };
  const moving = bore.speed === 0 ? "static" : motion;
  if (axialLoad === undefined) return { motion: moving, bore, time };
  const face = ringFace(axialLoad, d!, flangeOutside!, 2 * frictionRadius(d!, flangeOutside!), motion, given);
  return { motion: moving, bore, face, time };
}

function ringFace(load: number, inner: number, outer: number, at: number, motion: Motion, given: Given): Face {
  return {
    pressure: washerPressure.calc({ load, inner, outer }),
    speed: speedAt(at, motion, given),
    area: (Math.PI / 4) * (outer ** 2 - inner ** 2),
  };
}

function speedAt(diameter: number, motion: Motion, { rpm, swing, stroke, cycles }: Given): number {
  switch (motion) {
    case "turning":
      return turningSpeed.calc({ bore: diameter, rpm: rpm! });
    case "swinging":
      return swingSpeed.calc({ bore: diameter, swing: swing!, cycles: cycles! });
    case "linear":
      return strokeSpeed.calc({ stroke: stroke!, cycles: cycles! });
    case "static":
      return 0;
  }
}

/** Pressure of the greatest load at rest, on a washer's face or in the bore. */
export function restPressure(part: Part, { staticLoad, bore, length, inner, outer }: Given): number | undefined {
  if (staticLoad === undefined) return undefined;
  return part === "washer"
    ? washerPressure.calc({ load: staticLoad, inner: inner!, outer: outer! })
    : sleevePressure.calc({ load: staticLoad, bore: bore!, length: length! });
}
