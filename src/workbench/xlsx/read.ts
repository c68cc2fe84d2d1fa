import { BooleanNumber, CellValueType, LocaleType } from "@univerjs/core";
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { readXlsx } from "hucre/xlsx";
import type { Cell, CellStyle, CellValue, ConditionalRule, DataValidation, Sheet, Workbook } from "hucre/xlsx";
import { typedFormula } from "../../book/storedFormula";
import { areaOf } from "../../port/address";
import { picturesResource } from "../grid/pictures/keptPictures";
import { picturesFrom, picturesLeft } from "./pictures";
import { rangeArea, resourceNames } from "./rules";
import type { KeptMark, KeptName, KeptPick } from "./rules";
import { fromFileStyle } from "./styles";
import { leftOut } from "./left";
import { checkCells, widest } from "./size";
import { tornParts } from "./torn";

export interface ReadFile {
  readonly record: IWorkbookData;
  /** What the file holds and the sheet cannot. */
  readonly left: readonly string[];
  /** What should be known about how it was read. */
  readonly remarks: readonly string[];
}

export const least = { rows: 200, columns: 52 };

/** An .xlsx file as a record of the grid. */
export async function readFile(name: string, data: Uint8Array): Promise<ReadFile> {
  const book = await readXlsx(data, { readStyles: true }).catch((error: unknown) => {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(
      `${name} cannot be read: it is damaged, no .xlsx file, or has more cells than can be held (${why})`,
    );
  });
  const torn = tornParts(data);
  if (torn.length > 0) throw new Error(`${name} is damaged: ${torn.join(", ")} ends too early`);
  if (book.sheets.length === 0) throw new Error(`${name} holds no worksheet`);
  checkCells(
    name,
    book.sheets.flatMap(({ rows }) => rows),
  );
  const record = recordOf(name, book);
  const pictures = picturesFrom(data, book, record);
  record.resources?.push({ name: picturesResource, data: JSON.stringify(pictures) });
  return { record, left: leftOut(data, book, picturesLeft(data, pictures)), remarks: [] };
}

function recordOf(name: string, book: Workbook): IWorkbookData {
  const styles: Record<string, IStyleData> = {};
  const ids = new Map<string, string>();
  const styleId = (cell: Cell): string | undefined => {
    if (!cell.style) return undefined;
    const text = JSON.stringify(cell.style);
    const id = ids.get(text) ?? `s${ids.size}`;
    ids.set(text, id);
    styles[id] ??= fromFileStyle(cell.style);
    return id;
  };
  // the grid looks for it on each sheet
  const defaultStyle = book.defaultFont && fromFileStyle({ font: book.defaultFont });
  const sheets = book.sheets.map((sheet, i) => [`sheet${i + 1}`, sheet] as const);
  const named: KeptName[] = (book.namedRanges ?? [])
    .filter(({ name: own }) => !own.startsWith("_xlnm."))
    .map(({ name: own, range }, i) => ({ id: `name${i}`, name: own, formulaOrRefString: range }));
  return {
    id: "bushcell",
    name: name.replace(/\.xlsx$/i, ""),
    appVersion: "",
    locale: LocaleType.EN_US,
    styles,
    ...(defaultStyle && { defaultStyle }),
    sheetOrder: sheets.map(([id]) => id),
    sheets: Object.fromEntries(
      sheets.map(([id, sheet]) => [id, { ...sheetOf(id, sheet, styleId), ...(defaultStyle && { defaultStyle }) }]),
    ),
    resources: [
      { name: resourceNames.names, data: JSON.stringify(Object.fromEntries(named.map((one) => [one.id, one]))) },
      { name: resourceNames.marks, data: JSON.stringify(bySheet(sheets, marksOf)) },
      { name: resourceNames.picks, data: JSON.stringify(bySheet(sheets, picksOf)) },
    ],
  };
}

const bySheet = <T>(sheets: readonly (readonly [string, Sheet])[], of: (sheet: Sheet) => T[]): Record<string, T[]> =>
  Object.fromEntries(sheets.map(([id, sheet]) => [id, of(sheet)]));

function sheetOf(id: string, sheet: Sheet, styleId: (cell: Cell) => string | undefined): Partial<IWorksheetData> {
  const rowCount = Math.max(least.rows, sheet.rows.length + 40);
  const columnCount = Math.max(least.columns, widest(sheet.rows) + 6);
  const { rows: ySplit = 0, columns: xSplit = 0 } = sheet.freezePane ?? {};
  return {
    id,
    name: sheet.name,
    cellData: cellsIn(sheet, styleId),
    rowCount,
    columnCount,
    defaultRowHeight: 24,
    columnData: columnsIn(sheet),
    rowData: rowsIn(sheet),
    mergeData: (sheet.merges ?? []).map(({ startRow, endRow, startCol, endCol }) => ({
      startRow,
      endRow,
      startColumn: startCol,
      endColumn: endCol,
    })),
    showGridlines: sheet.view?.showGridLines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    hidden: sheet.hidden || sheet.veryHidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    freeze: { xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 },
  };
}

