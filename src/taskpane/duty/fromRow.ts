import { field, fieldHeadings, fields, motionOf } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Cell } from "../../core/formula";
import type { Motion } from "../../core/grade";
import type { System } from "../../core/kinds";
import { splitHeading } from "../../core/table/heading";
import { readTable } from "../../core/table/readTable";
import type { Place, ReadCell, SheetPort } from "../../port/sheet";
import { plainCells } from "../own/useLibrary";
import { activeKeys, emptyTexts, isChoice, isFormKey } from "./fields";
import type { FormKey, Texts } from "./fields";
import { withUnit } from "./quantity";
import { rateKey, stepKeys } from "./spectrum";

/** How far up a heading row is looked for, how far down the steps of a duty, and how far right both may reach. */
const above = 500;
const below = 100;
const across = 60;

export interface FromRow {
  /** The whole form: fields that the row does not name are empty. */
  readonly texts: Texts;
  /** The load spectrum, where the row is of a duty with steps. */
  readonly steps: string;
  /** Headings of the fields that were read. */
  readonly read: readonly string[];
  /** Sentences on what the row says and the form does not hold. */
  readonly unread: readonly string[];
  /** Row of the headings, counted from 1 as the sheet does. */
  readonly headingRow: number;
}

/** What was done, for the person who asked for it. */
export const fromRowText = ({ headingRow, read, unread }: FromRow): string =>
  [`Read by the headings in row ${headingRow}: ${read.join(", ")}.`, ...unread].join(" ");

/** The duty in the selected row, found by the headings above it; throws a sentence where there is none to read. */
export async function readSelectedRow(port: SheetPort, system: System): Promise<FromRow> {
  const place = await port.selection();
  if (!place) throw new Error("Select one cell of the row to read.");
  const top = Math.max(0, place.row - above);
  const at = place.row - top;
  const area: Place = { sheet: place.sheet, row: top, col: 0, rows: at + 1 + below, cols: across };
  const cells = await port.read(area);
  if (!cells[at] || cells[at].every(({ value }) => value === null)) throw new Error(`Row ${place.row + 1} is empty.`);
  for (let r = at - 1; r >= 0; r--) {
    const columns = columnsOf(cells[r]!);
    if (new Set(columns.map(({ key }) => key)).size < 2) continue;
    const rows = plainCells(cells.slice(r + 1));
    return { ...readRow(columns, rows, at - r - 1, system), headingRow: top + r + 1 };
  }
  throw new Error(
    `No headings above row ${place.row + 1} name at least two of: load, bore, length, rpm, temperature, motion.`,
  );
}

interface Column {
  readonly index: number;
  readonly heading: string;
  readonly key: FieldKey;
  readonly unit: string | undefined;
}

/** The columns that a heading row names of the list of duty fields. */
function columnsOf(headings: readonly ReadCell[]): Column[] {
  return headings.flatMap(({ value }, index) => {
    if (typeof value !== "string") return [];
    const { name, unit } = splitHeading(value);
    const key = fieldHeadings.find(name);
    return key === undefined ? [] : [{ index, heading: value, key, unit }];
  });
}

/** The form from one of the rows below the headings. */
function readRow(columns: readonly Column[], rows: Cell[][], at: number, system: System): Omit<FromRow, "headingRow"> {
  const read = stepRows(columns, rows, at).map((row) => ({ cells: row, ...valuesOf(columns, row, system) }));
  const steps = withMotions(read) as [Step, ...Step[]];
  const [{ cells, values, faults, motion: own }] = steps;
  checkPart(columns, cells, values, faults);
  checkSteps(columns, steps);
  const isStepped = steps.length > 1;
  const motion = isStepped ? (steps.find((step) => step.motion !== "static")?.motion ?? "turning") : own;
  const ofSteps = isStepped ? stepKeys(motion) : [];
  const unread = [...faults].map(([key, { code, message }]) =>
    code === "passed" ? `${field(key).heading}: ${message}.` : `${message}.`,
  );
  const texts: Partial<Record<FormKey, string>> = { motion };
  const idle: string[] = [];
  const lacking: string[] = [];
  for (const { key, index, unit } of columns) {
    if (values[key] === undefined || ofSteps.includes(key) || key === "motion") continue;
    if (!isFormKey(key)) {
      if (values[key] !== field(key).default && !silent.has(key)) lacking.push(field(key).heading);
    } else if (!activeKeys(motion).includes(key)) idle.push(field(key).heading);
    else texts[key] = isChoice(key) ? String(values[key]) : withUnit(String(cells[index]), unit ?? "");
  }
  if (idle.length > 0) unread.push(`Not used where the motion is ${motion}: ${idle.join(", ")}.`);
  if (lacking.length > 0) unread.push(`Not judged here, as the form has no field for it: ${lacking.join(", ")}.`);
  return {
    texts: { ...emptyTexts, ...texts },
    steps: isStepped ? stepsText(columns, steps, motion) : "",
    read: [...(Object.keys(texts) as FieldKey[]), ...ofSteps].map((key) => field(key).heading),
    unread,
  };
}
/** Names, and what is of the part and its steps, which are looked at before. */
const silent: ReadonlySet<FieldKey> = new Set(["duty", "grade", "part", "time"]);

