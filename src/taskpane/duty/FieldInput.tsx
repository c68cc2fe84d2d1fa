import { Field as FieldBox } from "@fluentui/react-components";
import { field } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { isDimensional, kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { TextBox, WordChoice } from "../parts/fields";
import { choicesOf, hintOf, isChoice, isWide, kindOf, labelOf, unitOf } from "../state/fields";
import { readBack } from "../state/quantity";
import type { ReadRow } from "../state/readDuty";
import { WordList } from "./WordList";

interface Props {
  name: FieldKey;
  text: string;
  /** What the row of this field was read as. */
  read: ReadRow;
  system: System;
  /** Shown in an empty field of a later step. */
  placeholder?: string;
  /** Words to choose from that the list of fields does not know. */
  words?: readonly string[];
  onChange(text: string): void;
}

/** One field of the form, by its kind; with what it was read as where that is not plain to see. */
export function FieldInput({ name, text, read, system, placeholder, words, onChange }: Props) {
  const entry = field(name);
  const fault = read.faults[name];
  const label = labelOf(name);
  const style = isWide(name) ? { gridColumn: "1 / -1" } : undefined;
  if (entry.kind === "list" && entry.words)
    return <WordList label={label} hint={hintOf(name)} words={entry.words} text={text} onChange={onChange} />;
  const shared = { title: hintOf(name), "data-field": name };
  const choices = words ?? knownChoices(name);
  return (
    <FieldBox
      label={label}
      required={read.missing.includes(name) || undefined}
      validationState={fault ? "error" : "none"}
      validationMessage={fault}
      hint={fault || choices ? undefined : readAs(name, text, read, system)}
      style={style}
    >
      {choices ? (
        <WordChoice
          {...shared}
          value={text || choices[0]}
          words={withOwn(choices, text)}
          onChange={(_, { value: chosen }) => onChange(chosen)}
        />
      ) : (
        <TextBox
          {...shared}
          value={text}
          placeholder={placeholder}
          unit={unitOf(name, system)}
          onChange={(_, { value: typed }) => onChange(typed)}
        />
      )}
    </FieldBox>
  );
}

const knownChoices = (name: FieldKey): readonly string[] | undefined => (isChoice(name) ? choicesOf(name) : undefined);

/** A word that a sheet says and the list does not know stays in view. */
const withOwn = (choices: readonly string[], text: string): readonly string[] =>
  text && !choices.includes(text) ? [...choices, text] : choices;

/** "= 0.5 in" where it was read as something that is not plain to see. */
function readAs(name: FieldKey, text: string, { values }: ReadRow, system: System): string | undefined {
  const value = values[name];
  if (value === undefined || isPlain(name, text, system)) return undefined;
  const said = readBack(name, value, system);
  return said === undefined || said === text.trim() ? undefined : `= ${said}`;
}

/** A plain number whose unit stands behind it need not be said again; nor need words. */
function isPlain(name: FieldKey, text: string, system: System): boolean {
  const { kind } = field(name);
  if (kind === "text" || kind === "zone") return true;
  if (kind !== "span" && !(kind in kinds)) return true;
  const unit = isDimensional(kindOf(name)) ? unitOf(name, system) : "";
  return text.trim() !== "" && Number.isFinite(Number(text.replace(unit, "")));
}
