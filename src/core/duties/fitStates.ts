import { mustBe } from "../errors";
import type { Limits } from "../fit/fitState";
import { boreIn, held, stateAt } from "../fit/history";
import type { State } from "../fit/history";
import { checkFeature, limitsIn } from "../fit/iso286";
import { compliances, heldAtEnds, heldStrain } from "../fit/lame";
import type { Ring } from "../fit/lame";
import { findMetal } from "../fit/metals";
import type { Metal } from "../fit/metals";
import { assemblyTemperature } from "../fit/running";
import type { PropertyKey, Values } from "../grade/properties";
import type { Missing } from "./criterion";
import type { Duty } from "./duty";
import type { Given } from "./fields";
import { boreRise } from "./temperatures";

/** A bush pressed into its housing with its shaft, by limits of size at assembly. */
export interface Assembly {
  readonly ring: Ring;
  readonly bore: Limits;
  readonly shaft: Limits;
  /** Of bush and housing; the worst cases of both tolerances. */
  readonly interference: Limits;
  readonly outside: Limits;
  readonly seat: Limits;
  /** Whether the bore's limits hold after pressing in. */
  readonly isPressed: boolean;
  readonly isHeld: boolean;
  readonly modulus: number;
  readonly poisson: number;
  readonly expansion: number;
  readonly housing: Metal;
  readonly shaftMetal: Metal;
}

/** Temperatures of one state, °C, and the linear swelling of the bush since it was dry. */
export interface Climate {
  readonly name: string;
  readonly bush: number;
  readonly housing: number;
  readonly shaft: number;
  readonly swelling: number;
  /** After the hottest hold, which has relaxed the press fit. */
  readonly isAfter: boolean;
}

/** What a bush goes through from its assembly on. */
export interface Course {
  readonly assembly: Assembly;
  readonly all: readonly Climate[];
  /** Linear swelling at assembly. */
  readonly assembled: number;
  /** Share of the modulus that the hottest hold leaves. */
  readonly kept: number;
}

export interface FitState {
  readonly name: string;
  readonly temperature: number;
  /** Running clearance, worst case of all tolerances. */
  readonly clearance: Limits;
  /** Least interference left between bush and housing. */
  readonly grip: number;
  readonly climate: Climate;
  readonly course: Course;
}

export interface FitStates {
  /** With the bush as dry at assembly as it may have been: it has the more left to swell. */
  readonly forClearance: readonly FitState[];
  /** With the bush as moist at assembly as it may have been: it has the more left to shrink. */
  readonly forGrip: readonly FitState[];
  /** Share of the press fit that must be kept for the bush to hold; where none is enough, above 1. */
  readonly neededShare: number;
  readonly figures: readonly PropertyKey[];
}

/** The fields that ask for the fit, each needed once one of them is given. */
export const fitFields = ["boreZone", "shaftZone", "outsideZone", "housingZone"] as const;
const otherFields = ["bore", "housing", "shaft"] as const;
const neededFigures = ["expansion", "compressiveModulus", "poisson"] as const;
/** Figures of the grade that the states may need. */
export const fitProperties: readonly PropertyKey[] = [
  ...neededFigures,
  "swelling50",
  "swellingSaturated",
  "pvLimit",
  "highestTemperature",
];

/** Wall of the bush, by itself or out of its outside diameter. */
export const wallOf = ({ wall, outside, bore }: Given): number | undefined =>
  wall ?? (outside !== undefined && bore !== undefined ? (outside - bore) / 2 : undefined);

/** What was found last in a duty, and of which figures: six criteria look at the states of one grade. */
const known = new WeakMap<Duty, { readonly values: Values; readonly states: FitStates | Missing }>();

/** Clearance and grip of the bush through assembly, cold, hot, wet and back again. */
export function fitStates(values: Values, duty: Duty): FitStates | Missing {
  const last = known.get(duty);
  if (last?.values === values) return last.states;
  const states = workedOut(values, duty);
  known.set(duty, { values, states });
  return states;
}

function workedOut(values: Values, duty: Duty): FitStates | Missing {
  const { given } = duty;
  for (const field of [...fitFields, ...otherFields]) if (given[field] === undefined) return { field };
  if (wallOf(given) === undefined) return { field: "wall" };
  for (const property of neededFigures) if (values[property] === undefined) return { property };
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return { property: rise };
  const swelling = swellingsOf(values, given);
  if (typeof swelling === "string") return { property: swelling };

  const assembly = assemblyOf(values, given);
  const statesFrom = (assembled: number, kept: number) =>
    statesOf({ assembly, all: climates(duty, rise, assembled, swelling.inService), assembled, kept });
  const kept = given.keptGrip ?? 1;
  const forGrip = statesFrom(swelling.moistest, kept);
  return {
    forClearance: [...statesFrom(swelling.driest, kept), ...(kept < 1 ? statesFrom(swelling.driest, 1) : [])],
    forGrip,
    neededShare: neededShare(assembly, climates(duty, rise, swelling.moistest, swelling.inService), swelling.moistest),
    figures: [...neededFigures, ...swelling.figures, ...(rise > 0 ? (["pvLimit", "highestTemperature"] as const) : [])],
  };
}

