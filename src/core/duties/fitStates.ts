import { boreIn, held, stateAt } from "../fit/history";
import type { State } from "../fit/history";
import type { Limits } from "../fit/iso286";
import { compliances, heldStrain, hoopStressOf } from "../fit/lame";
import { assemblyTemperature } from "../fit/running";
import type { PropertyKey, Values } from "../grade/properties";
import { isMissing } from "./criterion";
import type { Missing } from "./criterion";
import type { Duty } from "./duty";
import type { Given } from "./fields";
import { assemblyOf, elasticFigures } from "./fitAssembly";
import type { Assembly } from "./fitAssembly";
import { climates } from "./fitClimates";
import type { Climate, Moisture } from "./fitClimates";
import { boreRise } from "./temperatures";

/** Bush, housing and shaft in one state. */
export interface FitState extends Climate {
  /** Water in the bush when it was pressed in. */
  readonly assembled: Moisture;
  /** Share of the press fit kept since the hottest hold; none before it. */
  readonly kept?: number | undefined;
  /** Running clearance, worst case of all tolerances. */
  readonly clearance: Limits;
  /** Where the clearance of most assemblies lies: half tolerances joined as a root sum square. */
  readonly band: Limits;
  /** Least interference left between bush and housing; zero or less is a loose bush. */
  readonly grip: number;
  /** Compressive hoop stress at the bore, at the greatest interference, MPa. */
  readonly stress: number;
}

