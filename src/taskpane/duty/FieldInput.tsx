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
  const value = read.values[name];
  const label = labelOf(name);
  const style = isWide(name) ? { gridColumn: "1 / -1" } : undefined;
  if (entry.kind === "list" && entry.words)
    return <WordList label={label} hint={hintOf(name)} words={entry.words} text={text} onChange={onChange} />;
  const shared = { title: hintOf(name), "data-field": name };
  const choices = words ?? (isChoice(name) ? choicesOf(name) : undefined);
  const said =
    value === undefined || choices || isPlain(name, text, system) ? undefined : readBack(name, value, system);
  return (
    <FieldBox
      label={label}
      required={read.missing.includes(name) || undefined}
      validationState={fault ? "error" : "none"}
      validationMessage={fault}
      hint={fault || said === undefined || said === text.trim() ? undefined : `= ${said}`}
      style={style}
    >
      {choices ? (
        <WordChoice
          {...shared}
          value={text || choices[0]}
          // a word that a sheet says and the list does not know stays in view
          words={text && !choices.includes(text) ? [...choices, text] : choices}
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

/** A plain number whose unit stands behind it need not be said again; nor need words. */
function isPlain(name: FieldKey, text: string, system: System): boolean {
  const { kind } = field(name);
  if (kind === "text" || kind === "zone") return true;
  if (kind !== "span" && !(kind in kinds)) return true;
  const unit = isDimensional(kindOf(name)) ? unitOf(name, system) : "";
  return text.trim() !== "" && Number.isFinite(Number(text.replace(unit, "")));
}
