import { BushError } from "../../core/errors";
import type { Duty } from "../../core/grade";
import { dutyPv } from "../../core/pv/dutyPv";
import { readQuantity } from "../../core/units";
import type { System } from "../../core/kinds";
import { dutyOf, keepUnit, numberFields } from "./fields";
import type { NumberField, ReadDuty, Texts } from "./fields";

/** One step of a load spectrum: the duty with its own load and rate, and how long it lasts. */
export interface Step {
  readonly load: number;
  readonly rate: number;
  readonly time: number;
  readonly duty: Duty;
}

export interface Spectrum {
  readonly steps: readonly Step[];
  /** Time-weighted mean PV; there when the steps could all be read. */
  readonly pv?: number;
  readonly fault?: string;
}

/** The field that a step sets beside its load. */
export const rateField = (texts: Texts): NumberField => (texts.motion === "turning" ? "rpm" : "cycles");

/** Reads "load; rate; time", one step per line. The other fields of the duty hold for every step. */
export function readSpectrum(text: string, texts: Texts, read: ReadDuty, system: System): Spectrum {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "");
  if (lines.length === 0 || !read.duty) return { steps: [] };
  try {
    const steps = lines.map((line, i) => readStep(line, i + 1, texts, read, system));
    const [pv] = dutyPv({
      pressures: steps.map(({ duty }) => duty.pressure * (duty.impactFactor ?? 1)),
      speeds: steps.map(({ duty }) => duty.speed),
      times: steps.map(({ time }) => time),
    });
    return { steps, pv };
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    return { steps: [], fault: error.message };
  }
}

function readStep(line: string, number: number, texts: Texts, read: ReadDuty, system: System): Step {
  const rate = rateField(texts);
  const parts = line.split(/[;\t|]/).map((part) => part.trim());
  const name = `step ${number}`;
  if (parts.length !== 3)
    throw new BushError("value", name, `${name} must be load; ${rate}; time, got ${parts.length} parts`);
  const [load = "", speed = "", time = ""] = parts;
  const step = {
    load: atLeastZero(`${name} load`, readQuantity(`${name} load`, numberFields.load.kind, load, system), load),
    rate: atLeastZero(`${name} ${rate}`, readQuantity(`${name} ${rate}`, "rate", speed, system), speed),
    time: atLeastZero(`${name} time`, readQuantity(`${name} time`, "time", time, system), time),
  };
  const values = { ...read.values, load: step.load, [rate]: step.rate } as Record<NumberField, number>;
  return { ...step, duty: dutyOf(texts, values) };
}

function atLeastZero(name: string, value: number, found: string): number {
  if (value >= 0) return value;
  throw new BushError("value", name, `${name} must be 0 or more, got "${found}"`);
}

/** The same steps in the other unit system: a plain load gets the unit that it had. */
export const keepStepUnits = (text: string, from: System): string =>
  text.replace(/^[^;\t|\n]+/gm, (load) => keepUnit(numberFields.load.kind, load, from));