export interface FitStates {
  /** From each moisture that the bush may have had at assembly; a share of the press fit that is not told is 1. */
  readonly states: readonly FitState[];
  /** Where the share is not told: the states after the hottest hold once more, with nothing kept. */
  readonly ifNothingKept: readonly FitState[];
  /** Share of the press fit that must be kept for the bush to hold; where none is enough, above 1. */
  readonly neededShare: number;
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

/** A bush pressed in at one moisture, and the states that it goes through. */
interface Course {
  readonly assembled: Moisture;
  readonly climates: readonly Climate[];
}

function workedOut(values: Values, duty: Duty): FitStates | Missing {
  const { given } = duty;
  const assembly = assemblyOf(values, given);
  if (isMissing(assembly)) return assembly;
  const rise = boreRise(values, duty);
  if (typeof rise !== "number") return { property: rise };
  const { inService, assembled } = moisturesOf(given);
  const swellings = [inService, ...assembled].flatMap((moisture) => swellingKey[moisture] ?? []);
  for (const property of swellings) if (values[property] === undefined) return { property };

  const swellingOf = (moisture: Moisture): number => {
    const property = swellingKey[moisture];
    return property === undefined ? 0 : values[property]!;
  };
  const courses = assembled.map((moisture) => ({
    assembled: moisture,
    climates: climates(duty, rise, swellingOf(inService) - swellingOf(moisture)),
  }));
  const { keptGrip } = given;
  const through = (kept: number) => courses.flatMap((course) => statesOf(assembly, course, kept));
  return {
    states: through(keptGrip ?? 1),
    ifNothingKept: keptGrip === undefined ? through(0).filter(({ isAfter }) => isAfter) : [],
    neededShare: Math.max(...courses.map((course) => neededShare(assembly, course))),
    figures: [...elasticFigures, ...swellings, ...(rise > 0 ? (["pvLimit", "highestTemperature"] as const) : [])],
  };
}

const swellingKey: Readonly<Partial<Record<Moisture, "swelling50" | "swellingSaturated">>> = {
  humid: "swelling50",
  wet: "swellingSaturated",
};

/** Where the moisture at assembly is not told it may be that of a dry store or of humid air. */
const moisturesOf = ({ moisture = "dry", assemblyMoisture }: Given) => ({
  inService: moisture,
  assembled: assemblyMoisture === undefined ? (["dry", "humid"] as const) : [assemblyMoisture],
});

/** Strains since assembly. */
function strainsOf({ expansion, housing, shaftMetal, isHeld, poisson }: Assembly, climate: Climate) {
  const ofHousing = housing.expansion * (climate.housing - assemblyTemperature);
  const free = expansion * (climate.bush - assemblyTemperature) + climate.swelling;
  return {
    bush: isHeld ? heldStrain(free, ofHousing, poisson) : free,
    housing: ofHousing,
    shaft: shaftMetal.expansion * (climate.shaft - assemblyTemperature),
  };
}

/** The hottest hold: where bush and housing press the hardest. */
function afterHold(assembly: Assembly, { climates }: Course, interference: number, kept: number): State {
  const states = climates
    .filter(({ isAfter }) => !isAfter)
    .map((climate) => {
      const { bush, housing } = strainsOf(assembly, climate);
      return stateAt(assembly.ring, interference, bush - housing, 0);
    });
  const hardest = states.reduce((a, b) => (b.interference > a.interference ? b : a));
  return held(assembly.ring, hardest, kept);
}

const middle = ({ least, greatest }: Limits): number => (least + greatest) / 2;
const half = ({ least, greatest }: Limits): number => (greatest - least) / 2;

function statesOf(assembly: Assembly, course: Course, kept: number): FitState[] {
  return course.climates.map((climate): FitState => {
    const strains = strainsOf(assembly, climate);
    const joint = (interference: number): State => {
      const set = climate.isAfter ? afterHold(assembly, course, interference, kept).set : 0;
      return stateAt(assembly.ring, interference, strains.bush - strains.housing, set);
    };
    const { outside, seat } = assembly;
    const slack = outside.least - seat.greatest;
    const tight = outside.greatest - seat.least;
    return {
      ...climate,
      assembled: course.assembled,
      kept: climate.isAfter ? kept : undefined,
      ...clearancesOf(assembly, strains, joint, [slack, tight]),
      grip: Math.min(joint(slack).interference, joint(tight).interference),
      stress: hoopStressOf(assembly.ring, Math.max(joint(slack).pressure, joint(tight).pressure)),
    };
  });
}

/**
 * Clearance rises with the bore, falls with the shaft, and goes one way with the interference of a bush that is held, so
 * that the worst cases stand at the ends of the limits. The band takes half of each tolerance: bush and housing first join to the half-width of
 * their interference, ti = √((To/2)² + (Th/2)²), whose effect on the clearance then joins those of bore and shaft.
 */
function clearancesOf(
  { ring, bore, shaft, outside, seat, isPressed }: Assembly,
  strains: ReturnType<typeof strainsOf>,
  joint: (interference: number) => State,
  ends: readonly [number, number],
): Pick<FitState, "clearance" | "band"> {
  const clearanceAt = (boreSize: number, shaftSize: number, interference: number): number => {
    // a bore that is stated as pressed was wider before
    const closed = isPressed ? boreSize - boreIn(ring, boreSize, 0, stateAt(ring, interference, 0, 0)) : 0;
    return boreIn(ring, boreSize + closed, strains.bush, joint(interference)) - shaftSize * (1 + strains.shaft);
  };
  const likely = Math.hypot(half(outside), half(seat));
  const [low, high] = [-likely, likely].map((off) =>
    clearanceAt(middle(bore), middle(shaft), middle(outside) - middle(seat) + off),
  ) as [number, number];
  const width = Math.hypot(half(bore) * (1 + strains.bush), half(shaft) * (1 + strains.shaft), (high - low) / 2);
  return {
    clearance: {
      least: Math.min(...ends.map((end) => clearanceAt(bore.least, shaft.greatest, end))),
      greatest: Math.max(...ends.map((end) => clearanceAt(bore.greatest, shaft.least, end))),
    },
    band: { least: (low + high) / 2 - width, greatest: (low + high) / 2 + width },
  };
}

/** R at which the coldest state after the hottest has no interference left: R_e = 1 − δ/δ_hot, then R from R_e. */
function neededShare(assembly: Assembly, course: Course): number {
  const { ring, outside, seat: housing } = assembly;
  const interference = outside.least - housing.greatest;
  const back = strainsOf(
    assembly,
    course.climates.find(({ isAfter }) => isAfter)!,
  );
  const cold = stateAt(ring, interference, back.bush - back.housing, 0).interference;
  const hot = afterHold(assembly, course, interference, 1).interference;
  const pressure = 1 - cold / hot;
  const { housing: seat, bush: wall } = compliances(ring);
  return cold <= 0 ? 2 : pressure <= 0 ? 0 : wall / ((seat + wall) / pressure - seat);
}

/** The state with the least clearance, or with the least grip. */
export const leastBy = (states: readonly FitState[], of: (state: FitState) => number): FitState =>
  states.reduce((a, b) => (of(b) < of(a) ? b : a));
