import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import type { DecimalMark } from "../../core/numbers";
import { markOf, OpenDecimals } from "../../core/table/decimals";
import type { Marks } from "../../core/table/decimals";
import type { EntryList } from "../../core/table/entry";
import { columnsOf } from "../../core/table/readTable";
import type { Column, Reading } from "../../core/table/readTable";
import { joined } from "../../files/join";
import type { Joined } from "../../files/join";
import { Unreadable } from "../../files/list";
import { headingFor } from "./columns";
import type { Sort } from "./sort";
import type { Taken } from "./taken";

/** A list with its columns as the functions read them. */
export interface Source {
  readonly taken: Taken;
  /** For messages. */
  readonly name: string;
  readonly headings: readonly (string | null)[];
  readonly columns: readonly Column[];
  readonly rows: Cell[][];
  /** How it writes decimals; nothing where no cell tells or needs it. */
  readonly mark: DecimalMark | undefined;
}

/** A list that does not tell how it writes decimals. */
export class OpenList extends Unreadable {
  constructor(
    message: string,
    /** Its place among the lists. */
    readonly at: number,
  ) {
    super(message);
  }
}

export function sourceOf(taken: Taken, at: number, sort: Sort, system: System): Omit<Source, "mark"> {
  const name = taken.of || `list ${at + 1}`;
  const headings = taken.columns.map((column) => headingFor(column, sort, system));
  const rows = taken.table.rows as Cell[][];
  const reading = { ...sort.reading, system, name } as Reading<EntryList>;
  return { taken, headings, rows, name, columns: columnsOf(headings, [], reading) };
}

export function markIn(found: Marks, { decimals }: Taken, at: number, name: string): DecimalMark | undefined {
  try {
    return markOf(found, name, decimals);
  } catch (error) {
    throw error instanceof OpenDecimals ? new OpenList(error.message, at) : error;
  }
}

/** Some rows of one list in the columns of all. */
export function joinedPart(
  sources: readonly Source[],
  at: number,
  [from, to]: readonly [number, number],
  sort: Sort,
  system: System,
): Joined {
  const parts = sources.map(({ taken: { table, of }, headings, mark, name }, i) => ({
    ...{ headings, name, of: of || name },
    rows: i === at ? table.rows.slice(from, to) : [],
    lines: i === at ? table.lines.slice(from, to) : [],
    decimals: mark ?? ("point" as const),
  }));
  const isOwned = sources.length > 1 || sources.some(({ taken }) => taken.of !== "");
  return joined(parts, sort.reading, { system, owner: isOwned ? sort.owner : undefined });
}
