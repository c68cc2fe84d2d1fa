import { recordPage } from "../book/record/record";
import { functions } from "../core";
import { BushError } from "../core/errors";
import type { Cell } from "../core/formula";
import type { System } from "../core/kinds";
import { answer } from "../edge/sheet";

/** A page with what DUTYSHEET answers for a duty; throws what the function refuses. */
export function record(cells: Cell[][], duty: string, grades: Cell[][] | undefined, system: System): string {
  const refuse = (code: string, message = code): never => {
    throw new BushError("value", "duty", message);
  };
  const lines = answer(functions.DUTYSHEET, [cells, duty, null, grades, system], { error: refuse }) as (
    string | number
  )[][];
  return recordPage(lines);
}
