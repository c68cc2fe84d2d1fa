import { seemsToBe } from "../../files/kinds";
import { tableFrom, Unreadable } from "../../files/list";
import type { List, ListTable } from "../../files/list";
import type { Decimals } from "../../core/table/decimals";
import { guessColumns } from "./columns";
import type { Mapped } from "./columns";
import type { Sort } from "./sort";

/** A list that was taken, and what the person says of it. */
export interface Taken {
  readonly list: List;
  /** Whose it is. */
  readonly of: string;
  /** Which row of the list holds the headings. */
  readonly top: number;
  readonly table: ListTable;
  readonly columns: readonly Mapped[];
  readonly decimals: Decimals;
}

/** A list from its row of headings on; throws where it is of another sort, or no list. */
export function taken(list: List, of: string, sort: Sort, top = list.top): Taken {
  const table = tableFrom(list, top);
  if (table.rows.length === 0) throw new Unreadable("A list needs a heading row and at least one row below it.");
  const other = seemsToBe(table.headings, sort.kind);
  if (other) throw new Unreadable(`This seems to be a list of ${other}, not of ${sort.kind}: nothing was taken.`);
  const isBlank = (i: number) => table.headings[i] === null && table.rows.every((row) => row[i] === null);
  const columns = guessColumns(table.headings, sort).map((c, i) => (isBlank(i) ? { ...c, heading: "" } : c));
  return { list, of, top, table, columns, decimals: "ask" };
}

/** Headings are looked for among so many rows. */
const offered = 30;
const shownOf = 60;

/** Rows that may hold the headings: where they stand, and how they begin. */
export function headingRows({ rows, lines }: List): { readonly row: number; readonly text: string }[] {
  return rows.slice(0, offered).flatMap((cells, row) => {
    const filled = cells.filter((cell) => cell !== null).map((cell) => String(cell).replace(/\s+/g, " "));
    if (filled.length === 0) return [];
    const words = filled.join(" · ");
    const text = words.length > shownOf ? `${words.slice(0, shownOf - 1)}…` : words;
    return [{ row, text: `line ${lines[row]}: ${text}` }];
  });
}
