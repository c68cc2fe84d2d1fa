import { functions } from "../core";
import { readDuties } from "../core/duties";
import type { Cell } from "../core/formula";
import type { System } from "../core/kinds";
import { answer } from "../edge/sheet";

/** What a line of the answer shows. */
export type Shown = string | number;
export interface Checked {
  readonly heading: readonly string[];
  readonly lines: readonly (readonly Shown[])[];
  readonly unknownColumns: readonly string[];
  /** The lines of the verdicts: "fits, PV 45 %". */
  readonly verdicts: readonly string[];
}

/** A duty, or a grade of one, that cannot be read. */
class Unread {
  constructor(
    readonly code: string,
    readonly message = code,
  ) {}
}
const host = { error: (code: string, message?: string) => new Unread(code, message) };

/** What DUTIES answers: a line for each duty, with the row at which it starts in front; one that cannot be read says why. */
export function check(cells: Cell[][], grades: Cell[][] | undefined, system: System): Checked {
  const { lines: duties, first, unknownColumns } = readDuties(cells, system, "duties");
  const [heading, ...rows] = answer(functions.DUTIES, [cells, grades, system], host) as [
    string[],
    ...(Shown | Unread)[][],
  ];
  const lines = duties.map(({ number }) => [number, ...rows[number - first]!.map(shown)]);
  const verdict = 1 + heading.indexOf("verdict");
  const verdicts = lines.map((line) => String(line[verdict]));
  return { heading: ["line", ...heading], lines, unknownColumns, verdicts };
}

const digits = 6;
const shown = (cell: Shown | Unread): Shown =>
  cell instanceof Unread
    ? `cannot be read: ${cell.message}`
    : typeof cell === "number"
      ? Number(cell.toPrecision(digits))
      : cell;
