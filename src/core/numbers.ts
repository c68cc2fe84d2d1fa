import { present } from "./present";

/**
 * Numbers as people type them: "1,234" is a thousand two hundred and thirty-four, "1.234,5" and "1,234.5" are both
 * 1234.5, "0,5" is a half, "4 500" and "4'500" four thousand five hundred, "3-1/2" three and a half. Text that can be read in
 * no way is `undefined`. A table says by all its cells how it writes decimals: decimals.ts.
 */
export type DecimalMark = "comma" | "point";

/** Spaces and apostrophes between groups of three digits. */
const gap = "[ \\u00a0\\u2009\\u202f'\\u2019]";
const digitsPattern = `\\d{1,3}(?:${gap}\\d{3})+(?!\\d)(?:[.,]\\d+)?`;
const exponentPattern = "(?:[eE][+\\-\\u2212]?\\d+)?";
const token = new RegExp(`^([+\\-\\u2212]?)(${digitsPattern}|\\d[\\d.,]*|[.,]\\d+)(${exponentPattern})`);
/** Every number inside a text, and runs of points and commas, which belong to none: older Macs know no look behind. */
const numerals = new RegExp(`[.,]{2,}|(?:${digitsPattern}|\\d+(?:[.,]\\d+)*|[.,]\\d+)${exponentPattern}`, "g");
const gaps = new RegExp(gap, "g");

export interface SplitNumber {
  readonly value: number;
  /** What stands behind it: its unit. */
  readonly rest: string;
  /** What a decimal comma would make of a group of three digits: "1,125". */
  readonly withComma?: number;
  /** Written as the trade writes parts of an inch. */
  readonly isFraction?: true;
  readonly hasExponent?: true;
}

/** The number at the start of a text and what stands behind it. */
export function splitNumber(text: string): SplitNumber | undefined {
  const fraction = splitFraction(text);
  if (fraction) return fraction;
  const found = token.exec(text);
  if (!found) return undefined;
  const [whole, sign, digits, exponent] = found as unknown as [string, string, string, string];
  const plain = plainDigits(digits);
  if (plain === undefined) return undefined;
  const signed = (number: string) =>
    Number(`${sign && sign !== "+" ? "-" : ""}${number}${exponent.replace("\u2212", "-")}`);
  const rest = text.slice(whole.length).trim();
  const other = exponent === "" && digits.includes(",") ? digitsIn(digits, "comma") : undefined;
  return {
    value: signed(plain),
    rest,
    ...(exponent === "" ? {} : { hasExponent: true }),
    ...(other === undefined || other === plain ? {} : { withComma: signed(other) }),
  };
}

/** What stands behind the number at the start of a text: its unit. */
export const behindNumber = (text: string): string => splitNumber(text.trim())?.rest ?? "";

const signs: Readonly<Record<string, number>> = {
  "½": 0.5,
  "¼": 0.25,
  "¾": 0.75,
  "⅛": 0.125,
  "⅜": 0.375,
  "⅝": 0.625,
  "⅞": 0.875,
};
const hasFraction = /[/\u2044½¼¾⅛⅜⅝⅞]/;
const fractionPattern =
  /^([+\-\u2212]?)(?:(\d{1,4})(?:\s|-|(?=[½¼¾⅛⅜⅝⅞])))?(?:(\d{1,2})[/\u2044](\d{1,2})(?![\d.,/])|([½¼¾⅛⅜⅝⅞]))/;

/** "1/2", "3-1/2", "3 1/2", "½", "3½": halves down to sixty-fourths, less than one. */
function splitFraction(text: string): SplitNumber | undefined {
  if (!hasFraction.test(text)) return undefined;
  const [whole, sign, full = "0", over, under, one] = fractionPattern.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const part = one === undefined ? Number(over) / Number(under) : present(signs[one]);
  if (!(part > 0 && part < 1) || (one === undefined && ![2, 4, 8, 16, 32, 64].includes(Number(under))))
    return undefined;
  const value = (Number(full) + part) * (sign && sign !== "+" ? -1 : 1);
  return { value, rest: text.slice(whole.length).trim(), isFraction: true };
}

/** Digits with at most one point. Where both marks could be meant, a comma groups and a point is decimal. */
function plainDigits(digits: string): string | undefined {
  return digitsIn(digits, "point") ?? digitsIn(digits, "comma");
}

const shapes = { comma: shapesOf("\\.", ","), point: shapesOf(",", "\\.") };
function shapesOf(group: string, decimal: string) {
  return {
    grouped: new RegExp(`^[1-9]\\d{0,2}(?:${group}\\d{3})+(?:${decimal}\\d+)?$`),
    plain: new RegExp(`^\\d*(?:${decimal}\\d*)?$`),
  };
}

/** Digits of one way of writing, with at most one point; a group mark is followed by three digits each time and never follows a leading zero. */
function digitsIn(digits: string, decimal: DecimalMark): string | undefined {
  const joined = digits.replace(gaps, "");
  const { grouped, plain } = shapes[decimal];
  const isPlain = plain.test(joined);
  // a gap groups already
  if (!isPlain && (joined !== digits || !grouped.test(joined))) return undefined;
  return decimal === "comma" ? joined.replace(/\./g, "").replace(",", ".") : joined.replace(/,/g, "");
}

/** How a numeral may be read: by one mark only, by either to different numbers, or all the same. */
type Readings = DecimalMark | "either" | "same";

function readingsOf(numeral: string): Readings {
  const [digits = "", exponent] = numeral.split(/(?=[eE])/);
  const comma = digitsIn(digits, "comma");
  const point = digitsIn(digits, "point");
  if (comma === point) return "same";
  if (point === undefined) return "comma";
  if (comma === undefined) return "point";
  // a number with a power of ten is not grouped
  return exponent === undefined ? "either" : digits.includes(",") ? "comma" : "point";
}

/** What a text says of the table's decimal mark: the first numeral that can be read one way only, else whether one could be either. */
export function markIn(text: string): Readings {
  if (!text.includes(",") && !text.includes(".")) return "same";
  let answer: Readings = "same";
  for (const [numeral] of text.matchAll(numerals)) {
    if (!/\d/.test(numeral)) continue;
    const readings = readingsOf(numeral);
    if (readings === "comma" || readings === "point") return readings;
    if (readings === "either") answer = readings;
  }
  return answer;
}

/** The text with every numeral of it in digits and at most one point. */
export const inPoints = (text: string, decimal: DecimalMark): string =>
  text.includes(",") || text.includes(".")
    ? text.replace(numerals, (numeral) => {
        const [digits = "", exponent = ""] = numeral.split(/(?=[eE])/);
        const read = digitsIn(digits, decimal);
        return read === undefined ? numeral : read + exponent;
      })
    : text;
