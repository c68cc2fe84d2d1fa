import { Button, Field as FieldBox, Spinner, Textarea } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { propertyNamed } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { addressOf } from "../../port/address";
import type { NamedTable, Place } from "../../port/sheet";
import type { PaneHost } from "../host/host";
import { Choice } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { MapColumns } from "./MapColumns";
import { seemsToBe } from "../../files/kinds";
import { guessColumns } from "./mapping";
import type { Mapped } from "./mapping";
import type { Rows } from "./readList";
import type { OwnGrades } from "../state/useLibrary";

interface Props {
  own: OwnGrades;
  system: System;
  host: PaneHost;
}

interface List {
  readonly rows: Rows;
  readonly columns: readonly Mapped[];
}

/** A supplier's list becomes a table of the workbook that formulas and the pane use. */
export function Own({ own, system, host }: Props) {
  const s = useShared();
  const { port } = host;
  const file = useRef<HTMLInputElement>(null);
  const [text, setText] = useState("");
  const [list, setList] = useState<List>();
  const [isBusy, setBusy] = useState(false);
  const [note, setNote] = useState<{ intent: "success" | "error"; text: string }>();

  const take = async (source: () => Promise<Rows>) => {
    setBusy(true);
    setNote(undefined);
    try {
      const rows = await source();
      if (rows.length < 2) throw new Error("A list needs a heading row and at least one row below it.");
      const other = seemsToBe(rows[0]!, "grades");
      if (other) throw new Error(`This seems to be a list of ${other}, not of grades: nothing was taken.`);
      setList({ rows, columns: guessColumns(rows[0]!) });
    } catch (error) {
      setNote({ intent: "error", text: (error as Error).message });
    } finally {
      setBusy(false);
    }
  };
  const readers = () => import(/* webpackChunkName: "import" */ "./readList");
  const fromCells = async () => {
    const { squared } = await readers();
    const place = await port.selection();
    if (!place) throw new Error("Select the cells of the list.");
    return squared(
      (await port.read(place)).map((row) =>
        row.map(({ value }) => (typeof value === "boolean" ? String(value) : value)),
      ),
    );
  };
  const written = async (table: NamedTable, count: number) => {
    await own.refresh();
    own.choose(table);
    setList(undefined);
    setText("");
    setNote({
      intent: "success",
      text: `${count} grades stand in the table ${table.name}. Formulas name it as ${table.reference}.`,
    });
  };

  return (
    <section className={s.panel} aria-label="Own grades">
      <InUse own={own} host={host} onFault={(fault) => setNote({ intent: "error", text: fault })} />
      {note && <Notice intent={note.intent}>{note.text}</Notice>}
      {list ? (
        <MapColumns
          {...list}
          system={system}
          port={port}
          setColumns={(columns) => setList({ ...list, columns })}
          onWritten={written}
          onCancel={() => setList(undefined)}
        />
      ) : (
        <>
          <h2 className={s.heading}>Add a supplier's list</h2>
          <p className={s.quiet}>
            The first row holds headings. The list stays in this workbook: the pane sends and stores nothing elsewhere.
          </p>
          <FieldBox label="Paste the list">
            <Textarea
              value={text}
              rows={5}
              placeholder={"name\tPV limit [psi*ft/min]\n…"}
              onChange={(_, { value }) => setText(value)}
            />
          </FieldBox>
          <div className={s.row}>
            <Button
              appearance="primary"
              disabled={text.trim() === "" || isBusy}
              onClick={() => void take(async () => (await readers()).readText(text))}
            >
              Read the list
            </Button>
            <Button disabled={isBusy} onClick={() => file.current?.click()}>
              Open a file
            </Button>
            <Button disabled={isBusy} onClick={() => void take(fromCells)}>
              Take selected cells
            </Button>
            {isBusy && <Spinner size="tiny" label="Reading" />}
          </div>
          <input
            ref={file}
            type="file"
            accept=".csv,.tsv,.txt,.xlsx,.xlsm"
            hidden
            aria-label="List file"
            onChange={({ target }) => {
              const chosen = target.files?.[0];
              target.value = "";
              if (chosen) void take(async () => (await readers()).readFile(chosen));
            }}
          />
        </>
      )}
    </section>
  );
}

const quoted = (sheet: string): string => `'${sheet.replace(/'/g, "''")}'`;

/** Cells as they stand, named by their absolute address. */
const tableAt = (place: Place): NamedTable => {
  const at = (row: number, col: number) => addressOf(row, col).replace(/^([A-Z]+)/, "$$$1$$");
  const reference = `${quoted(place.sheet)}!${at(place.row, place.col)}:${at(place.row + place.rows - 1, place.col + place.cols - 1)}`;
  return { name: reference, place, reference };
};

function InUse({ own, host, onFault }: { own: OwnGrades; host: PaneHost; onFault(text: string): void }) {
  const s = useShared();
  const { port } = host;
  const { inUse } = own;
  const tables = inUse && !own.tables.some(({ name }) => name === inUse.name) ? [...own.tables, inUse] : own.tables;
  const takeSelected = async () => {
    const place = await port.selection();
    const [headings = []] = place ? await port.read({ ...place, rows: 1 }) : [];
    const isTable = headings.some(({ value }) => typeof value === "string" && propertyNamed(value)?.key === "grade");
    if (place && isTable && place.rows > 1) own.choose(tableAt(place));
    else onFault('Select a table with its heading row; one heading must be "grade".');
  };
  return (
    <>
      <FieldBox
        label="Own grades in use"
        hint={inUse && own.faults.length === 0 ? `${own.count} grades, searched before the library` : undefined}
      >
        <Choice
          value={inUse?.name ?? ""}
          onChange={(_, { value }) => own.choose(tables.find(({ name }) => name === value))}
          onFocus={() => void own.refresh()}
        >
          <option value="">none: the library alone</option>
          {tables.map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
        </Choice>
      </FieldBox>
      {own.faults.length > 0 && (
        <Notice intent="error" title="This table is not used.">
          <ul className={s.list}>
            {own.faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </Notice>
      )}
      <div className={s.row}>
        <Button size="small" onClick={() => void takeSelected()}>
          Use selected cells as they are
        </Button>
      </div>
    </>
  );
}
