import fc from "fast-check";
import { columnReader, readQuantity } from "../../../src/core/units/quantity";
import type { Kind, System } from "../../../src/core/kinds";

/** The short way through a column of text answers what the full reading answers, or nothing. */
const number = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }).map(String),
  fc.integer({ min: -5000, max: 5000 }).map(String),
  fc.constantFrom(
    "1,234",
    "1.234,5",
    "4 500",
    "0,5",
    "1.2.3",
    "-",
    ".",
    "",
    "5-3",
    "+5",
    "−5",
    "1e3",
    ".5",
    "5.",
    "0x10",
  ),
);
const units: Readonly<Partial<Record<Kind, string[]>>> = {
  force: ["N", "lbf", "kN", "mm", "n", "1/N"],
  length: ["mm", "in", '"', "m", "µm", "N"],
  temperature: ["°C", "°F", "K", "degR", "C", "mm"],
  ratio: ["%", "x"],
};
const cases = (Object.entries(units) as [Kind, string[]][]).map(([kind, own]) => [kind, own] as const);

test.each(cases)("%s", (kind, own) => {
  const gap = fc.constantFrom("", " ", "  ", "\u00a0");
  const end = fc.constantFrom("", "", " ");
  const text = fc.tuple(number, gap, fc.constantFrom("", ...own), end).map((parts) => parts.join(""));
  for (const system of ["metric", "inch"] as System[])
    fc.assert(
      fc.property(fc.array(text, { minLength: 1, maxLength: 8 }), (column) => {
        const read = columnReader("x", kind, system);
        for (const one of column) {
          const value = read(one);
          if (Number.isNaN(value)) continue;
          expect([one, value]).toEqual([one, expect.closeTo(readQuantity("x", kind, one, system), 9)]);
        }
      }),
      { seed: 20261125, numRuns: 500 },
    );
});

test("plain digits and one unit, the same or another from row to row, do take the short way", () => {
  const read = columnReader("load", "force", "inch");
  const newton = 1 / 4.4482216152605;
  const shown = ["250 lbf", "251 lbf", "1000 N", "2 kN", "2kN", "5", "5.5", "-3 lbf", "9 lbf"].map(
    (text) => read(text) * newton,
  );
  const expected = [250, 251, 1000 * newton, 2000 * newton, 2000 * newton, 5, 5.5, -3, 9];
  shown.forEach((x, i) => expect(x).toBeCloseTo(expected[i]!, 9));
});

test("everything else is left to the full reading", () => {
  const read = columnReader("load", "force", "metric");
  for (const text of ["1,234 N", "4 500 N", "5 mm", "N", "", " 5 N", "5 N ", "five N", "1.2.3 N", "5 1/N"])
    expect(read(text)).toBeNaN();
});
