import tolerances from "../../../../data/iso286/tolerances.json";
import deviations from "../../../../data/iso286/deviations.json";
import { clash, mustBe, noDatum } from "../../errors";
import { millimetres } from "../../measure";
import { present } from "../../present";
import { Deviations, gradeText, ToleranceClass } from "./zone";
import type { Zone } from "./zone";

/**
 * ISO 286-1:2010, nominal sizes above 0 up to 500 mm. The tables are in µm, everything that leaves this file in mm.
 * Classes js and JS are ±IT/2 exactly: the standard lets an odd IT of grades 7 to 11 be rounded to the even value below, which is not done here.
 */

type Column = readonly (number | null)[];
const tables = {
  grades: tolerances.grades as Readonly<Record<string, Column>>,
  upper: deviations.upper as Readonly<Record<string, Column>>,
  lower: deviations.lower as Readonly<Record<string, Column>>,
  j: deviations.j as Readonly<Record<string, Column>>,
  J: deviations.J as Readonly<Record<string, Column>>,
  delta: deviations.delta as Readonly<Record<string, Column>>,
};

/** The sizes at which a range of either table ends, mm: limits jump there. */
export const sizeSteps: readonly number[] = [...new Set([1, ...tolerances.upTo, ...deviations.upTo])].sort(
  (a, b) => a - b,
);

const greatestSize = 500;
/** An inch size that converts to a range's end must not slip past it by a rounding error. */
const hair = 1e-9;
const rangeOf = (upTo: readonly number[], size: number): number => upTo.findIndex((end) => size <= end * (1 + hair));

/** The deviations of a zone at a nominal size, mm; `of` names the argument that holds the zone and the one that holds the size. */
export function deviationsOf(zone: Zone, size: number, of: { zone: string; size: string }): Deviations {
  if (zone instanceof Deviations) {
    if (zone.lower < size / 2) return zone;
    throw mustBe(of.zone, `deviations from ${millimetres(size)}, as "+0.05/+0.10", not sizes`, zone.toString());
  }
  if (zone.size !== undefined && Math.abs(zone.size - size) > hair * size)
    throw clash(of.zone, `${of.zone} is for ${millimetres(zone.size)}, but ${of.size} is ${millimetres(size)}`);
  if (!(size > 0 && rangeOf(tolerances.upTo, size) >= 0))
    throw mustBe(of.size, `above 0 mm and at most ${greatestSize} mm for an ISO 286 class`, millimetres(size));
  const found = isoDeviations(zone, size);
  if (!found)
    throw noDatum(
      of.zone,
      `${of.zone} ${String(zone)} at ${millimetres(size)} is not held here: the ISO 286-1 tables of this add-in lack it`,
    );
  return found;
}

/** Two limits: of a size or of a clearance. */
export interface Limits {
  readonly least: number;
  readonly greatest: number;
}

/** The limits of size of a zone at a nominal size, mm. */
export function limitsIn(zone: Zone, size: number, of: { zone: string; size: string }): Limits {
  const { lower, upper } = deviationsOf(zone, size, of);
  const least = size + lower;
  if (least < 0)
    throw clash(
      of.size,
      `${of.size} ${millimetres(size)} is too small for ${String(zone)}: its least limit would be ${millimetres(least)}`,
    );
  return { least, greatest: size + upper };
}

/** Fails where a hole's zone is asked for and a shaft's is given, and the other way round. */
export function checkFeature(name: string, zone: Zone, feature: "hole" | "shaft"): void {
  if (!(zone instanceof ToleranceClass) || zone.isHole === (feature === "hole")) return;
  const accepted =
    feature === "hole" ? 'a hole class (capital letter), as "H7"' : 'a shaft class (small letter), as "f7"';
  throw mustBe(name, `${accepted}, or two deviations`, String(zone));
}

/** Undefined where the tables have no such class at this size. */
export function isoDeviations({ letter, grade, isHole }: ToleranceClass, size: number): Deviations | undefined {
  const it = tables.grades[gradeText(grade)]?.[rangeOf(tolerances.upTo, size)];
  if (it === undefined || it === null || isBelowLeastSize(letter, grade, size)) return undefined;
  if (letter === "JS" || letter === "js") return micrometres(-it / 2, it / 2);
  const row = rangeOf(deviations.upTo, size);
  return isHole ? hole(letter, grade, row, it) : shaft(letter, grade, row, it);
}

/** Up to 1 mm the standard has no a, b, A, B, no N above grade 8 and no grade above 13. */
const isBelowLeastSize = (letter: string, grade: number, size: number): boolean =>
  size <= 1 && (/^[ab]$/i.test(letter) || (letter === "N" && grade > 8) || grade > 13);

function shaft(letter: string, grade: number, row: number, it: number): Deviations | undefined {
  const es = tables.upper[letter]?.[row];
  if (es !== undefined && es !== null) return micrometres(es - it, es);
  const ei = shaftLower(letter, grade, row);
  return ei === undefined || ei === null ? undefined : micrometres(ei, ei + it);
}

function shaftLower(letter: string, grade: number, row: number): number | null | undefined {
  if (letter === "j") return tables.j[grade]?.[row];
  if (letter === "k" && (grade < 4 || grade > 7)) return 0;
  return tables.lower[letter]?.[row];
}

function hole(letter: string, grade: number, row: number, it: number): Deviations | undefined {
  const mirrored = tables.upper[letter.toLowerCase()]?.[row];
  if (mirrored !== undefined && mirrored !== null) return micrometres(0 - mirrored, it - mirrored);
  const es = letter === "J" ? tables.J[grade]?.[row] : holeUpper(letter, grade, row);
  return es === undefined || es === null ? undefined : micrometres(es - it, es);
}

/** K to ZC: the shaft's deviation with the sign changed, raised by delta in the fine grades. */
function holeUpper(letter: string, grade: number, row: number): number | undefined {
  const ei = valueIn(tables.lower[letter.toLowerCase()], row);
  if (ei === undefined) return undefined;
  const isUpTo3 = row === 0;
  if (isFine(letter, grade)) {
    if (letter === "M" && grade === 6 && isFrom250To315(row)) return -9;
    const delta = isUpTo3 ? 0 : valueIn(tables.delta[grade], row);
    return delta === undefined ? undefined : delta - ei;
  }
  if (isUpTo3) return 0 - ei;
  return letter === "K" ? undefined : letter === "N" ? 0 : 0 - ei;
}

const valueIn = (column: Column | undefined, row: number): number | undefined => column?.[row] ?? undefined;

/** K, M and N up to IT8, P to ZC up to IT7. */
const isFine = (letter: string, grade: number): boolean => grade <= (/^[KMN]$/.test(letter) ? 8 : 7);

const isFrom250To315 = (row: number): boolean => {
  const upTo = present(deviations.upTo[row]);
  return upTo > 250 && upTo <= 315;
};

const micrometres = (lower: number, upper: number): Deviations => new Deviations(lower / 1000, upper / 1000);
