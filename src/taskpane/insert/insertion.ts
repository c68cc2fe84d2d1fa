import type { NamedDuty } from "../../core/duties";
import { addressOf, areaText } from "../../port/address";
import { placeOf } from "../../port/sheet";
import type { Corner, Place, SheetPort } from "../../port/sheet";
import type { DutyState } from "../state/dutyState";
import type { OwnGrades } from "../state/useLibrary";
import { plainCells } from "../state/useLibrary";
import { blockOf } from "./blocks";
import type { Order, Ordered } from "./blocks";
import { placedAt } from "./placed";
import { countFilled } from "./write";

/** What came of it: written, or refused since something stands there, with the next place that is free. */
export type Outcome =
  | { readonly is: "written"; readonly text: string; readonly table?: Place }
  | { readonly is: "refused"; readonly text: string; readonly free: Corner };

export interface Wish {
  readonly piece: Order["piece"];
  readonly state: DutyState;
  readonly duty: NamedDuty;
  readonly grades: readonly string[];
  readonly own: OwnGrades;
}

/** Writes a piece from the corner on; nothing is ever overwritten. */
export async function insert(port: SheetPort, wish: Wish, at: Corner): Promise<Outcome> {
  return writeFree(port, blockOf(await orderOf(port, wish, at), at), at);
}

async function orderOf(port: SheetPort, { state, own, ...rest }: Wish, at: Corner): Promise<Order> {
  const { system, origin } = state;
  const { inUse, count, library } = own;
  return {
    ...rest,
    system,
    library,
    own: inUse && count > 0 ? { text: inUse.reference, value: plainCells(await port.read(inUse.place)) } : undefined,
    placed: origin && (await placedAt(port, origin, at, system)),
  };
}

export async function writeFree(port: SheetPort, { block, widths, table }: Ordered, at: Corner): Promise<Outcome> {
  const place = placeOf(at, block);
  const filled = await countFilled(port, place);
  if (filled > 0) {
    const free = await freeBelow(port, place);
    return {
      is: "refused",
      text: `${filled === 1 ? "1 cell" : `${filled} cells`} in ${areaText(place)} on ${place.sheet} hold something. Nothing was written.`,
      free,
    };
  }
  // widths first, so that one undo takes the cells back
  await port.widen(at, widths);
  await port.write(at, block);
  await port.select({ ...place, rows: 1, cols: 1 });
  const text = `Written to ${areaText(place)} on ${at.sheet}. Undo takes it back.`;
  return { is: "written", text, ...(table && { table }) };
}

/** The first cell of these columns with nothing in or below it, a free row above. */
async function freeBelow(port: SheetPort, { sheet, col, cols }: Place): Promise<Corner> {
  const cells = await port.read({ sheet, row: 0, col, rows: 10000, cols });
  const isFilled = cells.map((row) => row.some(({ value, formula }) => value !== null || formula !== undefined));
  const last = isFilled.lastIndexOf(true);
  return { sheet, row: last + 2, col };
}

export const cornerText = ({ row, col }: Corner): string => addressOf(row, col);
