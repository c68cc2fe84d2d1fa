import type { System } from "../../core/kinds";
import type { FitTexts } from "./fit";
import type { Texts } from "./fields";
import type { ReadDuty } from "./readDuty";

/** The one duty that all parts of the pane share, as typed and as read. */
export interface DutyState {
  readonly texts: Texts;
  readonly system: System;
  /** Lines of the load spectrum. */
  readonly steps: string;
  readonly fit: FitTexts;
  readonly read: ReadDuty;
  setTexts(texts: Texts): void;
  /** What was typed keeps its meaning. */
  setSystem(system: System): void;
  setSteps(text: string): void;
  setFit(texts: FitTexts): void;
}
