import type { Scalar } from "./book";

/** A rectangle of cells of one sheet; rows and columns count from 0. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

export interface ReadCell {
  /** The computed value; null when blank. An error is its code as text. */
  readonly value: Scalar | boolean | null;
  /** As the cell shows it, with its number format. */
  readonly text: string;
  /** The formula typed into this cell. */
  readonly formula?: string;
  /** Where the formula stands whose answer spills into this cell. */
  readonly spilledFrom?: { readonly row: number; readonly col: number; readonly formula: string };
  readonly error?: { readonly code: string; readonly message?: string };
}

/** What code beside a sheet needs of it, whichever host holds the sheet. */
export interface SheetPort {
  selection(): Place | undefined;
  read(place: Place): ReadCell[][];
  /** Writes values, and formulas (text beginning with "="), from the upper left corner on; null clears a cell. */
  write(at: Pick<Place, "sheet" | "row" | "col">, block: readonly (readonly (Scalar | null)[])[]): void;
  /** Calls back whenever the selection, or a value that it may show, changes; the answer ends it. */
  watch(changed: () => void): () => void;
}
