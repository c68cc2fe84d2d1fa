import { BushError, mustBe } from "../errors";
import { formula } from "../formula";
import { splitNumber } from "../numbers";
import { convert } from "../units";

export const unitOf = formula(
  {
    id: "UNIT",
    family: "Units and teaching",
    text: "Converts a number from one unit to another of the same dimension; absolute temperatures with their offset",
    args: {
      value: { kind: "any", text: 'The number, or text with its unit ("250 lbf"), which then must agree with from' },
      from: { kind: "text", text: 'Unit of the number: "psi", "lbf/in²", "ft/min", "°F" …' },
      to: { kind: "text", text: "Unit wanted" },
    },
    units: false,
    result: { kind: "ratio", symbol: "x" },
    source: { key: "si", at: "exact factors; NIST SP 811 (2008), app. B" },
    example: [1000, "psi", "MPa"],
  },
  ({ value, from, to }) => {
    if (value instanceof BushError) throw value;
    if (typeof value === "number") return convert(value, from, to);
    const found = typeof value === "string" ? splitNumber(value) : undefined;
    if (!found) throw mustBe("value", "a number", value);
    const given = found.rest === "" ? found.value : convert(found.value, found.rest, from);
    return convert(given, from, to);
  },
);
