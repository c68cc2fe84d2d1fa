import { BushError, clash, isMissing, mustBe } from "../../errors";
import type { Cell, TableArg } from "../../formula";
import type { System } from "../../kinds";
import { placeOf, readTable } from "../../table/readTable";
import { gradeKey, libraryOf } from "./library";
import type { Grade, Library } from "./library";
import { property, propertyHeadings, propertyList } from "./properties";
import type { OwnKinds, Values } from "./properties";
import { readOwnKind } from "./readProperty";

/** The grades of a user's table and what is wrong in it, row by row. */
export interface GradeTable {
  readonly grades: readonly Grade[];
  readonly unknownColumns: readonly string[];
  readonly faults: readonly RowFault[];
  /** What looks like a slip and was read as it stands. */
  readonly remarks: readonly string[];
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

/** How grades are read, whoever reads them. */
export const gradeReading = { list: propertyList, headings: propertyHeadings, own: readOwnKind } as const;

/** Reads a heading row and one grade per row, or a card of one grade; rows are counted in the range, the heading being row 1 where it is the first. */
export function parseGrades(cells: Cell[][], system: System, name: string): GradeTable {
  const reading = { ...gradeReading, system, name };
  const table = readTable<typeof propertyList, OwnKinds>(cells, reading);
  const { columns, rows, unknownColumns } = table;
  if (!columns.some(({ key }) => key === "grade")) {
    const word = wordAlone(cells);
    throw word === undefined
      ? clash(name, `${name} must have a heading row with a column "grade"`)
      : mustBe(name, 'a table of grades or the word "demo"', word);
  }
  const grades: Grade[] = [];
  const faults: RowFault[] = [];
  const remarks: string[] = [];
  const seen = new Map<string, number>();
  for (const { number, values: all, faults: inRow, remarks: inPart, extra } of rows) {
    try {
      for (const fault of inRow.values()) throw fault;
      // every row of a user's table is an own grade, whatever its kind column says
      const { grade, kind: _, ...values } = all;
      if (grade === undefined || grade === "") throw isMissing("grade");
      checkOrder(values);
      const before = seen.get(gradeKey(grade));
      if (before !== undefined) throw clash("grade", `grade "${grade}" stands in row ${before} already`);
      seen.set(gradeKey(grade), number);
      grades.push({ name: grade, kind: "own", values, origins: {}, extra });
      remarks.push(...inPart.map((remark) => `${name} row ${number}: ${remark}`));
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      const told =
        error.code === "passed"
          ? error
          : new BushError(error.code, name, `${placeOf(name, number, table)}: ${error.message}`);
      faults.push(Object.assign(told, { row: number }));
    }
  }
  return { grades, unknownColumns, faults, remarks };
}

/** A word in place of a table. */
function wordAlone([row, ...more]: Cell[][]): string | undefined {
  const [word, ...others] = row ?? [];
  return typeof word === "string" && others.length === 0 && more.length === 0 ? word.trim() : undefined;
}
const isDemo = (cells: Cell[][]): boolean => wordAlone(cells)?.toLowerCase() === "demo";

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
