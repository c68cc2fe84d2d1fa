import { field } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { BushError, clash } from "../../core/errors";
import type { Motion } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { readValue } from "../../core/table/readValue";
import { keepUnit } from "./quantity";

/** What a step sets: its load, how fast it moves, and how long it lasts. */
export const stepKeys = (motion: string): readonly FieldKey[] => ["load", rateKey(motion), "time"];
export const rateKey = (motion: string): FieldKey => (motion === "turning" ? "rpm" : "cycles");

/** "load; rpm; time" */
export const stepText = (motion: string): string => headings(stepKeys(motion)).join("; ");
const headings = (keys: readonly FieldKey[]): string[] => keys.map((key) => field(key).heading);

/** A load spectrum as typed, one step per line; a shaft at rest has none. */
export const linesOf = (text: string, motion: string): string[] =>
  motion === "static" ? [] : text.split(/\r?\n/).filter((line) => line.trim() !== "");

/** The steps' own values; throws what is wrong, naming the step. The other fields of the duty hold for every step. */
export function readSteps(text: string, motion: Motion, system: System): FieldValues[] {
  const keys = stepKeys(motion);
  return linesOf(text, motion).map((line, i) => {
    const parts = line.split(/[;\t|]/).map((cell) => cell.trim());
    const name = `step ${i + 1}`;
    if (parts.length !== keys.length)
      throw clash(
        name,
        `${name} must be ${stepText(motion)}, got ${parts.length} part${parts.length === 1 ? "" : "s"}`,
      );
    try {
      return Object.fromEntries(keys.map((key, k) => [key, readValue(field(key), parts[k]!, undefined, system)]));
    } catch (error) {
      throw error instanceof BushError ? new BushError(error.code, name, `${name}: ${error.message}`) : error;
    }
  });
}

/** The same steps in the other unit system: a plain load gets the unit that it had. */
export const keepStepUnits = (text: string, from: System): string =>
  text.replace(/^[^;\t|\n]+/gm, (load) => keepUnit("force", load, from));
