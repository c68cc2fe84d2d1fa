import { capitalised } from "../../core/capitalised";
import { field, fieldHeading, fieldKeys, isAskedFor, stepKeys } from "../../core/duties";
import type { FieldEntry, FieldKey, Part } from "../../core/duties";
import type { Motion } from "../../core/grades/model";
import type { Kind, System } from "../../core/kinds";
import { present } from "../../core/present";
import { splitHeading } from "../../core/table/heading";

/** What stands at the head of the form, before the groups: it decides what else is asked. */
export const headKeys = ["part", "motion", "duty", "grade"] as const satisfies readonly FieldKey[];
const isHead = (key: FieldKey): boolean => (headKeys as readonly FieldKey[]).includes(key);

/** The groups of the form in their order, each made of groups of the list of fields: a new field appears in its own. */
const groupNames: Readonly<Record<FieldEntry["group"], string>> = {
  name: "Load and motion",
  load: "Load and motion",
  size: "Load and motion",
  motion: "Load and motion",
  surroundings: "Surroundings",
  shaft: "Shaft",
  housing: "Housing and fit",
  fit: "Housing and fit",
  wanted: "Wanted",
  cost: "Wanted",
};
export const formGroups: readonly string[] = [...new Set(Object.values(groupNames))];

/** Fields that the list asks for this part in this motion; those of a cycle of its own have no place beside steps, the time of a step none without. */
export function askedKeys(part: Part, motion: Motion, hasSteps: boolean): FieldKey[] {
  const idle: readonly FieldKey[] = hasSteps ? ["runningTime", "restTime"] : ["time"];
  return fieldKeys.filter((key) => isAskedFor(key, part, motion) && !idle.includes(key));
}

/** What a step may say for itself; its name is that of the duty. */
export const isOfStep = (key: FieldKey): boolean => stepKeys.has(key) && key !== "duty";

/** The fields of a group of the form, those that a duty is refused without first. */
export function groupKeys(group: string, asked: readonly FieldKey[]): { needed: FieldKey[]; open: FieldKey[] } {
  const keys = asked.filter((key) => groupNames[field(key).group] === group && !isHead(key));
  return { needed: keys.filter((key) => field(key).required), open: keys.filter((key) => !field(key).required) };
}

/** Words to choose from. */
export const isChoice = (key: FieldKey): boolean => field(key).words !== undefined && field(key).kind !== "list";
/** Nothing stated is a choice too, but of part and motion, which the form always has. */
export function choicesOf(key: FieldKey): readonly string[] {
  const { words = [], default: usual } = field(key);
  return key === "motion" || key === "part" || usual !== undefined ? words : ["", ...words];
}

/** A line of its own: words, spans and zones are longer than half a pane. */
export function isWide(key: FieldKey): boolean {
  const { kind, words = [] } = field(key);
  if (isChoice(key)) return words.some((word) => word.length > 10);
  return ["text", "list", "span", "zone"].includes(kind);
}

/** "Impact factor"; the temperature is said to be that of the surroundings. */
export function labelOf(key: FieldKey): string {
  const { heading, also = [] } = field(key);
  return capitalised(key === "temperature" ? present(also[0]) : heading);
}

/** What the field is, and what counts when it is left empty. */
export function hintOf(key: FieldKey): string {
  const { text, default: usual } = field(key);
  return usual === undefined || isChoice(key) ? text : `${text}; ${usual} unless given`;
}

/** Kind of a field that is a number, or a span of numbers. */
export const kindOf = (key: FieldKey): Kind => {
  const { kind } = field(key);
  return kind === "span" ? "temperature" : (kind as Kind);
};

/** The unit that counts for a plain number. */
export function unitOf(key: FieldKey, system: System): string {
  if (field(key).kind === "percent") return "%";
  return splitHeading(fieldHeading(key, system)).unit ?? "";
}
