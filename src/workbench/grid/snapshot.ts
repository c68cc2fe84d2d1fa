import { BooleanNumber, CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { areaOf } from "../../port/address";
import type { Book, BookCell, BookSheet, Look } from "../../book/book";
import { looks } from "../../book/looks";
import { gridStyle } from "./styles";

const rowHeight = 24;
const spare = { rows: 40, columns: 6 };
const least = { rows: 60, columns: 18 };

/** Column widths of the description count characters. */
export const pixels = (characters: number): number => Math.round(characters * 7.2 + 10);

export function gridRange(address: string): IRange {
  const { row, col, rows, cols } = areaOf(address);
  return { startRow: row, endRow: row + rows - 1, startColumn: col, endColumn: col + cols - 1 };
}

/** The book as the grid's own workbook record. */
export function snapshotOf(book: Book): Partial<IWorkbookData> {
  const styles: Record<string, IStyleData> = {};
  const styleId = (look: Look | undefined, format?: string): string => {
    const id = `${look ?? "plain"} ${format ?? ""}`;
    styles[id] ??= gridStyle(look ? looks[look] : {}, format);
    return id;
  };
  const sheets = book.sheets.map((sheet) => sheetOf(sheet, styleId));
  return {
    id: "bushcell",
    name: book.name,
    locale: LocaleType.EN_US,
    styles,
    defaultStyle: gridStyle({}),
    sheetOrder: book.sheets.map((sheet) => sheet.name),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
  };
}

type StyleOf = (look: Look | undefined, format?: string) => string | IStyleData;
interface SheetRecord extends Partial<IWorksheetData> {
  readonly id: string;
  readonly name: string;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** A sheet to be added to a workbook, with its styles in its cells. */
export const recordOf = (sheet: BookSheet): SheetRecord =>
  sheetOf(sheet, (look, format) => gridStyle(look ? looks[look] : {}, format));

function sheetOf(sheet: BookSheet, styleOf: StyleOf): SheetRecord {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const cellAt = (row: number, col: number): ICellData => ((cellData[row] ??= {})[col] ??= {});
  for (const { range, look, format } of sheet.areas ?? []) {
    const { row, col, rows, cols } = areaOf(range);
    for (let r = row; r < row + rows; r++)
      for (let c = col; c < col + cols; c++) cellAt(r, c).s = styleOf(look, format);
  }
  for (const [address, cell] of Object.entries(sheet.cells)) {
    const { row, col } = areaOf(address);
    Object.assign(cellAt(row, col), contentOf(cell), cell.look && { s: styleOf(cell.look, cell.format) });
  }
  const rows = Object.keys(cellData).map(Number);
  const { frozen } = sheet;
  return {
    id: sheet.name,
    name: sheet.name,
    cellData,
    rowCount: Math.max(least.rows, ...rows.map((row) => row + spare.rows)),
    columnCount: Math.max(least.columns, sheet.widths.length + spare.columns),
    defaultRowHeight: rowHeight,
    defaultStyle: gridStyle({}),
    columnData: Object.fromEntries(sheet.widths.map((width, i) => [i, { w: pixels(width) }])),
    rowData: Object.fromEntries(
      Object.entries(sheet.heights ?? {}).map(([row, lines]) => [
        Number(row) - 1,
        { h: 8 + lines * 17, ia: BooleanNumber.FALSE },
      ]),
    ),
    mergeData: (sheet.merged ?? []).map(gridRange),
    showGridlines: sheet.plain ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    ...(frozen && {
      freeze: { xSplit: frozen.columns, ySplit: frozen.rows, startRow: frozen.rows, startColumn: frozen.columns },
    }),
  };
}

/** Text is marked as text, so that the grid does not read "3E5" as a number. */
function contentOf({ value, formula }: BookCell): ICellData {
  if (formula !== undefined) return { f: formula };
  if (value === undefined) return {};
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}
