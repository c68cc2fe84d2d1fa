import { excludesZero } from "../domain";
import { BushError, mustBe } from "../errors";
import type { Cell } from "../formula";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import type { Entry, OwnReader } from "./entry";
import { readValue } from "./readValue";

/** How people write that there is no value. */
const isNoData = (cell: Cell | undefined): boolean =>
  typeof cell === "string" && /^(no data|n\/?a|tbd|tba|\?|[-–—]|)$/i.test(cell.trim());

/** Nothing where the cell is a blank after all: "no data", or a 0 where 0 is no value. */
export function readFilled(
  entry: Entry,
  cell: Cell,
  unit: string | undefined,
  system: System,
  own?: OwnReader,
): unknown {
  if (cell instanceof BushError) throw cell;
  if (cell === null || isNoData(cell)) return undefined;
  if (cell === 0) {
    if (entry.typeZero !== undefined) throw mustBe(entry.heading, `typed as ${entry.typeZero} where it is 0`, 0);
    if (isBlankZero(entry)) return undefined;
  }
  return readValue(entry, cell, unit, system, own);
}

/** A 0 where 0 is no value, as in every column of words: some hosts hand a blank cell over as 0. */
const isBlankZero = (entry: Entry): boolean =>
  entry.blankZero === true || !(entry.kind in kinds) || excludesZero({ ...entry, kind: entry.kind as Kind });
