import { BushError, orFault } from "../../core/errors";
import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import type { EntryList } from "../../core/table/entry";
import type { Reading } from "../../core/table/readTable";

/** What is wrong in a row that was read, counted in the cells. */
export interface CellFault {
  readonly row: number;
  readonly message: string;
}

export interface Judged {
  /** How many grades, or offers, the cells hold. */
  readonly count: number;
  readonly faults: readonly CellFault[];
}

/** What is particular to lists of one sort. */
export interface Sort {
  readonly kind: "grades" | "offers";
  /** One of them. */
  readonly one: string;
  /** The sheet that they are written to. */
  readonly sheet: string;
  readonly reading: Omit<Reading<EntryList>, "system" | "name">;
  /** Fields that a column may be given. */
  readonly keys: readonly string[];
  /** Words that lists use for a field and that may mean another thing too: a guess, the cautious one. */
  readonly words: Readonly<Partial<Record<string, readonly string[]>>>;
  /** Fields without which nothing is read, and what to say. */
  readonly needs: Readonly<Record<string, string>>;
  /** The field, or the heading, that says whose a row is. */
  readonly owner: string;
  /** Whether rows with a fault are left out. */
  readonly dropsFaulty: boolean;
  takesUnit(key: string): boolean;
  /** The heading that the functions read, its unit that of the sheet where the column names none. */
  headingOf(key: string, unit: string, system: System): string;
  /** Throws what is wrong with a unit; left out where the field does not need one. */
  checkUnit(key: string, unit: string): void;
  /** A value as it was understood. */
  told(key: string, value: unknown, system: System): string;
  judge(cells: Cell[][], system: System): Judged;
}

/** What is wrong, where the core says so; other errors go on. */
export function faultOf(run: () => unknown): string | undefined {
  const made = orFault(run);
  return made instanceof BushError ? made.message : undefined;
}
