import { element } from "../book/record/html";
import { decisionBody } from "../book/record/decision";
import { recordStyle } from "../book/record/page";
import type { RecordLine } from "../book/record/page";
import { recordBody } from "../book/record/record";
import type { ReadCell } from "../port/sheet";
import type { GridPort } from "./grid/port";
import { picturesBody, sheetBody } from "./sheetBody";

const most = { rows: 1000, cols: 60 };

/**
 * The grid is a canvas that prints empty. What goes on paper instead: the record, or the decision, where the selected cell
 * belongs to an answer of DUTYSHEET or DECISION, else the cells of the sheet that is shown.
 */
export function printInstead(port: GridPort): void {
  const page = document.createElement("section");
  page.className = "paper";
  const style = document.createElement("style");
  style.textContent = recordStyle;
  document.head.append(style);
  document.body.append(page);
  addEventListener("beforeprint", () => {
    page.innerHTML = paperOf(port);
  });
  addEventListener("afterprint", () => page.replaceChildren());
}

function paperOf(port: GridPort): string {
  const at = port.selection();
  const [[cell] = []] = port.read({ ...at, rows: 1, cols: 1 });
  const { formula, ...start } = cell?.spilledFrom ?? { row: at.row, col: at.col, formula: cell?.formula ?? "" };
  const answer = (corner: { row: number; col: number }): RecordLine[] | undefined => {
    const place = port.spillOf({ sheet: at.sheet, ...corner });
    return place && port.read(place).map((line) => line.map(valueOf));
  };
  const cells = port.read({ sheet: at.sheet, row: 0, col: 0, ...most });
  const [, name] = /^=\s*BUSH\.(DUTYSHEET|DECISION)\(/i.exec(formula) ?? [];
  const lines = name && answer(start);
  if (!lines) {
    const body = sheetBody(at.sheet, cells, port.frozen(at.sheet), (row) => port.isShown(at.sheet, row));
    return body + picturesBody(port.pictures(at.sheet));
  }
  if (name.toUpperCase() === "DUTYSHEET") return element("div", recordBody(lines), "record");
  const ranking = cornerOf(cells, formula.replace(/DECISION/i, "QUOTES"));
  return element("div", decisionBody(lines, ranking && answer(ranking)), "record");
}

/** The cell that holds a formula. */
function cornerOf(cells: readonly (readonly ReadCell[])[], wanted: string): { row: number; col: number } | undefined {
  for (const [row, line] of cells.entries()) {
    const col = line.findIndex(({ formula }) => formula === wanted);
    if (col >= 0) return { row, col };
  }
  return undefined;
}

const valueOf = ({ value }: ReadCell): string | number => (typeof value === "number" ? value : String(value ?? ""));
