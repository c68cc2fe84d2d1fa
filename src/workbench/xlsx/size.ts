/** So many cells the grid holds and keeps while one types. */
const mostCells = 200_000;

type Lines = readonly (readonly unknown[])[];

/** Said before the page hangs. */
export function checkCells(name: string, lines: Lines): void {
  const cells = lines.reduce((sum, line) => sum + line.length, 0);
  if (cells > mostCells) throw new Error(`${name} has ${cells} cells: at most ${mostCells} can be opened, so split it`);
}

export const widest = (lines: Lines): number => lines.reduce((most, line) => Math.max(most, line.length), 0);
