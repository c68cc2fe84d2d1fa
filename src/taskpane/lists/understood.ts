import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import { inPoints } from "../../core/numbers";
import { entryOf } from "../../core/table/entry";
import { readFilled } from "../../core/table/readFilled";
import { numberColumns } from "../../core/table/readTable";
import type { Source } from "./source";
import { faultOf } from "./sort";
import type { Sort } from "./sort";

/** A cell as it stands, and what it was read as. */
export interface Understood {
  readonly text: string;
  /** Nothing where the column is kept and not used. */
  readonly told?: string;
}

const shownValues = 3;

/** For each column of a list its first values as the functions will read them. */
export function understoodIn({ taken, columns, rows, mark }: Source, sort: Sort, system: System): Understood[][] {
  const { list, own } = sort.reading;
  const isNumber = new Set(numberColumns(columns, sort.reading));
  return taken.columns.map((_, index) => {
    const column = columns.find((c) => c.index === index);
    const first: Cell[] = [];
    for (const row of rows) {
      if (first.length === shownValues) break;
      const cell = row[index] ?? null;
      if (cell !== null) first.push(cell);
    }
    return first.map((cell): Understood => {
      const text = String(cell);
      if (column?.key === undefined) return { text };
      const { key, unit } = column;
      const inMark = typeof cell === "string" && mark && isNumber.has(column) ? inPoints(cell, mark) : cell;
      let told = "no data";
      const fault = faultOf(() => {
        const value = readFilled(entryOf(list, key), inMark, unit, system, own);
        if (value !== undefined) told = sort.told(key, value, system);
      });
      return { text, told: fault === undefined ? told : `not read: ${fault}` };
    });
  });
}
