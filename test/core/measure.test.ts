import { numberText, percentText } from "../../src/core/measure";

test.each([
  [1 / 3, "0.333333"],
  [1234567, "1234570"],
  [0, "0"],
  [Infinity, "∞"],
  [-Infinity, "-∞"],
])("a number has six digits, and one without end its sign: %d", (value, text) => expect(numberText(value)).toBe(text));

test.each([
  [0, "0 %"],
  [0.00123, "0.12 %"],
  [0.0567, "5.7 %"],
  [0.0999, "10 %"],
  [0.1, "10 %"],
  [0.1049, "10 %"],
  [0.1234, "12 %"],
  [0.995, "99.5 %"],
  [0.99999, "99.999 %"],
  [1, "100 %"],
  [1.004, "100.4 %"],
  [1.000001, "100.0001 %"],
  [1 + 1e-12, "100 %"],
  [2.344, "234 %"],
  [Infinity, "∞ %"],
])(
  "a use of %d is %s: whole per cents, more digits where small or where 100 would hide the side that it is on",
  (use, text) => expect(percentText(use)).toBe(text),
);
