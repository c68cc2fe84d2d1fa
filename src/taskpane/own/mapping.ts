import { BushError } from "../../core/errors";
import {
  gradeReading,
  headingOf,
  kindOf,
  parseGrades,
  properties,
  property,
  propertyNamed,
} from "../../core/grades/model";
import type { Property, PropertyKey } from "../../core/grades/model";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { nearest, normal } from "../../core/names";
import { splitNumber } from "../../core/numbers";
import type { Decimals } from "../../core/table/decimals";
import { splitHeading } from "../../core/table/heading";
import { inDigits } from "../../core/table/readTable";
import { fromUnit } from "../../core/units/scale";
import type { Rows } from "./readList";

/** What becomes of a column. "": kept as it stands, and not used. */
export interface Mapped {
  readonly heading: string;
  readonly key: PropertyKey | "";
  /** Empty: the unit system of the sheet. */
  readonly unit: string;
}

/** Words that lists use for a property and that may mean another thing too: a guess, the cautious one, which the user confirms. */
const otherWords: Readonly<Partial<Record<PropertyKey, readonly string[]>>> = {
  grade: ["name", "material", "materialname", "product", "compound", "designation", "type"],
  family: ["polymer", "basepolymer", "resin", "base"],
  staticPressure: ["maximumstaticpressure", "staticload", "maxstaticload", "staticcapacity", "pmaxstatic"],
  runningPressure: [
    "dynamicpressure",
    "dynamicload",
    "maxpressure",
    "pressurelimit",
    "maxp",
    "pmax",
    "maximumpressure",
  ],
  speedTurning: [
    "maxspeed",
    "speedlimit",
    "maxv",
    "vmax",
    "maxvelocity",
    "maximumspeed",
    "maxspeedrotating",
    "velocitylimit",
  ],
  speedSwinging: ["maxspeedoscillating", "speedoscillating", "maxspeedswinging"],
  speedLinear: ["maxspeedlinear", "speedlinear"],
  pvLimit: ["pvmax", "lpv", "pvvalue", "maximumpv"],
  lowestTemperature: ["mintemp", "tmin", "lowtemp"],
  highestTemperature: [
    "maxtemp",
    "maxtemperature",
    "maximumtemperature",
    "tmax",
    "hightemp",
    "continuoustemperature",
    "servicetemperature",
  ],
  shortTermTemperature: ["maxshorttermtemperature"],
  frictionHigh: ["friction", "cof", "coefficientoffriction", "mu"],
  wearHigh: ["wearrate", "wearfactor", "specificwearrate", "kfactor"],
  compressiveStrength: ["compressivestress", "strength"],
  compressiveModulus: ["modulus", "emodulus", "elasticmodulus", "youngsmodulus"],
  poisson: ["nu"],
  expansion: ["clte", "linearexpansion"],
  waterSaturated: ["waterabsorption", "moistureabsorption", "watersaturation", "maxwaterabsorption", "wateruptake"],
  density: ["specificgravity"],
  source: ["reference", "supplier"],
};
const byWord = new Map(
  Object.entries(otherWords).flatMap(([key, words]) => words.map((word) => [word, key as PropertyKey] as const)),
);

/** A guess for every heading: its property and unit. Each property is guessed once; the user confirms. */
export function guessColumns(headings: Rows[number]): Mapped[] {
  const taken = new Set<PropertyKey>();
  return headings.map((cell, i) => {
    const heading = cell === null ? `column ${i + 1}` : String(cell);
    const { name, unit } = splitUnit(heading);
    const found = propertyNamed(heading)?.key ?? propertyNamed(name)?.key ?? byWord.get(normal(name)) ?? near(name);
    if (!found || found === "kind" || taken.has(found)) return { heading, key: "", unit: "" };
    taken.add(found);
    return { heading, key: found, unit: kindOf(property(found)) ? tidyUnit(unit ?? "") : "" };
  });
}

function near(name: string): PropertyKey | undefined {
  const [only, ...more] = nearest(
    name,
    properties.map((p) => p.heading),
  );
  return only && more.length === 0 ? propertyNamed(only)?.key : undefined;
}

/** The unit stands in brackets, or behind a comma: "PV limit [psi*ft/min]", "PV limit, psi-fpm". */
function splitUnit(heading: string): { name: string; unit?: string } {
  const found = splitHeading(heading);
  if (found.unit) return found;
  const comma = heading.lastIndexOf(",");
  const unit = heading.slice(comma + 1).trim();
  const name = heading.slice(0, Math.max(0, comma)).trim();
  return name !== "" && unit !== "" && !unit.includes(" ") ? { name, unit } : found;
}

