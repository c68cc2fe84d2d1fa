import { Button, Field as FieldBox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { kindOf, properties, property } from "../../core/grades/model";
import type { PropertyKey } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import type { NamedTable, SheetPort } from "../../port/sheet";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { counted } from "../parts/words";
import { useShared } from "../parts/styles";
import { assumedUnit, importRows, mappingFault, unitFault } from "./mapping";
import type { Imported, Mapped } from "./mapping";
import type { Rows } from "./readList";

interface Props {
  rows: Rows;
  columns: readonly Mapped[];
  system: System;
  port: SheetPort;
  setColumns(columns: readonly Mapped[]): void;
  onWritten(table: NamedTable, count: number): Promise<void>;
  onCancel(): void;
}

const sheetName = "Own grades";

async function writeTable(port: SheetPort, { headings, rows }: Imported): Promise<NamedTable> {
  const table = await port.addTable(sheetName, [headings.map((value) => ({ value, heading: true as const })), ...rows]);
  await port.widen(
    table.place,
    headings.map((heading) => heading.length + 2),
  );
  return table;
}

const useStyles = makeStyles({
  column: { border: 0, margin: 0, padding: "8px 0", minWidth: 0, borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold, overflowWrap: "anywhere" },
});

/** What each column of a list means: guesses first, then the user's word; faults of the rows below. */
export function MapColumns({ rows, columns, system, port, setColumns, onWritten, onCancel }: Props) {
  const s = useShared();
  const own = useStyles();
  const [fault, setFault] = useState<string>();
  const unitFaults = columns.map(unitFault);
  const problem = mappingFault(columns) ?? (unitFaults.some(Boolean) ? "Mend the units marked above." : undefined);
  const result = useMemo(
    () => (problem ? undefined : importRows(rows, columns, system)),
    [rows, columns, system, problem],
  );
  const set = (i: number, part: Partial<Mapped>) =>
    setColumns(columns.map((column, at) => (at === i ? { ...column, ...part } : column)));
  const write = () => {
    if (!result) return;
    writeTable(port, result).then(
      (table) => onWritten(table, result.count),
      (error: Error) => setFault(error.message),
    );
  };
  return (
    <>
      <h2 className={s.heading}>What the columns mean</h2>
      <p className={s.quiet}>{rows.length - 1} rows. Guessed from the headings: check each, then confirm below.</p>
      <div>
        {columns.map((column, i) => (
          <fieldset key={i} className={own.column}>
            <legend className={own.legend}>{column.heading}</legend>
            <p className={s.quiet}>
              first: {String(rows.find((row, r) => r > 0 && row[i] !== null)?.[i] ?? "nothing")}
            </p>
            <div className={mergeClasses(s.pair, s.uneven)}>
              <FieldBox label="is">
                <Choice
                  value={column.key}
                  onChange={(_, { value }) => set(i, { key: value as PropertyKey | "", unit: "" })}
                >
                  <option value="">kept, not used</option>
                  {properties
                    .filter(({ key }) => key !== "kind")
                    .map(({ key, heading }) => (
                      <option key={key} value={key}>
                        {heading}
                      </option>
                    ))}
                </Choice>
              </FieldBox>
              {column.key !== "" && kindOf(property(column.key)) && (
                <FieldBox
                  label="in"
                  validationState={unitFaults[i] ? "error" : "none"}
                  validationMessage={unitFaults[i]}
                  hint={
                    column.unit.trim() === ""
                      ? `sheet's unit: ${assumedUnit(property(column.key), system) || "none"}`
                      : undefined
                  }
                >
                  <TextBox value={column.unit} onChange={(_, { value }) => set(i, { unit: value })} />
                </FieldBox>
              )}
            </div>
          </fieldset>
        ))}
      </div>
      {problem && <Notice intent="error">{problem}</Notice>}
      {result && result.faults.length > 0 && (
        <Notice
          intent="warning"
          title={
            result.faults.length === 1
              ? "1 row cannot be read and is left out."
              : `${result.faults.length} rows cannot be read and are left out.`
          }
        >
          <ul className={s.list}>
            {result.faults.map(({ row, name, message }) => (
              <li key={row}>
                Row {row}, {name}: {message}
              </li>
            ))}
          </ul>
        </Notice>
      )}
      {result && result.kept.length > 0 && <p className={s.quiet}>Kept, not used: {result.kept.join(", ")}.</p>}
      {fault && <Notice intent="error">{fault}</Notice>}
      <div className={s.row}>
        <Button appearance="primary" disabled={!result || result.count === 0} onClick={write}>
          {result ? `Confirm and write ${counted(result.count, "grade")}` : "Confirm and write"}
        </Button>
        <Button onClick={onCancel}>Cancel</Button>
      </div>
      <p className={s.quiet}>
        They become a table on a new sheet, {sheetName}. Text stays text: nothing in a list becomes a formula.
      </p>
    </>
  );
}
