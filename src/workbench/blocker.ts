import { addressOf, areaText } from "../port/address";
import type { Corner } from "../port/sheet";
import type { GridPort } from "./grid/port";

/** Why an answer cannot spill: the first cell in its way, or the end of the sheet. */
export function blockerText(port: GridPort, at: Corner): string {
  const wanted = port.spillOf(at);
  if (!wanted) return "The answer needs empty cells below or beside: clear them.";
  const { sheet, row, col, rows, cols } = wanted;
  const area = areaText(wanted);
  for (const [r, line] of port.read({ sheet, row, col, rows, cols }).entries())
    for (const [c, cell] of line.entries()) {
      const isOther = r > 0 || c > 0;
      const isOwn = cell.spilledFrom === undefined || cell.spilledFrom.row !== row || cell.spilledFrom.col !== col;
      if (isOther && isOwn && (cell.value !== null || cell.formula !== undefined))
        return `The answer needs ${area}, and ${addressOf(row + r, col + c)} holds ${cell.text || cell.formula}: clear it, or move it.`;
    }
  return `The answer needs ${area}, beyond the end of the sheet: insert rows or columns.`;
}
