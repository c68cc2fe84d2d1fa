/** What code beside a sheet needs of it, whichever host holds the sheet. Hosts answer at once or with a promise. */

export type Wait<T> = T | Promise<T>;

/** A cell of one sheet; rows and columns count from 0. */
export interface Corner {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
}

/** A rectangle of cells, from its upper left corner on. */
export interface Place extends Corner {
  readonly rows: number;
  readonly cols: number;
}

export interface CellFault {
  readonly code: string;
  readonly message?: string;
  /** The id of the function that made it, where the host knows. */
  readonly by?: string;
}

export interface ReadCell {
  /** The computed value; null when blank. An error is its code as text. */
  readonly value: string | number | boolean | null;
  /** As the cell shows it, with its number format. */
  readonly text: string;
  /** The formula typed into this cell. */
  readonly formula?: string;
  /** Where the formula stands whose answer spills into this cell. */
  readonly spilledFrom?: { readonly row: number; readonly col: number; readonly formula: string };
  readonly error?: CellFault;
}

export type Plain = string | number | null;

/** A cell with more to it than its content. */
export interface RichCell {
  readonly value?: Plain;
  /** With its "=". Plain text stays text whatever it begins with; only this becomes a formula. */
  readonly formula?: string;
  readonly heading?: true;
  /** A number format in the spreadsheets' own code; cells that a formula will spill into may have one too. */
  readonly format?: string;
}
/** null clears the cell. */
export type Written = Plain | RichCell;

export const richCell = (cell: Written): RichCell =>
  typeof cell === "object" && cell !== null ? cell : { value: cell };
export const valueOf = (cell: Written): Plain => richCell(cell).value ?? null;
export type Block = readonly (readonly Written[])[];

/** The cells that a block fills from a corner on. */
export const placeOf = ({ sheet, row, col }: Corner, block: Block): Place => ({
  sheet,
  row,
  col,
  rows: block.length,
  cols: block[0]?.length ?? 0,
});

/** A table with a heading row that formulas can name. */
export interface NamedTable {
  readonly name: string;
  readonly place: Place;
  /** What a formula writes for the whole of it, headings included. */
  readonly reference: string;
}

/** A picture with its size in pixels. */
export interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly name: string;
  /** What it shows, for those who do not see it. */
  readonly words: string;
}

/** How many cells a picture covers at most, where none is narrower or lower than 60 × 20 pixels. */
export const coveredBy = ({ width, height }: Picture): Pick<Place, "rows" | "cols"> => ({
  rows: Math.ceil(height / 20),
  cols: Math.ceil(width / 60),
});

export interface SheetPort {
  selection(): Wait<Place | undefined>;
  /** The cells of a place; where it reaches beyond what the sheet uses, as many rows as it uses. */
  read(place: Place): Wait<ReadCell[][]>;
  /** Writes a block from the corner on, as one step to undo where the host can. */
  write(at: Corner, block: Block): Wait<void>;
  /** Widens columns, from the corner's on, to hold so many characters; never narrows one. */
  widen(at: Corner, characters: readonly number[]): Wait<void>;
  /** The cells that the formula in a cell spills into, itself included; undefined where it does not spill. */
  spillOf(at: Corner): Wait<Place | undefined>;
  /** Tables of the workbook, by name. */
  tables(): Wait<readonly NamedTable[]>;
  /** Puts a block with a heading row on a new sheet of that name; the table's name is the same without spaces. A name in use gets a number. */
  addTable(name: string, block: Block): Wait<NamedTable>;
  /** Lays a picture over the cells, its upper left corner in that of a cell, whose rows and columns it follows from then on. */
  addPicture(at: Corner, picture: Picture): Wait<void>;
  /** Moves the selection, to show what was written. */
  select(place: Place): Wait<void>;
  /** Calls back whenever the selection, or a value that it may show, changes; the answer ends it. */
  watch(changed: () => void): () => void;
}
