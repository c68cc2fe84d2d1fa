import { Field as FieldBox } from "@fluentui/react-components";
import { useId, useMemo, useState } from "react";
import type { FitRow, NamedDuty } from "../../core/duties";
import type { Grade } from "../../core/grades/model";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { bareNumber } from "../state/quantity";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { Choice } from "../parts/fields";
import { useShared } from "../parts/styles";
import { ClearanceChart } from "./ClearanceChart";
import { byVerdict, nameOf, readFit } from "./fit";

interface Props {
  duty: NamedDuty;
  grades: readonly Grade[];
  system: System;
}

/** Least and greatest running clearance of the chosen grades in every state that the duty and its fit bring. */
export function Clearance({ duty, grades, system }: Props) {
  const s = useShared();
  const [name, setName] = useState("");
  const grade = grades.find((g) => g.name === name) ?? grades[0];
  const read = useMemo(() => (grade ? readFit(duty, grade) : undefined), [duty, grade]);
  return (
    <>
      <FieldBox label="Grade of the bush">
        <Choice value={grade?.name ?? ""} onChange={(_, { value }) => setName(value)}>
          {grades.map((g) => (
            <option key={g.name}>{g.name}</option>
          ))}
        </Choice>
      </FieldBox>
      {read?.fault && <p className={s.quiet}>{read.fault}.</p>}
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
