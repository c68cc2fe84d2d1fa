import { Button, Field as FieldBox, Radio, RadioGroup } from "@fluentui/react-components";
import { useState } from "react";
import { field } from "../../core/duties";
import type { FieldValues } from "../../core/duties";
import { unitText } from "../../core/describe";
import type { System } from "../../core/kinds";
import { TextBox, WordChoice } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { activeKeys, choicesOf, hintOf, kindOf, labelOf, unitOf } from "../state/fields";
import type { FormKey } from "../state/fields";
import { fromRowText, readSelectedRow } from "./fromRow";
import { readBack } from "../state/quantity";
import type { ReadDuty } from "../state/readDuty";
import { SpectrumField } from "./SpectrumField";
import type { PaneState } from "../state/usePane";

export function DutyForm({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { duty: state, host, setShown, goTo } = pane;
  const { port } = host;
  const [note, setNote] = useState<{ intent: "success" | "warning" | "error"; text: string }>();
  const { texts, system, read } = state;
  const set = (key: FormKey, text: string) => state.setTexts({ ...texts, [key]: text });
  const number = (key: FormKey) => (
    <NumberBox key={key} name={key} text={texts[key]} system={system} read={read} onChange={(text) => set(key, text)} />
  );
  const choice = (key: FormKey) => (
    <FieldBox key={key} label={labelOf(key)}>
      <WordChoice
        value={texts[key]}
        words={choicesOf(key)}
        onChange={(_, { value }) => set(key, value)}
        data-field={key}
      />
    </FieldBox>
  );
  const movement = activeKeys(texts.motion).filter((key) => ["rpm", "swing", "stroke", "cycles"].includes(key));

  const fromSheet = () => {
    readSelectedRow(port, system).then(
      (found) => {
        state.setTexts(found.texts);
        state.setSteps(found.steps);
        setNote({ intent: found.unread.length > 0 ? "warning" : "success", text: fromRowText(found) });
      },
      (error: Error) => setNote({ intent: "error", text: error.message }),
    );
  };

  return (
    <section className={s.panel} aria-label="Duty">
      <FieldBox label="Unit system of plain numbers">
        <RadioGroup layout="horizontal" value={system} onChange={(_, { value }) => state.setSystem(value as System)}>
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
      {movement.length > 0 && <div className={s.pair}>{movement.map(number)}</div>}
      {number("temperature")}
      {choice("moisture")}
      {number("impactFactor")}
      <div className={s.pair}>
        {choice("shaft")}
        {number("hardness")}
      </div>
      {number("designFactor")}
      {texts.motion !== "static" && <SpectrumField state={state} port={port} />}
      <Summary
        read={read}
        onShortlist={() => {
          setShown([]);
          goTo("shortlist");
        }}
      />
    </section>
  );
}

interface BoxProps {
  name: FormKey;
  text: string;
  system: System;
  read: ReadDuty;
  onChange(text: string): void;
}

function NumberBox({ name, text, system, read, onChange }: BoxProps) {
  const fault = read.faults[name];
  const isOfSteps = read.ofSteps.includes(name);
  const value = read.values[name as keyof NumberValues];
  const unit = unitOf(name, system);
  // a plain number without a unit is not worth saying again
  const hint =
    value === undefined || (unit === "" && typeof value === "number")
      ? hintOf(name)
      : `= ${readBack(name, value, system)}`;
  return (
    <FieldBox
      label={labelOf(name)}
      required={field(name).required && !isOfSteps}
      validationState={fault ? "error" : "none"}
      validationMessage={fault}
      hint={fault ? undefined : isOfSteps ? "Each step of the spectrum has its own, which counts" : hint}
    >
      <TextBox
        value={text}
        onChange={(_, { value }) => onChange(value)}
        unit={unit}
        title={unitText(kindOf(name)) || undefined}
        data-field={name}
      />
    </FieldBox>
  );
}
type NumberValues = Pick<FieldValues, "load" | "bore" | "temperature">;

function Summary({ read, onShortlist }: { read: ReadDuty; onShortlist(): void }) {
  const s = useShared();
  const { missing, faults, stepsFault, fault, duty } = read;
  if (duty)
    return (
      <Button appearance="primary" onClick={onShortlist}>
        Show which grades hold
      </Button>
    );
  const named = (keys: readonly string[]) => keys.map((key) => labelOf(key as FormKey).toLowerCase());
  const wrong = [...named(Object.keys(faults)), ...(stepsFault ? ["load spectrum"] : [])];
  return (
    <>
      {fault && <Notice intent="error">{fault}</Notice>}
      <p className={s.quiet} role="status">
        {wrong.length > 0 && `To mend: ${wrong.join(", ")}. `}
        {missing.length > 0 && `Still needed: ${named(missing).join(", ")}.`}
      </p>
    </>
  );
}
