import { Field as FieldBox, mergeClasses } from "@fluentui/react-components";
import { useDeferredValue, useId, useMemo, useState } from "react";
import { Band } from "../../core/band";
import { fitTable } from "../../core/fit/fitTable";
import { metals } from "../../core/fit/metals";
import type { Grade, Library } from "../../core/grade";
import { kinds } from "../../core/kinds";
import type { DutyState } from "../duty/state";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { ClearanceChart } from "./ClearanceChart";
import { fitRows } from "./fit";
import type { FitTexts } from "./fit";

interface Props {
  state: DutyState;
  library: Library;
  grades: readonly Grade[];
}

const { args } = fitTable.spec;
const labels: Readonly<Record<keyof FitTexts, string>> = {
  outside: args.outside.text,
  outsidezone: args.outsidezone.text,
  borezone: args.borezone.text,
  borestate: "The bore's zone holds",
  housingzone: args.housingzone.text,
  shaftzone: args.shaftzone.text,
  housing: args.housing.text.split(":")[0]!,
  shaft: args.shaft.text.split(",")[0]!,
  moisture: "Moisture when cold and hot",
};
const options: Readonly<Partial<Record<keyof FitTexts, readonly (readonly [value: string, text: string])[]>>> = {
  borestate: [
    ["pressed", "after pressing"],
    ["free", "before pressing"],
  ],
  moisture: [
    ["dry", "dry"],
    ["room", "air at 50 % humidity"],
    ["soaked", "saturated"],
  ],
  housing: metals.map(({ name }) => [name, name] as const),
  shaft: metals.map(({ name }) => [name, name] as const),
};

/** Least and greatest running clearance of the chosen grades, when cold, at assembly, hot, and hot and wet. */
export function Clearance({ state, library, grades }: Props) {
  const s = useShared();
  const id = useId();
  const { fit: texts, setFit: setTexts } = state;
  const [name, setName] = useState("");
  const grade = grades.find((g) => g.name === name) ?? grades[0];
  const { system, read } = state;
  const { bore, temperature } = read.values;
  const settled = useDeferredValue(texts);
  const rows = useMemo(
    () =>
      grade && typeof bore === "number" && temperature && settled.outside.trim() !== ""
        ? fitRows(
            { ...settled, grade: grade.name, bore, cold: temperature.low, hot: temperature.high },
            library,
            system,
          )
        : undefined,
    [settled, grade, bore, temperature, library, system],
  );
  const unit = kinds.length[system];
  const box = (field: keyof FitTexts) => (
    <FieldBox key={field} label={labels[field]} required={field === "outside"}>
      {options[field] ? (
        <Choice value={texts[field]} onChange={(_, { value }) => setTexts({ ...texts, [field]: value })}>
          {options[field].map(([value, text]) => (
            <option key={value} value={value}>
              {text}
            </option>
          ))}
        </Choice>
      ) : (
        <TextBox
          value={texts[field]}
          onChange={(_, { value }) => setTexts({ ...texts, [field]: value })}
          unit={field === "outside" ? unit : undefined}
        />
      )}
    </FieldBox>
  );
  return (
    <>
      <p className={s.quiet}>
        Bore and temperatures are the duty's. A zone is an ISO 286 zone (H7) or two deviations (+0.05/+0.10 mm).
      </p>
      <FieldBox label="Grade of the bush">
        <Choice value={grade?.name ?? ""} onChange={(_, { value }) => setName(value)}>
          {grades.map((g) => (
            <option key={g.name}>{g.name}</option>
          ))}
        </Choice>
      </FieldBox>
      <div className={mergeClasses(s.pair, s.foot)}>{(["outside", "outsidezone"] as const).map(box)}</div>
      <div className={mergeClasses(s.pair, s.foot)}>{(["borezone", "borestate"] as const).map(box)}</div>
      <div className={mergeClasses(s.pair, s.foot)}>{(["housingzone", "shaftzone"] as const).map(box)}</div>
      <div className={mergeClasses(s.pair, s.foot)}>{(["housing", "shaft"] as const).map(box)}</div>
      {box("moisture")}
      {rows === undefined && (
        <p className={s.quiet}>
          {bore instanceof Band
            ? "The clearance needs one bore, not a band."
            : "Give the outside diameter to see the clearance."}
        </p>
      )}
      {typeof rows === "string" && <Notice intent="error">{rows}</Notice>}
      {Array.isArray(rows) && (
        <>
          <ClearanceChart rows={rows} unit={unit} temperatureUnit={kinds.temperature[system]} summaryId={id} />
          <p id={id} className={s.text}>
            {grade?.name}: {rows.map((row) => `${row.state}: ${row.verdict}`).join("; ")}. Stress relaxation and wear
            are not in it.
          </p>
          <details>
            <summary className={s.summary}>Numbers behind the chart</summary>
            <div className={s.wide}>
              <table className={s.table}>
                <thead>
                  <tr>
                    {["state", `at ${kinds.temperature[system]}`, `least, ${unit}`, `greatest, ${unit}`, "verdict"].map(
                      (text) => (
                        <th key={text} scope="col">
                          {text}
                        </th>
                      ),
                    )}
                  </tr>
                </thead>
                <tbody>
                  {rows.map((row) => (
                    <tr key={row.state}>
                      <th scope="row">{row.state}</th>
                      <td>{Number(row.temperature.toPrecision(4))}</td>
                      <td>{row.clearance ? row.clearance[0].toPrecision(3) : "no data"}</td>
                      <td>{row.clearance ? row.clearance[1].toPrecision(3) : "no data"}</td>
                      <td>{row.verdict}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </details>
        </>
      )}
    </>
  );
}
