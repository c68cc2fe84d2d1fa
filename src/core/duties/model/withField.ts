import { Band } from "../../band";
import type { FieldKey, FieldValues } from "./fields";
import { NamedDuty } from "./namedDuty";
import { isSame, stepValues } from "./stepValues";
import type { StepValues } from "./stepValues";

/** A value of a duty and the steps that have it, counted from 0. */
export interface Held {
  readonly value: NonNullable<FieldValues[FieldKey]>;
  readonly steps: readonly number[];
}

/**
 * The values of a field over a duty's steps, each once: what a step takes over is the same value, and so is one typed
 * again. The time is each step's own.
 */
export function heldValues({ steps }: NamedDuty, key: FieldKey): Held[] {
  const held: { value: Held["value"]; steps: number[] }[] = [];
  steps.forEach(({ values }, step) => {
    const value = values[key];
    if (value === undefined) return;
    const known = key === "time" ? undefined : held.find((other) => movesWith(other.value, value));
    if (known) known.steps.push(step);
    else held.push({ value, steps: [step] });
  });
  return held;
}

/** The steps, counted from 0, whose value of a field is that of the first: those that move with it. */
export const stepsLikeFirst = ({ steps, values: first }: NamedDuty, key: FieldKey): readonly number[] =>
  steps.flatMap(({ values }, step) => {
    const isMoved = step === 0 || (key !== "time" && movesWith(values[key], first[key]));
    return isMoved ? [step] : [];
  });

/** Bands vary each by itself, so that two of the same ends are two. */
const movesWith = (a: FieldValues[FieldKey], b: FieldValues[FieldKey]): boolean =>
  a instanceof Band ? a === b : isSame(a, b);

/** The duty with a field at another value in some of its steps; its rows are checked as if they had been typed so. With a corner's number that corner alone. */
export function withField(
  duty: NamedDuty,
  key: FieldKey,
  value: FieldValues[FieldKey],
  moved: readonly number[],
  corner?: number,
): NamedDuty {
  let above: FieldValues = {};
  const steps = duty.steps.map(({ values }, i): StepValues => {
    const own = moved.includes(i) ? { ...values, [key]: value } : values;
    const step = stepValues(own, above, i > 0, duty.steps.length > 1);
    above = step.values;
    return step;
  });
  return new NamedDuty(duty.name, steps, duty.system, corner);
}

/** The duty with values of its own in all steps, such as the sizes of another part; `dropped` fields are left out first. */
export function withValues(duty: NamedDuty, own: FieldValues, dropped: readonly FieldKey[] = []): NamedDuty {
  let above: FieldValues = {};
  const steps = duty.steps.map(({ values }, i): StepValues => {
    const kept = Object.entries(values).filter(([key]) => !dropped.includes(key as FieldKey));
    const step = stepValues({ ...Object.fromEntries(kept), ...own }, above, i > 0, duty.steps.length > 1);
    above = step.values;
    return step;
  });
  return new NamedDuty(duty.name, steps, duty.system);
}
