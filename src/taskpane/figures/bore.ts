import { found, reasonOf } from "../../core/duties";
import { kinds } from "../../core/kinds";
import { bareNumber, quantityText } from "../state/quantity";
import type { Subject, Told, Untold } from "./told";
import type { Bar } from "./told";

export interface BoreFigure extends Told {
  readonly bars: readonly Bar[];
  readonly limit?: number | undefined;
}

/** Surroundings, and above them the bore's temperature between its lower and its upper figure. */
export function boreFigure({ duty, one, system }: Subject): BoreFigure | Untold {
  const check = found(one.checks, "boreTemperature");
  if (!check) return { why: "At rest the bore is as warm as its surroundings." };
  const { value, upper = value, limit } = check;
  if (value === undefined || upper === undefined) return { why: `No data: ${reasonOf(check, system)}.` };
  const { low, high } = duty.moving.temperature;
  const said = (x: number) => quantityText("temperature", x, system);
  const bare = (x: number) => bareNumber("temperature", x, system);
  const bore = value === upper ? said(value) : `${said(value)} to ${said(upper)}`;
  return {
    bars: [
      { name: `surroundings ${said(low)} to ${said(high)}`, from: low, to: high },
      { name: `bore ${bore}: ${check.word}`, from: high, to: value, faint: [value, upper] },
    ],
    limit,
    summary: `${one.grade.name}: bore ${bore} in surroundings of at most ${said(high)}${limit === undefined ? "" : `, highest ${said(limit)}`}: ${check.word}.`,
    numbers: {
      headings: ["what", `from, ${kinds.temperature[system]}`, `to, ${kinds.temperature[system]}`],
      rows: [
        ["surroundings", bare(low), bare(high)],
        ["bore", bare(value), bare(upper)],
        ...(limit === undefined ? [] : [["grade's highest", "", bare(limit)]]),
      ],
    },
    piece: "checks",
  };
}
