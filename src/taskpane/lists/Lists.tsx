import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { System } from "../../core/kinds";
import type { NamedTable, SheetPort } from "../../port/sheet";
import { Notice } from "../parts/Notice";
import { Stoppable } from "../parts/Stoppable";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { mappingFault, unitFault } from "./columns";
import { MapList } from "./MapList";
import type { ReadLists, RowFault } from "./readLists";
import type { Sort } from "./sort";
import { TakeList } from "./TakeList";
import { taken } from "./taken";
import type { Taken } from "./taken";
import { useReading } from "./useReading";

interface Props {
  sort: Sort;
  system: System;
  port: SheetPort;
  onWritten(table: NamedTable, count: number): Promise<void>;
}

const none: readonly Taken[] = [];

/** Lists of one or several suppliers become one table of the workbook. */
export function Lists({ sort, system, port, onWritten }: Props) {
  const s = useShared();
  const [lists, setLists] = useState(none);
  const [fault, setFault] = useState<string>();
  const reading = useReading(lists, sort, system, faultIn(lists, sort));
  const { share, result, problem, openAt } = reading;
  const change = (next: readonly Taken[]) => {
    setFault(undefined);
    setLists(next);
  };
  const write = async (read: ReadLists) => {
    try {
      const table = await writeTable(port, sort, read);
      await onWritten(table, read.count);
      change(none);
    } catch (error) {
      setFault((error as Error).message);
    }
  };
  return (
    <>
      {lists.map((list, i) => (
        <MapList
          key={i}
          {...{ list, sort, system }}
          understood={result?.understood[i]}
          asksDecimals={openAt === i}
          onChange={(changed) => change(lists.map((before, at) => (at === i ? changed : before)))}
          onFault={setFault}
          onRemove={() => change(lists.filter((_, at) => at !== i))}
        />
      ))}
      {share !== undefined && lists.length > 0 && <Stoppable work="Reading" share={share} stop={reading.stop} />}
      {problem && lists.length > 0 && (
        <Notice intent="error" actions={<Button onClick={reading.again}>Read again</Button>}>
          {problem}
        </Notice>
      )}
      {result && <RowFaults faults={result.faults} sort={sort} />}
      {result && result.kept.length > 0 && <p className={s.quiet}>Kept, not used: {result.kept.join(", ")}.</p>}
      {fault && <Notice intent="error">{fault}</Notice>}
      {lists.length > 0 && (
        <>
          <div className={s.row}>
            <Button
              appearance="primary"
              disabled={!result || result.count === 0}
              onClick={() => result && void write(result)}
            >
              {result ? `Confirm and write ${counted(result.count, sort.one)}` : "Confirm and write"}
            </Button>
            <Button onClick={() => change(none)}>Cancel</Button>
          </div>
          <p className={s.quiet}>
            They become a table on a new sheet, {sort.sheet}. Text stays text: nothing in a list becomes a formula.
          </p>
        </>
      )}
      <TakeList
        {...{ sort, port }}
        isFurther={lists.length > 0}
        onList={(list, of) => change([...lists, taken(list, of, sort)])}
      />
    </>
  );
}

/** What keeps the lists from being read before any row is looked at. */
function faultIn(lists: readonly Taken[], sort: Sort): string | undefined {
  for (const [i, { columns, of }] of lists.entries()) {
    const fault = columns.some((column) => unitFault(column, sort))
      ? "Mend the units marked above."
      : mappingFault(columns, sort);
    if (fault !== undefined) return lists.length === 1 ? fault : `${of || `List ${i + 1}`}: ${fault}`;
    const isOwned = columns.some(({ key }) => key === sort.owner);
    if (lists.length > 1 && of.trim() === "" && !isOwned) return `List ${i + 1}: say whose it is.`;
  }
  return undefined;
}

/** By so many rows a column's width is told, and it is no wider than this. */
const measured = 200;
const widest = 44;

async function writeTable(port: SheetPort, { sheet }: Sort, { headings, rows }: ReadLists): Promise<NamedTable> {
  const table = await port.addTable(sheet, [headings.map((value) => ({ value, heading: true as const })), ...rows]);
  const first = [headings, ...rows.slice(0, measured)];
  const widths = headings.map((_, i) => Math.max(...first.map((row) => String(row[i] ?? "").length)));
  await port.widen(
    table.place,
    widths.map((width) => Math.min(widest, width + 2)),
  );
  return table;
}

const shownFaults = 20;

function RowFaults({ faults, sort }: { faults: readonly RowFault[]; sort: Sort }) {
  const s = useShared();
  if (faults.length === 0) return null;
  const rows = new Set(faults.map(({ of, line }) => `${of} ${line}`)).size;
  const [what, verb] = [counted(rows, "row"), rows === 1 ? "is" : "are"];
  const title = sort.dropsFaulty
    ? `${what} cannot be read and ${verb} left out.`
    : `${what} cannot be read whole and ${verb} kept with the reason.`;
  return (
    <Notice intent="warning" title={title}>
      <ul className={s.list}>
        {faults.slice(0, shownFaults).map(({ of, line, name, message }, i) => (
          <li key={i}>
            {of} line {line}, {name}: {message}
          </li>
        ))}
      </ul>
      {faults.length > shownFaults && `And ${faults.length - shownFaults} more.`}
    </Notice>
  );
}
