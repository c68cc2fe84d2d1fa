import { CellValueType } from "@univerjs/core";
import type { ICellData, Injector, Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, INumfmtService, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { typedCell } from "./typedCell";

/** Lets nothing that is typed change its meaning on the way into a cell. */
export function keepTyped(injector: Injector): void {
  const formats = injector.get(INumfmtService);
  const { writeCellInterceptor } = injector.get(SheetInterceptorService);
  let staysText = false;
  // before the grid's own number formats, which leave a forced text alone
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 100,
    handler: (cell, { unitId, subUnitId, row, col }, next) => {
      const text = typedText(cell);
      const hasFormat = Boolean(formats.getValue(unitId, subUnitId, row, col)?.pattern);
      const kept = text === undefined || hasFormat ? undefined : typedCell(text);
      staysText = kept?.t === CellValueType.STRING;
      return next(kept ? { ...cell, ...kept, ...(staysText && { t: CellValueType.FORCE_STRING }) } : cell);
    },
  });
  // and after them: a text left forced would make a text of the next number typed there
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: -0.5,
    handler: (cell, _, next) => next(staysText ? { ...cell, t: CellValueType.STRING } : cell),
  });
}

/** The text of an edited cell that is neither a formula nor marked as text by an apostrophe. */
function typedText(cell: Nullable<ICellData>): string | undefined {
  if (!cell || cell.f || cell.p || cell.t === CellValueType.FORCE_STRING || typeof cell.v !== "string")
    return undefined;
  return cell.v;
}
