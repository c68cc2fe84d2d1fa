import type { Compared } from "./compare";
import { modelErrors, unsafeBy } from "./compare";

const pointsOf = (key: string): readonly Compared[] => modelErrors().find(({ model }) => model.key === key)!.points;
/** Rounded up, so that "by up to" holds. */
const up = (x: number, step: number): number => Number((Math.ceil(x / step - 1e-9) * step).toPrecision(6));
const worst = (points: readonly Compared[]): number => Math.max(...points.map(unsafeBy));

const boreAt = (highest: number): Compared[] =>
  pointsOf("boreTemperature").filter(({ given }) => given.highest === highest);
/** K by which the bore was warmer than BORETEMP says, at most, for grades of that highest temperature. */
const boreLow = (highest: number): number =>
  up(Math.max(...boreAt(highest).map(({ measured, predicted }) => measured - predicted)), 0.5);
const relaxed = (isNear: boolean, hours: number): Compared[] =>
  pointsOf("relaxation").filter(({ given, what }) =>
    isNear ? given.near === true && (given.hours as number) >= hours : what.includes("cold") && given.hours === hours,
  );
const spells = (isWhole: boolean): Compared[] =>
  pointsOf("peakRise").filter(({ what }) => what.includes("whole") === isWhole);

/** The figures of the measurements that the texts of functions and criteria and the page of limits tell; written to data/misses.json. */
export const misses = () => ({
  boreLowBy: { at90: boreLow(90), at150: boreLow(150), at250: boreLow(250) },
  halfLimitRise: { at250: up(worst(boreAt(250).filter(({ given }) => given.share === 0.5)), 0.05) },
  keptTooMuch: {
    coldYear: up(100 * (worst(relaxed(false, 8766)) - 1), 0.1),
    nearTransition: up(worst(relaxed(true, 100)), 0.1),
  },
  wear: { oneRate: up(worst(pointsOf("wear")), 0.1), otherProcessing: up(worst(pointsOf("wearRate")), 1) },
  spells: { ownConstant: up(100 * (1 - 1 / worst(spells(false))), 1), wholeMass: up(worst(spells(true)), 0.1) },
  direction: { thickness: up(worst(pointsOf("direction")), 0.1) },
  friction: { middle: up(worst(pointsOf("friction")), 0.05) },
});
