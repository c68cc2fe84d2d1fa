import { functions } from "../core";
import { readDuties } from "../core/duties";
import type { Cell } from "../core/formula";
import type { System } from "../core/kinds";
import { present } from "../core/present";
import { answered, isUnread, asShown } from "../edge/shown";
import type { Shown } from "../edge/shown";
import { inLines } from "./files";
import type { FileTable } from "./files";

export interface Checked {
  readonly heading: readonly string[];
  readonly lines: readonly (readonly Shown[])[];
  readonly unknownColumns: readonly string[];
  /** The lines of the verdicts: "fits, PV 45 %". */
  readonly verdicts: readonly string[];
  /** Whether a duty could not be read. */
  readonly hasUnread: boolean;
}

/** What DUTIES answers: a line for each duty, with the line at which it starts in front; one that cannot be read says why. */
export function check(
  cells: Cell[][],
  table: Pick<FileTable, "line" | "lines">,
  grades: Cell[][] | undefined,
  system: System,
): Checked {
  const { lines: duties, first, unknownColumns } = readDuties(cells, system, "duties");
  const { heading, lines: rows } = answered(functions.DUTIES, [cells, grades, system]);
  const told = (cell: Shown): Shown => (typeof cell === "string" ? inLines(cell, table, "duties") : cell);
  const own = duties.map(({ number }) => ({ number, cells: present(rows[number - first]) }));
  const lines = own.map((duty) => [
    table.lines[duty.number - 2] ?? table.line,
    ...duty.cells.map((cell) => told(asShown(cell))),
  ]);
  const verdict = 1 + heading.indexOf("verdict");
  return {
    heading: ["line", ...heading],
    lines,
    unknownColumns,
    verdicts: lines.map((line) => String(line[verdict])),
    hasUnread: own.some((duty) => duty.cells.some(isUnread)),
  };
}
