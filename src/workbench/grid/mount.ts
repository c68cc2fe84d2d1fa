import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import type { IWorkbookData } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { defaultTheme } from "@univerjs/themes";
import { ILayoutService, UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreText from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import marksText from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import picksText from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsFilterPreset } from "@univerjs/preset-sheets-filter";
import filterText from "@univerjs/preset-sheets-filter/locales/en-US";
import { UniverSheetsSortPreset } from "@univerjs/preset-sheets-sort";
import sortText from "@univerjs/preset-sheets-sort/locales/en-US";
import type { HostFunction } from "../adapter/customFunctions";
import { gridFunction } from "../adapter/functions";
import { hintOf } from "../adapter/hints";
import type { Metadata } from "../adapter/metadata";
import type { Book } from "../../book/book";
import { openFile } from "./file";
export { readRecord } from "./file";
import type { GridFile } from "./file";
import { withForgettingLexer } from "./lexer";
import { giveNewSheetsTheFont } from "./newSheets";
import { forgetOldNotes } from "./notes";
import { GridPictures } from "./pictures/pictures";
import { gridPort, newSheet } from "./port";
import type { GridPort } from "./port";
import { takeOnlyWhatIsMeant } from "./proposals";
import { fitRows } from "./rowHeights";
import { forgetLeftTabs } from "./tabs";
import { themeOf } from "./theme";
import { keepTyped } from "./typed";

export interface Mounted {
  readonly port: GridPort;
  /** What is open in it. */
  readonly file: GridFile;
  /** Gives the grid the keyboard. */
  focus(): void;
}

/** The grid's texts, with what it says while it computes, which they lack. */
const texts = mergeLocales(coreText, marksText, picksText, filterText, sortText, {
  "sheets-formula": {
    ...coreText["sheets-formula"],
    progress: {
      analyzing: "Analysing",
      calculating: "Computing",
      "array-analysis": "Analysing ranges",
      "array-calculation": "Computing ranges",
      done: "Computed",
    },
  },
});

/** Opens what was kept, else the example, in a grid inside `container`; every function of the metadata can be typed there. */
export async function mountGrid(
  container: HTMLElement,
  example: Book,
  kept: IWorkbookData | undefined,
  metadata: Metadata,
  functions: ReadonlyMap<string, HostFunction>,
): Promise<Mounted> {
  const takesErrors = metadata.allowErrorForDataTypeAny ?? false;
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: texts },
    theme: themeOf(defaultTheme),
    logLevel: LogLevel.WARN,
  });
  const presets = [
    withForgettingLexer(
      UniverSheetsCorePreset({
        container,
        header: true,
        footer: { addSheetButtonConfig: { defaultRowCount: newSheet.rows, defaultColumnCount: newSheet.columns } },
        sheets: { disableForceStringAlert: true, disableForceStringMark: true },
        formula: {
          function: metadata.functions.map((meta) => {
            const fn = functions.get(meta.id.toUpperCase());
            if (!fn) throw new Error(`functions.js does not supply ${meta.id}`);
            return gridFunction(meta, fn, takesErrors);
          }),
          description: metadata.functions.map(hintOf),
        },
      }),
    ),
    UniverSheetsConditionalFormattingPreset(),
    // a box for searching takes the keyboard away from the cell in the midst of a word; the list follows what is typed there
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false }),
    UniverSheetsSortPreset(),
    UniverSheetsFilterPreset(),
  ];
  for (const entry of presets.flatMap(({ plugins }) => plugins)) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry];
    univer.registerPlugin(plugin, options);
  }
  const api = FUniver.newAPI(univer);
  forgetOldNotes(api);
  const pictures = new GridPictures(univer, api);
  if (kept) await pictures.prepare(kept);
  const file = openFile(api, kept, example);
  keepTyped(univer.__getInjector());
  takeOnlyWhatIsMeant(api, univer.__getInjector());
  forgetLeftTabs(api, univer.__getInjector());
  giveNewSheetsTheFont(api);
  fitRows(api, example);
  const focus = (): void => univer.__getInjector().get(ILayoutService).focus();
  // a click on a sheet's tab would leave the keyboard there; one that came from the pane leaves it in the pane
  const back = (): void => void (container.contains(document.activeElement) && focus());
  api.addEvent(api.Event.ActiveSheetChanged, () => setTimeout(back));
  return { port: gridPort(api, pictures), file, focus };
}
