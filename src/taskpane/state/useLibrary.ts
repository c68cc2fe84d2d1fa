import { useCallback, useEffect, useRef, useState } from "react";
import { plainCell } from "../../edge/cells";
import { libraryOf, parseGrades, propertyNamed } from "../../core/grades/model";
import type { Library } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import type { NamedTable, ReadCell, SheetPort } from "../../port/sheet";
import { seemsToBe } from "../../files/kinds";
import { useWatch } from "../parts/useSheet";
import { tablesWith } from "./tables";

export interface OwnGrades {
  /** Tables of the workbook that have a column of grades. */
  readonly tables: readonly NamedTable[];
  readonly inUse?: NamedTable;
  readonly library: Library;
  /** How many grades the table in use gives. */
  readonly count: number;
  /** Why the table in use cannot be used: every formula that names it answers with the first of these. */
  readonly faults: readonly string[];
  choose(table: NamedTable | undefined): void;
  refresh(): Promise<readonly NamedTable[]>;
}

interface Read {
  readonly library: Library;
  readonly count: number;
  readonly faults: readonly string[];
}
const builtIn: Read = { library: libraryOf(), count: 0, faults: [] };

/** The library and, in front of it, the grades of the workbook's table that is in use. */
export function useLibrary(port: SheetPort, system: System): OwnGrades {
  const [tables, setTables] = useState<readonly NamedTable[]>([]);
  const [inUse, setInUse] = useState<NamedTable>();
  const [read, setRead] = useState<Read>(builtIn);

  const refresh = useCallback(async () => {
    const found = await gradeTables(port);
    setTables(found);
    return found;
  }, [port]);

  useEffect(() => {
    refresh().then(
      (found) => setInUse((now) => now ?? found[0]),
      () => setTables([]),
    );
  }, [refresh]);

  // the sheet reports every recalculation: the same cells leave the library, and all that hangs on it, as it is
  const last = useRef("");
  const reread = useCallback(() => {
    if (!inUse) {
      last.current = "";
      return setRead(builtIn);
    }
    const count = inUse.place.rows - 1;
    if (count > mostOwn) {
      last.current = "";
      return setRead({ ...builtIn, faults: [tooMany(inUse.name, count)] });
    }
    void (async () => {
      try {
        const cells = plainCells(await port.read(inUse.place));
        const seen = JSON.stringify([inUse.reference, system, cells]);
        if (seen === last.current) return;
        last.current = seen;
        setRead(readTable(cells, inUse.name, system));
      } catch (error) {
        last.current = "";
        setRead({ ...builtIn, faults: [`${inUse.name} cannot be read: ${(error as Error).message}`] });
      }
    })();
  }, [port, inUse, system]);
  useEffect(reread, [reread]);
  useWatch(port, reread);

  return { tables, inUse, ...read, choose: setInUse, refresh };
}

const gradeTables = (port: SheetPort): Promise<NamedTable[]> =>
  tablesWith(port, (headings) => {
    const known = headings.map((heading) => propertyNamed(heading)?.key);
    return known.includes("grade") && known.filter(Boolean).length > 1 && seemsToBe(headings, "grades") === undefined;
  });

const tooMany = (name: string, count: number): string =>
  `${name} has ${count} rows, the pane judges ${mostOwn} at most; formulas in the sheet use them all.`;

/** So many own grades are read and judged anew whenever the sheet changes. */
export const mostOwn = 5000;

/** A table with a fault is used by no formula, so the pane does not use it either. */
function readTable(cells: ReturnType<typeof plainCells>, name: string, system: System): Read {
  const { grades, unknownColumns, faults } = parseGrades(cells, system, name);
  if (faults.length > 0) return { ...builtIn, faults: faults.map((fault) => fault.message) };
  return { library: libraryOf(grades, unknownColumns), count: grades.length, faults: [] };
}

export const plainCells = (cells: readonly (readonly ReadCell[])[]) =>
  cells.map((row) => row.map((cell) => plainCell(cell.error?.code ?? cell.value)));
