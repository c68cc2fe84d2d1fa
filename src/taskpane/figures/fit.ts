import { fitRows, fitVerdict } from "../../core/duties";
import type { FitRow } from "../../core/duties";
import { BushError, orFault } from "../../core/errors";
import { kinds } from "../../core/kinds";
import { fromWorking } from "../../core/units/scale";
import { bareNumber } from "../state/quantity";
import type { Bar } from "./told";
import type { Subject, Told, Untold } from "./told";

export interface FitFigure extends Told {
  /** Worst case of all tolerances; below 0 it binds. */
  readonly clearance: readonly Bar[];
  /** Least interference left; below 0 the bush is loose. */
  readonly grip: readonly Bar[];
}

/** The states of FITTABLE: running clearance and grip of the bush in its housing. */
export function fitFigure({ duty, one, system }: Subject): FitFigure | Untold {
  const rows = orFault(() => fitRows(duty, one.grade));
  if (rows instanceof BushError) return { why: `${rows.message}.` };
  const shown = (x: number) => fromWorking("length", x, system);
  const length = (value: number) => bareNumber("length", value, system);
  const unit = kinds.length[system];
  const isSplit = rows.some(({ assembled }) => assembled !== rows[0]?.assembled);
  const name = (row: FitRow) => `${isSplit ? `pressed in ${row.assembled}: ` : ""}${nameOf(row)}`;
  const label = (row: FitRow) =>
    `${name(row)}, ${bareNumber("temperature", row.bush, system)} ${kinds.temperature[system]}: ${row.word}`;
  return {
    clearance: rows.map((row) => ({
      name: label(row),
      from: shown(row.clearance.least),
      to: shown(row.clearance.greatest),
    })),
    grip: rows.map((row) => ({
      name: label(row),
      from: Math.min(0, shown(row.grip)),
      to: Math.max(0, shown(row.grip)),
    })),
    summary: `${one.grade.name}: ${byVerdict(rows)}. Wear is not in it.`,
    numbers: {
      headings: [
        "state",
        `at ${kinds.temperature[system]}`,
        `least, ${unit}`,
        `greatest, ${unit}`,
        `grip, ${unit}`,
        "verdict",
      ],
      rows: rows.map((row) => [
        name(row),
        bareNumber("temperature", row.bush, system),
        length(row.clearance.least),
        length(row.clearance.greatest),
        length(row.grip),
        fitVerdict(row),
      ]),
    },
    piece: "fit",
  };
}

/** "cold again, no grip kept" */
export const nameOf = ({ name, isSupposed, kept }: FitRow): string =>
  isSupposed && kept === 0 ? `${name}, no grip kept` : name;

/** "fits: assembly, cold; fails, grip lost: cold again" */
function byVerdict(rows: readonly FitRow[]): string {
  const states = new Map<string, Set<string>>();
  for (const row of rows) {
    const verdict = fitVerdict(row);
    states.set(verdict, (states.get(verdict) ?? new Set()).add(nameOf(row)));
  }
  return [...states].map(([verdict, names]) => `${verdict}: ${[...names].join("; ")}`).join(". ");
}
