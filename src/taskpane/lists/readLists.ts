import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { findMarks } from "../../core/table/decimals";
import type { Marks } from "../../core/table/decimals";
import { numberColumns } from "../../core/table/readTable";
import type { Progress } from "../../files/delimited";
import type { Joined } from "../../files/join";
import type { ListCell } from "../../files/list";
import { turns } from "../parts/turns";
import type { Turn } from "../parts/turns";
import { joinedPart, markIn, sourceOf } from "./source";
import type { Source } from "./source";
import type { CellFault, Sort } from "./sort";
import type { Taken } from "./taken";
import { understoodIn } from "./understood";
import type { Understood } from "./understood";

export interface RowFault {
  readonly of: string;
  readonly line: number;
  /** What the list calls the row. */
  readonly name: string;
  readonly message: string;
}

/** Lists as one table. */
export interface ReadLists {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly ListCell[])[];
  readonly count: number;
  readonly faults: readonly RowFault[];
  /** Columns that are kept and not used. */
  readonly kept: readonly string[];
  /** For each list, for each of its columns, the first values as understood. */
  readonly understood: readonly (readonly (readonly Understood[])[])[];
}

/** So many rows are read between two looks at the clock. */
const slice = 1000;

/** Reads the lists by what the person says of their columns, in parts; throws what keeps one from being read. */
export async function readLists(
  lists: readonly Taken[],
  sort: Sort,
  system: System,
  progress: Progress,
): Promise<ReadLists> {
  const turn = turns(progress, "Reading");
  const all = lists.reduce((sum, { table }) => sum + table.rows.length, 0);
  let done = 0;
  const sources: Source[] = [];
  for (const [at, taken] of lists.entries()) {
    const source = sourceOf(taken, at, sort, system);
    const found = await marksIn(source, sort, (row) => turn((0.3 * (done + row)) / all));
    sources.push({ ...source, mark: markIn(found, taken, at, source.name) });
    done += source.rows.length;
  }
  done = 0;
  const parts: Joined[] = [];
  for (const [at, { rows }] of sources.entries()) {
    for (let from = 0; from < rows.length; from += slice) {
      const { from: _, ...part } = joinedPart(sources, at, [from, from + slice], sort, system);
      parts.push({ ...part, from: part.rows.map((__, row) => [at, from + row] as const) });
      await turn(0.3 + (0.6 * (done + from)) / all);
    }
    done += rows.length;
  }
  await turn(0.9);
  return {
    ...judged(parts, sources, sort, system),
    kept: keptOf(lists),
    understood: sources.map((source) => understoodIn(source, sort, system)),
  };
}

async function marksIn(
  { rows, columns, taken: { table }, name }: Omit<Source, "mark">,
  sort: Sort,
  turn: Turn,
): Promise<Marks> {
  const numbers = numberColumns(columns, sort.reading);
  const found: Marks = {};
  for (let from = 0; from < rows.length; from += slice) {
    const place = (row: number) => `${name} line ${present(table.lines[from + row])}`;
    findMarks(rows.slice(from, from + slice), numbers, place, found);
    await turn(from);
  }
  return found;
}

/** The parts as one table, and what its reader finds in it. */
function judged(parts: readonly Joined[], sources: readonly Source[], sort: Sort, system: System) {
  const { headings } = present(parts[0]);
  const rows = parts.flatMap((part) => part.rows);
  const from = parts.flatMap((part) => part.from);
  const { count, faults } = sort.judge([[...headings], ...rows] as Cell[][], system);
  const isBad = new Set(faults.map(({ row }) => row));
  return {
    headings,
    rows: sort.dropsFaulty ? rows.filter((_, i) => !isBad.has(i + 2)) : rows,
    count,
    faults: faults.map((fault) => placed(fault, sources, from, sort)),
  };
}

/** A fault by its list and line there, as another row of the table that it names. */
function placed({ row, message }: CellFault, sources: readonly Source[], from: Joined["from"], sort: Sort): RowFault {
  const at = (number: number) => {
    const [of, own] = present(from[number - 2]);
    const { taken, name } = present(sources[of]);
    return { of: name, line: present(taken.table.lines[own]), cells: present(taken.table.rows[own]), taken };
  };
  const { of, line, cells, taken } = at(row);
  const [first] = sort.keys;
  const cell = cells[taken.columns.findIndex(({ key }) => key === first)] ?? null;
  const told = message.replace(
    /\brow (\d+)/g,
    (_, number: string) => `${at(Number(number)).of} line ${at(Number(number)).line}`,
  );
  return { of, line, name: cell === null ? "without a name" : String(cell), message: told };
}

const keptOf = (lists: readonly Taken[]): string[] => [
  ...new Set(
    lists.flatMap(({ columns }) =>
      columns.flatMap(({ key, heading }) => (key === "" && heading !== "" ? [heading] : [])),
    ),
  ),
];
