/** A worksheet file described without a host: the local grid, a file writer and a printed table read the same. */

export type Scalar = string | number;

/** Looks by purpose; looks.ts says what each is made of. */
export type Look =
  | "title"
  | "text"
  | "quiet"
  | "heading"
  | "group"
  | "caption"
  | "label"
  /** A cell to type a number into. */
  | "input"
  /** A cell to type words into. */
  | "words"
  | "phrase"
  /** A computed number. */
  | "result"
  /** A computed text. */
  | "answer"
  | "formula"
  /** A bar of text that grows to the right from its cell's left edge, or to the left from its right edge. */
  | "bar"
  | "barLeft"
  | "caution";

export interface BookCell {
  /** What is typed; with a formula its answer, where that is known. */
  readonly value?: Scalar;
  /** With its "="; the answer may spill. */
  readonly formula?: string;
  readonly look?: Look;
  /** A number format in the spreadsheets' own code: "0.00". */
  readonly format?: string;
}

/**
 * Marks the cells of a range for which a formula is true: with shade and weight, never by colour alone. The formula is
 * written for the upper left cell, as spreadsheets do; rules on values would not see cells into which an answer spills.
 */
export interface Mark {
  readonly range: string;
  readonly when: string;
  readonly as: "fails" | "unknown" | "care";
}

/** Cells that take one of some words, or one value of a range on their own sheet or "Other!A1:A9". */
export interface PickList {
  readonly at: string;
  readonly from: readonly string[] | string;
}

export interface BookSheet {
  readonly name: string;
  /** Column widths in characters, from column A. */
  readonly widths: readonly number[];
  /** Rows and columns that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  /** Row heights in lines, where more than one. */
  readonly heights?: Readonly<Record<number, number>>;
  /** Ranges whose rows grow with their wrapped text, also with text that spills. */
  readonly growing?: readonly string[];
  /** By address: "B3". */
  readonly cells: Readonly<Record<string, BookCell>>;
  /** Looks and formats of whole ranges, for answers that spill. */
  readonly areas?: readonly { readonly range: string; readonly look: Look; readonly format?: string }[];
  readonly merged?: readonly string[];
  /** Without grid lines. */
  readonly plain?: true;
  readonly marks?: readonly Mark[];
  readonly picks?: readonly PickList[];
}

/** A range with a heading row that formulas may name. */
export interface BookTable {
  readonly name: string;
  readonly sheet: string;
  readonly range: string;
}

export interface Book {
  readonly name: string;
  readonly tables: readonly BookTable[];
  readonly sheets: readonly BookSheet[];
}
