import type { FieldKey, Part } from "../../core/duties";
import { fieldKeys, parts } from "../../core/duties";
import { motions } from "../../core/grades/model";
import type { Motion } from "../../core/grades/model";
import { keysOf } from "../../core/keyed";
import { askedKeys, isOfStep } from "./fields";

/** Texts as typed, by field; what is left out is empty. */
export type Texts = Readonly<Partial<Record<FieldKey, string>>>;

/** A duty as typed: a row as a table of duties has it, and below it one for each further step, which says what differs. */
export type Form = readonly [Texts, ...Texts[]];

/** One or more, each made of one or more. */
export function eachOf<A, B>(all: readonly [A, ...A[]], make: (one: A, i: number) => B): [B, ...B[]] {
  const [first, ...others] = all;
  return [make(first, 0), ...others.map((one, i) => make(one, i + 1))];
}

export const emptyForm: Form = [{ part: "sleeve", motion: "turning" }];

const wordOf = <W extends string>(words: readonly [W, ...W[]], text: string | undefined): W =>
  words.find((word) => word === text) ?? words[0];

export const partOf = (form: Form): Part => wordOf(parts, form[0].part);

/** The motion of a step: its own, or that of the step above. */
export function motionAt(form: Form, row: number): Motion {
  const stated = form
    .slice(0, row + 1)
    .filter(({ motion }) => motion)
    .pop();
  return wordOf(motions, stated?.motion);
}

/** The fields that a row of the form asks for; the first also what any step asks of the whole duty, since a cycle may begin at rest. */
export function keysAt(form: Form, row: number): FieldKey[] {
  const askedAt = (at: number) => askedKeys(partOf(form), motionAt(form, at), form.length > 1);
  const own = askedAt(row);
  if (row > 0) return own.filter(isOfStep);
  const ofWhole = form.flatMap((_, at) => askedAt(at)).filter((key) => !isOfStep(key));
  return fieldKeys.filter((key) => own.includes(key) || ofWhole.includes(key));
}

/** The form with one text changed. */
export const withText = (form: Form, row: number, key: FieldKey, text: string): Form =>
  eachOf(form, (texts, i) => (i === row ? { ...texts, [key]: text } : texts));

/** A further step, as long as the one above and otherwise like it. */
export const withStep = (form: Form): Form => [...form, {}];

/** Without one of the steps; what the next one takes over stays as it was where the first goes. */
export function withoutStep(form: Form, row: number): Form {
  const [first, ...others] = form;
  if (row > 0) return [first, ...others.filter((_, i) => i + 1 !== row)];
  const [second = {}, ...later] = others;
  const next: Partial<Record<FieldKey, string>> = { ...first };
  for (const key of keysOf(second)) if (second[key] !== "") next[key] = second[key];
  return [next, ...later];
}

/** Texts that are filled, so that two forms can be compared. */
export const filledOf = (form: Form): string =>
  JSON.stringify(
    form.map((texts) =>
      Object.entries(texts)
        .filter(([, text]) => text !== "")
        .sort(),
    ),
  );