function cellsIn(sheet: Sheet, styleId: (cell: Cell) => string | undefined): Record<number, Record<number, ICellData>> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, col: number, cell: ICellData): void => {
    (cellData[row] ??= {})[col] = { ...cellData[row][col], ...cell };
  };
  const spilled = spilledCells(sheet);
  sheet.rows.forEach((line, row) =>
    line.forEach((value, col) => {
      if (value !== null && !spilled.has(`${row},${col}`)) put(row, col, contentOf(value));
    }),
  );
  for (const [key, cell] of sheet.cells ?? []) {
    const [row = 0, col = 0] = key.split(",").map(Number);
    const s = styleId(cell);
    if (s) put(row, col, { s });
    if (cell.formula) put(row, col, { f: typedFormula(cell.formula), v: null, t: null });
  }
  return cellData;
}

const columnsIn = ({ columns = [] }: Sheet) =>
  Object.fromEntries(
    columns.map(({ width, hidden }, col) => [
      col,
      { ...(width !== undefined && { w: Math.round(width * 7 + 5) }), ...(hidden && { hd: BooleanNumber.TRUE }) },
    ]),
  );

const rowsIn = ({ rowDefs = new Map() }: Sheet) =>
  Object.fromEntries(
    [...rowDefs].map(([row, { height, hidden }]) => [
      row,
      {
        ...(height !== undefined && { h: height / 0.75, ia: BooleanNumber.FALSE }),
        ...(hidden && { hd: BooleanNumber.TRUE }),
      },
    ]),
  );

/** Cells below and beside an array formula hold its answer, which the grid spills anew. */
function spilledCells(sheet: Sheet): Set<string> {
  const found = new Set<string>();
  for (const [key, { formulaRef, formulaType }] of sheet.cells ?? []) {
    if (formulaType !== "array" || !formulaRef) continue;
    const { row, col, rows, cols } = areaOf(formulaRef);
    for (let r = row; r < row + rows; r++)
      for (let c = col; c < col + cols; c++) if (`${r},${c}` !== key) found.add(`${r},${c}`);
  }
  return found;
}

const msPerDay = 86_400_000;
/** Day 0 of spreadsheets' dates, 1899-12-30. */
const dayZero = Date.UTC(1899, 11, 30);

function contentOf(value: CellValue): ICellData {
  if (value instanceof Date) return { v: (value.getTime() - dayZero) / msPerDay, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}

const marksOf = (sheet: Sheet): KeptMark[] =>
  (sheet.conditionalRules ?? []).filter(isByFormula).map(({ range, formula, style, stopIfTrue = false }, i) => {
    const { cl, bg, bl, it, ul } = fromFileStyle(ruleStyle(style));
    const value = typedFormula(String(formula));
    return {
      cfId: `${sheet.name} ${i}`,
      ranges: range.split(" ").map(rangeArea),
      stopIfTrue,
      rule: { type: "highlightCell", subType: "formula", value, style: { cl, bg, bl, it, ul } },
    };
  });
/** A rule's fill stands in the background colour of its pattern, which need not say that it is solid. */
function ruleStyle({ fill, ...style }: CellStyle = {}): CellStyle {
  const ground = fill?.type === "pattern" ? (fill.bgColor ?? fill.fgColor) : undefined;
  return { ...style, ...(ground && { fill: { type: "pattern", pattern: "solid", fgColor: ground } }) };
}
const isByFormula = ({ type }: ConditionalRule): boolean => type === "expression";

const picksOf = (sheet: Sheet): KeptPick[] =>
  (sheet.dataValidations ?? []).filter(isList).map(({ range, values, formula1 = "", errorMessage }, i) => ({
    uid: `${sheet.name} ${i}`,
    type: "list",
    ranges: range.split(" ").map(rangeArea),
    formula1: values ? JSON.stringify(values) : `=${withSheet(sheet.name, formula1)}`,
    showErrorMessage: true,
    ...(errorMessage && { error: errorMessage }),
  }));
const isList = ({ type }: DataValidation): boolean => type === "list";

/** The grid's lists name the sheet of their range. */
const withSheet = (sheet: string, range: string): string =>
  range.includes("!") || !/^\$?[A-Z]/.test(range) ? range : `'${sheet.replaceAll("'", "''")}'!${range}`;
