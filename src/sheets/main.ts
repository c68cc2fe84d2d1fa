import { BushError } from "../core/errors";
import { formulaNamed } from "../core/families";
import { CellError, plainHost } from "../edge/host";
import { answer } from "../edge/sheet";

/**
 * One call from a Google sheet: a single cell arrives as a scalar, a range as rows, a blank as "", a left-out argument
 * as undefined. An answer of one cell leaves as a scalar, and its error by `throw`, the only way that Sheets has; an
 * error among other cells leaves as text.
 */
export function call(id: string, given: readonly unknown[]): unknown {
  const f = formulaNamed(id);
  if (!f) throw new Error(`${id} is not a function of Bushcell`);
  const cells = answer(f, given.map(received), plainHost);
  const [[first, ...beside] = [], ...below] = cells;
  if (beside.length + below.length > 0) return cells.map((line) => line.map(textOrCell));
  if (first instanceof CellError) throw new Error(first.message ?? first.code);
  return first;
}

const textOrCell = (cell: unknown): unknown => (cell instanceof CellError ? String(cell) : cell);

/** Text that an answer of ours left in a cell as an error passes through as that error. */
function received(raw: unknown): unknown {
  if (Array.isArray(raw)) return raw.map(received);
  return typeof raw === "string" && /^#(VALUE!|N\/A) ./.test(raw) ? new BushError("passed", raw, raw) : raw;
}
