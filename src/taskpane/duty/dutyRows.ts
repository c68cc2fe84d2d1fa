import { field, fieldHeadings, fields, groupsOf, isSame, motionOf, readOwn } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Cell } from "../../core/formula";
import type { Zone } from "../../core/fit/zone";
import type { Motion } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { splitHeading } from "../../core/table/heading";
import { keyOf, readTable } from "../../core/table/readTable";
import type { Row } from "../../core/table/readTable";
import type { ReadCell } from "../../port/sheet";
import { emptyTexts } from "../state/fields";
import { withUnit } from "../state/quantity";
import { rateKey, stepKeys } from "../state/spectrum";

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
  const { rows: read, columns: named } = readRows(columns, rows, system);
  const hasNames = ["duty", "time"].every((wanted) => named.some(({ key }) => key === wanted));
  const isSelected = ({ number }: Read) => number === at + firstNumber;
  const group = groupsOf(read, hasNames).find((steps) => steps.some(isSelected)) ?? [];
  const untimed = group.find(({ values, faults }) => values.time === undefined && !faults.has("time"));
  if (group.length > 1 && untimed)
    throw new Error("time is missing: each step of a duty needs its time. Nothing was read.");
  let above: FieldValues = {};
  const steps = group.map(({ number, values, faults }): DutyRow => {
    const motion = motionIn(values, above);
    above = { motion };
    return { cells: rows[number - firstNumber]!, values, faults, motion };
  });
  checkSame(columns, steps);
  const [first = blankRow, ...later] = steps;
  return [first, ...later];
}

type Read = Row<typeof fields, { zone: Zone }>;
/** The reader counts from 1 and has the headings in front. */
const firstNumber = 2;
const blankRow: DutyRow = { cells: [], values: {}, faults: new Map(), motion: emptyTexts.motion as Motion };

/** The reader of tables on the columns that name a field; without one of names or of times each row is a duty. */
function readRows(columns: readonly Column[], rows: readonly Cell[][], system: System) {
  const cells = [
    columns.map(({ heading }) => heading),
    ...rows.map((row) => columns.map(({ index }) => row[index] ?? null)),
  ];
  return readTable<typeof fields, { zone: Zone }>(cells, {
    ...{ list: fields, headings: fieldHeadings, name: "row" },
    ...{ system, own: readOwn },
  });
}

/** Where a row and the one above it fill nothing that tells it, as the form starts. */
function motionIn(values: FieldValues, above: FieldValues): Motion {
  const isTold = [values, above].some(({ motion, rpm, swing, stroke }) =>
    [motion, rpm, swing, stroke].some((told) => told !== undefined),
  );
  return isTold ? motionOf(values, above) : (emptyTexts.motion as Motion);
}

/** The motion of a duty: a step at rest has none. */
export const motionOfRows = (rows: DutyRows): Motion =>
  rows.find(({ motion }) => motion !== "static")?.motion ?? (rows.length > 1 ? "turning" : "static");

/** What the steps of the form have each for themselves, and what a step at rest leaves out. */
const ofSteps: ReadonlySet<FieldKey> = new Set(["duty", "load", "rpm", "cycles", "time"]);

function checkSame(columns: readonly Column[], rows: readonly DutyRow[]): void {
  const changed = columns.find(({ key }) => {
    if (ofSteps.has(key)) return false;
    if (key === "motion") return new Set(rows.map(({ motion }) => motion).filter((m) => m !== "static")).size > 1;
    // a step at rest leaves out how far the others move
    const isLater = key === "swing" || key === "stroke";
    const first = isLater ? rows.find(({ values }) => values[key] !== undefined) : rows[0];
    return rows.some(
      ({ values, faults }) =>
        (faults.has(key) && !rows[0]!.faults.has(key)) ||
        (values[key] !== undefined && !isSame(values[key], first?.values[key] ?? field(key).default)),
    );
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
