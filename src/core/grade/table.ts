import { isSpareRow } from "../cell";
import { BushError, clash, isMissing } from "../errors";
import type { Cell, TableArg } from "../formula";
import type { System } from "../kinds";
import { gradeKey, libraryOf } from "./library";
import type { Grade, Library } from "./library";
import { property, propertyNamed, splitHeading } from "./properties";
import type { Property, Values } from "./properties";
import { readProperty } from "./readProperty";

/** The grades of a user's table and what is wrong in it, row by row. */
export interface GradeTable {
  readonly grades: readonly Grade[];
  readonly unknownColumns: readonly string[];
  readonly faults: readonly RowFault[];
}
/** A fault and its row, counted in the range. */
export type RowFault = BushError & { readonly row: number };

/** The library with a user's rows in front; the first fault of the table is thrown. The one word "demo" asks for the invented grades. */
export function readGrades(cells: Cell[][], system: System, name: string): Library {
  if (isDemo(cells)) return libraryOf("demo");
  const { grades, unknownColumns, faults } = parseGrades(cells, system, name);
  if (faults[0]) throw faults[0];
  return libraryOf(grades, unknownColumns);
}

const isDemo = ([row = [], ...others]: Cell[][]): boolean =>
  others.length === 0 && row.length === 1 && String(row[0]).trim().toLowerCase() === "demo";

/** Reads a heading row and one grade per row; rows are counted in the range, the heading being row 1 where it is the first. */
export function parseGrades(cells: Cell[][], system: System, name: string): GradeTable {
  const top = cells.findIndex((row) => row.some((cell) => cell !== null));
  const rows = cells.slice(top + 1);
  const columns = readHeadings(cells[top] ?? [], rows, name);
  const grades: Grade[] = [];
  const faults: RowFault[] = [];
  const seen = new Map<string, number>();
  rows.forEach((row, i) => {
    if (isSpareRow(row)) return;
    const number = top + i + 2;
    try {
      const grade = readGrade(row, columns, system);
      const before = seen.get(gradeKey(grade.name));
      if (before !== undefined) throw clash("grade", `grade "${grade.name}" stands in row ${before} already`);
      seen.set(gradeKey(grade.name), number);
      grades.push(grade);
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      const told =
        error.code === "passed" ? error : new BushError(error.code, name, `${name} row ${number}: ${error.message}`);
      faults.push(Object.assign(told, { row: number }));
    }
  });
  return { grades, unknownColumns: columns.filter((c) => !c.property).map((c) => c.heading), faults };
}

interface Column {
  readonly index: number;
  readonly heading: string;
  readonly property?: Property;
  readonly unit?: string;
}

function readHeadings(row: Cell[], rows: Cell[][], name: string): Column[] {
  const columns = row.flatMap<Column>((cell, index) => {
    if (cell instanceof BushError) throw cell;
    // a column without a heading counts only where something stands in it
    if (cell === null)
      return rows.some((r) => r[index] !== null && r[index] !== undefined)
        ? [{ index, heading: `column ${index + 1}` }]
        : [];
    const heading = String(cell);
    return [{ index, heading, property: propertyNamed(heading), unit: splitHeading(heading).unit }];
  });
  for (const { property: p, heading } of columns)
    if (p && columns.filter((c) => c.property === p).length > 1)
      throw clash(name, `${name} has two columns for "${p.heading}" (one is "${heading}")`);
  if (!columns.some((c) => c.property?.key === "grade"))
    throw clash(name, `${name} must have a heading row with a column "grade"`);
  return columns;
}

function readGrade(row: Cell[], columns: readonly Column[], system: System): Grade {
  const values: Record<string, unknown> = {};
  const extra: [string, string][] = [];
  let name = "";
  for (const { index, heading, property: p, unit } of columns) {
    const cell = row[index] ?? null;
    if (cell instanceof BushError) throw cell;
    if (cell === null || isNoData(cell)) continue;
    if (!p) extra.push([heading, String(cell)]);
    else if (p.key === "grade") name = String(cell).trim();
    // every row of a user's table is an own grade, whatever its kind column says
    else if (p.key !== "kind") values[p.key] = readProperty(p, cell, unit, system);
  }
  if (name === "") throw isMissing("grade");
  checkOrder(values as Values);
  return { name, kind: "own", values: values as Values, origins: {}, extra };
}

/** How people write that there is no value. */
const isNoData = (cell: Cell): boolean => typeof cell === "string" && /^(no data|n\/a|[-–—])$/i.test(cell.trim());

/** Pairs of which the first may not exceed the second. */
const ordered: readonly (readonly [keyof Values, keyof Values])[] = [
  ["lowestTemperature", "highestTemperature"],
  ["highestTemperature", "shortTermTemperature"],
  ["frictionLow", "frictionHigh"],
  ["wearLow", "wearHigh"],
  ["water50", "waterSaturated"],
  ["swelling50", "swellingSaturated"],
  ["staticPressure", "compressiveStrength"],
];

function checkOrder(values: Values): void {
  for (const [low, high] of ordered) {
    const a = values[low];
    const b = values[high];
    if (typeof a === "number" && typeof b === "number" && a > b)
      throw clash("grades", `${property(low).heading} is above ${property(high).heading}`);
  }
}

/** The argument by which every function takes a user's own grades. */
export const gradesArg = {
  kind: "table",
  optional: true,
  what: 'a heading row (units in brackets: "PV limit [psi*ft/min]") and one row per grade, or the word "demo"',
  text: "Own grades, searched before the library; or the invented grades of the demo alone",
  read: readGrades,
} as const satisfies TableArg<Library>;
