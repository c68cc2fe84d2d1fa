import type { Corner, NamedTable, Place } from "./sheet";

/** Addresses of cells in the A1 style; rows and columns count from 0. */
export interface Area {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

export function columnName(col: number): string {
  const letter = String.fromCharCode(65 + (col % 26));
  return col < 26 ? letter : columnName(Math.floor(col / 26) - 1) + letter;
}

const columnOf = (name: string): number => [...name].reduce((sum, c) => sum * 26 + c.charCodeAt(0) - 64, 0) - 1;

export const addressOf = (row: number, col: number): string => `${columnName(col)}${row + 1}`;

/** "B3", or "B3:D9" where it is more than one cell. */
export const areaText = ({ row, col, rows, cols }: Area): string =>
  rows * cols === 1 ? addressOf(row, col) : `${addressOf(row, col)}:${addressOf(row + rows - 1, col + cols - 1)}`;

/** "B3" or "B3:D9", with or without dollar signs. */
export function areaOf(address: string): Area {
  const found = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/.exec(address.replace(/\$/g, "").toUpperCase());
  if (!found) throw new Error(`not a cell or range: ${address}`);
  const [, left = "", top = "", right = left, bottom = top] = found;
  const row = Number(top) - 1;
  const col = columnOf(left);
  return { row, col, rows: Number(bottom) - row, cols: columnOf(right) - col + 1 };
}

/** `'Start here'!$A$1:$B$9` */
export function referenceTo({ sheet, row, col, rows, cols }: Place): string {
  return `${cellReferenceTo({ sheet, row, col })}:${absolute(row + rows - 1, col + cols - 1)}`;
}

/** `'Start here'!$A$1` */
export const cellReferenceTo = ({ sheet, row, col }: Corner): string =>
  `'${sheet.replace(/'/g, "''")}'!${absolute(row, col)}`;

const absolute = (row: number, col: number): string => addressOf(row, col).replace(/^([A-Z]+)/, "$$$1$$");

/** Cells as they stand, named by their absolute address. */
export const cellsAsTable = (place: Place): NamedTable => {
  const reference = referenceTo(place);
  return { name: reference, place, reference };
};
