import { field, fieldHeadings, fields, motionOf } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Cell } from "../../core/formula";
import type { Motion } from "../../core/grade";
import type { System } from "../../core/kinds";
import { splitHeading } from "../../core/table/heading";
import { keyOf, readTable } from "../../core/table/readTable";
import type { ReadCell } from "../../port/sheet";
import { emptyTexts } from "./fields";
import { withUnit } from "./quantity";
import { rateKey, stepKeys } from "./spectrum";

/** A column whose heading names a field of the list. */
export interface Column {
  readonly index: number;
  readonly heading: string;
  readonly key: FieldKey;
  readonly unit: string | undefined;
}

export function columnsOf(headings: readonly ReadCell[]): Column[] {
  return headings.flatMap(({ value }, index) => {
    if (typeof value !== "string") return [];
    const key = keyOf(value, fieldHeadings);
    return key === undefined ? [] : [{ index, heading: value, key, unit: splitHeading(value).unit }];
  });
}

/** What stands in a row under a field's heading. */
export function cellAt(columns: readonly Column[], row: readonly Cell[] | undefined, key: FieldKey): Cell {
  const column = columns.find((c) => c.key === key);
  return (column && row?.[column.index]) ?? null;
}

/** One row of a duty: the only one, or one of its steps. */
export interface DutyRow {
  readonly cells: readonly Cell[];
  readonly values: FieldValues;
  readonly faults: ReadonlyMap<FieldKey, BushError>;
  readonly motion: Motion;
}
export type DutyRows = readonly [DutyRow, ...DutyRow[]];

/** The selected row alone, or with the other steps of its duty; throws where steps differ in what the form has once. */
export function rowsOf(columns: readonly Column[], rows: readonly Cell[][], at: number, system: System): DutyRows {
  let above: FieldValues = {};
  const read = stepsAround(columns, rows, at).map((cells): DutyRow => {
    const { values, faults } = readCells(columns, cells, system);
    const motion = motionIn(values, above);
    above = { motion };
    return { cells, values, faults, motion };
  });
  checkSame(columns, read);
  return read as unknown as DutyRows;
}

/** Rows with a time, the first one's name or none; without a column of names and one of times each row is a duty. */
function stepsAround(columns: readonly Column[], rows: readonly Cell[][], at: number): readonly Cell[][] {
  const isStep = (r: number) => cellAt(columns, rows[r], "time") !== null;
  const name = (r: number) => cellAt(columns, rows[r], "duty");
  if (!isStep(at) || !columns.some(({ key }) => key === "duty")) return [rows[at]!];
  let first = at;
  while (isStep(first - 1) && (name(first) === null || name(first - 1) === name(first))) first--;
  let end = first + 1;
  while (isStep(end) && (name(end) === null || name(end) === name(first))) end++;
  return rows.slice(first, end);
}

/** The reader of tables on one row; zones, which the form does not have, stay as they are. */
function readCells(columns: readonly Column[], row: readonly Cell[], system: System) {
  const own = (_: unknown, cell: unknown) => cell;
  const cells = [columns.map(({ heading }) => heading), columns.map(({ index }) => row[index] ?? null)];
  const table = readTable<typeof fields>(cells, { list: fields, headings: fieldHeadings, system, name: "row", own });
  const { values = {}, faults = new Map<FieldKey, BushError>() } = table.rows[0] ?? {};
  return { values: values as FieldValues, faults };
}

/** Where a row and the one above it say none, as the form starts. */
function motionIn(values: FieldValues, above: FieldValues): Motion {
  try {
    return motionOf(values, above);
  } catch (error) {
    if (error instanceof BushError) return emptyTexts.motion as Motion;
    throw error;
  }
}

/** The motion of a duty: a step at rest has none. */
export const motionOfRows = (rows: DutyRows): Motion =>
  rows.find(({ motion }) => motion !== "static")?.motion ?? (rows.length > 1 ? "turning" : "static");

/** What the steps of the form have each for themselves, and what a step at rest leaves out. */
const ofSteps: ReadonlySet<FieldKey> = new Set(["duty", "load", "rpm", "cycles", "time"]);

function checkSame(columns: readonly Column[], rows: readonly DutyRow[]): void {
  const changed = columns.find(({ key, index }) => {
    if (ofSteps.has(key)) return false;
    if (key === "motion") return new Set(rows.map(({ motion }) => motion).filter((m) => m !== "static")).size > 1;
    return new Set(rows.map(({ cells }) => cells[index] ?? null).filter((cell) => cell !== null)).size > 1;
  });
  if (changed)
    throw new Error(
      `The duty's ${field(changed.key).heading} changes from step to step, which the form cannot hold. Nothing was read: use DUTIES.`,
    );
}

/** "800 N; 120; 10" for each step; a load or rate that is left out is that of the step above. */
export function stepsText(columns: readonly Column[], rows: DutyRows, motion: Motion): string {
  const carried: Partial<Record<FieldKey, string>> = {};
  const part = (key: FieldKey, { cells, motion: own }: DutyRow): string => {
    if (key === rateKey(motion) && own === "static") return "0";
    const cell = cellAt(columns, cells, key);
    if (cell === null) return carried[key] ?? "";
    const text = cell instanceof BushError ? cell.message : String(cell);
    return (carried[key] = withUnit(text, columns.find((c) => c.key === key)?.unit ?? ""));
  };
  return rows
    .map((row) =>
      stepKeys(motion)
        .map((key) => part(key, row))
        .join("; "),
    )
    .join("\n");
}
