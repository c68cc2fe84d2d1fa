/**
 * A value that our own logic says is there, where the compiler cannot see it: a step that every duty has, a key of our own
 * list. Throws a plain Error, never a BushError: that it is missing is our fault and not that of anything typed. Where the
 * types can be made to say it, they do.
 */
export function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("A value that must be there is missing.");
  return value;
}
