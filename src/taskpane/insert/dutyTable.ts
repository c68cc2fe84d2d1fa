import { Band } from "../../core/band";
import { field, fieldHeading, fieldKeys, stepKeys } from "../../core/duties";
import type { FieldKey, FieldValues, NamedDuty } from "../../core/duties";
import { Deviations } from "../../core/fit/zones/zone";
import type { Span } from "../../core/formula";
import { keysOf, mapped } from "../../core/keyed";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { fromWorking } from "../../core/units/scale";
import { addressOf, areaText } from "../../port/address";
import type { Corner, Written } from "../../port/sheet";
import { kindOf, unitOf } from "../state/fields";

/** A duty as cells of a sheet, which the pane and every function of duties read back. */
export interface DutyTable {
  /** A table's headings and a row for each step, or a card's headings and values. */
  readonly rows: Written[][];
  /** Headings and values as a reference. */
  readonly area: string;
  /** Where a field of a step stands; a later step takes over what it leaves out. */
  readonly refs: readonly Readonly<Partial<Record<FieldKey, string>>>[];
}

/** Fields that any step fills, in the order of the list; the name first in any case. */
function usedKeys(steps: readonly Cells[]): FieldKey[] {
  return fieldKeys.filter((key) => key === "duty" || steps.some((cells) => cells[key] !== undefined));
}

/** Headings, and below them a row for each step. */
export function dutyTable(duty: NamedDuty, system: System, at: Corner): DutyTable {
  const steps = duty.steps.map((_, i) => stepCells(duty, i, system));
  const keys = usedKeys(steps);
  const headings = keys.map((key) => ({ value: fieldHeading(key, system), heading: true as const }));
  const rows = [headings, ...steps.map((cells) => keys.map((key) => cells[key] ?? null))];
  const address = (row: number, key: FieldKey) => addressOf(at.row + 1 + row, at.col + keys.indexOf(key));
  return { rows, area: areaText({ ...at, rows: rows.length, cols: keys.length }), refs: refsOf(steps, address) };
}

/** Headings down the first of two columns; only a duty of one step has room on one. */
export function dutyCard(duty: NamedDuty, system: System, at: Corner): DutyTable {
  if (duty.steps.length > 1) throw new Error("A card holds one step: insert the duty as rows.");
  const cells = stepCells(duty, 0, system);
  const keys = usedKeys([cells]);
  const rows = keys.map((key): Written[] => [{ value: fieldHeading(key, system), heading: true }, cells[key] ?? null]);
  const address = (_: number, key: FieldKey) => addressOf(at.row + keys.indexOf(key), at.col + 1);
  return { rows, area: areaText({ ...at, rows: rows.length, cols: 2 }), refs: refsOf([cells], address) };
}

function refsOf(steps: readonly Cells[], address: (row: number, key: FieldKey) => string): DutyTable["refs"] {
  let above: Partial<Record<FieldKey, string>> = {};
  return steps.map((cells, row) => {
    above = { ...above, ...mapped(cells, (_, key) => address(row, key)) };
    return above;
  });
}

type Cells = Readonly<Partial<Record<FieldKey, string | number>>>;

/** What a step's row says: the first all of it, later ones what differs from the row above; the motion is always told. */
function stepCells(duty: NamedDuty, i: number, system: System): Cells {
  const { values, motion } = present(duty.steps[i]);
  const above = i === 0 ? {} : present(duty.steps[i - 1]).values;
  const isAtRest = duty.corners.every((corner) => present(corner.steps[i]).motion === "static");
  const keys = keysOf(values).filter(
    (key) =>
      key !== "motion" &&
      values[key] !== undefined &&
      !(isAtRest && movement.has(key)) &&
      (i === 0 || (stepKeys.has(key) && key !== "duty" && (key === "time" || values[key] !== above[key]))),
  );
  const cells: Partial<Record<FieldKey, string | number>> = i === 0 ? { duty: duty.name } : {};
  cells.motion = isAtRest ? "static" : motion;
  for (const key of keys) cells[key] = fieldCell(key, present(values[key]), system);
  return cells;
}

/** At rest the motion says so, since a table takes no rate of 0. */
const movement: ReadonlySet<FieldKey> = new Set(["rpm", "swing", "stroke", "cycles"]);

/** A value as a table reads it under its heading: plain in the heading's unit. */
function fieldCell(key: FieldKey, value: NonNullable<FieldValues[FieldKey]>, system: System): string | number {
  const { kind, typeZero, blankZero } = field(key);
  if (value instanceof Deviations) return value.toString(system);
  if (Array.isArray(value)) return value.join(", ");
  if (typeof value === "string" || (kind !== "span" && !(kind in kinds))) return String(value);
  const isPercent = kind === "percent";
  const shown = (x: number) => Number((isPercent ? x * 100 : fromWorking(kindOf(key), x, system)).toPrecision(12));
  const unit = unitOf(key, system);
  const text = (x: number) => `${shown(x)}${unit === "" ? "" : ` ${unit}`}`;
  // hosts may hand a blank over as 0: tables take a bare one under some headings only; a plain percentage could be a ratio
  const cell = (x: number) => (isPercent || (shown(x) === 0 && (typeZero ?? blankZero)) ? text(x) : shown(x));
  if (typeof value === "number") return cell(value);
  const { low, high } = value as Band | Span;
  if (value instanceof Band && value.likely !== undefined)
    return `${cell(value.likely)} ± ${Number((shown(high) - shown(value.likely)).toPrecision(12))}`;
  return low === high ? cell(low) : isPercent ? `${shown(low)} to ${text(high)}` : `${shown(low)} to ${shown(high)}`;
}
