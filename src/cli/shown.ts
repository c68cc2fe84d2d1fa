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

export const host = { error: (code: string, message?: string) => new Unread(code, message) };
export const isUnread = (cell: Answered): boolean => cell instanceof Unread;

const digits = 6;
export const shown = (cell: Answered): Shown =>
  cell instanceof Unread
    ? `cannot be read: ${cell.message}`
    : typeof cell === "number"
      ? Number(cell.toPrecision(digits))
      : cell;
