import { NamedDuty, field, fieldHeadings, readOwn, stepValues } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Motion } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { readValue } from "../../core/table/readValue";
import { activeKeys, isFormKey, part } from "./fields";
import type { FormKey, Texts } from "./fields";
import { linesOf, readSteps, stepKeys } from "./spectrum";

export interface ReadDuty {
  /** Working values of the fields that could be read. */
  readonly values: FieldValues;
  readonly faults: Readonly<Partial<Record<FormKey, string>>>;
  /** Required fields without text. */
  readonly missing: readonly FormKey[];
  /** Fields that each step of the spectrum has for itself: what stands in the form does not count. */
  readonly ofSteps: readonly FormKey[];
  /** What is wrong with the spectrum. */
  readonly stepsFault?: string;
  /** What is wrong with the duty as a whole. */
  readonly fault?: string;
  /** There when nothing is at fault or missing; what every part of the pane judges. */
  readonly duty?: NamedDuty;
}

/** Reads the form and its spectrum, empty where there is none; each fault stays at its field. */
export function readDuty(texts: Texts, spectrum: string, system: System): ReadDuty {
  const motion = texts.motion as Motion;
  const hasSteps = linesOf(spectrum, motion).length > 0;
  const ofSteps = hasSteps ? stepKeys(motion).filter(isFormKey) : [];
  const keys = activeKeys(texts.motion).filter((key) => !ofSteps.includes(key));
  const { steps, ...stepsRead } = stepsOf(spectrum, motion, system);
  const fields = { ...readFields(texts, keys, system), ofSteps, ...stepsRead };
  if (fields.missing.length > 0 || Object.keys(fields.faults).length > 0 || !steps) return fields;
  try {
    return { ...fields, duty: dutyOf(fields.values, steps) };
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    const key = fieldHeadings.find(error.argument);
    if (key === undefined || !isFormKey(key)) return { ...fields, fault: error.message };
    return { ...fields, faults: { [key]: error.message } };
  }
}

/** What texts say under their fields. A plain number is in the system's unit, a plain percentage in per cent. */
export function readFields<K extends FieldKey>(texts: Readonly<Record<K, string>>, keys: readonly K[], system: System) {
  const values: Record<string, unknown> = {};
  const faults: Partial<Record<K, string>> = {};
  const missing: K[] = [];
  for (const key of keys) {
    const text = texts[key].trim();
    const entry = field(key);
    const unit = entry.kind === "percent" ? "%" : undefined;
    try {
      if (text !== "") values[key] = readValue(entry, text, unit, system, readOwn);
      else if (entry.required) missing.push(key);
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      faults[key] = error.message;
    }
  }
  return { values: values as FieldValues, faults, missing };
}

function stepsOf(text: string, motion: Motion, system: System): { steps?: FieldValues[]; stepsFault?: string } {
  try {
    return { steps: readSteps(text, motion, system) };
  } catch (error) {
    if (error instanceof BushError) return { stepsFault: error.message };
    throw error;
  }
}

/** The form's values as one step, or as what the steps of the spectrum share. */
function dutyOf(values: FieldValues, steps: readonly FieldValues[]): NamedDuty {
  const [first = {}, ...later] = steps;
  let above: FieldValues = {};
  const rows = [{ part, ...values, ...first }, ...later].map((row, i) => {
    const step = stepValues(row, above, i > 0, steps.length > 1);
    above = step.values;
    return step;
  });
  return new NamedDuty("", rows);
}
