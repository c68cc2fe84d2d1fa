import { Button, Field as FieldBox, Radio, RadioGroup } from "@fluentui/react-components";
import { useState } from "react";
import { unitText } from "../../core/describe";
import type { System } from "../../core/kinds";
import { kinds } from "../../core/kinds";
import type { SheetPort } from "../../port/sheet";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { activeFields, choiceFields, keepUnits, movementFields, numberFields, readBack } from "./fields";
import type { ChoiceField, Field, NumberField, ReadDuty, Texts } from "./fields";
import { readSelectedRow } from "./fromRow";
import { SpectrumField } from "./SpectrumField";
import { keepFitUnits } from "../window/fit";
import type { FitTexts } from "../window/fit";
import { keepStepUnits } from "./spectrum";
import type { Spectrum } from "./spectrum";

export interface DutyState {
  readonly texts: Texts;
  readonly system: System;
  readonly read: ReadDuty;
  readonly steps: string;
  readonly fit: FitTexts;
  readonly spectrum: Spectrum;
  setTexts(texts: Texts): void;
  setSystem(system: System): void;
  setSteps(text: string): void;
  setFit(texts: FitTexts): void;
}

const choiceLabels: Readonly<Record<ChoiceField, string>> = {
  motion: "Motion",
  wet: "Moisture",
  shock: "Load comes",
  shaft: "Shaft material",
};
const choiceWords: Readonly<Record<string, string>> = {
  "": "not stated",
  turning: "turning",
  swinging: "swinging (oscillating)",
  linear: "linear (sliding)",
  static: "static (at rest)",
  dry: "dry",
  wet: "wet (may saturate)",
  steady: "steadily",
  shock: "in blows (shock)",
};

export function DutyForm({ state, port, onShortlist }: { state: DutyState; port: SheetPort; onShortlist(): void }) {
  const s = useShared();
  const [note, setNote] = useState<{ intent: "success" | "error"; text: string }>();
  const { texts, system, read } = state;
  const set = (field: Field, text: string) => state.setTexts({ ...texts, [field]: text });
  const number = (name: NumberField) => (
    <NumberBox
      key={name}
      name={name}
      text={texts[name]}
      system={system}
      read={read}
      onChange={(text) => set(name, text)}
    />
  );
  const choice = (name: ChoiceField) => (
    <FieldBox key={name} label={choiceLabels[name]}>
      <Choice value={texts[name]} onChange={(_, { value }) => set(name, value)}>
        {choiceFields[name].map((word) => (
          <option key={word} value={word}>
            {choiceWords[word] ?? word}
          </option>
        ))}
      </Choice>
    </FieldBox>
  );

  const fromSheet = () => {
    readSelectedRow(port).then(
      ({ texts: found, headingRow }) => {
        state.setTexts({ ...texts, ...found });
        setNote({
          intent: "success",
          text: `Read by the headings in row ${headingRow}: ${Object.keys(found).map(fieldLabel).join(", ")}.`,
        });
      },
      (error: Error) => setNote({ intent: "error", text: error.message }),
    );
  };

  return (
    <section className={s.panel} aria-label="Duty">
      <FieldBox label="Unit system of plain numbers">
        <RadioGroup
          layout="horizontal"
          value={system}
          onChange={(_, { value }) => {
            state.setTexts(keepUnits(texts, system));
            state.setSteps(keepStepUnits(state.steps, system));
            state.setFit(keepFitUnits(state.fit, system));
            state.setSystem(value as System);
          }}
        >
          <Radio value="metric" label="metric (mm, N)" />
          <Radio value="inch" label="inch (in, lbf)" />
        </RadioGroup>
      </FieldBox>
      <div className={s.row}>
        <Button size="small" onClick={fromSheet}>
          Read selected row
        </Button>
        <span className={s.quiet}>A field also takes text with a unit: 250 lbf</span>
      </div>
      {note && <Notice intent={note.intent}>{note.text}</Notice>}
      {choice("motion")}
      {number("load")}
      <div className={s.pair}>{(["bore", "length"] as const).map(number)}</div>
      {movementFields(texts.motion).length > 0 && (
        <div className={s.pair}>{movementFields(texts.motion).map(number)}</div>
      )}
      <div className={s.pair}>{(["lowest", "highest"] as const).map(number)}</div>
      <div className={s.pair}>
        {choice("wet")}
        {choice("shock")}
      </div>
      {activeFields(texts).includes("impactFactor") && number("impactFactor")}
      <div className={s.pair}>
        {choice("shaft")}
        {number("hardness")}
      </div>
      {number("designFactor")}
      {texts.motion !== "static" && <SpectrumField state={state} port={port} />}
      <Summary state={state} onShortlist={onShortlist} />
    </section>
  );
}

const fieldLabel = (field: string): string =>
  (numberFields[field as NumberField]?.text ?? choiceLabels[field as ChoiceField]).toLowerCase();

const hints: Readonly<Partial<Record<NumberField, string>>> = {
  designFactor: "Divides pressure and PV limits; 1 unless given",
  impactFactor: "Multiplies the load; 1 unless given",
};

interface BoxProps {
  name: NumberField;
  text: string;
  system: System;
  read: ReadDuty;
  onChange(text: string): void;
}

function NumberBox({ name, text, system, read, onChange }: BoxProps) {
  const arg = numberFields[name];
  const unit = kinds[arg.kind][system];
  const fault = read.faults[name];
  const value = read.values[name];
  const back = value === undefined ? (hints[name] ?? " ") : `= ${readBack(name, value, system)}`;
  return (
    <FieldBox
      label={arg.text}
      required={!("optional" in arg)}
      validationState={fault ? "error" : "none"}
      validationMessage={fault}
      hint={fault ? undefined : back}
    >
      <TextBox
        value={text}
        onChange={(_, { value }) => onChange(value)}
        unit={unit}
        title={unitText(arg.kind) || undefined}
        data-field={name}
      />
    </FieldBox>
  );
}

function Summary({ state, onShortlist }: { state: DutyState; onShortlist(): void }) {
  const s = useShared();
  const { missing, faults, duty } = state.read;
  if (duty)
    return (
      <Button appearance="primary" onClick={onShortlist}>
        Show which grades hold
      </Button>
    );
  const wrong = Object.keys(faults) as NumberField[];
  return (
    <p className={s.quiet} role="status">
      {wrong.length > 0 && `To mend: ${wrong.map(fieldLabel).join(", ")}. `}
      {missing.length > 0 && `Still needed: ${missing.map(fieldLabel).join(", ")}.`}
    </p>
  );
}
