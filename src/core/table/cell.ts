import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { BushError, checkLength, isMissing, mustBe } from "../errors";
import type { Cell } from "../formula";
import type { System } from "../kinds";
import { readQuantity } from "../units/quantity";
import { toWorking } from "../units/scale";

/** The number in a table's cell as a working value; `name` says where the cell stands. A cell's own error passes through. */
export function readCell(name: string, bounds: Bounds, cell: Cell | undefined, system: System): number {
  if (cell instanceof BushError) throw cell;
  if (cell === null || cell === undefined) throw isMissing(name);
  if (typeof cell === "boolean") throw mustBe(name, "a number", cell);
  if (typeof cell === "string") checkLength(name, cell);
  const { kind } = bounds;
  const value = typeof cell === "string" ? readQuantity(name, kind, cell, system) : toWorking(kind, cell, system);
  checkDomain(name, bounds, value, system, cell);
  return value;
}

/** A row of blanks; some hosts hand blank cells over as 0, and no row of zeros means anything. */
export const isSpareRow = (row: readonly Cell[]): boolean => row.every((cell) => cell === null || cell === 0);
