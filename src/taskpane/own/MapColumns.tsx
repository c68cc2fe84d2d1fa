import { Button, Field as FieldBox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { kindOf, properties, property } from "../../core/grades/model";
import type { PropertyKey } from "../../core/grades/model";
import { BushError } from "../../core/errors";
import type { System } from "../../core/kinds";
import { OpenDecimals } from "../../core/table/decimals";
import type { Decimals } from "../../core/table/decimals";
import type { NamedTable, SheetPort } from "../../port/sheet";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { counted } from "../parts/words";
import { useShared } from "../parts/styles";
import { assumedUnit, importRows, mappingFault, unitFault, unitIn } from "./mapping";
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

/** The list as read, or why it cannot be; open where it does not tell its decimals. */
function readRows(rows: Rows, columns: readonly Mapped[], system: System, decimals: Decimals) {
  try {
    return { result: importRows(rows, columns, system, decimals), isOpen: false };
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    return { problem: error.message, isOpen: error instanceof OpenDecimals };
  }
}

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
  const [decimals, setDecimals] = useState<Decimals>("ask");
  const mapped = mappingFault(columns) ?? (unitFaults.some(Boolean) ? "Mend the units marked above." : undefined);
  const read = useMemo(
    () => (mapped ? { problem: mapped, isOpen: false } : readRows(rows, columns, system, decimals)),
    [rows, columns, system, decimals, mapped],
  );
  const { problem, result } = { result: undefined, ...read };
  const firstOf = (of: readonly (readonly unknown[])[], i: number): string =>
    String(of.find((row) => row[i] !== null)?.[i] ?? "nothing");
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
              first: {firstOf(rows.slice(1), i)}
              {result && column.key !== "" && `, read as ${firstOf(result.rows, i)} ${column.unit}`.trimEnd()}
            </p>
            <div className={mergeClasses(s.pair, s.uneven)}>
              <FieldBox label="is">
                <Choice
                  value={column.key}
                  onChange={(_, { value }) => {
                    const key = value as PropertyKey | "";
                    set(i, { key, unit: unitIn(column.heading, key) });
                  }}
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
      {(read.isOpen || decimals !== "ask") && (
        <FieldBox label="Decimals in this list">
          <Choice value={decimals} onChange={(_, { value }) => setDecimals(value as Decimals)}>
            <option value="ask">not told by the list</option>
            <option value="comma">comma: 1.180 is 1180</option>
            <option value="point">point: 1.180 is 1.18</option>
          </Choice>
        </FieldBox>
      )}
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
