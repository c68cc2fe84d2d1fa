import { BushError, clash } from "../../errors";
import type { Cell, TableArg } from "../../formula";
import { readZone } from "../../fit/zones/zone";
import type { System } from "../../kinds";
import { placeOf, readTable } from "../../table/readTable";
import type { Row, Table } from "../../table/readTable";
import type { OwnReader } from "../../table/entry";
import { fieldHeadings, fields } from "./fields";
import type { FieldValues } from "./fields";
import { NamedDuty } from "./namedDuty";
import { stepValues } from "./stepValues";
import type { StepValues } from "./stepValues";
import type { Zone } from "../../fit/zones/zone";

type DutyRow = Row<typeof fields, { zone: Zone }>;
type Read = Table<typeof fields, { zone: Zone }>;

/** One row of the table: the duty that starts there, what is wrong with it, or nothing (a later step, a spare row). */
export interface DutyLine {
  /** Counted in the range, from 1. */
  readonly number: number;
  readonly name: string;
  readonly duty: NamedDuty | BushError;
}

export interface DutyTable {
  /** The duties in their order; a step belongs to the one above it. */
  readonly lines: readonly DutyLine[];
  /** Rows below the headings, and the number of the first of them. */
  readonly height: number;
  readonly first: number;
  readonly unknownColumns: readonly string[];
}

export const readOwn: OwnReader = (entry, cell, unit, system) => readZone(cell, system, entry.heading, unit);

/** How duties are read, whoever reads them. */
export const dutyReading = { list: fields, headings: fieldHeadings, own: readOwn } as const;

/** A table of duties, or a card of one; rows of one name, or with no name below it, are the steps of one duty. */
export function readDuties(cells: Cell[][], system: System, name: string): DutyTable {
  const table: Read = readTable(cells, { ...dutyReading, system, name });
  const hasNames = table.columns.some(({ key }) => key === "duty");
  if (table.columns.every(({ key }) => key === undefined))
    throw clash(name, `${name} must have a heading row: duty, load, bore, length, rpm, temperature …`);
  if (table.rows.length === 0) throw clash(name, `${name} holds no row below its headings`);
  const seen = new Set<string>();
  const lines = groupsOf(table.rows, hasNames).map((rows): DutyLine => {
    const [first] = rows as [DutyRow];
    const given = first.values.duty ?? "";
    const at = (error: BushError, { number }: DutyRow) =>
      error.code === "passed"
        ? error
        : new BushError(error.code, name, `${placeOf(name, number, table)}: ${error.message}`);
    const line = { number: first.number, name: given };
    for (const row of rows) for (const fault of row.faults.values()) return { ...line, duty: at(fault, row) };
    try {
      if (hasNames && given === "") throw clash("duty", "duty is missing");
      if (given !== "" && seen.has(given.toLowerCase()))
        throw clash("duty", `duty "${given}" stands above already: steps of one duty stand below each other`);
      return { ...line, duty: dutyOfRows(given, rows, system, at) };
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      return { ...line, duty: error.argument === name ? error : at(error, first) };
    } finally {
      seen.add(given.toLowerCase());
    }
  });
  return { lines, height: table.height, first: table.top + 1, unknownColumns: table.unknownColumns };
}

/** Rows that belong together: a name, and below it the same name or none. */
export function groupsOf(rows: readonly DutyRow[], hasNames: boolean): DutyRow[][] {
  const groups: Group[] = [];
  for (const row of rows) {
    const group = groups[groups.length - 1];
    if (hasNames && group && isNextTo(group, row) && isNamedAs(group, row) && !row.faults.has("duty")) group.push(row);
    else groups.push([row]);
  }
  return groups;
}
type Group = [DutyRow, ...DutyRow[]];
const isNextTo = (group: Group, { number }: DutyRow): boolean => group[group.length - 1]?.number === number - 1;
const isNamedAs = ([first]: Group, { values: { duty } }: DutyRow): boolean =>
  duty === undefined || duty.toLowerCase() === first.values.duty?.toLowerCase();

/** Carries down what a step leaves blank, and makes the duty; an error names the row that it is about. */
function dutyOfRows(
  name: string,
  rows: readonly DutyRow[],
  system: System,
  at: (error: BushError, row: DutyRow) => BushError,
): NamedDuty {
  let above: FieldValues = {};
  const steps = rows.map((row, i): StepValues => {
    try {
      const step = stepValues(row.values, above, i > 0, rows.length > 1);
      above = step.values;
      return step;
    } catch (error) {
      throw error instanceof BushError ? at(error, row) : error;
    }
  });
  return new NamedDuty(name, steps, system);
}

/** The argument by which every function takes duties. */
export const dutiesArg = {
  kind: "table",
  what: 'a heading row (duty, load, bore, length, rpm, temperature …, units in brackets: "load [lbf]") and one row per duty, or a card with its headings down the first of two columns',
  text: "Duties",
  read: readDuties,
} as const satisfies TableArg<DutyTable>;
