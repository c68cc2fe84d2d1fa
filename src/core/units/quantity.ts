import { checkLength, clash, isMissing, mustBe, show } from "../errors";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { readMoney } from "./money";
import { splitNumber } from "../numbers";
import type { SplitNumber } from "../numbers";
import { fromUnit, scaled, scaleIn, scaleOf, toWorking } from "./scale";
import type { Scale } from "./scale";
import { splitPower } from "./spelling";

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
    return scale ? scaled(value, scale) : NaN;
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