/** The unit that a heading carries, which a column keeps whatever property it is given by hand. */
export const unitIn = (heading: string, key: PropertyKey | ""): string =>
  key !== "" && kindOf(property(key)) ? tidyUnit(splitUnit(heading).unit ?? "") : "";

/** A hyphen between units is a product in the trade's writing. */
const tidyUnit = (unit: string): string => unit.replace(/([A-Za-z²³2-3])\s?-\s?(?=[A-Za-z])/g, "$1*");

/** Why a unit does not suit the property that a column is mapped to. */
export function unitFault({ key, unit }: Mapped): string | undefined {
  if (key === "") return undefined;
  const p = property(key);
  if (unit.trim() === "") return p.kind === "percent" ? `${p.heading}: say whether it is in % or a ratio` : undefined;
  const kind = kindOf(p);
  if (!kind) return `${p.heading} takes no unit`;
  try {
    for (const [k, text] of p.kind === "curve" ? curveUnits(kind, unit) : [[kind, unit] as const])
      fromUnit(p.heading, k, 1, text.trim());
    return undefined;
  } catch (error) {
    if (error instanceof BushError) return error.message;
    throw error;
  }
}

function curveUnits(kind: NonNullable<ReturnType<typeof kindOf>>, unit: string) {
  const [second = "", first] = unit.split(":").reverse();
  return [[kind, second] as const, ...(first ? [["temperature", first] as const] : [])];
}

/** Two columns for one property, or none for the grade's name. */
export function mappingFault(columns: readonly Mapped[]): string | undefined {
  const keys = columns.map(({ key }) => key).filter((key) => key !== "");
  const twice = keys.find((key, i) => keys.indexOf(key) !== i);
  if (twice) return `Two columns are set to ${property(twice).heading}: choose one.`;
  return keys.includes("grade") ? undefined : "Set one column to grade: the name of each material.";
}

export interface RowFault {
  /** Row of the list, its heading being 1. */
  readonly row: number;
  /** What the list has in the grade's column. */
  readonly name: string;
  readonly message: string;
}

export interface Imported {
  readonly headings: readonly string[];
  /** The rows without a fault. */
  readonly rows: Rows;
  readonly count: number;
  readonly faults: readonly RowFault[];
  /** Columns that are kept and not used. */
  readonly kept: readonly string[];
}

/**
 * Reads the list by its mapping with the core's own reader of grade tables, and drops the rows that it refuses. Throws
 * where the list does not say how it writes decimals, or mixes both ways.
 */
export function importRows(
  rows: Rows,
  columns: readonly Mapped[],
  system: System,
  decimals: Decimals = "ask",
): Imported {
  const headings = columns.map((column) => headingFor(column, system));
  const reading = { ...gradeReading, system, name: listName, decimals };
  const [, ...read] = inDigits([headings, ...rows.slice(1)], reading) as Rows;
  const isNumber = columns.map(({ key }) => key !== "" && kindOf(property(key)) !== undefined);
  const body = read.map((row) => row.map((cell, i) => (isNumber[i] ? numberWhereOne(cell) : cell)));
  const { faults, unknownColumns, grades } = parseGrades([headings, ...body], system, listName);
  const bad = new Set(faults.map(({ row }) => row));
  const nameAt = columns.findIndex(({ key }) => key === "grade");
  return {
    headings,
    rows: body.filter((_, i) => !bad.has(i + 2)),
    count: grades.length,
    faults: faults.map(({ row, message }) => ({
      row,
      name: String(rows[row - 1]?.[nameAt] ?? "without a name"),
      message: message.replace(`${listName} row ${row}: `, ""),
    })),
    kept: unknownColumns,
  };
}
const listName = "list";

/** A heading that the functions read: the property's own name with the unit of the column. */
function headingFor({ key, heading, unit }: Mapped, system: System): string {
  if (key === "") return propertyNamed(heading) ? `as listed: ${heading}` : heading;
  const p = property(key);
  if (!kindOf(p)) return p.heading;
  return unit.trim() ? `${p.heading} [${unit.trim()}]` : headingOf(p, system);
}

/** Text that is a plain number becomes one; any other text stays as it is. */
function numberWhereOne(cell: string | number | null): string | number | null {
  if (typeof cell !== "string") return cell;
  const found = splitNumber(cell);
  return found && found.rest === "" && !found.isFraction && Number.isFinite(found.value) ? found.value : cell;
}

/** The unit that counts where a column names none. */
export function assumedUnit(p: Property, system: System): string {
  const kind = kindOf(p);
  return kind ? kinds[kind][system] : "";
}
