import { measureText, percentText } from "../../src/core/measure";
import { markIn, splitNumber } from "../../src/core/numbers";
import { readSpan } from "../../src/core/span";
import { convert } from "../../src/core/units/conversion";

/** How text becomes numbers, and numbers text, at the edges of each rule. */
test("a use in percent: whole, with more digits where it is small or where 100 would hide the side", () => {
  const told = [0, 0.0012345, 0.0999, 0.1, 0.10234, 0.105, 0.99, 0.999, 0.9999, 1, 1.0001, 1.001, 1.5, 12];
  expect(told.map(percentText)).toEqual([
    "0 %",
    "0.12 %",
    "10 %",
    "10 %",
    "10 %",
    "11 %",
    "99 %",
    "99.9 %",
    "99.99 %",
    "100 %",
    "100.01 %",
    "100.1 %",
    "150 %",
    "1200 %",
  ]);
  expect(percentText(1 + 1e-8)).toBe("100.000001 %");
  expect(percentText(1 + 1e-9)).toBe("100 %");
  expect(percentText(0.004)).toBe("0.4 %");
});

describe("a temperature or two", () => {
  const read = (cell: number | string | boolean) => readSpan("temperature", cell, "metric");
  const message = (cell: number | string | boolean) => {
    try {
      return read(cell);
    } catch (error) {
      return (error as Error).message;
    }
  };
  test("one is both ends, equal ends are a span, units hold for both", () => {
    expect(read(20)).toEqual({ low: 20, high: 20 });
    expect(read("20 to 20")).toEqual({ low: 20, high: 20 });
    expect(read("-20 .. 60")).toEqual({ low: -20, high: 60 });
    const { low, high } = read("14 to 140 °F");
    expect([low, high]).toEqual([expect.closeTo(-10, 9), expect.closeTo(60, 9)]);
    expect(read("68 °F to 60 °C").low).toBeCloseTo(20, 9);
  });
  test("what is no span is told as such", () => {
    expect(message(true)).toBe("temperature must be a temperature, got TRUE");
    expect(message("1 to 2 to 3")).toContain('or two, lowest first, as "-20 to 60", got "1 to 2 to 3"');
    expect(message("60 to 20")).toContain("two, lowest first");
    expect(message("20 to warm")).toContain('got "20 to warm"');
    expect(message("warm")).not.toContain("two temperatures");
    expect(message("-300 to 20")).toContain('-273.15 °C or more, got "-300 to 20"');
    expect(message(-300)).toContain("-273.15 °C or more");
  });
});

test("spaces group digits; behind them one comma is the point, and points and commas are not both", () => {
  const value = (text: string) => splitNumber(text)?.value;
  expect(value("4 500")).toBe(4500);
  expect(value("4 500,5")).toBe(4500.5);
  expect(value("4 500.5")).toBe(4500.5);
  expect(value("1,234")).toBe(1234);
  expect(value("1 234,567")).toBe(1234.567);
  expect(value("0,5")).toBe(0.5);
  expect(value("1.234,5")).toBe(1234.5);
  expect(value("1.234.567")).toBe(1_234_567);
  expect(value("0,123")).toBe(0.123);
  expect(value("1,23,4")).toBeUndefined();
});

test("the degrees of Rankine, Fahrenheit, Celsius and Kelvin", () => {
  expect(convert(491.67, "degR", "degC")).toBeCloseTo(0, 9);
  expect(convert(0, "degC", "K")).toBeCloseTo(273.15, 9);
  expect(convert(212, "degF", "degC")).toBeCloseTo(100, 9);
  expect(convert(671.67, "degR", "degF")).toBeCloseTo(212, 9);
});

test("a percentage is shown in %, whatever the sheet's units", () => {
  expect([0, 0.02, 0.0225, 0.07].map((x) => measureText("percent", x, "metric"))).toEqual([
    "0 %",
    "2 %",
    "2.25 %",
    "7 %",
  ]);
  expect(measureText("percent", 0.29, "inch")).toBe("29 %");
});

test("a number that a comma divides into thousands says what it is with a decimal comma", () => {
  expect(splitNumber("1,234 mm")).toEqual({ value: 1234, rest: "mm", withComma: 1.234 });
  expect(splitNumber("-1,234")).toEqual({ value: -1234, rest: "", withComma: -1.234 });
  expect(splitNumber("1,5")).toEqual({ value: 1.5, rest: "" });
  expect(splitNumber("1.5 mm")).toEqual({ value: 1.5, rest: "mm" });
  expect(splitNumber("1.5e3")).toEqual({ value: 1500, rest: "", hasExponent: true });
});

test("fractions are halves down to sixty-fourths, less than one, behind a whole number or alone", () => {
  const value = (text: string) => splitNumber(text)?.value;
  expect([..."½¼¾⅛⅜⅝⅞"].map(value)).toEqual([0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875]);
  expect(["1/2", "3/4", "7/8", "15/16", "31/32", "63/64"].map(value)).toEqual([
    ...[0.5, 0.75, 0.875, 0.9375, 0.96875, 0.984375],
  ]);
  expect(["3-1/2", "3 1/2", "3½", "-3 1/2", "+3½"].map(value)).toEqual([3.5, 3.5, 3.5, -3.5, 3.5]);
  for (const none of ["1/3", "2/2", "0/2", "1/0", "3/2"]) expect(splitNumber(none)?.isFraction).toBeUndefined();
});

test("the first numeral that can be read one way only tells the decimal mark", () => {
  expect(["1,25", "1.25", "1,234", "1.234", "125", ""].map(markIn)).toEqual([
    ...["comma", "point", "either", "either", "same", "same"],
  ]);
  expect(["1,234 to 1.25", "1.250 to 1,25", "1,25 to 1,234", "7 to 1,234"].map(markIn)).toEqual([
    ...["point", "comma", "comma", "either"],
  ]);
});
