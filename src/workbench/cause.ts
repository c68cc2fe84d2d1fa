import { referencesIn } from "../port/references";
import type { CellFault, Corner, ReadCell } from "../port/sheet";
import type { GridPort } from "./grid/port";

/** The cell in which an error arose, and what it says. */
export interface Cause extends Corner, Pick<CellFault, "by"> {
  readonly message: string;
}

const farthest = 12;

/** The cell of each reference that counts for this one. */
function cellsUsed(at: Corner, { formula, spilledFrom }: ReadCell): Corner[] {
  const { row: top, col: left, formula: spilling } = spilledFrom ?? { ...at, formula: undefined };
  return referencesIn(formula ?? spilling ?? "", at.sheet).map(({ sheet, row, col, rows, cols }) => ({
    sheet,
    row: row + (rows > 1 ? at.row - top : 0),
    col: col + (cols > 1 ? at.col - left : 0),
  }));
}

/**
 * Follows an error without a message of its own back through the cells that its formulas use, to the one that made it.
 * In a spilled answer, the cell at the same place of a range is the one that counts.
 */
export function causeOf(port: GridPort, at: Corner, cell: ReadCell, steps = farthest): Cause | undefined {
  if (!cell.error || cell.error.message || steps === 0) return undefined;
  // a sheet may be another file's, or deleted
  for (const used of cellsUsed(at, cell).filter(({ sheet }) => port.hasSheet(sheet))) {
    const found = port.read({ ...used, rows: 1, cols: 1 })[0]?.[0];
    if (found?.error?.code !== cell.error.code) continue;
    const { message, by } = found.error;
    if (message) return { ...used, message, by };
    const cause = causeOf(port, used, found, steps - 1);
    if (cause) return cause;
  }
  return undefined;
}
