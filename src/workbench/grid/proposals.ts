import {
  DeviceInputEventType,
  IEditorService,
  KeyCode,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";
import type { Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";

/** The grid's command by which the list of proposed functions takes a key; the editor's name follows. */
const proposing = "sheet.formula-embedding-editor.search_function.";
const taking: readonly (number | undefined)[] = [KeyCode.ENTER, KeyCode.TAB];

/**
 * The list of proposed functions follows what is typed with a delay, and Enter takes its first one: typed on fast after a pause,
 * "=BUSH.PRESSURE(…)" became another function of a like name. A proposal that the typed word does not begin is not taken; the
 * cell is entered as typed.
 */
export function takeOnlyWhatIsMeant(api: FUniver, injector: Injector): void {
  const editors = injector.get(IEditorService);
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    if (!event.id.startsWith(proposing)) return;
    const { keyCode } = event.params as { keyCode?: number };
    if (!taking.includes(keyCode) || isBegun(wordBeforeCaret(editors))) return;
    event.cancel = true;
    const [visible, eventType] = [false, DeviceInputEventType.Keyboard];
    const unitId = api.getActiveWorkbook()?.getId();
    void api.executeCommand(SetCellEditVisibleOperation.id, { visible, eventType, keycode: keyCode, unitId });
  });
}

/** What is typed up to the caret, back to where the name of a function would begin. */
function wordBeforeCaret(editors: IEditorService): string {
  const editor = editors.getFocusEditor();
  const [range] = editor?.getSelectionRanges() ?? [];
  const typed = editor?.getDocumentData().body?.dataStream.slice(0, range?.startOffset) ?? "";
  return /[\p{L}_][\p{L}\d_.]*$/u.exec(typed)?.[0] ?? "";
}

/** Whether the proposals, all of which begin alike, begin with the word. */
function isBegun(word: string): boolean {
  const first = document.querySelector('[data-u-comp="sheets-formula-editor"] li span')?.textContent ?? "";
  return word !== "" && first.toUpperCase().startsWith(word.toUpperCase());
}
