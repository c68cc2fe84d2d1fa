import { useState } from "react";
import { cellsAsTable } from "../../port/address";
import type { NamedTable } from "../../port/sheet";
import { Button, Field as FieldBox } from "@fluentui/react-components";
import { Lists } from "../lists/Lists";
import { offers as sort } from "../lists/offers";
import { Choice } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import type { PaneState } from "../state/usePane";
import { Answer } from "./Answer";
import { areOffers, useOffers } from "./useOffers";
import type { OfferTables } from "./useOffers";

/** From suppliers' offers to a table, and from the table to a decision. */
export function Offers({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { port } = pane.host;
  const tables = useOffers(port);
  const [note, setNote] = useState<{ intent: "success" | "error"; text: string }>();
  const written = async (table: NamedTable, count: number) => {
    await tables.refresh();
    tables.choose(table);
    setNote({
      intent: "success",
      text: `${counted(count, "offer")} stand in the table ${table.name}. Formulas name it as ${table.reference}.`,
    });
  };
  return (
    <section className={s.panel} aria-label="Offers">
      <InUse pane={pane} tables={tables} onFault={(text) => setNote({ intent: "error", text })} />
      {note && <Notice intent={note.intent}>{note.text}</Notice>}
      {tables.inUse && <Answer pane={pane} tables={tables} />}
      <Lists sort={sort} system={pane.duty.system} port={port} onWritten={written} />
    </section>
  );
}

function InUse({ pane, tables, onFault }: { pane: PaneState; tables: OfferTables; onFault(text: string): void }) {
  const s = useShared();
  const { port } = pane.host;
  const { inUse, ratesInUse } = tables;
  const takeSelected = async () => {
    const place = await port.selection();
    const [headings = []] = place ? await port.read({ ...place, rows: 1 }) : [];
    const texts = headings.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
    if (place && place.rows > 1 && areOffers(texts)) tables.choose(cellsAsTable(place));
    else onFault('Select a table with its heading row; its headings must name a "grade" and a "price".');
  };
  return (
    <>
      <div className={s.pair}>
        <TableChoice label="Offers in use" none="none" of={tables.offers} {...{ inUse }} onChoose={tables.choose} />
        <TableChoice
          label="Exchange rates"
          none="none"
          of={tables.rates}
          inUse={ratesInUse}
          onChoose={tables.chooseRates}
        />
      </div>
      <div className={s.row}>
        <Button size="small" onClick={() => void takeSelected()}>
          Use selected cells as they are
        </Button>
        <Button size="small" onClick={() => void tables.refresh()}>
          Look for tables again
        </Button>
      </div>
    </>
  );
}

interface TableProps {
  label: string;
  none: string;
  of: readonly NamedTable[];
  inUse: NamedTable | undefined;
  onChoose(table: NamedTable | undefined): void;
}

function TableChoice({ label, none, of, inUse, onChoose }: TableProps) {
  const all = inUse && !of.some(({ name }) => name === inUse.name) ? [...of, inUse] : of;
  return (
    <FieldBox label={label}>
      <Choice value={inUse?.name ?? ""} onChange={(_, { value }) => onChoose(all.find(({ name }) => name === value))}>
        <option value="">{none}</option>
        {all.map(({ name }) => (
          <option key={name}>{name}</option>
        ))}
      </Choice>
    </FieldBox>
  );
}
