import type { Cell } from "../core/formula";
import { kinds } from "../core/kinds";
import { inCurrency } from "../core/units/money";
import { splitNumber } from "../core/numbers";
import { present } from "../core/present";
import type { Decimals } from "../core/table/decimals";
import { inOneMark } from "../core/table/decimals";
import { entryOf } from "../core/table/entry";
import type { EntryList } from "../core/table/entry";
import { columnsOf, numberColumns } from "../core/table/readTable";
import type { Column, Reading } from "../core/table/readTable";
import type { System } from "../core/kinds";
import type { ListCell, ListTable } from "./list";

/** A list, whose it is, and how it writes decimals. */
export interface Source extends Pick<ListTable, "headings" | "rows" | "lines"> {
  /** For messages. */
  readonly name: string;
  /** Whose it is. */
  readonly of: string;
  readonly decimals: Decimals;
}

export interface Joined {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly ListCell[])[];
  /** The source of each row, and its row there; counted from 0. */
  readonly from: readonly (readonly [source: number, row: number])[];
}

interface Placed {
  readonly column: Column;
  readonly to: number;
  /** Written behind a plain number of the cell, where the sources differ in their units. */
  readonly unit: string;
  readonly isNumber: boolean;
  readonly isAmount: boolean;
}

/**
 * Several lists as one table: columns of one field become one, whatever each list calls it; where their units differ,
 * each cell carries its own. `owner` is the field, or the heading, that says whose a row is where its list does not; without
 * it nothing does.
 */
export function joined<L extends EntryList>(
  sources: readonly Source[],
  reading: Omit<Reading<L>, "system" | "name">,
  { system, owner }: { readonly system: System; readonly owner?: string | undefined },
): Joined {
  const read = sources.map((source) => {
    const of = { ...reading, system, name: source.name } as Reading<L>;
    const columns = columnsOf(source.headings as Cell[], source.rows as Cell[][], of);
    const numbers = numberColumns(columns, of);
    const rows = inOneMark(source.rows as Cell[][], numbers, {
      name: source.name,
      place: (row) => `${source.name} line ${present(source.lines[row])}`,
      wanted: source.decimals,
    });
    return { source, columns, numbers: new Set(numbers), rows };
  });
  const ids: string[] = [];
  const units = new Map<string, Set<string>>();
  for (const { columns } of read)
    for (const column of columns) {
      const id = idOf(column);
      if (!ids.includes(id)) ids.push(id);
      units.set(id, (units.get(id) ?? new Set()).add(column.unit ?? ""));
    }
  const isField = (id: string): boolean => !id.startsWith("=");
  const shared = (id: string): string | undefined => {
    const [first, ...others] = present(units.get(id));
    return others.length === 0 ? first : undefined;
  };
  const ownerId = owner !== undefined && owner in reading.list ? `${owner}@` : `=${owner}`;
  const needsOwner =
    owner !== undefined && read.some(({ columns }) => !columns.some((column) => idOf(column) === ownerId));
  if (needsOwner && !ids.includes(ownerId)) ids.push(ownerId);
  const headings = ids.map((id) => {
    if (!isField(id)) return id.slice(1);
    const [key, at] = id.split("@") as [string, string];
    const name = `${entryOf(reading.list, key).heading}${at === "" ? "" : ` from ${at}`}`;
    const unit = units.has(id) ? shared(id) : undefined;
    return unit ? `${name} [${unit}]` : name;
  });
  const rows: ListCell[][] = [];
  const from: (readonly [number, number])[] = [];
  read.forEach(({ source, columns, numbers, rows: own }, s) => {
    const placed = columns.map((column): Placed => {
      const id = idOf(column);
      const unit = shared(id) === undefined ? (column.unit ?? defaultUnit(reading.list, column, system)) : "";
      const isAmount = column.key !== undefined && entryOf(reading.list, column.key).kind === "amount";
      return { column, to: ids.indexOf(id), unit, isNumber: numbers.has(column), isAmount };
    });
    const owned = columns.some((column) => idOf(column) === ownerId) || !needsOwner ? -1 : ids.indexOf(ownerId);
    own.forEach((row, r) => {
      const cells = Array<ListCell>(ids.length).fill(null);
      for (const place of placed) cells[place.to] = joinedCell((row[place.column.index] ?? null) as ListCell, place);
      if (owned >= 0) cells[owned] = source.of;
      rows.push(cells);
      from.push([s, r]);
    });
  });
  return { headings, rows, from };
}

const idOf = ({ key, at, heading }: Column): string => (key === undefined ? `=${heading}` : `${key}@${at ?? ""}`);

function defaultUnit(list: EntryList, { key }: Column, system: System): string {
  const kind = key === undefined ? "" : entryOf(list, key).kind;
  return kind in kinds ? kinds[kind as keyof typeof kinds][system] : "";
}

/** Text in a column of numbers that is one number becomes it, with its unit where that must stand in the cell; other text stays. */
function joinedCell(cell: ListCell, { unit, isNumber, isAmount }: Placed): ListCell {
  if (!isNumber || cell === null) return cell;
  if (typeof cell === "number") return Number.isFinite(cell) ? withUnit(cell, unit) : cell;
  return isAmount && unit !== "" ? inCurrency(cell, unit) : fromText(cell, unit);
}
function fromText(cell: string, unit: string): ListCell {
  const found = splitNumber(cell);
  const isPlain = found?.rest === "" && !("isFraction" in found) && Number.isFinite(found.value);
  if (!isPlain) return unit !== "" && /[\d½¼¾]$/.test(cell) ? `${cell} ${unit}` : cell;
  return "withComma" in found ? cell : withUnit(found.value, unit);
}
const withUnit = (value: number, unit: string): ListCell => (unit === "" ? value : `${value} ${unit}`);
