import { fitRows, fitVerdict } from "../../core/duties";
import type { FitRow, NamedDuty } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Grade } from "../../core/grades/model";

export interface FitRead {
  /** Why there are no rows. */
  readonly fault?: string;
  readonly rows?: readonly FitRow[];
}

/** The states of FITTABLE. */
export function readFit(duty: NamedDuty, grade: Grade): FitRead {
  try {
    return { rows: fitRows(duty, grade) };
  } catch (error) {
    if (error instanceof BushError) return { fault: error.message };
    throw error;
  }
}

/** "cold again, no grip kept" */
export const nameOf = ({ name, isSupposed }: FitRow): string => (isSupposed ? `${name}, no grip kept` : name);

/** "fits: assembly, cold; fails, grip lost: cold again" */
export function byVerdict(rows: readonly FitRow[]): string {
  const states = new Map<string, Set<string>>();
  for (const row of rows) {
    const verdict = fitVerdict(row);
    states.set(verdict, (states.get(verdict) ?? new Set()).add(nameOf(row)));
  }
  return [...states].map(([verdict, names]) => `${verdict}: ${[...names].join("; ")}`).join(". ");
}
