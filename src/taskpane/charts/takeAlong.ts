import { addressOf } from "../../port/address";
import { addressOfSvg, bytesOf, drawPng } from "../../port/png";
import { coveredBy } from "../../port/sheet";
import type { Picture, ReadCell, SheetPort } from "../../port/sheet";

/** The rows and columns of Excel's sheets; no other host has more. */
const most = { rows: 1_048_576, cols: 16_384 };
/** So many columns from the selected cell on are looked at: more than a table of duties has. */
const widest = 200;

/**
 * Lays a picture where it hides nothing: at the selected cell, or to its right where the cells are filled. Below it the cell
 * is selected where the next one goes. Tells where it is.
 */
export async function putBeside(port: SheetPort, picture: Picture): Promise<string> {
  const selected = await port.selection();
  if (!selected) throw new Error("Select the cell where it shall begin.");
  const { sheet, row, col } = selected;
  const { rows, cols } = coveredBy(picture);
  const looked = Math.min(widest, most.cols - col);
  if (row + rows > most.rows) throw new Error(`The picture needs ${rows} rows: select a cell further up.`);
  const cells = await port.read({ sheet, row, col, rows, cols: looked });
  const at = { sheet, row, col: col + firstGap(cells, looked, cols) };
  if (at.col + cols > most.cols) throw new Error("No room is left to its right: select a cell further left.");
  await port.addPicture(at, picture);
  const below = { ...at, row: row + rows, rows: 1, cols: 1 };
  // its far corner first, so that all of it comes into view
  await port.select({ ...below, col: at.col + cols - 1 });
  await port.select(below);
  return `Put beside the cells at ${addressOf(at.row, at.col)} on ${sheet}. Undo takes it away.`;
}

/** The first column from which on so many, or all, are empty. */
function firstGap(cells: readonly (readonly ReadCell[])[], looked: number, wide: number): number {
  let empty = 0;
  for (let col = 0; col < looked; col++) {
    const isFilled = cells.some((line) => (line[col]?.text ?? "") !== "" || line[col]?.formula !== undefined);
    empty = isFilled ? 0 : empty + 1;
    if (empty === wide) return col + 1 - wide;
  }
  return looked - empty;
}

/** The picture as a PNG on the clipboard. */
export async function copy({ svg, width, height }: Picture): Promise<string> {
  const png = new Blob([bytesOf(await drawPng(addressOfSvg(svg), width, height))], { type: "image/png" });
  await navigator.clipboard.write([new ClipboardItem({ [png.type]: png })]);
  return "The picture is on the clipboard.";
}
