import misses from "../../../../data/misses.json";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { isFitted, loadText } from "../../loading/conforming";
import { cycleLine } from "../../heat/firstOrder";
import { flatWearOf } from "../../wear/conformity";
import { present } from "../../present";
import { criterion, figure, holds, isMissing, joined, lacking, unstated, withoutData } from "../judging/criterion";
import type { Check, Criterion, Finding, Known, Word, Working, Missing } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { field } from "../model/fields";
import { fitProperties, fitStates, widest } from "../fit/states";
import type { FitStates } from "../fit/states";
import { fitWorking } from "../fit/working";
import { markOf, product, whereOf } from "../judging/pvWorking";
import { missingText } from "../judging/verdict";
import { facePressure } from "./facePressure";
import { pv } from "./pv";
import { runningPressure } from "./runningPressure";
import { speed } from "./speed";

/** Beyond these the linear law says nothing. */
const limits: readonly Criterion[] = [runningPressure, facePressure, speed, pv];
/** The first of these limits with one of the words. */
export const beyondLimits = (checks: readonly Check[], wanted: readonly Word[]): Check | undefined =>
  checks.find((check) => limits.includes(check.criterion) && wanted.includes(check.word));
const failed: readonly Word[] = ["fails"];
const isBeyond = (values: Values, duty: Duty): boolean =>
  limits.some((limit) => limit.asks(duty) && limit.check(values, duty, []).word === "fails");

/** Pressure times speed of the face that wears most, averaged over the whole duty with its rests, MPa·m/s. */
const meanWork = (duty: Duty): number => Math.max(meanOn(duty, "bore"), meanOn(duty, "face"));

function meanOn({ steps, given }: Duty, of: "bore" | "face"): number {
  const total = steps.reduce((sum, { time = 1 }) => sum + time, 0);
  const mean =
    steps.reduce((sum, step) => {
      const face = step[of];
      return face && step.motion !== "static" ? sum + face.pressure * face.speed * (step.time ?? 1) : sum;
    }, 0) / total;
  const { runningTime, restTime } = given;
  return runningTime === undefined || restTime === undefined ? mean : mean * (runningTime / (runningTime + restTime));
}

/** PV_m of that face. */
function meanWorking(duty: Duty): Working {
  const { steps, given } = duty;
  const { runningTime, restTime } = given;
  const of = meanOn(duty, "bore") >= meanOn(duty, "face") ? "bore" : "face";
  const name = duty.part === "flanged" ? (of === "bore" ? " in the bore" : " on the flange") : "";
  const known: Record<string, Known> = {};
  const work = steps.flatMap((step, i) => {
    const face = step[of];
    if (!face || step.motion === "static") return [];
    const { text, known: figures } = product(face, markOf(steps, i), name + whereOf(steps, i));
    Object.assign(known, figures);
    return [steps.length > 1 ? `${text} * t${i + 1}` : text];
  });
  const between = { PV_m: { unit: "MPa·m/s", text: "Mean of pressure times speed, rests included" } };
  if (steps.length > 1) {
    steps.forEach(({ time }, i) => (known[`t${i + 1}`] = figure(present(time), "minutes", `Time of step ${i + 1}`)));
    const cycle = { t_c: { unit: "min", text: "Duration of the cycle" } };
    return {
      lines: [cycleLine(steps), `PV_m = (${work.join(" + ")}) / t_c`],
      known,
      between: { ...between, ...cycle },
    };
  }
  const ofStep = present(work[0]);
  if (runningTime === undefined || restTime === undefined) return { lines: [`PV_m = ${ofStep}`], known, between };
  known.t_r = figure(runningTime, "minutes", "Running time");
  known.t_0 = figure(restTime, "minutes", "Rest time");
  return { lines: [`PV_m = ${ofStep} * t_r / (t_r + t_0)`], known, between };
}

