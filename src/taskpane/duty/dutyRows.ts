import { field, fieldHeadings, fields, groupsOf, isSame, readOwn } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Cell } from "../../core/formula";
import type { Zone } from "../../core/fit/zones/zone";
import type { System } from "../../core/kinds";
import { keysOf } from "../../core/keyed";
import { readTable } from "../../core/table/readTable";
import type { Row, Table } from "../../core/table/readTable";
import { isOfStep } from "../state/fields";

export type DutyRow = Row<typeof fields, { zone: Zone }>;
export type DutyCells = Table<typeof fields, { zone: Zone }>;

/** A table or card of duties by the reader that the functions use. */
export const readCells = (cells: Cell[][], system: System): DutyCells =>
  readTable<typeof fields, { zone: Zone }>(cells, {
    ...{ list: fields, headings: fieldHeadings, name: "duty" },
    ...{ system, own: readOwn },
  });

export interface FoundDuty {
  /** Its rows, one for each step. */
  readonly rows: readonly [DutyRow, ...DutyRow[]];
  /** How formulas name it: its name where that stands there once, else its number; nothing where it is the only one. */
  readonly duty?: string | number;
}

/** The duty that has this row of the range, counted from 1; throws where its steps differ in what is of the whole duty. */
export function dutyAt(table: DutyCells, number: number): FoundDuty | undefined {
  const groups = groupsOf(
    table.rows,
    table.columns.some(({ key }) => key === "duty"),
  );
  const index = groups.findIndex((rows) => rows.some((row) => row.number === number));
  const [first, ...later] = groups[index] ?? [];
  if (!first) return undefined;
  checkSame(first, later);
  if (groups.length === 1) return { rows: [first, ...later] };
  const name = first.values.duty ?? "";
  const isOnce = groups.filter(([row]) => row?.values.duty?.toLowerCase() === name.toLowerCase()).length === 1;
  return { rows: [first, ...later], duty: name !== "" && isOnce ? name : index + 1 };
}

function checkSame(first: DutyRow, later: readonly DutyRow[]): void {
  for (const { values, faults } of later)
    for (const key of [...keysOf(values), ...faults.keys()])
      if (key !== "duty" && !isOfStep(key) && (faults.has(key) || !isSame(values[key], first.values[key])))
        throw new Error(
          `The duty's ${field(key).heading} changes from step to step, but is one for the whole duty. Nothing was read.`,
        );
}

/** A cell as text to type. */
export const textOf = (cell: Cell): string =>
  cell === null ? "" : cell instanceof BushError ? cell.message : String(cell).trim();
