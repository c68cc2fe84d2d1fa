import type { System } from "../../core/kinds";
import type { Form } from "./form";
import type { ReadDuty } from "./readDuty";
import type { Origin } from "./origin";

/** The one duty that all parts of the pane share, as typed and as read. */
export interface DutyState {
  readonly form: Form;
  readonly system: System;
  readonly read: ReadDuty;
  /** The cells of the sheet that say the same, as long as they do. */
  readonly origin: Origin | undefined;
  setForm(form: Form): void;
  /** What was typed keeps its meaning. */
  setSystem(system: System): void;
  /** The form as it stands in cells of the sheet. */
  setOrigin(origin: Origin): void;
}
