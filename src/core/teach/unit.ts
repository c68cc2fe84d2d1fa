import { BushError, mustBe } from "../errors";
import { formula, Measure } from "../formula";
import type { Cell } from "../formula";
import { splitNumber } from "../numbers";
import { conversion, convert } from "../units/conversion";

export const UNIT = formula(
  {
    id: "UNIT",
    text: "Converts a number from one unit to another of the same dimension; absolute temperatures with their offset",
    args: {
      value: { kind: "any", text: 'The number, or text with its unit ("250 lbf"), which then must agree with from' },
      from: { kind: "text", text: 'Unit of the number: "psi", "lbf/in²", "ft/min", "°F" …' },
      to: { kind: "text", text: "Unit wanted" },
    },
    units: false,
    result: { kind: "ratio", symbol: "x", text: "Number in the unit wanted" },
    working: ({ from, to }) => {
      const { offset, plus } = conversion(from, to);
      const size = offset === 0 ? "a * k" : "(a - o) * k";
      return [`x = ${size}${plus === 0 ? "" : " + q"}`];
    },
    lookups: ({ value, from, to }) => {
      const { offset, factor, plus } = conversion(from, to);
      const plain = (number: number, text: string) => ({ value: new Measure(number, "ratio"), text });
      return {
        a: plain(numberIn(value, from), `Number in ${from}`),
        k: plain(factor, `One ${from} in ${to}`),
        ...(offset === 0 ? {} : { o: plain(offset, `0 °C in ${from}`) }),
        ...(plus === 0 ? {} : { q: plain(plus, `0 °C in ${to}`) }),
      };
    },
    source: { key: "si", at: "exact factors; NIST SP 811 (2008), app. B" },
    example: [1000, "psi", "MPa"],
  },
  ({ value, from, to }) => convert(numberIn(value, from), from, to),
);

/** The number in the unit `from`; text may bring a unit of its own, which is converted first. */
function numberIn(value: Cell, from: string): number {
  if (value instanceof BushError) throw value;
  if (typeof value === "number") return value;
  const found = typeof value === "string" ? splitNumber(value) : undefined;
  if (!found) throw mustBe("value", "a number", value);
  return found.rest === ""
    ? found.value
    : convert(found.value, found.rest, from, { value: "value", from: "value", to: "from" });
}
