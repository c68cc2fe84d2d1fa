import { ImageSourceType, LocaleType, SheetSkeleton } from "@univerjs/core";
import type { Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  ISheetDrawingService,
  SheetDrawingAnchorType,
  SHEETS_IMAGE_MENU_ID,
  UniverSheetsDrawingPreset,
  UniverSheetsDrawingUIPlugin,
} from "@univerjs/preset-sheets-drawing";
import texts from "@univerjs/preset-sheets-drawing/locales/en-US";
import { addressOfSvg } from "../../../port/png";
import type { Corner, Picture } from "../../../port/sheet";
import { inOrder } from "./keptPictures";
import type { KeptPicture, KeptPictures } from "./keptPictures";

/** Pictures come from the pane and from files: a menu for more of them would only be there once one has come. */
const menu = { [SHEETS_IMAGE_MENU_ID]: { hidden: true } };

/**
 * The cell in which a picture begins or ends, by a point of the sheet. The grid takes it for a point of the window, and so finds
 * another cell where the sheet is scrolled or zoomed: the picture would have another place or size once opened again.
 */
SheetSkeleton.prototype.getCellIndexAndOffsetByPosition = function (this: SheetSkeleton, x: number, y: number) {
  return this.getOffsetRelativeToRowCol(x - this.rowHeaderWidthAndMarginLeft, y - this.columnHeaderHeightAndMarginTop);
};

/** Adds the grid's own part for pictures; done once it is at work. */
export function startDrawing(univer: Univer, api: FUniver): Promise<void> {
  api.loadLocales(LocaleType.EN_US, texts);
  return new Promise((started) => {
    class LastPlugin extends UniverSheetsDrawingUIPlugin {
      override onSteady(): void {
        super.onSteady();
        started();
      }
    }
    for (const entry of UniverSheetsDrawingPreset().plugins) {
      const [plugin, options] = Array.isArray(entry) ? entry : [entry];
      if (plugin === UniverSheetsDrawingUIPlugin) univer.registerPlugin(LastPlugin, { menu });
      else univer.registerPlugin(plugin, options);
    }
  });
}

/** As one step to undo. */
export async function layPicture(api: FUniver, at: Corner, { svg, width, height, name, words }: Picture) {
  const sheet = api.getActiveWorkbook()?.getSheetByName(at.sheet);
  if (!sheet) throw new Error(`no sheet ${at.sheet}`);
  // rows that were added for it are not measured yet
  sheet.getSkeleton()?.makeDirty(true);
  sheet.getSkeleton()?.calculate();
  const image = await sheet
    .newOverGridImage()
    .setSource(addressOfSvg(svg), ImageSourceType.BASE64)
    .setRow(at.row)
    .setColumn(at.col)
    .setWidth(width)
    .setHeight(height)
    .setAnchorType(SheetDrawingAnchorType.Position)
    .buildAsync();
  sheet.insertImages([Object.assign(image, { name, words })]);
}

export function picturesOn(api: FUniver, sheetId: string): KeptPicture[] {
  const workbook = api.getActiveWorkbook();
  const service = workbook?.getActiveSheet().getInject().get(ISheetDrawingService);
  const pictures = service?.getDrawingDataForUnit(workbook?.getId() ?? "");
  const kept = (pictures as KeptPictures | undefined)?.[sheetId];
  return kept ? inOrder(kept) : [];
}
