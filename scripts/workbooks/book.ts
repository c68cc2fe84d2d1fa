import type { BookSheet, Scalar } from "../../src/book/book";

/** A table of the file: a heading row and rows of inputs; it grows as a user adds rows, and formulas name its columns. */
export interface FileTable {
  readonly name: string;
  /** Its upper left cell. */
  readonly at: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly (Scalar | null)[])[];
}

/**
 * A sheet of a workbook file. Formulas are written as in Excel, `=BUSH.PVVALUE(A1#,Duties[rpm])`; one that stands before
 * another may be read by it, not the other way round.
 */
export interface FileSheet extends BookSheet {
  readonly tables?: readonly FileTable[];
}

export interface FileBook {
  readonly file: string;
  readonly title: string;
  readonly sheets: readonly FileSheet[];
}
