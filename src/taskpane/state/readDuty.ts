import { NamedDuty, field, fieldHeadings, readOwn, stepValues } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError, orFault } from "../../core/errors";
import type { System } from "../../core/kinds";
import { readValue } from "../../core/table/readValue";
import { eachOf, keysAt, partOf } from "./form";
import type { Form, Texts } from "./form";

/** What one row of the form says. */
export interface ReadRow {
  /** Working values of the fields that could be read. */
  readonly values: FieldValues;
  readonly faults: Readonly<Partial<Record<FieldKey, string>>>;
  /** Required fields without text. */
  readonly missing: readonly FieldKey[];
}

export interface ReadDuty {
  readonly rows: readonly [ReadRow, ...ReadRow[]];
  /** What is wrong with the duty as a whole. */
  readonly fault?: string;
  /** There when nothing is at fault or missing; what every part of the pane judges. */
  readonly duty?: NamedDuty;
}

/** The name of a duty that was given none; "Duty" alone would be read as a heading. */
export const unnamed = "Duty 1";

/** Reads the form row by row; each fault stays at its field. */
export function readDuty(form: Form, system: System): ReadDuty {
  const [first, ...later] = eachOf(form, (texts, row) => readRow(texts, keysAt(form, row), system, row > 0));
  const read: ReadDuty = { rows: [washerLoad(form, first), ...later] };
  if (read.rows.some(({ faults, missing }) => missing.length > 0 || Object.keys(faults).length > 0)) return read;
  return judgeable(read, system);
}

/** A washer's load stands in either of two fields. */
function washerLoad(form: Form, row: ReadRow): ReadRow {
  if (partOf(form) !== "washer" || row.values.axialLoad === undefined) return row;
  return { ...row, missing: row.missing.filter((key) => key !== "load") };
}

/** A plain number is in the system's unit, a plain percentage in per cent. A later step takes over what it leaves empty. */
function readRow(texts: Texts, keys: readonly FieldKey[], system: System, isLater: boolean): ReadRow {
  const values: Partial<Record<FieldKey, FieldValue>> = {};
  const faults: Partial<Record<FieldKey, string>> = {};
  const missing: FieldKey[] = [];
  for (const key of keys) {
    const text = (texts[key] ?? "").trim();
    try {
      if (text !== "") values[key] = readText(key, text, system);
      else if (key === "time" || (field(key).required && !isLater)) missing.push(key);
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      faults[key] = error.message;
    }
  }
  return { values: values as FieldValues, faults, missing };
}

type FieldValue = FieldValues[FieldKey];
const readText = (key: FieldKey, text: string, system: System): FieldValue =>
  readValue(field(key), text, field(key).kind === "percent" ? "%" : undefined, system, readOwn) as FieldValue;

/** Whether the form would take a text under this field. */
export function isReadable(key: FieldKey, text: string, system: System): boolean {
  return !(orFault(() => readText(key, text, system)) instanceof BushError);
}

/** The duty of rows that can be read, or what they have against each other. */
function judgeable(read: ReadDuty, system: System): ReadDuty {
  let above: FieldValues = {};
  let row = 0;
  try {
    const steps = read.rows.map(({ values }, i) => {
      row = i;
      const step = stepValues(values, above, i > 0, read.rows.length > 1);
      above = step.values;
      return step;
    });
    row = 0;
    return { ...read, duty: new NamedDuty(read.rows[0].values.duty ?? unnamed, steps, system) };
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    const key = fieldHeadings.find(error.argument);
    if (key === undefined || key === "duty") return { ...read, fault: error.message };
    return { rows: eachOf(read.rows, (one, i) => (i === row ? { ...one, faults: { [key]: error.message } } : one)) };
  }
}
