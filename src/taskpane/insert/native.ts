import type { NamedDuty } from "../../core/duties";
import type { System } from "../../core/kinds";
import { functions } from "../../core";
import { present } from "../../core/present";
import type { BookCell } from "../../book/book";
import { blockColumns, nativeBlock } from "../../book/native/block";
import { addressOf } from "../../port/address";
import type { Corner, Written } from "../../port/sheet";
import type { Placed } from "./blocks";
import { plain, unitsOf } from "./spill";
import type { Given, Piled } from "./spill";
import { hardestStep } from "./worked";
import type { StepCall } from "./worked";

const valueColumn = blockColumns.indexOf("value");

/**
 * Pressure, speed and PV of the step with the greatest PV in the spreadsheet's own formulas on the duty's cells, a row for each
 * symbol: they calculate without the add-in.
 */
export function nativeSteps(duty: NamedDuty, placed: Placed, system: System, at: Corner): Piled {
  const rows: Written[][] = [blockColumns.map((value) => ({ value, heading: true }))];
  const work = ({ f, given }: Omit<StepCall, "answer">): Given => {
    const { id } = f.spec;
    rows.push([{ value: id, heading: true }]);
    const top = rows.length;
    const block = nativeBlock(f, given, { row: at.row + top, col: at.col });
    if (!block) throw new Error(`${id} has no plain formula for this duty. Nothing was written.`);
    rows.push(...block.rows.map((line) => line.map(writtenCell)), []);
    const { row } = block.answer;
    return {
      text: addressOf(at.row + top + row, at.col + valueColumn),
      value: present(block.rows[row])[valueColumn]?.value,
    };
  };
  const { pressure, speed } = hardestStep(duty, placed, system);
  const found = [pressure, ...(speed ? [speed] : [])].map(work);
  if (speed) work({ f: functions.PVVALUE, given: [...found, unitsOf(system)] });
  return plain(rows);
}

const writtenCell = (cell: BookCell | null): Written =>
  cell === null
    ? null
    : cell.formula === undefined
      ? (cell.value ?? null)
      : { formula: cell.formula, value: cell.value ?? null };
