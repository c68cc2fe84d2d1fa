import { Field as FieldBox } from "@fluentui/react-components";
import { useState } from "react";
import { field } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { percentText } from "../../core/measure";
import { Choice, TextBox } from "../parts/fields";
import { useShared } from "../parts/styles";
import type { PaneState } from "../state/usePane";
import { Figure } from "./Figure";
import { isUntold } from "../figures/told";
import type { Subject } from "../figures/told";
import { LineChart } from "./LineChart";
import type { Room } from "../figures/room";
import { sweepFigure, usualEnds } from "../figures/sweep";

interface Props {
  pane: PaneState;
  subject: Subject;
  rooms: readonly Room[];
}

/** One number of the duty over a range, all else equal; the ends can be typed. */
export function SweepChart({ pane, subject, rooms }: Props) {
  const s = useShared();
  const values = Object.entries(subject.duty.values);
  const keys = values.flatMap(([key, value]) => (typeof value === "number" && value > 0 ? [key as FieldKey] : []));
  const [wanted, setWanted] = useState<FieldKey>("load");
  const key = keys.includes(wanted) ? wanted : keys[0];
  const [typed, setTyped] = useState<readonly [string, string]>(["", ""]);
  if (!key) return null;
  const { heading } = field(key);
  const present = rooms.find((room) => room.field === heading || room.field.startsWith(`${heading}, step`))?.value;
  const usual = usualEnds(present ?? 1);
  const ends = typed.map((text, i) => Number(text.trim() === "" ? usual[i] : text)) as [number, number];
  const told = ends.every(Number.isFinite)
    ? sweepFigure(subject, key, ...ends)
    : { why: "Both ends must be plain numbers." };
  const end = (i: 0 | 1, label: string) => (
    <FieldBox label={label}>
      <TextBox
        value={typed[i]}
        placeholder={usual[i]}
        onChange={(_, { value }) => setTyped(i === 0 ? [value, typed[1]] : [typed[0], value])}
      />
    </FieldBox>
  );
  const controls = (
    <>
      <FieldBox label="Number to move">
        <Choice
          value={key}
          onChange={(_, { value }) => {
            setWanted(value as FieldKey);
            setTyped(["", ""]);
          }}
        >
          {keys.map((one) => (
            <option key={one} value={one}>
              {field(one).heading}
            </option>
          ))}
        </Choice>
      </FieldBox>
      <div className={s.pair}>
        {end(0, "From")}
        {end(1, "To")}
      </div>
    </>
  );
  return (
    <Figure pane={pane} title="One number moved" grade={subject.one.grade.name} told={told} controls={controls}>
      {(id) =>
        !isUntold(told) && (
          <LineChart
            x={told.values}
            xName={told.heading}
            lines={[{ name: "use", values: told.uses }]}
            yName="use"
            limit={{ name: "limit", at: 1 }}
            mark={present === undefined ? undefined : { name: "duty", at: present }}
            bands={told.bands}
            yText={percentText}
            summaryId={id}
          />
        )
      }
    </Figure>
  );
}
