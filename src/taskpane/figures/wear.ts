import { found, isMissing, missingText, wearCourse } from "../../core/duties";
import { kinds } from "../../core/kinds";
import { present } from "../../core/present";
import { fromWorking } from "../../core/units/scale";
import { WEAR } from "../../core/wear/wear";
import { bareNumber, quantityText } from "../state/quantity";
import { spread } from "./told";
import type { Subject, Told, Untold } from "./told";
import type { Line } from "./told";
import { wearPiece } from "./pieces";

export interface WearFigure extends Told {
  readonly hours: readonly number[];
  readonly lines: readonly Line[];
  readonly allowance?: number | undefined;
  readonly wanted?: number | undefined;
}

const count = 11;

const hoursTo = (wanted = 0, life = 0): number[] => spread(0, Math.max(wanted, life) || 1000, count);

const ratesOf = (low: number | undefined, high: number) => [
  ...(low === undefined ? [] : [{ name: "low rate", rate: low }]),
  { name: "high rate", rate: high },
];

/** Wear depth over the hours, by the grade's low and high wear rate; the same model that the life is judged by. */
export function wearFigure({ duty, one, system }: Subject): WearFigure | Untold {
  const { values, name } = one.grade;
  // of bands the corner at which the life was judged
  const corner = found(one.checks, "wearLife")?.duty ?? duty.moving;
  if (!corner.isMoving) return { why: "At rest nothing wears." };
  if (values.wearHigh === undefined) return { why: `No data: ${name} has no wear rate.` };
  const course = wearCourse(values, corner);
  if (isMissing(course))
    return {
      why: `A wear rate of flat tests needs the clearance: ${missingText({ ...course, word: "no data", figures: [] })} is missing.`,
    };
  const life = found(one.checks, "wearLife")?.limit;
  const { hours: wanted, allowance } = corner.given;
  const hours = hoursTo(wanted, life);
  const depth = (rate: number, time: number) =>
    WEAR.calc({
      wearrate: rate * course.factors,
      // the mean of p·v as one pressure at 1 m/s
      pressure: course.work,
      distance: time * 3.6,
      from: course.from,
      clearance: course.clearance,
    });
  const rates = ratesOf(values.wearLow, values.wearHigh);
  const lines = rates.map(({ name: which, rate }) => ({
    name: which,
    values: hours.map((time) => fromWorking("length", depth(rate, time), system)),
  }));
  const after = wanted ?? present(hours.at(-1));
  const said = [
    `${name}: up to ${quantityText("length", depth(values.wearHigh, after), system)} worn after ${quantityText("time", after, system)}`,
    allowance === undefined ? "" : `, allowance ${quantityText("length", allowance, system)}`,
    life === undefined ? "" : `; shortest life ${quantityText("time", life, system)}`,
  ];
  return {
    hours,
    lines,
    allowance: allowance === undefined ? undefined : fromWorking("length", allowance, system),
    wanted,
    summary: `${said.join("")}.`,
    numbers: {
      headings: ["hours", ...rates.map((rate) => `${rate.name}, ${kinds.length[system]}`)],
      rows: hours.map((time) => [
        String(time),
        ...rates.map(({ rate }) => bareNumber("length", depth(rate, time), system)),
      ]),
    },
    piece: wearPiece(course, hours, name),
  };
}
