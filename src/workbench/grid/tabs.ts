import { Direction, ICommandService } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { KeyCode, MoveSelectionCommand, MoveSelectionEnterAndTabCommand } from "@univerjs/preset-sheets-core";

/**
 * Behind cells entered with Tab, Enter goes below where they began. The grid holds on to that place although another cell was
 * selected since: Enter there led back, and what was typed next wrote over what stood there.
 */
export function forgetLeftTabs(api: FUniver, injector: Injector): void {
  const commands = injector.get(ICommandService);
  const selected = () => api.getActiveWorkbook()?.getActiveSheet().getSelection()?.getActiveRange();
  const place = (): string =>
    `${api.getActiveWorkbook()?.getActiveSheet().getSheetId()} ${selected()?.getA1Notation()}`;
  let tabbedTo: string | undefined;
  api.addEvent(api.Event.BeforeCommandExecute, ({ id }) => {
    if (id !== MoveSelectionEnterAndTabCommand.id || tabbedTo === undefined || tabbedTo === place()) return;
    tabbedTo = undefined;
    // a step by an arrow key makes the grid forget
    const [there, back] =
      selected()?.getColumn() === 0 ? [Direction.RIGHT, Direction.LEFT] : [Direction.LEFT, Direction.RIGHT];
    for (const direction of [there, back]) void commands.executeCommand(MoveSelectionCommand.id, { direction });
  });
  api.addEvent(api.Event.CommandExecuted, ({ id, params }) => {
    if (id !== MoveSelectionEnterAndTabCommand.id) return;
    tabbedTo = (params as { keycode?: number }).keycode === KeyCode.TAB ? place() : undefined;
  });
}
