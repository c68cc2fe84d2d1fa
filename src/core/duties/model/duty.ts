import type { Span } from "../../formula";
import type { Motion } from "../../grades/model/limits";
import { peakOf } from "../../heat/firstOrder";
import { present } from "../../present";
import type { Given, Part } from "./fields";

/** One sliding face under its load: mean pressure without the impact factor (MPa), mean sliding speed (m/s), area (mm²). */
export interface Face {
  readonly pressure: number;
  readonly speed: number;
  readonly area: number;
}

/** What is told of each face: a sleeve has its bore, a washer its face, a flanged bush both. */
export type ByFace<F> =
  | { readonly bore: F; readonly face?: undefined }
  | { readonly bore?: undefined; readonly face: F }
  | { readonly bore: F; readonly face: F };

/** One step of a duty. */
export type Step = ByFace<Face> & {
  readonly motion: Motion;
  /** Minutes; there where the duty has several steps. */
  readonly time?: number | undefined;
};
/** The steps of a duty; without a spectrum it has one. */
export type Steps = readonly [Step, ...Step[]];

/** What a bush has to bear, in working units, every band at one value: what the criteria judge. */
export interface Duty {
  readonly part: Part;
  readonly steps: Steps;
  /** Of the surroundings; both ends occur. */
  readonly temperature: Span;
  readonly isMoving: boolean;
  /** The PV to compare: that of the greatest step, its faces sharing the heat; with a time constant the first-order peak. */
  readonly pv: number;
  /** Multiplies pressures, not PV. */
  readonly impactFactor: number;
  /** Divides the limits of pressure and PV. */
  readonly designFactor: number;
  /** Whether the load comes in blows. */
  readonly hasBlows: boolean;
  /** Pressure of the greatest load at rest, where one is given. */
  readonly restPressure?: number;
  /** What else was said; criteria ask by it. */
  readonly given: Given;
}

/**
 * PV of a step: that of its one face; of a flanged bush all heat referred to the bore, (PV_r·A_r + PV_a·A_a)/A_r, or that of
 * its flange alone where it is small and greater.
 */
export function pvOf({ bore, face }: Step): number {
  if (!face) return bore.pressure * bore.speed;
  const ofFace = face.pressure * face.speed;
  return bore ? Math.max(ofFace, bore.pressure * bore.speed + (ofFace * face.area) / bore.area) : ofFace;
}

export function dutyOf(part: Part, steps: Steps, temperature: Span, given: Given, restPressure?: number): Duty {
  const isMoving = steps.some(({ motion }) => motion !== "static");
  const pv = peakOver(steps, given, pvOf);
  const { impactFactor = 1, designFactor = 1 } = given;
  const hasBlows = impactFactor > 1;
  return { part, steps, temperature, isMoving, pv, impactFactor, designFactor, hasBlows, restPressure, given };
}

/**
 * Of what warms in proportion to the friction of a step: that of the greatest step, or with a time constant the first-order peak
 * of the cycle.
 */
export function peakOver(steps: Steps, given: Given, of: (step: Step) => number): number {
  if (given.timeConstant !== undefined) {
    const cycle = cycleOf(steps, given, (step) => (step.motion === "static" ? 0 : of(step)));
    if (cycle) return peakOf(cycle, given.timeConstant).value;
  }
  let greatest = 0;
  for (const step of steps) if (step.motion !== "static") greatest = Math.max(greatest, of(step));
  return greatest;
}

/** The cycle that repeats; nothing where none does. */
function cycleOf(steps: Steps, { runningTime, restTime }: Given, steady: (step: Step) => number) {
  if (steps.length > 1) return steps.map((step) => ({ steady: steady(step), time: present(step.time) }));
  if (runningTime === undefined || restTime === undefined) return undefined;
  return [
    { steady: steady(steps[0]), time: runningTime },
    { steady: 0, time: restTime },
  ];
}

/** A duty of which only pressure and speed are known, as the positional functions have it. */
export interface Stated {
  readonly pressure: number;
  readonly speed: number;
  readonly temperature: Span;
  readonly motion: Motion;
}
export const statedDuty = ({ pressure, speed, temperature, motion }: Stated, given: Given = noMore): Duty =>
  dutyOf("sleeve", [{ motion, bore: { pressure, speed, area: 1 } }], temperature, given);
const noMore: Given = {};
