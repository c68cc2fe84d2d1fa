import { referencesIn } from "../port/references";
import type { Corner, ReadCell } from "../port/sheet";
import type { GridPort } from "./grid/port";

/** The cell in which an error arose, and what it says. */
export interface Cause extends Corner {
  readonly message: string;
}

const farthest = 12;

/**
 * Follows an error without a message of its own back through the cells that its formulas use, to the one that made it.
 * In a spilled answer, the cell at the same place of a range is the one that counts.
 */
export function causeOf(port: GridPort, at: Corner, cell: ReadCell, steps = farthest): Cause | undefined {
  if (!cell.error || cell.error.message || steps === 0) return undefined;
  const from = cell.spilledFrom;
  const formula = cell.formula ?? from?.formula;
  if (!formula) return undefined;
  const down = at.row - (from?.row ?? at.row);
  const right = at.col - (from?.col ?? at.col);
  for (const { sheet, row, col, rows, cols } of referencesIn(formula, at.sheet)) {
    const used = { sheet, row: row + (rows > 1 ? down : 0), col: col + (cols > 1 ? right : 0) };
    const found = port.read({ ...used, rows: 1, cols: 1 })[0]?.[0];
    if (found?.error?.code !== cell.error.code) continue;
    if (found.error.message) return { ...used, message: found.error.message };
    const cause = causeOf(port, used, found, steps - 1);
    if (cause) return cause;
  }
  return undefined;
}
