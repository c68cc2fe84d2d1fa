import type { FUniver } from "@univerjs/core/facade";
import { InsertSheetMutation } from "@univerjs/preset-sheets-core";
import type { IInsertSheetMutationParams } from "@univerjs/preset-sheets-core";

/** A sheet that a person adds has the workbook's font, as a saved file has it; the grid looks for one on the sheet alone. */
export function giveNewSheetsTheFont(api: FUniver): void {
  api.addEvent(api.Event.BeforeCommandExecute, ({ id, params }) => {
    if (id !== InsertSheetMutation.id) return;
    const { sheet } = params as IInsertSheetMutationParams;
    sheet.defaultStyle ??= api.getActiveWorkbook()?.getWorkbook().getSnapshot().defaultStyle;
  });
}