/** f, the product of the wear factors that differ from 1. */
function factorWorking({ given }: Duty): Working {
  const known = factorKeys.flatMap((key): [string, Known][] =>
    given[key] === undefined ? [] : [[present(field(key).symbol), figure(given[key], "ratio", field(key).text)]],
  );
  if (known.length === 0) return { lines: [], known: {} };
  return {
    lines: [`f = ${known.map(([symbol]) => symbol).join(" * ")}`],
    known: Object.fromEntries(known),
    between: { f: { unit: "", text: "Product of the wear factors" } },
  };
}

const factorKeys = ["geometryFactor", "heatFactor", "temperatureFactor", "counterfaceFactor", "finishFactor"] as const;
const factorsOf = ({ given }: Duty): number => factorKeys.reduce((all, key) => all * (given[key] ?? 1), 1);

const greatestOf = (states: FitStates): number => Math.max(0, widest(states).clearance.greatest);

/** Whether the wear of the face is that of the test: of a bush in a bush test, of a washer's flat face in any. */
const isAsTested = ({ wearFrom }: Values, { part }: Duty): boolean => wearFrom === "bush" || part === "washer";

interface Allowance {
  /** The allowance itself. */
  readonly allowance: number;
  /** The grade's high wear rate. */
  readonly rate: number;
  /** Wear of a flat in the time in which the bore loses its allowance: the allowance itself by a rate of bush tests. */
  readonly flat: number;
  readonly figures: readonly PropertyKey[];
}

function allowanceOf(values: Values, duty: Duty): Allowance | Finding {
  const { given } = duty;
  const { wearHigh: rate } = values;
  const { allowance } = given;
  if (rate === undefined) return lacking("wearHigh", given.hours);
  if (allowance === undefined) return unstated("allowance", given.hours);
  const known: readonly PropertyKey[] = values.wearFrom === undefined ? ["wearHigh"] : ["wearHigh", "wearFrom"];
  if (isAsTested(values, duty)) return { allowance, rate, flat: allowance, figures: known };
  // a rate of unknown tests counts as one of flat tests, whose life depends on the clearance
  const states = fitStates(values, duty);
  if (!isMissing(states))
    return {
      ...{ allowance, rate, flat: flatWearOf(allowance, greatestOf(states)) },
      figures: [...known, ...states.figures],
    };
  if (values.wearFrom === undefined) return lacking("wearFrom", given.hours);
  const missing = withoutData(states, given.hours);
  return { ...missing, say: () => `wear life: a rate of flat tests needs the clearance, ${missingText(missing)}` };
}

/** The wear that the life lasts for: the allowance h, or h_0, the wear of a flat in the same time. */
function flatWorking(allowance: number, values: Values, duty: Duty): Working {
  const h = figure(allowance, "length", "Wear allowance");
  const states = fitStates(values, duty);
  if (isAsTested(values, duty) || isMissing(states)) return { lines: [], known: { h } };
  const clearance = greatestOf(states);
  const lines = isFitted(clearance, allowance)
    ? ["h_0 = pi / 4 * h"]
    : ["t = 1 + 2 * h / C", `Λ = ${loadText("t")}`, "h_0 = C / 4 * Λ"];
  const C = figure(clearance, "length", "Greatest clearance of the fit");
  return { lines, known: { h, C }, first: fitWorking(widest(states), "greatest") };
}

/**
 * How many times a wear may exceed the high rate: points of one test at other pressures and speeds differed so far from what the others
 * told, which a band of rates covers as far as it is wide and a single rate not at all.
 */
const exceeded = ({ wearLow }: Values, high: number): number =>
  wearLow === undefined ? misses.wear.oneRate : Math.max(1, (misses.wear.oneRate * wearLow) / high);

const overrun = ({ wearLow }: Values, times: number): string => {
  const rates = wearLow === undefined ? "one wear rate alone" : "a narrow band of wear rates";
  return `wear life: ${rates}, exceeded up to ${Number(times.toPrecision(2))} times elsewhere in one test`;
};

