import { checkLength, mustBe } from "../errors";
import { present } from "../present";
import { absoluteZero, cacheLimit, temperatureOf } from "./scale";
import type { Scale } from "./scale";
import { algebraic, askedFor, meantBy } from "./spelling";
import { isOfSameDimension, parseUnit, ratioOf } from "./unitAlgebra";
import type { Unit } from "./unitAlgebra";

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
  if (!isOfSameDimension(source, target)) throw mustBe(of.to, `of the same dimension as ${from}`, to);
  return { offset: 0, factor: ratioOf(source, target), plus: 0, least: -Infinity };
}

/** A number in another unit; one that would be colder than absolute zero is an error. */
export function convert(value: number, from: string, to: string, of: Asked = asked): number {
  const { offset, factor, plus, least } = conversion(from, to, of);
  // a hair is left to the rounding of a conversion before this one
  if (value < least - 1e-9) throw mustBe(of.value, `${least} ${from} or more`, value);
  return (value - offset) * factor + plus;
}

function unitNamed(name: string, unit: string): Unit {
  const meant = meantBy(unit);
  const parsed = unit.trim() === "" || meant ? undefined : parseUnit(algebraic(unit));
  if (!parsed) throw mustBe(name, `a unit such as "MPa", "psi" or "ft/min"${askedFor(meant)}`, unit);
  // of a temperature in another dress, such as kK or (degC), it cannot be said from where it counts
  if (isOfSameDimension(kelvin, parsed) && !temperatureOf(unit))
    throw mustBe(name, "°C, K, °F or °R for a temperature", unit);
  return parsed;
}
const kelvin = present(parseUnit("K"));
