import { functions } from "../../../src/core";
import { findMetal } from "../../../src/core/fit/metals";
import { findGrade } from "../../../src/core/grades/model";
import { afterStep } from "../../../src/core/heat/firstOrder";
import { call } from "../../support";
import type { Measurement } from "./measurements";
import { measurements } from "./measurements";

/** A figure of the generic library as GRADE answers it. */
const libraryFigure = (grade: string, property: string): number =>
  call(functions.GRADE, [grade, property])[0]![0] as number;

export interface Expansion {
  readonly from: number;
  readonly to: number;
  readonly grade?: string;
  readonly metal?: string;
  /** The metal of the housing, where the mismatch with it was measured. */
  readonly against?: string;
}

/** µm/m: the change of a free bush by RUNCLEARANCE, or by GRIPLEFT that of an interference in a housing, without its sign. */
export function strain({ from, to, grade, metal, against }: Expansion): number {
  const own = grade === undefined ? findMetal("metal", metal!).expansion : libraryFigure(grade, "expansion");
  // the step lies just above 20 °C: a change that begins there and warms holds the whole of it
  const isStepped = grade !== undefined && from <= 20 && to > 20;
  const swelling = isStepped ? (findGrade(grade).values.expansionStep ?? 0) : 0;
  const [bore, outside] = [1000, 1100];
  if (against !== undefined) {
    const interference = 50;
    const mismatchnow = (own - findMetal("metal", against).expansion) * (to - from);
    const left = functions.GRIPLEFT({ interference, outside, kept: 1, mismatchhot: 0, mismatchnow });
    return (Math.abs(left - interference) / outside) * 1e6;
  }
  // no close-in: nothing holds it
  const free = { bore, outside, interference: 0, closein: 0, clearance: 0 };
  const expansions = { bushexpansion: own, housingexpansion: own, shaftexpansion: 0, swelling };
  return (Math.abs(functions.RUNCLEARANCE({ ...free, ...expansions, temperature: to, reference: from })) / bore) * 1e6;
}

export const conductivity = ({ grade }: { grade: string }): number => libraryFigure(grade, "conductivity");

/** A series of points of one material: each is predicted from what the others measured, so that none predicts itself. */
const others = (of: Measurement): Measurement[] =>
  measurements.filter(
    (one) =>
      one !== of && one.model === of.model && one.given.series !== undefined && one.given.series === of.given.series,
  );
const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;

/** A constant coefficient, its heat by HEAT over load and speed; in a series the mean of the other points. */
export function friction(of: Measurement): number {
  const constant = of.given.constant ?? mean(others(of).map(({ measured }) => measured));
  return functions.HEAT({ load: 1, speed: 1, friction: constant as number });
}

/** µm/km by WEAR at the rate that the other points have on the geometric mean. */
export function wear(of: Measurement): number {
  const rateOf = ({ measured, given }: Measurement) => measured / 1000 / ((given.pressure as number) * 1000);
  const rate = Math.exp(mean(others(of).map((one) => Math.log(rateOf(one) / 1000))));
  return functions.WEAR({ wearrate: rate * 1000, pressure: of.given.pressure as number, distance: 1 }) * 1000;
}

/** K above the surroundings by BORETEMP. */
export const boreRise = (given: { share: number; highest: number; ambient: number }): number =>
  functions.BORETEMP({ pv: given.share, pvlimit: 1, highest: given.highest, ambient: given.ambient }) - given.ambient;

const film = 10;
/** A rod as the shaft end of a bush without length whose housing takes no heat; along it the temperature of an insulated tip. */
export function shaftEnd(given: Readonly<Record<string, unknown>>): number {
  if (given.what === "film") return film;
  const { diameter, length, conductivity: shaftconductivity, rise, at } = given as Record<string, number>;
  if (given.what === "tip") {
    const perMetre = Math.sqrt((4 * film) / (shaftconductivity! * (diameter! / 1000)));
    const [whole, left] = [length! / 1000, (length! - at!) / 1000].map((x) => Math.cosh(perMetre * x));
    return (rise! * left!) / whole!;
  }
  const bush = { bore: diameter!, length: 1e-9, wall: 1, bushconductivity: 1, shaftconductivity: shaftconductivity! };
  const paths = { endlength: length!, ends: 1, ambient: 0 };
  return rise! / (functions.RUNTEMP({ ...bush, ...paths, load: 1, speed: 1, friction: 1 })[1] as number);
}

interface Spells {
  readonly timeconstant: number;
  readonly steady?: number;
  readonly on?: readonly number[];
  readonly off?: readonly number[];
  readonly end?: "peak" | "low";
  readonly time?: number;
  readonly start?: number;
}
/** K at the end of heated and cooled spells from cold: the peak by PEAKRISE with a rest in which all cools, what is left by its step. */
export function heatedRise({ timeconstant, steady = 0, on = [], off = [], end, time = 0, start = 0 }: Spells): number {
  if (end === undefined) return afterStep(start, { steady: 0, time }, timeconstant);
  const spells = on.flatMap((heated, i) => [
    { steady, time: heated },
    ...(off[i] === undefined ? [] : [{ steady: 0, time: off[i] }]),
  ]);
  if (end === "low") return spells.reduce((rise, step) => afterStep(rise, step, timeconstant), 0);
  const rest = { steady: 0, time: 100 * timeconstant };
  const cycle = [...spells, rest];
  return functions.PEAKRISE({ rises: cycle.map((s) => s.steady), times: cycle.map((s) => s.time), timeconstant });
}

/** Share of the modulus kept since the first second, extrapolated from the first hour, as GRIPLEFT keeps it of an interference. */
export function kept({ t0, exponent, hours }: { t0: number; exponent: number; hours: number }): number {
  const at = (seconds: number) => (1 + seconds / t0) ** -exponent;
  const share = at(hours * 3600) / at(1);
  return functions.GRIPLEFT({ interference: 1, outside: 20, kept: share, mismatchhot: 0, mismatchnow: 0 });
}

/** One rate for all, as WEARRATE leaves it without factors. */
export const oneRate = ({ rate }: { rate: number }): number => functions.WEARRATE({ base: rate });

/** MPa that ALLOWABLE tells at a temperature where the grade has no curve. */
export function withoutCurve({ limit, temperature }: { limit: number; temperature: number }): number {
  const grades = [
    ["grade", "static pressure limit [MPa]", "highest temperature [°C]"],
    ["X", limit, temperature],
  ];
  return call(functions.ALLOWABLE, ["X", "static pressure limit", temperature, grades])[0]![0] as number;
}
