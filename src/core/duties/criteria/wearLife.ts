import type { PropertyKey, Values } from "../../grade/properties";
import { flatWearOf } from "../../wear/conformity";
import { criterion, figure, holds, isMissing, lacking, unstated, withoutData } from "../criterion";
import type { Check, Criterion, Finding, Word } from "../criterion";
import type { Duty } from "../duty";
import { fitProperties, fitStates } from "../fitStates";
import { missingText } from "../verdict";
import { facePressure } from "./facePressure";
import { pv } from "./pv";
import { runningPressure } from "./runningPressure";
import { speed } from "./speed";

/** Beyond these the linear law says nothing. */
const limits: readonly Criterion[] = [runningPressure, facePressure, speed, pv];
/** The first of these limits with one of the words. */
export const beyondLimits = (checks: readonly Check[], wanted: readonly Word[]): Check | undefined =>
  checks.find(({ criterion, word }) => limits.includes(criterion) && wanted.includes(word));
const failed: readonly Word[] = ["fails"];
const isBeyond = (values: Values, duty: Duty): boolean =>
  limits.some((limit) => limit.asks(duty) && limit.check(values, duty, []).word === "fails");

/** Pressure times speed of the face that wears most, averaged over the whole duty with its rests, MPa·m/s. */
function meanWork({ steps, given }: Duty): number {
  const total = steps.reduce((sum, { time = 1 }) => sum + time, 0);
  const mean = (of: "bore" | "face") =>
    steps.reduce((sum, step) => {
      const face = step[of];
      return face && step.motion !== "static" ? sum + face.pressure * face.speed * (step.time ?? 1) : sum;
    }, 0) / total;
  const { runningTime, restTime } = given;
  const share = runningTime === undefined || restTime === undefined ? 1 : runningTime / (runningTime + restTime);
  return Math.max(mean("bore"), mean("face")) * share;
}

const factorsOf = ({ given }: Duty): number =>
  (given.geometryFactor ?? 1) *
  (given.heatFactor ?? 1) *
  (given.temperatureFactor ?? 1) *
  (given.counterfaceFactor ?? 1) *
  (given.finishFactor ?? 1);

interface Allowance {
  /** Wear of a flat in the time in which the bore loses its allowance: the allowance itself by a rate of bush tests. */
  readonly flat: number;
  readonly figures: readonly PropertyKey[];
}

function allowanceOf(values: Values, duty: Duty): Allowance | Finding {
  const { given } = duty;
  if (values.wearHigh === undefined) return lacking("wearHigh", given.hours);
  if (given.allowance === undefined) return unstated("allowance", given.hours);
  const known: readonly PropertyKey[] = values.wearFrom === undefined ? ["wearHigh"] : ["wearHigh", "wearFrom"];
  if (values.wearFrom === "bush") return { flat: given.allowance, figures: known };
  // a rate of unknown tests counts as one of flat tests, whose life depends on the clearance
  const states = fitStates(values, duty);
  if (!isMissing(states)) {
    const greatest = states.states.map(({ clearance }) => clearance.greatest);
    const flat = flatWearOf(given.allowance, Math.max(0, ...greatest));
    return { flat, figures: [...known, ...states.figures] };
  }
  if (values.wearFrom === undefined) return lacking("wearFrom", given.hours);
  const missing = withoutData(states, given.hours);
  return { ...missing, say: () => `wear life: a rate of flat tests needs the clearance, ${missingText(missing)}` };
}

/** Hours until it is worn by the grade's high rate; endless where nothing wears. */
const lifeOf = (flat: number, rate: number, duty: Duty): number =>
  flat / (rate * factorsOf(duty) * meanWork(duty) * 3600);

export const wearLife = criterion(
  {
    id: "wearLife",
    heading: "wear life",
    kind: "time",
    text: "The hours wanted, rests included, against the shortest life: the allowance over the grade's high wear rate, its factors, and pressure times speed of the face that wears most; a rate of flat tests, or of unknown ones, by the greatest clearance of the fit",
    asked: "with hours or a wear allowance, in motion",
    askedBy: ["hours", "allowance"],
    fields: [
      "hours",
      "allowance",
      "time",
      "runningTime",
      "restTime",
      "geometryFactor",
      "heatFactor",
      "temperatureFactor",
      "counterfaceFactor",
      "finishFactor",
    ],
    properties: ["wearHigh", "wearFrom", ...fitProperties],
    source: { key: "archard", at: "linear wear law, solved for the time" },
    asks: ({ isMoving, given }) => isMoving && (given.hours !== undefined || given.allowance !== undefined),
    working: (values, duty) => {
      const { hours } = duty.given;
      const allowance = allowanceOf(values, duty);
      if (!("flat" in allowance) || hours === undefined || meanWork(duty) === 0 || isBeyond(values, duty))
        return undefined;
      return {
        lines: ["V = t_w", "Z = h / (k * f * PV_m * 3600)", "u = V / Z"],
        known: {
          t_w: figure(hours, "time", "Hours wanted"),
          h: figure(allowance.flat, "length", "Wear allowance, as the wear of a flat in the same time"),
          k: figure(values.wearHigh!, "wearRate", "Wear rate, high"),
          f: figure(factorsOf(duty), "ratio", "Product of the wear factors"),
          PV_m: figure(meanWork(duty), "pv", "Mean of pressure times speed, rests included"),
        },
      };
    },
  },
  (values, duty, before) => {
    const { hours } = duty.given;
    if (beyondLimits(before, failed))
      return { word: "fails", figures: [], value: hours, say: () => "life not valid beyond its limits" };
    const allowance = allowanceOf(values, duty);
    if (!("flat" in allowance)) return allowance;
    const { flat, figures } = allowance;
    const limit = lifeOf(flat, values.wearHigh!, duty);
    if (hours === undefined) return { ...unstated("hours"), limit: Number.isFinite(limit) ? limit : undefined };
    const use = hours / limit;
    const shown = Number.isFinite(limit) ? { limit } : {};
    return { word: holds(use) ? "fits" : "fails", figures, value: hours, ...shown, use, property: "wearHigh" };
  },
);
