import { boreIn, relax, stateAt } from "../../fit/history";
import type { State } from "../../fit/history";
import type { Limits } from "../../fit/zones/iso286";
import { bushCompliance, hoopStressOf, housingCompliance, narrowingOf } from "../../fit/lame";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { present } from "../../present";
import { isMissing } from "../judging/criterion";
import type { Missing } from "../judging/criterion";
import type { Duty } from "../model/duty";
import type { Given } from "../model/fields";
import { assemblyOf, elasticFigures } from "./assembly";
import type { Assembly } from "./assembly";
import { againOf, climates, moisturesOf, swellingKey, swellingsAt } from "./climates";
import type { Climate, Moisture } from "./climates";
import { bushStrain, hottestOf, mismatchOf, shaftStrain } from "./strains";
import { boreRise } from "../model/temperatures";

/** Bush, housing and shaft in one state. */
export interface FitState extends Climate {
  /** Water in the bush when it was pressed in. */
  readonly assembled: Moisture;
  /** Share of the press fit kept since the hottest hold; none before it. */
  readonly kept?: number | undefined;
  /** Running clearance, worst case of all tolerances. */
  readonly clearance: Limits;
  /** Least interference left between bush and housing; zero or less is a loose bush. */
  readonly grip: number;
  /** Compressive hoop stress at the bore, at the greatest interference, MPa. */
  readonly stress: number;
  readonly course: Course;
}

/** A bush pressed in at one moisture, and the states that it goes through. */
export interface Course {
  readonly assembly: Assembly;
  /** What the least and the greatest interference that the limits leave begin with. */
  readonly ends: readonly [slack: Begun, tight: Begun];
  readonly assembled: Moisture;
  readonly climates: readonly Climate[];
  /** The hottest hold: where bush and housing press the hardest. */
  readonly hottest: Climate;
  /** Share of the press fit that the hottest hold leaves. */
  readonly kept: number;
}

export interface FitStates {
  /** From each moisture that the bush may have had at assembly; a share of the press fit that is not told is 1. */
  readonly states: readonly FitState[];
  readonly courses: readonly Course[];
  readonly figures: readonly PropertyKey[];
}

/** Figures of the grade that the states may need. */
export const fitProperties: readonly PropertyKey[] = [
  ...elasticFigures,
  "swelling50",
  "swellingSaturated",
  "pvLimit",
  "highestTemperature",
];

/** What was found last: six criteria look at the states of one grade in one duty, one after the other. */
let last: { readonly values: Values; readonly duty: Duty; readonly states: FitStates | Missing } | undefined;

/** Clearance and grip of the bush through assembly, cold, hot, wet and cold again. */
export function fitStates(values: Values, duty: Duty): FitStates | Missing {
  if (last?.values !== values || last.duty !== duty) last = { values, duty, states: workedOut(values, duty) };
  return last.states;
}

function workedOut(values: Values, duty: Duty): FitStates | Missing {
  const { given } = duty;
  const assembly = assemblyOf(values, given);
  if (isMissing(assembly)) return assembly;
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return { property: rise };
  const { inService, assembled } = moisturesOf(given);
  const swellings = swellingsAt(inService, ...assembled);
  for (const property of swellings) if (values[property] === undefined) return { property };

  const swellingOf = (moisture: Moisture): number => {
    const property = swellingKey[moisture];
    return property === undefined ? 0 : present(values[property]);
  };
  const { keptGrip } = given;
  const ends = endsOf(assembly);
  const courses = assembled.map((moisture): Course => {
    const all = climates(duty, rise, swellingOf(inService) - swellingOf(moisture));
    const hottest = hottestOf(assembly, all);
    return { assembly, ends, assembled: moisture, climates: all, hottest, kept: keptGrip ?? 1 };
  });
  return {
    states: allStates(courses),
    courses,
    figures: [...elasticFigures, ...swellings, ...(rise > 0 ? (["pvLimit", "highestTemperature"] as const) : [])],
  };
}

/** Where the share of the press fit that is kept is not told: the states after the hottest hold once more, with nothing kept. */
export function ifNothingKept({ courses }: FitStates, { keptGrip }: Given): FitState[] {
  if (keptGrip !== undefined) return [];
  return allStates(
    courses.map((course) => ({ ...course, kept: 0 })),
    ({ isAfter }) => isAfter,
  );
}

/** The states that a bore changes which is so much warmer than told, K: running, and cold again after it. */
export function warmerStates({ courses }: FitStates, by: number): FitState[] {
  if (by === 0) return [];
  const warmer = (climate: Climate): Climate => {
    const { surroundings, bush, housing, shaft } = climate;
    if (bush <= surroundings) return climate;
    return { ...climate, bush: bush + by, shaft: shaft + by, housing: housing > surroundings ? housing + by : housing };
  };
  const changed = courses.map((course): Course => {
    const all = course.climates.map(warmer);
    return { ...course, climates: all, hottest: hottestOf(course.assembly, all) };
  });
  return allStates(changed, ({ bush, surroundings, isAfter }) => bush > surroundings || isAfter);
}

/** Whether a bore warmer by so many kelvin may close by so much: all growth of the bush, half as much again where its ends are held, goes inwards, and what a hotter hold uses up stays, k/c_b at most. */
export function mayClose({ assembly }: Course, by: number, room: number): boolean {
  const { ring, expansion, shaftMetal, step } = assembly;
  const closed = narrowingOf(ring) / bushCompliance(ring);
  const most = closed * ring.outside * 1.5 * expansion + ring.bore * shaftMetal.expansion;
  return step > 0 || by * most >= room;
}

