import type { Unit } from "mathjs";
import { BushError, checkLength, clash, isMissing, mustBe, show } from "./errors";
import { kinds } from "./kinds";
import type { Kind, System } from "./kinds";
import { readMoney } from "./money";
import { splitNumber } from "./numbers";
import type { SplitNumber } from "./numbers";
import { parseUnit, ratioOf } from "./unitAlgebra";

/** working = (given - offset) * factor */
interface Scale {
  readonly offset: number;
  readonly factor: number;
}

/** 0 K in °C. */
export const absoluteZero = -273.15;

/** Absolute temperatures have an offset, which unit algebra leaves out. */
const absolute: Record<string, Scale> = {
  degC: { offset: 0, factor: 1 },
  degF: { offset: 32, factor: 5 / 9 },
  K: { offset: 273.15, factor: 1 },
  degR: { offset: 491.67, factor: 5 / 9 },
};

/** Kinds whose units have no dimension that algebra could check. */
const bare: Partial<Record<Kind, Record<string, number>>> = {
  percent: { "": 1, ratio: 1, "%": 0.01 },
  ratio: { "": 1, ratio: 1, "%": 0.01 },
  count: { "": 1 },
  money: { "": 1 },
  hardness: { HB: 1, HBW: 1 },
};

/** Spellings that people type, exact match on the whole unit. */
const spellings: Record<string, string> = {
  '"': "in",
  "''": "in",
  "'": "ft",
  "°": "deg",
  "in.": "in",
  inches: "in",
  hr: "h",
  hrs: "h",
  MPA: "MPa",
  Mpa: "MPa",
  PSI: "psi",
  KSI: "ksi",
  RPM: "rpm",
  FPM: "fpm",
  sfpm: "fpm",
  IN: "in",
  MM: "mm",
  LBF: "lbf",
};

/** "celsius", "Degrees Fahrenheit", "° Rankine", "KELVIN". */
const temperatureWords = /(?:(?:°|\bdeg(?:rees?)?\.?)\s*)?\b(celsius|kelvin|fahrenheit|rankine)\b/gi;
const temperatureSigns: Record<string, string> = { celsius: "degC", kelvin: "K", fahrenheit: "degF", rankine: "degR" };

