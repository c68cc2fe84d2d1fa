import { CellValueType } from "@univerjs/presets";
import type { FUniver, ICellData, IRange, Nullable } from "@univerjs/presets";
import { ErrorType, FormulaDataModel } from "@univerjs/preset-sheets-core";
import type { ErrorNote } from "../adapter/values";
import type { Place, ReadCell, SheetPort } from "../port";

const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/** The port of the local sheet. */
export function gridPort(api: FUniver): SheetPort {
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

  return {
    selection() {
      const sheet = book().getActiveSheet();
      const range = sheet.getSelection()?.getActiveRange();
      if (!range) return undefined;
      const { startRow: row, startColumn: col } = range.getRange();
      return { sheet: sheet.getSheetName(), row, col, rows: range.getHeight(), cols: range.getWidth() };
    },
    read(place) {
      const sheet = sheetNamed(place.sheet);
      const spills = spillsOf(api, sheet.getSheetId());
      return grid(place, (row, col) => {
        const raw = sheet.getSheet().getCellRaw(row, col);
        const range = spills.ranges.find((r) => contains(r, row, col));
        const head = range && sheet.getSheet().getCellRaw(range.startRow, range.startColumn);
        return readCell(
          raw,
          sheet.getRange(row, col).getDisplayValue(),
          spills.cell(row, col),
          range && head?.f ? { row: range.startRow, col: range.startColumn, formula: head.f } : undefined,
          row,
          col,
        );
      });
    },
    write({ sheet, row, col }, block) {
      block.forEach((line, r) =>
        line.forEach((value, c) => {
          const cell = sheetNamed(sheet).getRange(row + r, col + c);
          if (value === null) cell.clearContent();
          else cell.setValue(contentOf(value));
        }),
      );
    },
    watch(changed) {
      const ends = [
        api.addEvent(api.Event.SelectionChanged, changed),
        api.addEvent(api.Event.ActiveSheetChanged, changed),
        api.getFormula().calculationResultApplied(changed),
      ];
      return () => ends.forEach((end) => end.dispose());
    },
  };
}

function contentOf(value: string | number): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, f: null };
  return value.startsWith("=") ? { f: value } : { v: value, t: CellValueType.STRING, f: null };
}

function grid<T>({ row, col, rows, cols }: Place, at: (row: number, col: number) => T): T[][] {
  return Array.from({ length: rows }, (_, r) => Array.from({ length: cols }, (_, c) => at(row + r, col + c)));
}

const contains = (range: IRange, row: number, col: number): boolean =>
  row >= range.startRow && row <= range.endRow && col >= range.startColumn && col <= range.endColumn;

/** The grid keeps spilled answers beside its cells. */
function spillsOf(api: FUniver, sheetId: string) {
  const workbook = api.getActiveWorkbook();
  const model = workbook?.getActiveSheet().getInject().get(FormulaDataModel);
  const unit = workbook?.getId() ?? "";
  const ranges = Object.values(model?.getArrayFormulaRange()[unit]?.[sheetId] ?? {}).flatMap((row) =>
    Object.values((row ?? {}) as Record<number, IRange>),
  );
  const cells = model?.getArrayFormulaCellData()[unit]?.[sheetId];
  return { ranges, cell: (row: number, col: number) => cells?.[row]?.[col] as ICellData | undefined };
}

function readCell(
  raw: Nullable<ICellData>,
  text: string,
  spilled: ICellData | undefined,
  from: { row: number; col: number; formula: string } | undefined,
  row: number,
  col: number,
): ReadCell {
  // the shown cell's value is already its formatted text where there is a number format
  const held = spilled ?? raw;
  const value = held?.v ?? null;
  const note = (held?.custom as { note?: ErrorNote } | undefined)?.note;
  const isError = errorCodes.has(value);
  const inSpill = from && (from.row !== row || from.col !== col);
  return {
    value: held?.t === CellValueType.BOOLEAN ? Boolean(value) : value,
    text,
    ...(raw?.f && !inSpill && { formula: raw.f }),
    ...(inSpill && { spilledFrom: from }),
    ...(isError && {
      error: { code: String(value), message: note?.code === value ? note?.message || undefined : undefined },
    }),
  };
}
