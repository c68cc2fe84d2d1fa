import { functions } from "../../core";
import { dutyTable } from "../insert/dutyTable";
import type { PieceOrder } from "../insert/blocks";
import { placedAt } from "../insert/placed";
import { spilled, unitsOf } from "../insert/spill";
import type { Given } from "../insert/spill";
import { answered, asShown } from "../../edge/shown";
import type { Shown } from "../../edge/shown";
import { valueOf } from "../../port/sheet";
import type { NamedTable, SheetPort } from "../../port/sheet";
import type { PaneState } from "../state/usePane";
import { plainCells } from "../state/useLibrary";

/** The tables that a decision rests on, with what stands in them. */
export interface Tables {
  readonly offers: Given;
  readonly rates: Given | undefined;
  readonly own: Given | undefined;
}

const given = async (port: SheetPort, { reference, place }: NamedTable): Promise<Given> => ({
  text: reference,
  value: plainCells(await port.read(place)),
});

export async function tablesOf(
  { host: { port }, own }: PaneState,
  offers: NamedTable,
  rates: NamedTable | undefined,
): Promise<Tables> {
  const library = own.count > 0 ? own.inUse : undefined;
  return {
    offers: await given(port, offers),
    rates: rates && (await given(port, rates)),
    own: library && (await given(port, library)),
  };
}

type Lines = readonly (readonly Shown[])[];
export interface Decided {
  readonly decision: Lines;
  readonly ranking: Lines;
}

/** What DECISION and QUOTES answer for the pane's duty, with their headings; throws what they refuse. */
export async function decided(
  { host: { port }, duty: state }: PaneState,
  tables: Tables,
): Promise<Decided | undefined> {
  const { origin, system, read } = state;
  if (!read.duty) return undefined;
  const at = { sheet: "", row: 0, col: 0 };
  const placed = origin && (await placedAt(port, origin, at, system));
  const duties = placed?.area.value ?? dutyTable(read.duty, system, at).rows.map((row) => row.map(valueOf));
  const args = [
    tables.offers.value,
    duties,
    placed?.duty?.value ?? null,
    tables.own?.value,
    tables.rates?.value,
    system,
  ];
  const lines = (id: "DECISION" | "QUOTES"): Lines => {
    const { heading, lines: rows } = answered(functions[id], args);
    return [heading, ...rows.map((row) => row.map(asShown))];
  };
  return { decision: lines("DECISION"), ranking: lines("QUOTES") };
}

/** The formula on the offers' table and the duty's cells. */
export const pieceOf =
  (id: "DECISION" | "QUOTES", { offers, rates }: Tables): PieceOrder =>
  ({ placed, order }) =>
    spilled(functions[id], [offers, placed.area, placed.duty, order.own, rates, unitsOf(order.system)]);
