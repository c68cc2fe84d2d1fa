import { recordPage } from "../book/record/record";
import { functions } from "../core";
import { BushError } from "../core/errors";
import type { Cell } from "../core/formula";
import type { System } from "../core/kinds";
import { answer } from "../edge/sheet";

/** A number in the table is typed as text like a name. */
const numberOr = (duty: string | undefined): string | number | null =>
  duty !== undefined && /^[1-9]\d*$/.test(duty) ? Number(duty) : (duty ?? null);

/** A page with what DUTYSHEET answers for a duty, which a table of one need not name; throws what the function refuses. */
export function record(
  cells: Cell[][],
  duty: string | undefined,
  grades: Cell[][] | undefined,
  system: System,
): string {
  const refuse = (code: string, message = code): never => {
    throw new BushError("value", "duty", message);
  };
  const lines = answer(functions.DUTYSHEET, [cells, numberOr(duty), null, grades, system], { error: refuse }) as (
    string | number
  )[][];
  return recordPage(lines);
}