const swellingKey = { humid: "swelling50", wet: "swellingSaturated" } as const;

/** Linear swelling in service and at assembly; where the latter is not told, dry and humid both. A figure that is missing is named. */
function swellingsOf(values: Values, { moisture = "dry", assemblyMoisture }: Given) {
  const keys = [moisture, assemblyMoisture ?? "humid"].flatMap((state) =>
    state === "dry" ? [] : [swellingKey[state]],
  );
  const missing = keys.find((key) => values[key] === undefined);
  if (missing) return missing;
  const of = (state: "dry" | "humid" | "wet"): number => (state === "dry" ? 0 : values[swellingKey[state]]!);
  return {
    inService: of(moisture),
    moistest: of(assemblyMoisture ?? "humid"),
    driest: of(assemblyMoisture ?? "dry"),
    figures: keys,
  };
}

function assemblyOf(values: Values, given: Given): Assembly {
  const bore = given.bore!;
  const outside = bore + 2 * wallOf(given)!;
  const housing = findMetal("housing", given.housing!);
  const ring: Ring = {
    bore,
    outside,
    housing: given.housingOutside ?? Infinity,
    bushModulus: values.compressiveModulus!,
    bushPoisson: values.poisson!,
    housingModulus: housing.modulus,
    housingPoisson: housing.poisson,
  };
  const limits = (zone: (typeof fitFields)[number], size: number): Limits =>
    limitsIn(given[zone]!, size, { zone, size: "bore" });
  const [bush, seat] = [limits("outsideZone", outside), limits("housingZone", outside)];
  return {
    ring: given.heldAtEnds === "yes" ? heldAtEnds(ring) : ring,
    bore: limits("boreZone", bore),
    shaft: limits("shaftZone", bore),
    interference: { least: bush.least - seat.greatest, greatest: bush.greatest - seat.least },
    outside: bush,
    seat,
    isPressed: given.zoneHolds !== "free",
    isHeld: given.heldAtEnds === "yes",
    modulus: values.compressiveModulus!,
    poisson: values.poisson!,
    expansion: values.expansion!,
    housing,
    shaftMetal: findMetal("shaft", given.shaft!),
  };
}

/** Zones that no class of ISO 286 has, or that leave no size, and metals that are not known, are told when the duty is read. */
export function checkFit(given: Given): void {
  const { bore, housingOutside } = given;
  const thickness = wallOf(given);
  const seat = bore === undefined || thickness === undefined ? undefined : bore + 2 * thickness;
  if (seat !== undefined && housingOutside !== undefined && housingOutside <= seat)
    throw mustBe("housing outside", `above the bush's outside of ${seat} mm`, housingOutside);
  for (const zone of fitFields) {
    const value = given[zone];
    if (value === undefined) continue;
    checkFeature(zoneHeading[zone], value, zone === "boreZone" || zone === "housingZone" ? "hole" : "shaft");
    const ofBore = zone === "boreZone" || zone === "shaftZone";
    const size = ofBore ? bore : seat;
    if (size !== undefined) limitsIn(value, size, { zone: zoneHeading[zone], size: ofBore ? "bore" : "outside" });
  }
  if (given.housing !== undefined) findMetal("housing", given.housing);
}
const zoneHeading = {
  boreZone: "bore zone",
  shaftZone: "shaft zone",
  outsideZone: "outside zone",
  housingZone: "housing zone",
} as const;

/** The states that occur: hot with the bore warmed by friction, its housing as cold as the surroundings or as warm as the bore. */
function climates({ temperature }: Duty, rise: number, assembled: number, inService: number): Climate[] {
  const { low, high } = temperature;
  const even = (name: string, t: number, swelling: number, isAfter = false): Climate => ({
    name,
    bush: t,
    housing: t,
    shaft: t,
    swelling,
    isAfter,
  });
  const warm = high + rise;
  const hot = (name: string, swelling: number): Climate[] => [
    even(name, high, swelling),
    ...(rise > 0
      ? [even(name, warm, swelling), { name, bush: warm, housing: high, shaft: warm, swelling, isAfter: false }]
      : []),
  ];
  const changed = inService > assembled ? "wet" : "dried";
  return [
    even("assembly", assemblyTemperature, assembled),
    even("cold", low, assembled),
    ...hot("hot", assembled),
    ...(inService === assembled
      ? []
      : [even(`cold, ${changed}`, low, inService), ...hot(`hot, ${changed}`, inService)]),
    even("cold again", Math.min(low, assemblyTemperature), Math.min(assembled, inService), true),
  ];
}

