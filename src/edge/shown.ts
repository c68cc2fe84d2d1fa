import { BushError } from "../core/errors";
import type { Formula } from "../core/formula";
import { CellError, plainHost } from "./host";
import { answer } from "./sheet";

/** What a line of an answer shows. */
export type Shown = string | number;

export type Answered = Shown | CellError;

export const isUnread = (cell: Answered): boolean => cell instanceof CellError;

const digits = 6;
export const asShown = (cell: Answered): Shown =>
  cell instanceof CellError
    ? `cannot be read: ${cell.message ?? cell.code}`
    : typeof cell === "number"
      ? Number(cell.toPrecision(digits))
      : cell;

/** Headings and lines as a function of tables answers them, for faces that show text; throws what it refuses as a whole. */
export function answered(f: Formula, given: readonly unknown[]) {
  const [heading, ...lines] = answer(f, given, plainHost) as [string[], ...Answered[][]];
  const [first] = heading as [Answered];
  if (first instanceof CellError) throw new BushError("value", f.spec.id, first.message ?? first.code);
  return { heading, lines };
}