interface Step {
  readonly cells: readonly Cell[];
  readonly values: FieldValues;
  readonly faults: ReadonlyMap<FieldKey, BushError>;
  readonly motion: Motion;
}

/** Reads a row with the reader of tables; zones, which the form does not have, stay as they are. */
function valuesOf(columns: readonly Column[], row: readonly Cell[], system: System): Omit<Step, "cells" | "motion"> {
  const reading = {
    list: fields,
    headings: fieldHeadings,
    system,
    name: "row",
    own: (_: unknown, cell: unknown) => cell,
  };
  const cells = [columns.map(({ heading }) => heading), columns.map(({ index }) => row[index] ?? null)];
  const [read] = readTable<typeof fields>(cells, reading).rows;
  return { values: (read?.values ?? {}) as FieldValues, faults: read?.faults ?? new Map<FieldKey, BushError>() };
}

/** The motion of each row, taken over from the row above where it says none; at first as the form starts. */
function withMotions(rows: readonly Omit<Step, "motion">[]): Step[] {
  let above: FieldValues = {};
  return rows.map((row) => {
    const motion = motionIn(row.values, above);
    above = { motion };
    return { ...row, motion };
  });
}

function motionIn(values: FieldValues, above: FieldValues): Motion {
  try {
    return motionOf(values, above);
  } catch (error) {
    if (error instanceof BushError) return emptyTexts.motion as Motion;
    throw error;
  }
}

/** What stands in a row under a field's heading. */
function cellAt(columns: readonly Column[], row: readonly Cell[] | undefined, key: FieldKey): Cell {
  const column = columns.find((c) => c.key === key);
  return (column && row?.[column.index]) ?? null;
}

/** The form holds plain sleeves: another part read as one would be judged wrongly. */
function checkPart(
  columns: readonly Column[],
  row: readonly Cell[],
  { part }: FieldValues,
  faults: ReadonlyMap<FieldKey, BushError>,
): void {
  const fault = faults.get("part");
  if (fault) throw new Error(`${fault.message}. Nothing was read.`);
  const has = (key: FieldKey) => cellAt(columns, row, key) !== null;
  const isWasher = part === "washer" || ((has("inner") || has("outer")) && !has("bore"));
  const other = isWasher ? "washer" : part === "flanged" ? "flanged bush" : undefined;
  if (other)
    throw new Error(`The row is of a ${other}, and the form knows plain sleeves only. Nothing was read: use DUTIES.`);
}

/** The selected row alone, or with the other steps of its duty: rows with a time, the first one's name or none. */
function stepRows(columns: readonly Column[], rows: Cell[][], at: number): Cell[][] {
  const isStep = (r: number) => cellAt(columns, rows[r], "time") !== null;
  const name = (r: number) => cellAt(columns, rows[r], "duty");
  if (!isStep(at) || !columns.some(({ key }) => key === "duty")) return [rows[at]!];
  let first = at;
  while (isStep(first - 1) && (name(first) === null || name(first - 1) === name(first))) first--;
  let end = first + 1;
  while (isStep(end) && (name(end) === null || name(end) === name(first))) end++;
  return rows.slice(first, end);
}

/** The steps of the form differ in load, rate and time; one that is at rest says so by its motion. */
function checkSteps(columns: readonly Column[], [first, ...later]: readonly [Step, ...Step[]]): void {
  const motions = new Set([first, ...later].flatMap(({ motion }) => (motion === "static" ? [] : [motion])));
  const changed = columns.find(({ key, index }) => {
    if (key === "motion") return motions.size > 1;
    if (["duty", "load", "rpm", "cycles", "time"].includes(key)) return false;
    return later.some(({ cells }) => (cells[index] ?? null) !== null && cells[index] !== first.cells[index]);
  });
  if (changed)
    throw new Error(
      `The duty's ${field(changed.key).heading} changes from step to step, which the form cannot hold. Nothing was read: use DUTIES.`,
    );
}

/** "800 N; 120; 10" for each step; a load or rate that is left out is that of the step above. */
function stepsText(columns: readonly Column[], steps: readonly Step[], motion: Motion): string {
  const carried: Partial<Record<FieldKey, string>> = {};
  const part = (key: FieldKey, { cells, motion: own }: Step): string => {
    if (key === rateKey(motion) && own === "static") return "0";
    const cell = cellAt(columns, cells, key);
    if (cell === null) return carried[key] ?? "";
    const text = cell instanceof BushError ? cell.message : String(cell);
    return (carried[key] = withUnit(text, columns.find((c) => c.key === key)?.unit ?? ""));
  };
  return steps
    .map((step) =>
      stepKeys(motion)
        .map((key) => part(key, step))
        .join("; "),
    )
    .join("\n");
}
