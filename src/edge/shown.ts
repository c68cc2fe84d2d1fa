import { BushError } from "../core/errors";
import type { Formula } from "../core/formula";
import { answer } from "./sheet";

/** What a line of an answer shows. */
export type Shown = string | number;

/** A cell that cannot be computed, with its reason. */
class Unread {
  constructor(
    readonly code: string,
    readonly message = code,
  ) {}
}
export type Answered = Shown | Unread;

const host = { error: (code: string, message?: string) => new Unread(code, message) };
export const isUnread = (cell: Answered): boolean => cell instanceof Unread;

const digits = 6;
export const asShown = (cell: Answered): Shown =>
  cell instanceof Unread
    ? `cannot be read: ${cell.message}`
    : typeof cell === "number"
      ? Number(cell.toPrecision(digits))
      : cell;

/** Headings and lines as a function of tables answers them, for faces that show text; throws what it refuses as a whole. */
export function answered(f: Formula, given: readonly unknown[]) {
  const [heading, ...lines] = answer(f, given, host) as [string[], ...Answered[][]];
  const [first] = heading as [Answered];
  if (first instanceof Unread) throw new BushError("value", f.spec.id, first.message);
  return { heading, lines };
}
