import type { BookSheet, Scalar } from "../../src/workbench/book";

/** A table of the file: a heading row and rows of inputs; it grows as a user adds rows, and formulas name its columns. */
export interface FileTable {
  readonly name: string;
  /** Its upper left cell. */
  readonly at: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly (Scalar | null)[])[];
}

/** Cells that take one of some words, or one value of a range. */
export interface FileList {
  readonly at: string;
  readonly from: readonly string[] | string;
}

/**
 * A sheet of a workbook file. Formulas are written as in Excel, `=BUSH.PV(A1#,Duties[rpm])`; one that stands before
 * another may be read by it, not the other way round.
 */
export interface FileSheet extends Omit<BookSheet, "picks" | "cells"> {
  readonly cells: BookSheet["cells"];
  readonly tables?: readonly FileTable[];
  readonly lists?: readonly FileList[];
}

export interface FileBook {
  readonly file: string;
  readonly title: string;
  readonly sheets: readonly FileSheet[];
}
