import type { ICellData, Nullable } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { SetFormulaCalculationResultMutation } from "@univerjs/preset-sheets-core";
import type { ISetFormulaCalculationResultMutation } from "@univerjs/preset-sheets-core";

/** What the grid keeps with an error cell, so that its message is at hand wherever the cell lies in a spill. */
export interface ErrorNote {
  readonly code: string;
  readonly message: string;
}

export const noteOf = (cell: Nullable<ICellData>): ErrorNote | undefined =>
  (cell?.custom as { note?: ErrorNote } | null | undefined)?.note;

/** The grid leaves a cell's note in place when a new result comes without one; a message must not outlive its error. */
export function forgetOldNotes(api: FUniver): void {
  api.onCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const { unitData } = params as ISetFormulaCalculationResultMutation;
    const workbook = api.getActiveWorkbook();
    for (const [sheetId, rows] of Object.entries(unitData[workbook?.getId() ?? ""] ?? {})) {
      const sheet = workbook?.getSheetBySheetId(sheetId)?.getSheet();
      for (const [row, cells] of Object.entries(rows ?? {}))
        for (const [col, result] of Object.entries((cells ?? {}) as Record<number, ICellData | null>)) {
          const cell = sheet?.getCellRaw(Number(row), Number(col));
          if (noteOf(cell) && !noteOf(result)) delete cell?.custom;
        }
    }
  });
}
