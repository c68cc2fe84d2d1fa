import { Band, inOneUnit, splitEnds, splitTolerance } from "../band";
import { checkDomain } from "../domain";
import { checkLength, clash, mustBe, orList, show } from "../errors";
import type { BushError } from "../errors";
import type { Cell } from "../formula";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { unknownName } from "../names";
import { splitNumber } from "../numbers";
import { readSpan } from "../span";
import { checkNumeral, readQuantity } from "../units/quantity";
import { fromUnit, toWorking } from "../units/scale";
import type { Entry, OwnReader } from "./entry";

/** A cell under a heading: its own unit counts first, then the heading's, then the sheet's system. */
export function readIn(
  name: string,
  kind: Kind,
  cell: number | string,
  unit: string | undefined,
  system: System,
): number {
  if (unit === undefined) {
    if (kind === "percent" && plainNumber(cell)) throw eitherWay(name, cell);
    // a duty's amounts count in the currency in which offers are compared
    if (kind === "money" && plainNumber(cell) === undefined)
      throw mustBe(name, "an amount without a currency: it counts in that of the offers", cell);
    return typeof cell === "number" ? toWorking(kind, cell, system) : readQuantity(name, kind, cell, system);
  }
  if (typeof cell === "number") return fromUnit(name, kind, cell, unit);
  checkLength(name, cell);
  const found = splitNumber(cell.trim());
  if (found?.rest !== "") return readQuantity(name, kind, cell, system);
  checkNumeral(name, kind, found, cell);
  return fromUnit(name, kind, found.value, unit);
}

/** The number in a cell that names no unit of its own. */
function plainNumber(cell: number | string): number | undefined {
  if (typeof cell === "number") return cell;
  const found = splitNumber(cell.trim());
  return found?.rest === "" ? found.value : undefined;
}

/** Nothing tells 0.04 as a ratio from 0.04 %; only 0 is the same in both. */
const eitherWay = (name: string, cell: number | string): BushError =>
  clash(name, `${name} ${show(cell)} could be % or a ratio: put [%] or [ratio] in the heading`);

const doubtful = 0.3;
/** What to say of a plain number under a heading in % that is so small that a ratio may be meant. */
export function percentRemark({ heading, kind }: Entry, cell: Cell, unit: string | undefined): string | undefined {
  if (kind !== "percent" || unit !== "%" || (typeof cell !== "number" && typeof cell !== "string")) return undefined;
  const plain = plainNumber(cell);
  if (plain === undefined || plain <= 0 || plain >= doubtful) return undefined;
  const meant = Number((plain * 100).toPrecision(10));
  return `${heading} is ${plain} %: ${meant} % is written as ${meant}`;
}

/** What a filled cell says under its heading, in working units; throws what is wrong with it. */
export function readValue(
  entry: Entry,
  cell: number | string | boolean,
  unit: string | undefined,
  system: System,
  own?: OwnReader,
): unknown {
  const name = entry.heading;
  switch (entry.kind) {
    case "text":
      return String(cell).trim();
    case "choice":
      return readWord(name, entry, cell);
    case "list":
      return readWords(name, entry, String(cell));
    case "span":
      return readSpan(name, cell, system, unit);
  }
  if (typeof cell === "boolean") throw mustBe(name, "a number", cell);
  if (isKind(entry.kind)) return readNumber(entry, entry.kind, cell, unit, system);
  if (typeof cell === "string" && cell.length > longestNotation)
    throw mustBe(name, `at most ${longestNotation} characters long`, cell.length);
  if (!own) throw new Error(`${name}: nothing reads the kind "${entry.kind}"`);
  return own(entry, cell, unit, system);
}

const isKind = (kind: string): kind is Kind => kind in kinds;

/** A number, or a band of numbers where the entry may be one. */
function readNumber(
  entry: Entry,
  kind: Kind,
  cell: number | string,
  unit: string | undefined,
  system: System,
): number | Band {
  const name = entry.heading;
  if (typeof cell === "string") {
    checkLength(name, cell);
    if (entry.band) {
      const band = readBand(entry, kind, cell, unit, system);
      if (band) return band;
    } else if ((splitEnds(cell) ?? splitTolerance(cell))?.every(splitNumber))
      throw mustBe(name, "one value, no band", cell);
  }
  const value = readIn(name, kind, cell, unit, system);
  checkDomain(name, { ...entry, kind }, value, system, cell);
  return value;
}

/** Points of a curve and classes of media take more room than a number. */
const longestNotation = 2000;

function readWord(name: string, { words = [], spellings = {} }: Entry, cell: number | string | boolean): string {
  const given = String(cell).trim().toLowerCase();
  const spelled = spellings[given] ?? given;
  const found = words.find((word) => word.toLowerCase() === spelled);
  if (found === undefined) throw mustBe(name, orList(words.map((word) => `"${word}"`)), cell);
  return found;
}

const splitList = (text: string): string[] =>
  text
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== "");

function readWords(name: string, { words }: Entry, text: string): readonly string[] {
  const list = splitList(text);
  if (!words) return list;
  return list.map((given) => {
    const found = words.find((word) => word.toLowerCase() === given.toLowerCase());
    if (found === undefined) throw clash(name, unknownName(name, given, words, `known: ${words.join(", ")}`));
    return found;
  });
}

/** "640 to 960 N", or "800 ± 20 %" and "800 ± 50 N"; nothing where the text names one value. */
function readBand(entry: Entry, kind: Kind, text: string, unit: string | undefined, system: System): Band | undefined {
  const name = entry.heading;
  const bounds = { ...entry, kind };
  const number = (part: string): number => {
    const value = readIn(name, kind, part, unit, system);
    checkDomain(name, bounds, value, system, text);
    return value;
  };
  const about = splitTolerance(text);
  if (about) {
    const [, share] = /^(.*)%$/.exec(about[1]) ?? [];
    const likely = number(about[0]);
    const off =
      share === undefined ? offOf(about) : (Math.abs(likely) * (splitNumber(share.trim())?.value ?? NaN)) / 100;
    if (!(off > 0)) throw mustBe(name, 'a band as "800 ± 20 %"', text);
    const band = new Band(likely - off, likely + off, likely);
    for (const end of [band.low, band.high]) checkDomain(name, bounds, end, system, text);
    return band;
  }
  const ends = splitEnds(text);
  if (!ends) return undefined;
  const [low, high] = inOneUnit(ends).map(number) as [number, number];
  if (!(low < high)) throw mustBe(name, 'a band, lower end first, as "640 to 960"', text);
  return new Band(low, high);

  /** What is off by is a difference: it converts without an offset, in the unit of the value or in its own. */
  function offOf([value, by]: [string, string]): number {
    const ownUnit = splitNumber(by)?.rest || splitNumber(value)?.rest || "";
    const at = (x: string) => readIn(name, kind, `${x} ${ownUnit}`.trim(), unit, system);
    return at(String(splitNumber(by)?.value ?? NaN)) - at("0");
  }
}
