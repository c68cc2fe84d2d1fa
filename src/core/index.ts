import type { Formula } from "./formula";
import { sleevePressure } from "./load/pressure";
import { washerPressure } from "./load/washerPressure";
import { strokeSpeed } from "./motion/strokeSpeed";
import { turningSpeed } from "./motion/speed";
import { swingSpeed } from "./motion/swingSpeed";
import { washerSpeed } from "./motion/washerSpeed";
import { dutyPv } from "./pv/dutyPv";
import { pressureSpeed } from "./pv/pv";
import { unitOf } from "./teach/unit";
import { versionOf } from "./teach/version";

/** Every function in the order of the docs; wrappers, hints, docs, tests and benches iterate it. */
export const catalogue: readonly Formula[] = [
  // Loading, motion, PV
  sleevePressure,
  washerPressure,
  turningSpeed,
  swingSpeed,
  strokeSpeed,
  washerSpeed,
  pressureSpeed,
  dutyPv,
  // Grades, limits, verdicts
  // Heat and friction
  // Fits and clearance
  // Wear and cost
  // Units and teaching
  unitOf,
  versionOf,
];

export {
  sleevePressure,
  washerPressure,
  turningSpeed,
  swingSpeed,
  strokeSpeed,
  washerSpeed,
  pressureSpeed,
  dutyPv,
  unitOf,
  versionOf,
};
