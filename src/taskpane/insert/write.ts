import { addressOf } from "../../port/address";
import type { Corner, Place, ReadCell, SheetPort } from "../../port/sheet";

/** How many cells of the place hold something. */
export async function countFilled(port: SheetPort, place: Place): Promise<number> {
  const cells = await port.read(place);
  return cells.flat().filter((cell) => cell.value !== null || cell.formula !== undefined).length;
}

export interface Frozen {
  readonly place: Place;
  readonly cells: readonly (readonly ReadCell[])[];
}

/** Formulas of this add-in in the selection with the whole of what they spill. */
export async function findFormulas(port: SheetPort, selection: Place): Promise<Frozen[]> {
  const cells = await port.read(selection);
  const corners = new Map<string, Corner>();
  cells.forEach((row, r) =>
    row.forEach((cell, c) => {
      const from = cell.spilledFrom;
      const formula = cell.formula ?? from?.formula;
      if (!formula || !needsAddIn(formula)) return;
      const at = from ?? { row: selection.row + r, col: selection.col + c };
      corners.set(addressOf(at.row, at.col), { sheet: selection.sheet, row: at.row, col: at.col });
    }),
  );
  const found: Frozen[] = [];
  for (const at of corners.values()) {
    const place = (await port.spillOf(at)) ?? { ...at, rows: 1, cols: 1 };
    found.push({ place, cells: await port.read(place) });
  }
  return found;
}

/** Whether it calls a function of this add-in; a name within a text is none. */
const needsAddIn = (formula: string): boolean => /\bBUSH[._][A-Z]+\(/i.test(formula.replace(/"[^"]*"/g, '""'));

export const hasError = ({ cells }: Frozen): boolean => cells.some((row) => row.some((cell) => cell.error));

/** Puts the present values in place of the formulas. */
export async function freeze(port: SheetPort, formulas: readonly Frozen[]): Promise<void> {
  for (const { place, cells } of formulas)
    await port.write(
      place,
      cells.map((row) => row.map(({ value }) => (typeof value === "boolean" ? String(value).toUpperCase() : value))),
    );
}
