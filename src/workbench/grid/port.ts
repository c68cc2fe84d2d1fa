import type { ICellData, IRange, Nullable } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  FormulaDataModel,
  ILayoutService,
  ScrollToCellOperation,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import { areaOf, referenceTo } from "../../port/address";
import { freeName, tableNameOf } from "../../port/names";
import { coveredBy } from "../../port/sheet";
import type { Corner, NamedTable, Place, ReadCell, SheetPort } from "../../port/sheet";
import type { BookSheet } from "../../book/book";
import { contentOf, gridContent } from "./cells";
import type { GridPictures } from "./pictures/pictures";
import { pixels, recordOf } from "./snapshot";
import { gridStyle } from "./styles";

/** What a sheet has that a user adds: room for the widest table that spills. */
export const newSheet = { rows: 200, columns: 52 } as const;
/** Rows below a block on a sheet of its own: the longest record of a duty spills into them. */
const roomBelow = 400;

/** A picture where it lies. */
export interface LaidPicture {
  readonly place: Place;
  /** The address that carries all of it. */
  readonly source: string;
  /** Pixels. */
  readonly width: number;
  readonly name: string;
  readonly words: string;
}

/** The port of the local sheet; it answers at once. */
export interface GridPort extends SheetPort {
  selection(): Place;
  read(place: Place): ReadCell[][];
  spillOf(at: Corner): Place | undefined;
  tables(): readonly NamedTable[];
  /** Rows and columns of a sheet that stay in view. */
  frozen(sheet: string): { readonly rows: number; readonly columns: number };
  hasSheet(name: string): boolean;
  /** Whether neither a filter nor a hand hides a row. */
  isShown(sheet: string, row: number): boolean;
  /** The pictures on a sheet, the lowest of those that lie over each other first. */
  pictures(sheet: string): readonly LaidPicture[];
  /** Adds worksheets as they are described, shows the first of them, and gives it the keyboard. */
  addSheets(sheets: readonly BookSheet[]): void;
}

