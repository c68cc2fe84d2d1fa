import type { Place } from "../../port/sheet";
import type { Form } from "./form";

/** A duty's own cells in the sheet, and what the form says where they do. */
export interface Origin {
  /** The table or card with its headings. */
  readonly table: Place;
  /** Which of its duties: a name that stands there once, else its number; nothing where there is one. */
  readonly duty?: string | number;
  /** Rows of the sheet that hold the duty's steps, from 0; of a card its own. */
  readonly rows: readonly number[];
  readonly form: Form;
}
