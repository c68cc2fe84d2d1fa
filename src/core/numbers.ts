/**
 * Numbers as people type them: "1,234" is a thousand two hundred and thirty-four, "1.234,5" and "1,234.5" are both
 * 1234.5, "0,5" is a half, "12 000" twelve thousand. Text that can be read in two ways, or in none, is `undefined`.
 */
const space = "[ \\u00a0\\u2009\\u202f]";
const token = new RegExp(
  `^([+\\-\\u2212]?)(\\d{1,3}(?:${space}\\d{3})+(?!\\d)(?:[.,]\\d+)?|\\d[\\d.,]*|[.,]\\d+)((?:[eE][+\\-\\u2212]?\\d+)?)`,
);

/** The number at the start of a text and what stands behind it. */
export function splitNumber(text: string): { value: number; rest: string } | undefined {
  const found = token.exec(text);
  if (!found) return undefined;
  const [whole, sign, digits, exponent] = found as unknown as [string, string, string, string];
  const plain = plainDigits(digits.replace(new RegExp(space, "g"), ""));
  if (plain === undefined) return undefined;
  const value = Number(`${sign && sign !== "+" ? "-" : ""}${plain}${exponent.replace("\u2212", "-")}`);
  return { value, rest: text.slice(whole.length).trim() };
}

/** What stands behind the number at the start of a text: its unit. */
export const behindNumber = (text: string): string => splitNumber(text.trim())?.rest ?? "";

/** Digits with at most one point. A group mark is followed by three digits each time and never follows a leading zero. */
function plainDigits(digits: string): string | undefined {
  const commas = digits.split(",").length - 1;
  const points = digits.split(".").length - 1;
  if (commas === 0 && points <= 1) return digits;
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(digits)) return digits.replaceAll(",", "");
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(digits)) return digits.replaceAll(".", "").replace(",", ".");
  if (/^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(digits)) return digits.replaceAll(".", "");
  return commas === 1 && points === 0 ? digits.replace(",", ".") : undefined;
}
