import type { FUniver } from "@univerjs/core/facade";
import { SetWorksheetRowAutoHeightMutation } from "@univerjs/preset-sheets-core";
import type { ISetWorksheetRowAutoHeightMutationParams } from "@univerjs/preset-sheets-core";
import type { Book } from "../../book/book";
import { gridRange } from "./snapshot";

/** The grid fits rows to what is typed, not to what spills: this does it for the ranges that ask for it, outside undo. */
export function fitRows(api: FUniver, book: Book): void {
  const fit = () => {
    const workbook = api.getActiveWorkbook();
    const sheet = workbook?.getActiveSheet();
    const ranges = book.sheets.find(({ name }) => name === sheet?.getSheetName())?.growing?.map(gridRange);
    if (!workbook || !sheet || !ranges) return;
    const rowsAutoHeightInfo = (sheet.getSkeleton()?.calculateAutoHeightInRange(ranges) ?? []).filter(
      ({ row, autoHeight }) => autoHeight !== sheet.getRowHeight(row),
    );
    if (rowsAutoHeightInfo.length === 0) return;
    const params: ISetWorksheetRowAutoHeightMutationParams = {
      unitId: workbook.getId(),
      subUnitId: sheet.getSheetId(),
      rowsAutoHeightInfo,
    };
    api.syncExecuteCommand(SetWorksheetRowAutoHeightMutation.id, params);
  };
  api.getFormula().calculationResultApplied(fit);
  api.addEvent(api.Event.ActiveSheetChanged, fit);
}