/** The joint after its hottest hold. */
function afterHold(course: Course, interference: number): State {
  const { ring } = course.assembly;
  return relax(ring, stateAt(ring, interference, mismatchOf(course.assembly, course.hottest), 0), course.kept);
}

/** The joint in one state, of a bush and a housing that began with one interference. */
export function jointOf(course: Course, climate: Climate, interference: number): State {
  const set = climate.isAfter ? afterHold(course, interference).set : 0;
  return stateAt(course.assembly.ring, interference, mismatchOf(course.assembly, climate), set);
}

/** The states that are wanted, "cold again" and those after it always. */
function allStates(courses: readonly Course[], isWanted: (climate: Climate) => boolean = () => true): FitState[] {
  const states: FitState[] = [];
  for (const course of courses) {
    // flatMap would cost as much as all the sums of a state
    for (const climate of course.climates) if (isWanted(climate)) states.push(stateOf(course, climate));
    // where all is kept no state differs after the hold
    if (course.kept < 1) states.push(...again(course, present(states[states.length - 1])));
  }
  return states;
}

/** Of the states of service after the hottest hold the narrowest and the loosest, where those are not "cold again". */
function again(course: Course, back: FitState): FitState[] {
  const all = [back, ...againOf(course.climates).map((climate) => stateOf(course, climate))];
  const hardest = new Set([leastBy(all, ({ clearance }) => clearance.least), leastBy(all, ({ grip }) => grip)]);
  hardest.delete(back);
  return [...hardest];
}

function stateOf(course: Course, climate: Climate): FitState {
  const { assembly, ends, assembled, kept } = course;
  const { name, surroundings, bush, housing, shaft, swelling, isAfter } = climate;
  const a = extremesAt(course, climate, ends[0]);
  const b = extremesAt(course, climate, ends[1]);
  return {
    name,
    surroundings,
    bush,
    housing,
    shaft,
    swelling,
    isAfter,
    assembled,
    kept: isAfter ? kept : undefined,
    clearance: { least: Math.min(a.least, b.least), greatest: Math.max(a.greatest, b.greatest) },
    grip: Math.min(a.grip, b.grip),
    stress: hoopStressOf(assembly.ring, Math.max(a.pressure, b.pressure)),
    course,
  };
}

/** The interference that bush and housing begin with, and by how much a bore that is stated as pressed was wider before. */
interface Begun {
  readonly interference: number;
  readonly closed: number;
}
export const begunWith = ({ ring, isPressed }: Assembly, interference: number): Begun => ({
  interference,
  closed: isPressed ? 0 - boreIn(ring, 0, 0, stateAt(ring, interference, 0, 0)) : 0,
});
const endsOf = (assembly: Assembly): readonly [slack: Begun, tight: Begun] => {
  const { outside, seat } = assembly;
  return [begunWith(assembly, outside.least - seat.greatest), begunWith(assembly, outside.greatest - seat.least)];
};

/**
 * Both ends of the clearance, the interference that is left and its pressure, where bush and housing began with one interference.
 * Clearance rises with the bore, falls with the shaft, and goes one way with the interference of a bush that is held, so that the
 * worst cases stand at the ends of the limits.
 */
export function extremesAt(course: Course, climate: Climate, { interference, closed }: Begun) {
  const { assembly } = course;
  const { ring, bore, shaft } = assembly;
  const joint = jointOf(course, climate, interference);
  const strain = bushStrain(assembly, climate);
  const growth = 1 + shaftStrain(assembly, climate);
  return {
    least: boreIn(ring, bore.least + closed, strain, joint) - shaft.greatest * growth,
    greatest: boreIn(ring, bore.greatest + closed, strain, joint) - shaft.least * growth,
    grip: joint.interference,
    pressure: joint.pressure,
  };
}

/** R at which the coldest state after the hottest has no interference left: R_e = 1 − δ/δ_hot, then R from R_e. */
export function neededShareOf(course: Course): number {
  const { ring } = course.assembly;
  const [{ interference }] = course.ends;
  const back = present(course.climates.find(({ isAfter }) => isAfter));
  const cold = stateAt(ring, interference, mismatchOf(course.assembly, back), 0).interference;
  const hot = afterHold(course, interference).interference;
  const pressure = 1 - cold / hot;
  const [seat, wall] = [housingCompliance(ring), bushCompliance(ring)];
  return cold <= 0 ? 2 : pressure <= 0 ? 0 : wall / ((seat + wall) / pressure - seat);
}

/** Share of the press fit that must be kept for the bush to hold; where none is enough, above 1. */
export const neededShare = ({ courses }: FitStates): number => Math.max(...courses.map(neededShareOf));

/** The state with the greatest clearance of all. */
export const widest = ({ states }: FitStates): FitState => leastBy(states, ({ clearance }) => -clearance.greatest);
/** The state with the least clearance of all. */
export const narrowest = ({ states }: FitStates): FitState => leastBy(states, ({ clearance }) => clearance.least);

/** The state with the least clearance, or with the least grip. */
export const leastBy = (states: readonly FitState[], of: (state: FitState) => number): FitState =>
  states.reduce((a, b) => (of(b) < of(a) ? b : a));
