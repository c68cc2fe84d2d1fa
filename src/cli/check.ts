import { functions } from "../core";
import { readDuties } from "../core/duties";
import type { Cell } from "../core/formula";
import type { System } from "../core/kinds";
import { answer } from "../edge/sheet";
import { inLines } from "./files";
import type { FileTable } from "./files";
import { host, isUnread, shown } from "./shown";
import type { Answered, Shown } from "./shown";

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
  const [heading, ...rows] = answer(functions.DUTIES, [cells, grades, system], host) as [string[], ...Answered[][]];
  const told = (cell: Shown): Shown => (typeof cell === "string" ? inLines(cell, table, "duties") : cell);
  const answered = duties.map(({ number }) => rows[number - first]!);
  const lines = duties.map(({ number }, i) => [
    table.lines[number - 2] ?? table.line,
    ...answered[i]!.map((cell) => told(shown(cell))),
  ]);
  const verdict = 1 + heading.indexOf("verdict");
  return {
    heading: ["line", ...heading],
    lines,
    unknownColumns,
    verdicts: lines.map((line) => String(line[verdict])),
    hasUnread: answered.some((line) => line.some(isUnread)),
  };
}