export function gridPort(api: FUniver, pictures: GridPictures): GridPort {
  const book = () => {
    const workbook = api.getActiveWorkbook();
    if (!workbook) throw new Error("no workbook is open");
    return workbook;
  };
  const sheetNamed = (name: string) => {
    const sheet = book().getSheetByName(name);
    if (!sheet) throw new Error(`no sheet ${name}`);
    return sheet;
  };
  const rangeOf = ({ sheet, row, col, rows, cols }: Place) => sheetNamed(sheet).getRange(row, col, rows, cols);
  const spills = (sheet: string) => spillsOf(api, book().getId(), sheetNamed(sheet).getSheetId());

  const makeRoom = (sheet: string, rows: number, cols: number): void => {
    const grid = sheetNamed(sheet);
    if (grid.getMaxRows() < rows) grid.setRowCount(rows);
    if (grid.getMaxColumns() < cols) grid.setColumnCount(cols);
  };

  /** Of formulas that were filled down only the first stands in its cell. */
  const formulaOf = (sheet: string, row: number, col: number, cell: Nullable<ICellData>): { formula?: string } => {
    if (!cell?.f && !cell?.si) return {};
    const model = sheetNamed(sheet).getInject().get(FormulaDataModel);
    const formula = cell.f ?? model.getFormulaStringByCell(row, col, sheetNamed(sheet).getSheetId(), book().getId());
    return formula ? { formula } : {};
  };

  const port: GridPort = {
    selection() {
      const sheet = book().getActiveSheet();
      // a sheet shown for the first time has its first cell selected, but says so only later
      const range = sheet.getSelection()?.getActiveRange() ?? sheet.getRange(0, 0);
      return placeOf(sheet.getSheetName(), range.getRange());
    },
    read(place) {
      const { sheet } = place;
      const spilled = spills(sheet);
      const cells = sheetNamed(sheet).getSheet();
      const used = Math.max(cells.getLastRowWithContent(), ...spilled.ranges.map((r) => r.endRow)) + 1;
      const rows = Math.max(1, Math.min(place.rows, used - place.row));
      return mapCells({ ...place, rows }, (row, col) => {
        const own = cells.getCellRaw(row, col);
        const shown = () => sheetNamed(sheet).getRange(row, col).getDisplayValue();
        const from = spilled.ranges.find((r) => contains(r, row, col));
        const typed = formulaOf(sheet, row, col, own);
        const isAnchor = from?.startRow === row && from.startColumn === col;
        if (!from || isAnchor) return { ...contentOf(spilled.cell(row, col) ?? own, shown), ...typed };
        // what was typed where an answer would spill is the cell's own
        if (typed.formula !== undefined || (own?.v ?? null) !== null) return { ...contentOf(own, shown), ...typed };
        const { startRow, startColumn } = from;
        const first = formulaOf(sheet, startRow, startColumn, cells.getCellRaw(startRow, startColumn));
        return {
          ...contentOf(spilled.cell(row, col), shown),
          spilledFrom: { row: startRow, col: startColumn, formula: first.formula ?? "" },
        };
      });
    },
    write({ sheet, row, col }, block) {
      const cols = block.reduce((most, line) => Math.max(most, line.length), 0);
      if (cols === 0) return;
      const cells = block.map((line) => Array.from({ length: cols }, (_, c) => gridContent(line[c] ?? null)));
      makeRoom(sheet, row + block.length, col + cols);
      rangeOf({ sheet, row, col, rows: block.length, cols }).setValues(cells);
    },
    widen({ sheet, col }, characters) {
      const grid = sheetNamed(sheet);
      if (grid.getMaxColumns() < col + characters.length) grid.setColumnCount(col + characters.length);
      characters.forEach((count, i) => {
        const width = pixels(count);
        if (grid.getColumnWidth(col + i) < width) grid.setColumnWidth(col + i, width);
      });
    },
    spillOf({ sheet, row, col }) {
      const range = spills(sheet).ranges.find((r) => r.startRow === row && r.startColumn === col);
      return range && placeOf(sheet, range);
    },
    tables: () =>
      book()
        .getDefinedNames()
        .flatMap((defined) => {
          const place = placeIn(defined.getFormulaOrRefString());
          return place ? [{ name: defined.getName(), place, reference: defined.getName() }] : [];
        }),
    async addTable(name, block) {
      const sheet = freeName(name, port.hasSheet);
      // the grid refuses a name that is a sheet's as well
      const table = freeName(
        tableNameOf(name),
        (n) => n === sheet || book().getDefinedName(n) !== null || port.hasSheet(n),
      );
      const cols = block.reduce((most, line) => Math.max(most, line.length), 1);
      const own = { sheet: { defaultStyle: gridStyle({}) } };
      book().create(sheet, block.length + roomBelow, Math.max(cols + 4, newSheet.columns), own);
      const place = { sheet, row: 0, col: 0, rows: block.length, cols };
      await port.write(place, block);
      book().insertDefinedName(table, referenceTo(place));
      return { name: table, place, reference: table };
    },
    async addPicture(at, picture) {
      const { rows, cols } = coveredBy(picture);
      // else the grid would move it back over the cells; of one more the next one can be laid below
      makeRoom(at.sheet, at.row + rows + 1, at.col + cols);
      await pictures.add(at, picture);
    },
    pictures: (sheet) =>
      pictures
        .on(sheetNamed(sheet).getSheetId())
        .map(({ sheetTransform, source, transform, name = "", words = "" }) => {
          const { from, to } = sheetTransform;
          const range = { startRow: from.row, endRow: to.row, startColumn: from.column, endColumn: to.column };
          return { place: placeOf(sheet, range), source, width: transform?.width ?? 0, name, words };
        }),
    frozen(sheet) {
      const { xSplit, ySplit } = sheetNamed(sheet).getFreeze();
      return { rows: ySplit, columns: xSplit };
    },
    hasSheet: (name) => book().getSheetByName(name) !== null,
    isShown: (sheet, row) => sheetNamed(sheet).getSheet().getRowVisible(row),
    addSheets(sheets) {
      for (const sheet of sheets.map(recordOf)) book().create(sheet.name, sheet.rowCount, sheet.columnCount, { sheet });
      const [first] = sheets;
      if (first) void port.select({ sheet: first.name, row: 0, col: 0, rows: 1, cols: 1 });
      book().getActiveSheet().getInject().get(ILayoutService).focus();
    },
    select(place) {
      book().setActiveSheet(sheetNamed(place.sheet));
      const range = rangeOf(place);
      range.activate();
      // scrolls where it is out of view, once the grid is drawn
      api.syncExecuteCommand(ScrollToCellOperation.id, { unitId: book().getId(), range: range.getRange() });
    },
    watch(changed) {
      // not the grid's own event of this name: it is silent until some seconds after opening
      const selections = book().getActiveSheet().getInject().get(SheetsSelectionsService);
      const selecting = selections.selectionChanged$.subscribe(changed);
      const ends = [
        api.addEvent(api.Event.ActiveSheetChanged, changed),
        api.getFormula().calculationResultApplied(changed),
      ];
      return () => {
        selecting.unsubscribe();
        ends.forEach((end) => end.dispose());
      };
    },
  };
  return port;
}

function placeIn(reference: string): Place | undefined {
  const found = /^=?(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/.exec(reference);
  if (!found) return undefined;
  const [, quoted, bare = "", range = ""] = found;
  return { sheet: quoted?.replaceAll("''", "'") ?? bare, ...areaOf(range) };
}

const placeOf = (sheet: string, range: IRange): Place => ({
  sheet,
  row: range.startRow,
  col: range.startColumn,
  rows: range.endRow - range.startRow + 1,
  cols: range.endColumn - range.startColumn + 1,
});

const mapCells = <T>({ row, col, rows, cols }: Place, at: (row: number, col: number) => T): T[][] =>
  Array.from({ length: rows }, (_, r) => Array.from({ length: cols }, (_, c) => at(row + r, col + c)));

const contains = (range: IRange, row: number, col: number): boolean =>
  row >= range.startRow && row <= range.endRow && col >= range.startColumn && col <= range.endColumn;

/** The grid keeps spilled answers beside its cells. */
function spillsOf(api: FUniver, unit: string, sheetId: string) {
  const model = api.getActiveWorkbook()?.getActiveSheet().getInject().get(FormulaDataModel);
  const byRow = Object.values(model?.getArrayFormulaRange()[unit]?.[sheetId] ?? {});
  const ranges = byRow.flatMap((row) => Object.values((row ?? {}) as Record<number, IRange>));
  const cells = model?.getArrayFormulaCellData()[unit]?.[sheetId];
  return {
    ranges,
    cell: (row: number, col: number): Nullable<ICellData> => cells?.[row]?.[col],
  };
}