/** Strains since assembly. */
export function strainsOf(
  { expansion, housing, shaftMetal, isHeld, poisson }: Assembly,
  climate: Climate,
  assembled: number,
) {
  const ofHousing = housing.expansion * (climate.housing - assemblyTemperature);
  const free = expansion * (climate.bush - assemblyTemperature) + climate.swelling - assembled;
  return {
    bush: isHeld ? heldStrain(free, ofHousing, poisson) : free,
    housing: ofHousing,
    shaft: shaftMetal.expansion * (climate.shaft - assemblyTemperature),
  };
}

/** The hottest hold: where bush and housing press the hardest. */
export function hottestOf({ assembly, all, assembled }: Omit<Course, "kept">): Climate {
  const mismatch = (climate: Climate): number => {
    const { bush, housing } = strainsOf(assembly, climate, assembled);
    return bush - housing;
  };
  return all.filter(({ isAfter }) => !isAfter).reduce((a, b) => (mismatch(b) > mismatch(a) ? b : a));
}

/** The joint after its hottest hold. */
function afterHold(course: Course, interference: number): State {
  const { assembly, assembled, kept } = course;
  const { bush, housing } = strainsOf(assembly, hottestOf(course), assembled);
  return held(assembly.ring, stateAt(assembly.ring, interference, bush - housing, 0), kept);
}

/** Clearance and interference of a state where bush and housing began with one interference. */
export function cornerOf(course: Course, climate: Climate, delta: number) {
  const { ring, bore, shaft, isPressed } = course.assembly;
  const strains = strainsOf(course.assembly, climate, course.assembled);
  const { set } = climate.isAfter ? afterHold(course, delta) : { set: 0 };
  const state = stateAt(ring, delta, strains.bush - strains.housing, set);
  // what the bore has closed in by when it was pressed in
  const closed = isPressed ? bore.least - boreIn(ring, bore.least, 0, stateAt(ring, delta, 0, 0)) : 0;
  const at = (size: number) => boreIn(ring, size + closed, strains.bush, state);
  return {
    least: at(bore.least) - shaft.greatest * (1 + strains.shaft),
    greatest: at(bore.greatest) - shaft.least * (1 + strains.shaft),
    grip: state.interference,
  };
}

function statesOf(course: Course): FitState[] {
  const { interference } = course.assembly;
  return course.all.map((climate) => {
    const corners = [interference.least, interference.greatest].map((delta) => cornerOf(course, climate, delta));
    return {
      name: climate.name,
      temperature: climate.bush,
      clearance: {
        least: Math.min(...corners.map(({ least }) => least)),
        greatest: Math.max(...corners.map(({ greatest }) => greatest)),
      },
      grip: Math.min(...corners.map(({ grip }) => grip)),
      climate,
      course,
    };
  });
}

/** R at which the coldest state after the hottest has no interference left: R_e = 1 − δ/δ_hot, then R from R_e. */
function neededShare(assembly: Assembly, all: readonly Climate[], assembled: number): number {
  const { ring, interference } = assembly;
  const back = all.find(({ isAfter }) => isAfter)!;
  const { bush, housing } = strainsOf(assembly, back, assembled);
  const cold = stateAt(ring, interference.least, bush - housing, 0).interference;
  const hot = afterHold({ assembly, all, assembled, kept: 1 }, interference.least).interference;
  const pressure = 1 - cold / hot;
  const { housing: seat, bush: wall } = compliances(ring);
  return cold <= 0 ? 2 : pressure <= 0 ? 0 : wall / ((seat + wall) / pressure - seat);
}

/** The state with the greatest clearance of all. */
export const widest = ({ forClearance, forGrip }: FitStates): FitState =>
  leastBy([...forClearance, ...forGrip], ({ clearance }) => -clearance.greatest);
/** The state with the least clearance of all. */
export const narrowest = ({ forClearance, forGrip }: FitStates): FitState =>
  leastBy([...forClearance, ...forGrip], ({ clearance }) => clearance.least);

/** The state with the least clearance, or with the least grip. */
export const leastBy = (states: readonly FitState[], of: (state: FitState) => number): FitState =>
  states.reduce((a, b) => (of(b) < of(a) ? b : a));
