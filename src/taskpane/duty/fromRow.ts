import { field } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import type { Cell } from "../../core/formula";
import type { System } from "../../core/kinds";
import type { Place, SheetPort } from "../../port/sheet";
import { plainCells } from "../state/useLibrary";
import { cellAt, columnsOf, motionOfRows, rowsOf, stepsText } from "./dutyRows";
import type { Column, DutyRow } from "./dutyRows";
import { activeKeys, emptyTexts, isChoice, isFormKey } from "../state/fields";
import type { FormKey, Texts } from "../state/fields";
import { withUnit } from "../state/quantity";
import { stepKeys } from "../state/spectrum";

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
    return { ...formOf(columns, plainCells(cells.slice(r + 1)), at - r - 1, system), headingRow: top + r + 1 };
  }
  throw new Error(
    `No headings above row ${place.row + 1} name at least two of: load, bore, length, rpm, temperature, motion.`,
  );
}

/** Names, and what is of the part and its steps, which are looked at apart. */
const silent: ReadonlySet<FieldKey> = new Set(["duty", "grade", "part", "time"]);

/** The form from one of the rows below the headings. */
function formOf(columns: readonly Column[], cells: Cell[][], at: number, system: System): Omit<FromRow, "headingRow"> {
  const rows = rowsOf(columns, cells, at, system);
  checkPart(columns, rows[0]);
  const motion = motionOfRows(rows);
  const drive = rows.find((row) => row.motion === motion) ?? rows[0];
  const ofSteps = rows.length > 1 ? stepKeys(motion) : [];
  const texts: Partial<Record<FormKey, string>> = { motion };
  const idle: string[] = [];
  const lacking: string[] = [];
  for (const { key, index, unit } of columns) {
    // a step at rest leaves out how far the others move
    const row = key === "swing" || key === "stroke" ? drive : rows[0];
    const value = row.values[key];
    if (value === undefined || ofSteps.includes(key) || key === "motion" || silent.has(key)) continue;
    if (!isFormKey(key)) {
      if (value !== field(key).default) lacking.push(field(key).heading);
    } else if (!activeKeys(motion).includes(key)) idle.push(field(key).heading);
    else texts[key] = isChoice(key) ? String(value) : withUnit(String(row.cells[index]), unit ?? "");
  }
  return {
    texts: { ...emptyTexts, ...texts },
    steps: rows.length > 1 ? stepsText(columns, rows, motion) : "",
    read: [...(Object.keys(texts) as FieldKey[]), ...ofSteps].map((key) => field(key).heading),
    unread: [
      ...faultTexts(rows[0]),
      ...(idle.length > 0 ? [`Not used where the motion is ${motion}: ${idle.join(", ")}.`] : []),
      ...(lacking.length > 0 ? [`Not judged here, as the form has no field for it: ${lacking.join(", ")}.`] : []),
    ],
  };
}

/** What could not be read; a cell's own error does not name its heading. */
const faultTexts = ({ faults }: DutyRow): string[] =>
  [...faults].map(([key, { code, message }]) =>
    code === "passed" ? `${field(key).heading}: ${message}.` : `${message}.`,
  );

/** The form holds plain sleeves: another part read as one would be judged wrongly. */
function checkPart(columns: readonly Column[], { cells, values: { part }, faults }: DutyRow): void {
  const fault = faults.get("part");
  if (fault) throw new Error(`${fault.message}. Nothing was read.`);
  const has = (key: FieldKey) => cellAt(columns, cells, key) !== null;
  const isWasher = part === "washer" || ((has("inner") || has("outer")) && !has("bore"));
  const other = isWasher ? "washer" : part === "flanged" ? "flanged bush" : undefined;
  if (other)
    throw new Error(`The row is of a ${other}, and the form knows plain sleeves only. Nothing was read: use DUTIES.`);
}
