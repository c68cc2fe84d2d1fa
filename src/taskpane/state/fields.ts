import { field, fieldHeading, isAskedFor } from "../../core/duties";
import type { FieldKey, Part } from "../../core/duties";
import type { Motion } from "../../core/grades/model";
import type { Kind, System } from "../../core/kinds";
import { splitHeading } from "../../core/table/heading";

/** What the form asks of the list of duty fields, in its order. */
export const formKeys = [
  "motion",
  "load",
  "bore",
  "length",
  "rpm",
  "swing",
  "stroke",
  "cycles",
  "temperature",
  "moisture",
  "impactFactor",
  "shaft",
  "hardness",
  "designFactor",
] as const satisfies readonly FieldKey[];
export type FormKey = (typeof formKeys)[number];
export const isFormKey = (key: FieldKey): key is FormKey => (formKeys as readonly FieldKey[]).includes(key);

/** Texts as typed; of a choice one of its words, or nothing where it is not stated. */
export type Texts = Readonly<Record<FormKey, string>>;

/** The one part that the form knows. */
export const part: Part = "sleeve";

export const isChoice = (key: FieldKey): boolean => field(key).kind === "choice";
/** The form shows the fields of one motion, so that it always has one. */
export const choicesOf = (key: FieldKey): readonly string[] => {
  const { words = [], default: usual } = field(key);
  return usual === undefined && key !== "motion" ? ["", ...words] : words;
};

export const emptyTexts = Object.fromEntries(
  formKeys.map((key) => [key, isChoice(key) ? choicesOf(key)[0] : ""]),
) as Texts;

/** The fields that count, in the form's order. */
export const activeKeys = (motion: string): readonly FormKey[] =>
  formKeys.filter((key) => isAskedFor(key, part, motion as Motion));

/** "Impact factor"; the temperature is said to be that of the surroundings. */
export function labelOf(key: FieldKey): string {
  const { heading, also = [] } = field(key);
  const label = key === "temperature" ? also[0]! : heading;
  return `${label[0]!.toUpperCase()}${label.slice(1)}`;
}

/** What the field is, and what counts when it is left empty. */
export function hintOf(key: FormKey): string {
  const { text, default: usual } = field(key);
  return usual === undefined || isChoice(key) ? text : `${text}; ${usual} unless given`;
}

/** Kind of a field that is a number, or a span of numbers. */
export const kindOf = (key: FieldKey): Kind => {
  const { kind } = field(key);
  return kind === "span" ? "temperature" : (kind as Kind);
};

/** The unit that counts for a plain number. */
export const unitOf = (key: FieldKey, system: System): string => splitHeading(fieldHeading(key, system)).unit ?? "";
