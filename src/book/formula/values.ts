import { CellError } from "../../edge/host";

/** What a cell holds while formulas are read. */
export type Value = number | string | boolean | null | CellError;
export type Grid = Value[][];

export const same = (a: Value, b: Value): boolean =>
  typeof a === "string" && typeof b === "string" ? a.toLowerCase() === b.toLowerCase() : (a ?? "") === (b ?? "");
export const passing = (cells: readonly Value[]): CellError | undefined =>
  cells.find((cell) => cell instanceof CellError);

export function arithmetic(a: Value, b: Value, calculate: (x: number, y: number) => number): Value {
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  if (typeof a === "string" || typeof b === "string") return new CellError("#VALUE!");
  const value = calculate(Number(a ?? 0), Number(b ?? 0));
  return Number.isFinite(value)
    ? value
    : new CellError(value === Infinity || value === -Infinity ? "#DIV/0!" : "#NUM!");
}

/** Element by element, as Excel combines ranges. */
export function spread(grids: readonly Grid[], calculate: (...cells: Value[]) => Value): Grid {
  const rows = Math.max(...grids.map((grid) => grid.length));
  const cols = Math.max(...grids.map((grid) => grid[0]?.length ?? 1));
  const cell = (grid: Grid, r: number, c: number): Value => {
    const line = grid[grid.length === 1 ? 0 : r];
    const value = line?.[line.length === 1 ? 0 : c];
    return value === undefined ? new CellError("#N/A") : value;
  };
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: cols }, (_, c) => calculate(...grids.map((grid) => cell(grid, r, c)))),
  );
}
