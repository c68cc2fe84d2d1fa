import type { FieldKey } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { addressOf, areaText, cellReferenceTo, referenceTo } from "../../port/address";
import type { Corner, SheetPort } from "../../port/sheet";
import { readCells } from "../duty/dutyRows";
import { unitOf } from "../state/fields";
import type { Origin } from "../state/origin";
import { plainCells } from "../state/useLibrary";
import type { Placed } from "./blocks";
import { text } from "./spill";
import type { Given } from "./spill";

/** A duty's own cells as arguments of formulas at a corner; on the same sheet their addresses need no name. */
export async function placedAt(
  port: SheetPort,
  { table, duty, rows }: Origin,
  at: Corner,
  system: System,
): Promise<Placed> {
  const cells = plainCells(await port.read(table));
  const value = cells.map((row) => row.map((cell) => (cell instanceof BushError ? cell.message : cell)));
  const isHere = table.sheet === at.sheet;
  const named = (row: number, col: number): string =>
    isHere ? addressOf(row, col) : cellReferenceTo({ sheet: table.sheet, row, col });
  const { columns, isCard } = readCells(cells, system);
  const lines = cells.flatMap((line, i) => (line.some((cell) => cell !== null) ? [i] : []));
  let above: Partial<Record<FieldKey, Given>> = {};
  const refs = rows.map((row) => {
    for (const { key, index, unit } of columns) {
      const [r, c] = isCard ? [present(lines[index]), 1] : [row - table.row, index];
      const cell = value[r]?.[c] ?? null;
      if (key === undefined || cell === null) continue;
      // a plain number is in the unit of its heading, which a single cell does not say
      const isForeign = typeof cell === "number" && unit !== undefined && unit !== unitOf(key, system);
      const ref = named(table.row + r, table.col + c);
      const given = isForeign ? { text: `${ref}&" ${unit}"`, value: `${cell} ${unit}` } : { text: ref, value: cell };
      above = { ...above, [key]: given };
    }
    return above;
  });
  return {
    area: { text: isHere ? areaText(table) : referenceTo(table), value },
    duty: typeof duty === "number" ? { text: String(duty), value: duty } : duty === undefined ? undefined : text(duty),
    refs,
  };
}