/** The form that the unit algebra reads: "lbf/in²" and "N/mm2" with powers, "·" as a product, "µ" as a prefix. */
function tidy(unit: string): string {
  const text = unit.trim().replace(/[º˚]/g, "°");
  const known = spellings[text];
  if (known) return known;
  return text
    .replace(/″|”/g, "in")
    .replace(/′|’/g, "ft")
    .replace(/[·×⋅•]/g, "*")
    .replace(/[µμ]/g, "u")
    .replace(/[⁻⁰¹²³⁴-⁹]+/g, (digits) => `^${[...digits].map((d) => "-0123456789"["⁻⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(d)]).join("")}`)
    .replace(/\bNm\b/g, "(N*m)")
    .replace(/([A-Za-z])([23])(?![0-9A-Za-z])/g, "$1^$2")
    .replace(temperatureWords, (_, word: string) => temperatureSigns[word.toLowerCase()]!)
    .replace(/(?:°|\bdeg(?:rees?)?\.?)\s?([CFR])\b/gi, (_, letter: string) => `deg${letter.toUpperCase()}`)
    .replace(/^(rev|revs|r|cycles?|strokes?|swings?|1)\s*\//, "/");
}

/** Units that exist and that nobody means here: a slip of the shift key, and a thousand million off. */
const slips: readonly (readonly [slip: RegExp, meant: string])[] = [
  [/\bmPa\b/, "MPa"],
  [/\bMm\b/, "mm"],
];
function meantBy(unit: string): string | undefined {
  const found = slips.find(([slip]) => slip.test(unit));
  return found && unit.replace(...found);
}
const askedFor = (meant: string | undefined): string => (meant ? ` (did you mean ${meant}?)` : "");

const cache = new Map<string, Scale | BushError>();
const cacheLimit = 2000;

/** How a unit converts to a kind's working unit; throws where the unit is unknown or of another dimension. */
function scaleOf(name: string, kind: Kind, unit: string): Scale {
  const key = `${kind} ${unit} ${name}`;
  let scale = cache.get(key);
  if (!scale) {
    if (cache.size >= cacheLimit) cache.clear();
    scale = findScale(name, kind, unit);
    cache.set(key, scale);
  }
  if (scale instanceof BushError) throw scale;
  return scale;
}

function findScale(name: string, kind: Kind, unit: string): Scale | BushError {
  checkLength(name, unit);
  if (meantBy(unit)) return wrongUnit(name, kind, unit);
  const simple = bare[kind];
  if (simple) {
    const factor = simple[unit];
    return factor === undefined ? wrongUnit(name, kind, unit) : { offset: 0, factor };
  }
  if (kind === "temperature") return temperatureOf(unit) ?? wrongUnit(name, kind, unit);
  if (kind === "rise") {
    // the offsets of °C and °F play no part in a difference
    const difference = temperatureOf(unit);
    return difference ? { offset: 0, factor: difference.factor } : wrongUnit(name, kind, unit);
  }
  const { power, unit: rest } = splitPower(tidy(unit));
  const parsed = parseUnit(rest);
  const working = parseUnit(tidy(kinds[kind].metric));
  if (!parsed || !working?.equalBase(parsed)) return wrongUnit(name, kind, unit);
  const factor = power * ratioOf(parsed, working);
  return Number.isFinite(factor) ? { offset: 0, factor } : wrongUnit(name, kind, unit);
}

/** "10⁻⁶/K", "1e-6/K" and "×10^-6 mm³/(N·m)": columns of small numbers carry a power of ten before their unit. */
function splitPower(unit: string): { power: number; unit: string } {
  const found = /^[*x]?\s*(?:1e|10\s*\^)\s*([-+\u2212]?\d+)\s*\*?\s*(?:1(?=\/))?/i.exec(unit);
  if (!found) return { power: 1, unit };
  return { power: Number(`1e${found[1]!.replace("\u2212", "-")}`), unit: unit.slice(found[0].length) };
}

function wrongUnit(name: string, kind: Kind, unit: string): BushError {
  const { metric, inch } = kinds[kind];
  const accepted =
    kind === "percent"
      ? "in % or as a ratio"
      : metric === ""
        ? "a plain number"
        : metric === inch
          ? `in ${metric}`
          : `in a unit like ${metric} or ${inch}`;
  return mustBe(name, `${accepted}${askedFor(meantBy(unit))}`, unit);
}

const systemScales = new Map<string, Scale>();
/** How plain numbers of a sheet's unit system convert: working = (given - offset) * factor. */
export function scaleIn(kind: Kind, system: System): Scale {
  if (system === "metric") return same;
  let scale = systemScales.get(kind);
  if (!scale) {
    scale = scaleOf("units", kind, kinds[kind][system]);
    systemScales.set(kind, scale);
  }
  return scale;
}
const same: Scale = { offset: 0, factor: 1 };

/** A plain number in the sheet's unit system, as a working value. */
export function toWorking(kind: Kind, value: number, system: System): number {
  const { offset, factor } = scaleIn(kind, system);
  return (value - offset) * factor;
}

/** A working value in the sheet's unit system. */
export function fromWorking(kind: Kind, value: number, system: System): number {
  const { offset, factor } = scaleIn(kind, system);
  return value / factor + offset;
}

/** A working value from a number whose unit is named, as in a heading: "PV limit [psi*ft/min]". */
export function fromUnit(name: string, kind: Kind, value: number, unit: string): number {
  const { offset, factor } = scaleOf(name, kind, unit);
  return (value - offset) * factor;
}

/** Text such as "250 lbf", "9.5 ksi" or "7,250 psi*ft/min" as a working value; without a unit the sheet's system counts. */
export function readQuantity(name: string, kind: Kind, text: string, system: System): number {
  checkLength(name, text);
  if (kind === "money") return readMoney(name, { kind }, text).amount;
  const found = splitNumber(text.trim());
  if (!found)
    throw text.trim() === "" ? isMissing(name) : mustBe(name, `a number or text like "${exampleOf(kind)}"`, text);
  checkNumeral(name, kind, found, text);
  return found.rest === "" ? toWorking(kind, found.value, system) : fromUnit(name, kind, found.value, found.rest);
}

/** What a numeral may be under a kind: a comma before three digits is no length of its own, only lengths are fractions, one power of ten is enough. */
export function checkNumeral(name: string, kind: Kind, found: SplitNumber, text: string): void {
  const { value, rest, withComma, isFraction, hasExponent } = found;
  if (kind === "length" && withComma !== undefined)
    throw clash(
      name,
      `${name} ${show(text)} could be ${value} or ${withComma}: type it without a comma, or with a point`,
    );
  if (isFraction && kind !== "length") throw mustBe(name, "a number, which a fraction is for lengths alone", text);
  if (hasExponent && splitPower(rest).power !== 1) throw mustBe(name, "a number with one power of ten", text);
}

/**
 * A reader for a column of text such as "250 lbf": plain digits and one unit, mostly the same one as in the row above.
 * It answers NaN for anything else, which `readQuantity` then reads in full or refuses.
 */
export function columnReader(name: string, kind: Kind, system: System): (text: string) => number {
  let unit = "";
  let scale: Scale | undefined = scaleIn(kind, system);
  return (text) => {
    let end = 0;
    while (end < text.length && isDigitMark(text.charCodeAt(end))) end++;
    const value = end === 0 ? NaN : Number(text.slice(0, end));
    while (text.charCodeAt(end) === 32) end++;
    if (text.length - end !== unit.length || !text.endsWith(unit)) {
      unit = text.slice(end);
      scale = known(unit);
    }
    return scale ? (value - scale.offset) * scale.factor : NaN;
  };

  function known(rest: string): Scale | undefined {
    if (rest === "") return scaleIn(kind, system);
    if (/^[\d,.+\-\s]|\s$/.test(rest)) return undefined;
    try {
      return scaleOf(name, kind, rest);
    } catch {
      return undefined;
    }
  }
}

/** 0 to 9, the point and the minus sign. */
const isDigitMark = (code: number): boolean => (code >= 48 && code <= 57) || code === 46 || code === 45;

const exampleOf = (kind: Kind): string => (kind === "percent" ? "4 %" : `12.5 ${kinds[kind].metric}`.trim());

/** target = (value - offset) * factor + plus */
export interface Conversion extends Scale {
  readonly plus: number;
  /** Absolute zero where the units are of temperature; any other number may be as low as it likes. */
  readonly least: number;
}
/** The arguments that hold what is converted, its unit and the unit wanted. */
export interface Asked {
  readonly value: string;
  readonly from: string;
  readonly to: string;
}
const conversions = new Map<string, Conversion>();

/** How one unit converts to another of its dimension; absolute temperatures with their offsets. */
export function conversion(from: string, to: string, of: Omit<Asked, "value"> = asked): Conversion {
  const key = `${from}|${to}`;
  let found = conversions.get(key);
  if (!found) {
    if (conversions.size >= cacheLimit) conversions.clear();
    conversions.set(key, (found = findConversion(from, to, of)));
  }
  return found;
}
const asked: Asked = { value: "value", from: "from", to: "to" };

function findConversion(from: string, to: string, of: Omit<Asked, "value">): Conversion {
  checkLength(of.from, from);
  checkLength(of.to, to);
  const a = temperatureOf(from);
  const b = temperatureOf(to);
  if (a && b) {
    const factor = a.factor / b.factor;
    const least = Number((absoluteZero / a.factor + a.offset).toFixed(9));
    // scales that both count from absolute zero keep every digit
    const isRatio = Math.abs(b.offset - a.offset * factor) < 1e-9;
    return isRatio ? { offset: 0, factor, plus: 0, least } : { offset: a.offset, factor, plus: b.offset, least };
  }
  const source = unitNamed(of.from, from);
  const target = unitNamed(of.to, to);
  if (!source.equalBase(target)) throw mustBe(of.to, `of the same dimension as ${from}`, to);
  return { offset: 0, factor: ratioOf(source, target), plus: 0, least: -Infinity };
}

/** A number in another unit; one that would be colder than absolute zero is an error. */
export function convert(value: number, from: string, to: string, of: Asked = asked): number {
  const { offset, factor, plus, least } = conversion(from, to, of);
  // a hair is left to the rounding of a conversion before this one
  if (value < least - 1e-9) throw mustBe(of.value, `${least} ${from} or more`, value);
  return (value - offset) * factor + plus;
}

/** How a unit of absolute temperature converts to °C; a lone C or F is one of them. */
const temperatureOf = (unit: string): Scale | undefined =>
  absolute[/^[CF]$/.test(unit.trim()) ? `deg${unit.trim()}` : tidy(unit)];

function unitNamed(name: string, unit: string): Unit {
  const meant = meantBy(unit);
  const parsed = unit.trim() === "" || meant ? undefined : parseUnit(tidy(unit));
  if (!parsed) throw mustBe(name, `a unit such as "MPa", "psi" or "ft/min"${askedFor(meant)}`, unit);
  // of a temperature in another dress, such as kK or (degC), it cannot be said from where it counts
  if (kelvin.equalBase(parsed) && !temperatureOf(unit)) throw mustBe(name, "°C, K, °F or °R for a temperature", unit);
  return parsed;
}
const kelvin = parseUnit("K")!;
