import { Button, Field as FieldBox } from "@fluentui/react-components";
import { useState } from "react";
import { propertyNamed } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { cellsAsTable } from "../../port/address";
import type { NamedTable } from "../../port/sheet";
import type { PaneHost } from "../host/host";
import { grades } from "../lists/grades";
import { Lists } from "../lists/Lists";
import { Choice } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import type { OwnGrades } from "../state/useLibrary";

interface Props {
  own: OwnGrades;
  system: System;
  host: PaneHost;
}

/** Suppliers' lists become a table of the workbook that formulas and the pane use. */
export function Own({ own, system, host }: Props) {
  const s = useShared();
  const [note, setNote] = useState<{ intent: "success" | "error"; text: string }>();
  const written = async (table: NamedTable, count: number) => {
    await own.refresh();
    own.choose(table);
    setNote({
      intent: "success",
      text: `${count} grades stand in the table ${table.name}. Formulas name it as ${table.reference}.`,
    });
  };
  return (
    <section className={s.panel} aria-label="Own grades">
      <InUse own={own} host={host} onFault={(fault) => setNote({ intent: "error", text: fault })} />
      {note && <Notice intent={note.intent}>{note.text}</Notice>}
      <Lists sort={grades} system={system} port={host.port} onWritten={written} />
    </section>
  );
}

function InUse({ own, host, onFault }: { own: OwnGrades; host: PaneHost; onFault(text: string): void }) {
  const s = useShared();
  const { port } = host;
  const { inUse } = own;
  const tables = inUse && !own.tables.some(({ name }) => name === inUse.name) ? [...own.tables, inUse] : own.tables;
  const takeSelected = async () => {
    const place = await port.selection();
    const [headings = []] = place ? await port.read({ ...place, rows: 1 }) : [];
    const isTable = headings.some(({ value }) => typeof value === "string" && propertyNamed(value)?.key === "grade");
    if (place && isTable && place.rows > 1) own.choose(cellsAsTable(place));
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
