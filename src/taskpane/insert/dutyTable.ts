import { Band } from "../../core/band";
import { field, fieldHeading } from "../../core/duties";
import type { FieldKey, FieldValues, NamedDuty } from "../../core/duties";
import type { Span } from "../../core/formula";
import type { System } from "../../core/kinds";
import { fromWorking } from "../../core/units";
import { addressOf } from "../../port/address";
import type { Corner, Written } from "../../port/sheet";
import { formKeys, kindOf, unitOf } from "../state/fields";
import { stepKeys } from "../state/spectrum";

/** A duty as rows of a sheet, which the pane and every function of duties read back. */
export interface DutyTable {
  /** Headings first; then a row for each step, once for each grade. */
  readonly rows: Written[][];
  /** Headings and rows as a reference. */
  readonly area: string;
  /** Where a field of a step stands. */
  readonly refs: readonly Readonly<Partial<Record<FieldKey, string>>>[];
}

/** With grades, one duty for each of them: the first holds the figures, the others follow it. */
export function dutyTable(duty: NamedDuty, grades: readonly string[], system: System, at: Corner): DutyTable {
  const steps = duty.steps.map((_, i) => stepCells(duty, i, system));
  const isFilled = (key: FieldKey) => steps.some((cells) => cells[key] !== undefined);
  const order: readonly FieldKey[] = [...formKeys, "time"];
  const keys: FieldKey[] = ["duty", ...(grades.length > 0 ? (["grade"] as const) : []), ...order.filter(isFilled)];
  const address = (row: number, key: FieldKey) => addressOf(at.row + 1 + row, at.col + keys.indexOf(key));
  const named = grades.length > 0 ? grades.map((grade) => ({ duty: `Duty with ${grade}`, grade })) : [{ duty: "Duty" }];
  const rows = named.flatMap((names, g) =>
    steps.map((cells, row) =>
      keys.map((key): Written => {
        if (key === "duty" || key === "grade")
          return row === 0 ? ((names as Partial<typeof cells>)[key] ?? null) : null;
        if (cells[key] === undefined) return null;
        return g === 0 ? cells[key] : { formula: `=${address(row, key)}` };
      }),
    ),
  );
  const refs = steps.map((cells, row) =>
    Object.fromEntries((Object.keys(cells) as FieldKey[]).map((key) => [key, address(row, key)])),
  );
  return {
    rows: [keys.map((key) => ({ value: fieldHeading(key, system), heading: true as const })), ...rows],
    area: `${addressOf(at.row, at.col)}:${addressOf(at.row + rows.length, at.col + keys.length - 1)}`,
    refs,
  };
}

type Cells = Readonly<Partial<Record<FieldKey, string | number>>>;

const movement: readonly FieldKey[] = ["rpm", "swing", "stroke", "cycles"];

/** What a step's row says: the first all of it, later ones what may differ. At rest the motion says so, since a table takes no rate of 0. */
function stepCells({ steps, corners }: NamedDuty, i: number, system: System): Cells {
  const { values, motion } = steps[i]!;
  const isAtRest = corners.every((corner) => corner.steps[i]!.motion === "static");
  const own: readonly FieldKey[] =
    i === 0 ? [...formKeys, ...(steps.length > 1 ? (["time"] as const) : [])] : [...stepKeys(motion), ...movement];
  const keys = own.filter(
    (key) => key !== "motion" && values[key] !== undefined && !(isAtRest && movement.includes(key)),
  );
  return {
    motion: isAtRest ? "static" : motion,
    ...Object.fromEntries(keys.map((key) => [key, cellOf(key, values, system)])),
  };
}

/** A value as a table reads it under its heading: plain in the heading's unit. */
function cellOf(key: FieldKey, values: FieldValues, system: System): string | number {
  const value = values[key] as string | number | Band | Span;
  if (typeof value === "string") return value;
  const shown = (x: number) => Number(fromWorking(kindOf(key), x, system).toPrecision(12));
  // hosts may hand a blank over as 0: tables take a bare one under some headings only
  const cell = (x: number) => (shown(x) === 0 && field(key).typeZero ? `0 ${unitOf(key, system)}` : shown(x));
  if (typeof value === "number") return cell(value);
  const { low, high } = value;
  if (value instanceof Band && value.likely !== undefined)
    return `${shown(value.likely)} ± ${Number((shown(high) - shown(value.likely)).toPrecision(12))}`;
  return low === high ? cell(low) : `${shown(low)} to ${shown(high)}`;
}
