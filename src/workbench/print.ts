import { element, escaped } from "../book/record/html";
import { decisionBody } from "../book/record/decision";
import { recordStyle } from "../book/record/page";
import type { RecordLine } from "../book/record/page";
import { recordBody } from "../book/record/record";
import type { ReadCell } from "../port/sheet";
import { addressOf } from "../port/address";
import type { GridPort } from "./grid/port";

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
  if (!lines) return sheetBody(at.sheet, cells);
  if (name.toUpperCase() === "DUTYSHEET") return element("div", recordBody(lines), "record");
  const ranking = cornerOf(cells, formula.replace(/DECISION/i, "QUOTES"));
  return element("div", decisionBody(lines, ranking && answer(ranking)), "record");
}

/** The cell that holds a formula. */
function cornerOf(cells: readonly (readonly ReadCell[])[], wanted: string): { row: number; col: number } | undefined {
  const row = cells.findIndex((line) => line.some(({ formula }) => formula === wanted));
  return row < 0 ? undefined : { row, col: cells[row]!.findIndex(({ formula }) => formula === wanted) };
}

const valueOf = ({ value }: ReadCell): string | number => (typeof value === "number" ? value : String(value ?? ""));

/** So many signs stand side by side on the narrower of A4 and Letter. */
const paperWidth = 112;
/** A column is wide enough for its longest word, and for so many signs where it has a sentence. */
const sentenceWidth = 12;
const gap = 2;

/** The filled part of a sheet with its addresses: as many tables below each other as it needs to lose no column. */
function sheetBody(name: string, cells: readonly (readonly ReadCell[])[]): string {
  const isFilled = ({ text }: ReadCell): boolean => text !== "";
  const width = Math.max(0, ...cells.map((line) => line.findLastIndex(isFilled) + 1));
  const cols = Array.from({ length: width }, (_, c) => c).filter((c) => cells.some((line) => isFilled(line[c]!)));
  const filledOf = (line: readonly ReadCell[]): number[] => cols.filter((c) => isFilled(line[c]!));
  // a sentence has the line to itself, and asks for no wide column
  const tabled = cells.filter((line) => filledOf(line).length > 1);
  const signs = (c: number): number => gap + Math.max(...tabled.map((line) => narrowest(line[c]!.text)));
  const tables = bandsOf(cols, signs).map((band) => {
    const rows = cells.flatMap((line, r) => {
      const number = element("td", String(r + 1));
      const filled = filledOf(line);
      if (filled.length === 1 && band.includes(filled[0]!))
        return [element("tr", `${number}<td colspan="${band.length}">${escaped(line[filled[0]!]!.text)}</td>`)];
      if (!band.some((c) => isFilled(line[c]!))) return [];
      return [element("tr", number + band.map((c) => element("td", escaped(line[c]!.text))).join(""))];
    });
    const headings = band.map((c) => element("th", addressOf(0, c).replace(/\d+$/, ""))).join("");
    return element("table", element("thead", element("tr", `<th></th>${headings}`)) + element("tbody", rows.join("")));
  });
  return element("div", element("h1", escaped(name)) + tables.join(""), "record");
}

const narrowest = (text: string): number =>
  Math.max(Math.min(sentenceWidth, text.length), ...text.split(/\s+/).map((word) => word.length));

/** Columns from left to right, broken where the paper ends. */
function bandsOf(cols: readonly number[], signs: (col: number) => number): number[][] {
  const bands: number[][] = [];
  let used = Infinity;
  for (const col of cols) {
    const wide = signs(col);
    if (used + wide > paperWidth) {
      bands.push([]);
      used = 0;
    }
    bands.at(-1)!.push(col);
    used += wide;
  }
  return bands;
}
