import { Field as FieldBox, mergeClasses } from "@fluentui/react-components";
import { useDeferredValue, useId, useMemo, useState } from "react";
import { fitVerdict } from "../../core/duties";
import type { FitRow, NamedDuty } from "../../core/duties";
import { metals } from "../../core/fit/metals";
import type { Grade } from "../../core/grades/model";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { choicesOf, labelOf } from "../state/fields";
import { bareNumber } from "../state/quantity";
import type { DutyState } from "../state/dutyState";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { Choice, TextBox, WordChoice } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { ClearanceChart } from "./ClearanceChart";
import { nameOf, readFit } from "../state/fit";
import type { FitKey } from "../state/fit";

interface Props {
  state: DutyState;
  duty: NamedDuty;
  grades: readonly Grade[];
}

const pairs = [
  ["outside", "outsideZone"],
  ["boreZone", "zoneHolds"],
  ["shaftZone", "housingZone"],
  ["housing", "housingOutside"],
  ["assemblyMoisture", "keptGrip"],
] as const satisfies readonly (readonly [FitKey, FitKey])[];

const words: Partial<Record<FitKey, readonly string[]>> = {
  zoneHolds: choicesOf("zoneHolds"),
  housing: metals.map(({ name }) => name),
  assemblyMoisture: choicesOf("assemblyMoisture"),
};
const unitsOf = (system: System): Partial<Record<FitKey, string>> => ({
  outside: kinds.length[system],
  housingOutside: kinds.length[system],
  keptGrip: "%",
});

/** Least and greatest running clearance of the chosen grades in every state that the duty and its fit bring. */
export function Clearance({ state, duty, grades }: Props) {
  const s = useShared();
  const { system, fit: texts, setFit: setTexts } = state;
  const [name, setName] = useState("");
  const grade = grades.find((g) => g.name === name) ?? grades[0];
  const settled = useDeferredValue(texts);
  const hasOutside = settled.outside.trim() !== "";
  const read = useMemo(
    () => (grade && hasOutside ? readFit(duty, settled, grade, system) : undefined),
    [duty, settled, grade, system, hasOutside],
  );
  const set = (key: FitKey, value: string) => setTexts({ ...texts, [key]: value });
  const box = (key: FitKey) => {
    const fault = read?.faults[key];
    const choices = words[key];
    const shared = { value: texts[key], "data-field": key };
    return (
      <FieldBox
        key={key}
        label={labelOf(key)}
        required={key === "outside"}
        validationState={fault ? "error" : "none"}
        validationMessage={fault}
      >
        {choices ? (
          <WordChoice {...shared} words={choices} onChange={(_, { value }) => set(key, value)} />
        ) : (
          <TextBox {...shared} unit={unitsOf(system)[key]} onChange={(_, { value }) => set(key, value)} />
        )}
      </FieldBox>
    );
  };
  return (
    <>
      <p className={s.quiet}>
        Bore, temperatures, motion, moisture and shaft are the duty's. A zone is an ISO 286 zone (H7) or two deviations
        (+0.05/+0.10 mm).
      </p>
      <FieldBox label="Grade of the bush">
        <Choice value={grade?.name ?? ""} onChange={(_, { value }) => setName(value)}>
          {grades.map((g) => (
            <option key={g.name}>{g.name}</option>
          ))}
        </Choice>
      </FieldBox>
      {pairs.map((pair) => (
        <div key={pair[0]} className={mergeClasses(s.pair, s.foot)}>
          {pair.map(box)}
        </div>
      ))}
      {!hasOutside && <p className={s.quiet}>Give the outside diameter to see the clearance.</p>}
      {read?.fault && <Notice intent="error">{read.fault}</Notice>}
      {read?.rows && <States rows={read.rows} grade={grade!.name} system={system} />}
    </>
  );
}

/** The states from each moisture that the bush may have had at assembly, and what they come to. */
function States({ rows, grade, system }: { rows: readonly FitRow[]; grade: string; system: System }) {
  const s = useShared();
  const id = useId();
  const starts = [...new Set(rows.map(({ assembled }) => assembled))];
  return (
    <>
      {starts.map((start) => (
        <div key={start}>
          {starts.length > 1 && <h3 className={s.minor}>If it was pressed in {start}</h3>}
          <ClearanceChart
            rows={rows.filter(({ assembled }) => assembled === start)}
            among={rows}
            system={system}
            summaryId={id}
          />
        </div>
      ))}
      <p id={id} className={s.text}>
        {grade}: {byVerdict(rows)}. Wear is not in it.
      </p>
      <details>
        <summary className={s.summary}>Numbers behind the chart</summary>
        <div className={s.wide}>
          <Numbers rows={rows} system={system} />
        </div>
      </details>
    </>
  );
}

/** "fits: assembly, cold; fails, grip lost: cold again" */
function byVerdict(rows: readonly FitRow[]): string {
  const states = new Map<string, Set<string>>();
  for (const row of rows) {
    const verdict = fitVerdict(row);
    states.set(verdict, (states.get(verdict) ?? new Set()).add(nameOf(row)));
  }
  return [...states].map(([verdict, names]) => `${verdict}: ${[...names].join("; ")}`).join(". ");
}

function Numbers({ rows, system }: { rows: readonly FitRow[]; system: System }) {
  const s = useShared();
  const length = (value: number) => bareNumber("length", value, system);
  const unit = kinds.length[system];
  const headings = ["state", `at ${kinds.temperature[system]}`, `least, ${unit}`, `greatest, ${unit}`, `grip, ${unit}`];
  const hasStarts = rows.some(({ assembled }) => assembled !== rows[0]!.assembled);
  return (
    <table className={s.table}>
      <ColumnHeadings texts={headings} />
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.assembled} ${nameOf(row)}`}>
            <th scope="row">
              {hasStarts && `${row.assembled}: `}
              {nameOf(row)}
            </th>
            <td>{bareNumber("temperature", row.bush, system)}</td>
            <td>{length(row.clearance.least)}</td>
            <td>{length(row.clearance.greatest)}</td>
            <td>{length(row.grip)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
