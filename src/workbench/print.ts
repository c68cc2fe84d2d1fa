import { element, html } from "../book/record/html";
import { recordBody, recordStyle } from "../book/record/record";
import type { ReadCell } from "../port/sheet";
import { addressOf } from "../port/address";
import type { GridPort } from "./grid/port";

const most = { rows: 1000, cols: 60 };

/**
 * The grid is a canvas that prints empty. What goes on paper instead: the record where the selected cell belongs to an
 * answer of DUTYSHEET, else the cells of the sheet that is shown.
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
  const start = cell?.spilledFrom ?? { ...at, formula: cell?.formula ?? "" };
  if (/^=\s*BUSH\.DUTYSHEET\(/i.test(start.formula)) {
    const place = port.spillOf({ sheet: at.sheet, row: start.row, col: start.col });
    if (place) return element("div", recordBody(port.read(place).map((line) => line.map(valueOf))), "record");
  }
  return sheetBody(at.sheet, port.read({ sheet: at.sheet, row: 0, col: 0, ...most }));
}

const valueOf = ({ value }: ReadCell): string | number => (typeof value === "number" ? value : String(value ?? ""));

/** The filled part of a sheet as a table, with its addresses. */
function sheetBody(name: string, cells: readonly (readonly ReadCell[])[]): string {
  const isFilled = ({ text }: ReadCell): boolean => text !== "";
  const width = Math.max(0, ...cells.map((line) => line.findLastIndex(isFilled) + 1));
  const cols = Array.from({ length: width }, (_, c) => c).filter((c) => cells.some((line) => isFilled(line[c]!)));
  const rows = cells.flatMap((line, r) => {
    const filled = cols.filter((c) => isFilled(line[c]!));
    if (filled.length === 0) return [];
    const number = element("td", String(r + 1));
    // a sentence has the line to itself
    if (filled.length === 1)
      return [element("tr", `${number}<td colspan="${cols.length}">${html(line[filled[0]!]!.text)}</td>`)];
    return [element("tr", number + cols.map((c) => element("td", html(line[c]!.text))).join(""))];
  });
  const headings = cols.map((c) => element("th", addressOf(0, c).replace(/\d+$/, ""))).join("");
  const body = element("thead", element("tr", `<th></th>${headings}`)) + element("tbody", rows.join(""));
  return element("div", element("h1", html(name)) + element("table", body), "record");
}
