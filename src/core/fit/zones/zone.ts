import { checkLength, mustBe } from "../../errors";
import { splitNumber } from "../../numbers";
import { kinds } from "../../kinds";
import { readQuantity } from "../../units/quantity";
import { fromWorking, scaleOf, toWorking } from "../../units/scale";
import type { NotationArg } from "../../formula";
import type { System } from "../../kinds";

/** The finest standard tolerance grade, IT01; IT0 follows, then IT1. */
const it01 = -1;

/** A tolerance class of ISO 286: the letter of its fundamental deviation and its standard tolerance grade. */
export class ToleranceClass {
  constructor(
    /** Capital for a hole, small for a shaft. */
    readonly letter: string,
    /** `it01`, 0, 1 … */
    readonly grade: number,
    /** The nominal size that stood in front, as in "25 H7"; mm. */
    readonly size?: number,
    readonly isHole: boolean = letter === letter.toUpperCase(),
  ) {}
  toString(): string {
    return `${this.letter}${gradeText(this.grade)}`;
  }
}

/** Two limit deviations from the nominal size, mm. */
export class Deviations {
  constructor(
    readonly lower: number,
    readonly upper: number,
  ) {}
  toString(system: System = "metric"): string {
    const [upper, lower] = [this.upper, this.lower].map((end) => signed(fromWorking("length", end, system)));
    return `${upper}/${lower} ${kinds.length[system]}`;
  }
}
export type Zone = ToleranceClass | Deviations;

/** The fit code of ISO 286: the class of the hole over that of the shaft. */
export class Fit {
  constructor(
    readonly hole: ToleranceClass,
    readonly shaft: ToleranceClass,
  ) {}
  toString(): string {
    return `${String(this.hole)}/${String(this.shaft)}`;
  }
}

/** The grade as its name has it: "01", "0", "7". */
export const gradeText = (grade: number): string => (grade === it01 ? "01" : String(grade));

const signed = (value: number): string => `${value > 0 ? "+" : ""}${Number(value.toPrecision(7))}`;

const className = /^(?:(\d[\d.,]*\s*(?:mm|in|")?)\s*)?([A-Z]{1,2}|[a-z]{1,2})\s?(\d{1,2})$/;

const zoneNotation = 'ISO 286 class "H7", or two deviations "+0.05/+0.10"';

export const zoneArg = (text: string): NotationArg<Zone> & { readonly kind: "notation" } => ({
  kind: "notation",
  text,
  label: "Tolerance zone",
  what: zoneNotation,
  read: readZone,
  show: (zone, system) => (zone instanceof Deviations ? zone.toString(system) : String(zone)),
});

/** "H7", "25 H7", "js6", or two deviations in either order: "+0.05/+0.10", "+0.10/+0.05 mm"; without their own in the heading's unit. */
export function readZone(cell: number | string | boolean, system: System, name: string, unit = ""): Zone {
  if (typeof cell !== "string") throw mustBe(name, zoneNotation, cell);
  checkLength(name, cell);
  if (unit !== "") scaleOf(name, "length", unit);
  const zone = readClass(cell, system, name, unit) ?? readDeviations(cell, system, name, unit);
  if (!zone) throw mustBe(name, zoneNotation, cell);
  return zone;
}

/** "H7/f7" or "25 H7/f7": the hole's class first. */
export function readFit(cell: number | string | boolean, system: System, name: string): Fit {
  if (typeof cell === "string") checkLength(name, cell);
  const [first, second, ...more] = typeof cell === "string" ? cell.split("/") : [];
  const hole = first === undefined ? undefined : readClass(first, system, name);
  const shaft = second === undefined ? undefined : readClass(second, system, name);
  if (!hole?.isHole || !shaft || shaft.isHole || more.length > 0)
    throw mustBe(name, 'a hole class over a shaft class, as "H7/f7"', cell);
  return new Fit(hole, shaft);
}

function readClass(text: string, system: System, name: string, heading = ""): ToleranceClass | undefined {
  const [, size, letter, grade] = className.exec(text.trim()) ?? [];
  if (letter === undefined || grade === undefined) return undefined;
  if (/^0[^1]/.test(grade)) throw mustBe(name, 'a class whose grade has no 0 in front, as "H7" or "H01"', text.trim());
  return new ToleranceClass(
    letter,
    grade === "01" ? it01 : Number(grade),
    size === undefined
      ? undefined
      : readQuantity(name, "length", /[\d.,]$/.test(size) ? `${size} ${heading}` : size, system),
  );
}

/** A unit behind the second deviation counts for both; the heading's where there is none. */
function readDeviations(text: string, system: System, name: string, heading: string): Deviations | undefined {
  const [first, second, ...more] = text.split(/\s*\/\s*|\s+to\s+/);
  const one = splitNumber(first?.trim() ?? "");
  const other = splitNumber(second?.trim() ?? "");
  if (!one || !other || more.length > 0) return undefined;
  const unit = one.rest || other.rest || heading;
  const values = [one, other].map(({ value, rest }) =>
    unit === "" ? toWorking("length", value, system) : readQuantity(name, "length", `${value} ${rest || unit}`, system),
  );
  return new Deviations(Math.min(...values), Math.max(...values));
}
