import type { ICellData, Nullable } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { SetFormulaCalculationResultMutation } from "@univerjs/preset-sheets-core";
import type { ISetFormulaCalculationResultMutation } from "@univerjs/preset-sheets-core";

/** What the grid keeps with an error cell, so that its message is at hand wherever the cell lies in a spill. */
export interface ErrorNote {
  readonly code: string;
  readonly message: string;
  readonly by?: string;
}

export const noteOf = (cell: Nullable<ICellData>): ErrorNote | undefined =>
  (cell?.custom as { note?: ErrorNote } | null | undefined)?.note;

/** The grid leaves a cell's note in place when a new result comes without one; a message must not outlive its error. */
export function forgetOldNotes(api: FUniver): void {
  api.onCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const { unitData } = params as ISetFormulaCalculationResultMutation;
    const workbook = api.getActiveWorkbook();
    if (!workbook) return;
    for (const [sheetId, results] of Object.entries(unitData[workbook.getId()] ?? {})) {
      const sheet = workbook.getSheetBySheetId(sheetId)?.getSheet();
      for (const [row, col, result] of cellsOf(results)) {
        const cell = sheet?.getCellRaw(row, col);
        if (cell && noteOf(cell) && !noteOf(result)) delete cell.custom;
      }
    }
  });
}

type Results = Nullable<Record<number, Nullable<Record<number, Nullable<ICellData>>>>>;
const cellsOf = (results: Results): [row: number, col: number, result: Nullable<ICellData>][] =>
  Object.entries(results ?? {}).flatMap(([row, cells]) =>
    Object.entries(cells ?? {}).map(([col, result]): [number, number, Nullable<ICellData>] => [
      Number(row),
      Number(col),
      result,
    ]),
  );