/** Hours until it is worn by the grade's high rate; endless where nothing wears. */
const lifeOf = (flat: number, rate: number, duty: Duty): number =>
  flat / (rate * factorsOf(duty) * meanWork(duty) * 3600);

/** How a bush wears in a duty: the factors of its rate, the mean of pressure times speed over its steps (MPa·m/s), and the clearance that a rate of flat tests needs. */
export interface WearCourse {
  readonly factors: number;
  readonly work: number;
  readonly from: "bush" | "flat";
  readonly clearance?: number;
}
export function wearCourse(values: Values, duty: Duty): WearCourse | Missing {
  const course = { factors: factorsOf(duty), work: meanWork(duty) };
  if (isAsTested(values, duty)) return { ...course, from: "bush" };
  const states = fitStates(values, duty);
  return isMissing(states) ? states : { ...course, from: "flat", clearance: greatestOf(states) };
}

export const wearLife = criterion(
  {
    id: "wearLife",
    heading: "wear life",
    kind: "time",
    text: "The hours wanted, rests included, against the shortest life: the allowance over the grade's high wear rate, its factors, and pressure times speed of the face that wears most; a rate of flat tests, or of unknown ones, by the greatest clearance of the fit, but on the flat face of a washer. Where the rates are no band as wide as the spread that was measured within one test, care if so much more wear has no room",
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
    properties: ["wearHigh", "wearLow", "wearFrom", ...fitProperties],
    source: { key: "archard", at: "linear wear law, solved for the time" },
    asks: ({ isMoving, given }) => isMoving && (given.hours !== undefined || given.allowance !== undefined),
    working: (values, duty) => {
      const { hours } = duty.given;
      const allowance = allowanceOf(values, duty);
      if (!("flat" in allowance) || hours === undefined || meanWork(duty) === 0 || isBeyond(values, duty))
        return undefined;
      const factors = factorWorking(duty);
      const f = factors.lines.length > 0 ? " * f" : "";
      const flatWear = flatWorking(allowance.allowance, values, duty);
      const h = flatWear.lines.length > 0 ? "h_0" : "h";
      return joined(
        { lines: ["V = t_w"], known: { t_w: figure(hours, "time", "Hours wanted") } },
        flatWear,
        factors,
        meanWorking(duty),
        {
          lines: [`Z = ${h} / (k${f} * PV_m * 3600)`, "u = V / Z"],
          known: { k: figure(allowance.rate, "wearRate", "Wear rate, high", "wearHigh") },
          between: {
            t: { unit: "", text: "Depth of contact over half of the clearance, plus one" },
            Λ: { unit: "", text: "Wear of a flat over a quarter of the clearance" },
            h_0: { unit: "mm", text: "Wear of a flat in the same time" },
          },
        },
      );
    },
  },
  (values, duty, before) => {
    const { hours } = duty.given;
    if (beyondLimits(before, failed))
      return { word: "fails", figures: [], value: hours, say: () => "life not valid beyond its limits" };
    const allowance = allowanceOf(values, duty);
    if (!("flat" in allowance)) return allowance;
    const { flat, rate, figures } = allowance;
    const limit = lifeOf(flat, rate, duty);
    if (hours === undefined) return { ...unstated("hours"), limit: Number.isFinite(limit) ? limit : undefined };
    const use = hours / limit;
    const shown = Number.isFinite(limit) ? { limit } : {};
    const times = exceeded(values, rate);
    const word = !holds(use) ? "fails" : holds(use * times) ? "fits" : "care";
    const say = word === "care" ? () => overrun(values, times) : undefined;
    const counted: readonly PropertyKey[] = values.wearLow === undefined ? figures : [...figures, "wearLow"];
    return { word, figures: counted, value: hours, ...shown, use, property: "wearHigh", say };
  },
);
