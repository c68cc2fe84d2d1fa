import { BushError } from "../../../src/core/errors";
import { kinds, systems } from "../../../src/core/kinds";
import type { Kind } from "../../../src/core/kinds";
import { splitNumber } from "../../../src/core/numbers";
import { functions } from "../../../src/core";
import { readSpan } from "../../../src/core/span";
import { convert } from "../../../src/core/units/conversion";
import { inCurrency } from "../../../src/core/units/money";
import { readQuantity } from "../../../src/core/units/quantity";
import { fromUnit, fromWorking, toWorking } from "../../../src/core/units/scale";

const read = (kind: Kind, text: string, system: "metric" | "inch" = "metric") => readQuantity("x", kind, text, system);
const messageOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(BushError);
    return (error as BushError).message;
  }
  throw new Error("expected an error");
};
const close = (value: number, expected: number, relative = 4e-16) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

describe("exact factors", () => {
  // SI Brochure, 9th ed. (2019), and NIST SP 811 (2008), app. B: 1 in = 0.0254 m, 1 lb = 0.45359237 kg, g_n = 9.80665 m/s² are exact; the rest follows
  const [inch, pound, g] = [0.0254, 0.45359237, 9.80665];
  const lbf = pound * g;
  const psi = lbf / inch ** 2;
  const cases: [Kind, number][] = [
    ["force", lbf],
    ["length", inch * 1000],
    ["pressure", psi / 1e6],
    ["speed", (inch * 12) / 60],
    ["pv", ((psi / 1e6) * (inch * 12)) / 60],
    ["rise", 5 / 9],
    ["torque", lbf * inch],
    ["power", 1],
    ["wearRate", (inch * 1000) ** 3 / 60 / (lbf * inch * 12)],
    ["expansion", 9 / 5],
    // 1 Btu(IT) = 1055.05585262 J (NIST SP 811, app. B.8)
    ["conductivity", (1055.05585262 * inch) / 3600 / (inch * 12) ** 2 / (5 / 9)],
    ["film", 1055.05585262 / 3600 / (inch * 12) ** 2 / (5 / 9)],
    ["distance", 1.609344],
    ["density", (pound * 1000) / (inch * 100) ** 3],
    ["time", 1],
    ["rate", 1],
    ["angle", 1],
    ["percent", 1],
  ];
  test.each(cases)("%s", (kind, factor) => {
    close(toWorking(kind, 1, "inch"), factor, 2e-15);
    close(fromWorking(kind, factor, "inch"), 1, 2e-15);
  });

  test("the printed values of the specification", () => {
    close(read("pressure", "1 psi"), 6894.757293168361e-6);
    close(read("pv", "1 psi*ft/min"), 3.502536704929527e-5, 1e-15);
    close(read("speed", "1 ft/min"), 0.00508);
    close(read("pressure", "1 kgf/cm²"), 0.0980665);
    // ASTM D3702's unit 1e-10 in³·min/(ft·lbf·h), printed to five digits
    expect(read("wearRate", "1e-10 in³·min/(ft·lbf·h)")).toBeCloseTo(2.0144e-8, 12);
  });
});

test.each<[Kind, string, number]>([
  ["percent", "70 %", 0.7],
  ["percent", "55 %", 0.55],
  ["length", "17 µm", 0.017],
  ["length", "3 um", 0.003],
  ["speed", "35 mm/s", 0.035],
  ["pressure", "290 kPa", 0.29],
  ["time", "-1 s", -1 / 3600],
])("%s: %s is the number nearest to it, as if it had been typed in working units", (kind, text, value) =>
  expect(read(kind, text)).toBe(value),
);

describe("temperatures", () => {
  test("absolute ones take their offset", () => {
    expect(read("temperature", "32 °F")).toBe(0);
    close(read("temperature", "212 degF"), 100, 1e-15);
    expect(read("temperature", "300 K")).toBeCloseTo(26.85, 12);
    expect(read("temperature", "68 F")).toBeCloseTo(20, 12);
    expect(read("temperature", "-40 F")).toBe(-40);
    expect(read("temperature", "25 C")).toBe(25);
    expect(toWorking("temperature", 212, "inch")).toBeCloseTo(100, 12);
    expect(fromWorking("temperature", 100, "inch")).toBeCloseTo(212, 12);
  });
  test.each<[string, number]>([
    ["20 celsius", 20],
    ["20 Celsius", 20],
    ["20 degree celsius", 20],
    ["20 degrees Celsius", 20],
    ["20 ° Celsius", 20],
    ["20 deg C", 20],
    ["20 deg. C", 20],
    ["20 degC", 20],
    ["20 DEGC", 20],
    ["293.15 kelvin", 20],
    ["293.15 KELVIN", 20],
    ["68 fahrenheit", 20],
    ["68 Degrees Fahrenheit", 20],
    ["68 deg F", 20],
    ["527.67 rankine", 20],
    ["527.67 °R", 20],
    ["527.67 degR", 20],
  ])("%s is read as a temperature, and as a difference without its offset", (text, expected) => {
    expect(read("temperature", text)).toBeCloseTo(expected, 10);
    const number = Number.parseFloat(text);
    const isFahrenheit = /[fr](?:ahrenheit|ankine)?$/i.test(text);
    expect(read("rise", text)).toBeCloseTo(isFahrenheit ? (number * 5) / 9 : number, 10);
  });
  test("the words stand in compound units, headings and spans too", () => {
    expect(read("conductivity", "0.25 W/(m·celsius)")).toBeCloseTo(0.25, 15);
    expect(read("expansion", "5e-5 1/Fahrenheit")).toBeCloseTo(9e-5, 15);
    expect(fromUnit("x", "temperature", 68, "fahrenheit")).toBeCloseTo(20, 12);
    expect(readSpan("x", "-20 to 60 celsius", "inch")).toEqual({ low: -20, high: 60 });
    expect(readSpan("x", "14 Fahrenheit to 333.15 kelvin", "metric").high).toBeCloseTo(60, 10);
  });
  test("a unit behind one end of a span counts for both, whichever it is", () => {
    for (const typed of ["-20 °C to 60", "-20 to 60 °C", "-20 °C bis 60", "-20 °C – 60 °C", "−20…60 °C", "-20 °C / 60"])
      expect(readSpan("x", typed, "inch")).toEqual({ low: -20, high: 60 });
    expect(readSpan("x", "5 bis 45", "metric")).toEqual({ low: 5, high: 45 });
    expect(readSpan("x", "41 °F to 113", "metric").high).toBeCloseTo(45, 10);
  });
  test.each(["kK", "mK", "(degC)", "(K)", "K^1", "degC*m/m", "mdegC"])("%s is no scale of temperature", (unit) => {
    for (const kind of ["temperature", "rise"] as const)
      expect(messageOf(() => read(kind, `20 ${unit}`))).toContain("in a unit like");
    const said = "°C, K, °F or °R for a temperature";
    expect(messageOf(() => convert(20, unit, "K"))).toBe(`from must be ${said}, got "${unit}"`);
    expect(messageOf(() => convert(20, "K", unit))).toBe(`to must be ${said}, got "${unit}"`);
  });
  test("differences do not", () => {
    expect(read("rise", "36 °F")).toBeCloseTo(20, 12);
    expect(read("rise", "20 K")).toBe(20);
    expect(read("rise", "20 C")).toBe(20);
  });
});

describe("numbers as people type them", () => {
  test.each([
    ["1,234", 1234],
    ["1.234", 1.234],
    ["1.234,5", 1234.5],
    ["1,234.5", 1234.5],
    ["1,234,567", 1234567],
    ["1.234.567", 1234567],
    ["4 500", 4500],
    ["4\u202f500,5", 4500.5],
    ["0,5", 0.5],
    ["0,234", 0.234],
    ["12,5", 12.5],
    ["1234,5", 1234.5],
    ["1234,567", 1234.567],
    [".5", 0.5],
    ["-3.2e-5", -3.2e-5],
    ["\u22125", -5],
    ["+7", 7],
    ["3E5", 300000],
  ])("%s", (text, value) => {
    expect(splitNumber(text)).toMatchObject({ value, rest: "" });
  });
  test.each(["12,34,56", "1.23.4", "1,234,5", "1,2.3,4", "abc", "", "-", ","])("%s has no one meaning", (text) => {
    expect(splitNumber(text)).toBeUndefined();
  });
});

describe("spellings", () => {
  test.each<[Kind, string, number]>([
    ["pressure", "3 N/mm²", 3],
    ["pressure", "3 N/mm2", 3],
    ["pressure", "3 N/mm^2", 3],
    ["pressure", "3 MPa", 3],
    ["pressure", "30 bar", 3],
    ["pressure", "3000 kPa", 3],
    ["pressure", "9.5 ksi", 9.5 * 6.894757293168361],
    ["pressure", "1000 lbf/in²", 6.894757293168361],
    ["pv", "7,250 psi*ft/min", 7250 * 3.502536704929527e-5],
    ["pv", "7250 psi·fpm", 7250 * 3.502536704929527e-5],
    ["pv", "2 W/mm²", 2],
    ["pv", "2 N/mm²·m/s", 2],
    ["speed", "100 fpm", 0.508],
    ["speed", "100 ft/min", 0.508],
    ["rate", "120 rpm", 120],
    ["rate", "120 1/min", 120],
    ["rate", "120 /min", 120],
    ["rate", "120 rev/min", 120],
    ["rate", "30 cycles/min", 30],
    ["rate", "2 Hz", 120],
    ["length", '1.5"', 38.1],
    ["length", "1.5 in", 38.1],
    ["length", "1.5 inch", 38.1],
    ["length", "50 µm", 0.05],
    ["length", "50 μm", 0.05],
    ["length", "2 thou", 0.0508],
    ["length", "2 mil", 0.0508],
    ["length", "2 cm", 20],
    ["angle", "90°", 90],
    ["angle", "90 deg", 90],
    ["torque", "12 Nm", 12],
    ["torque", "12 N·m", 12],
    ["expansion", "90e-6 1/K", 90e-6],
    ["wearRate", "2e-6 mm³/(N·m)", 2e-6],
    ["percent", "12 %", 0.12],
    ["percent", "0.12 ratio", 0.12],
    ["ratio", "0.4 ratio", 0.4],
    ["ratio", "40 %", 0.4],
    ["time", "90 min", 1.5],
    ["time", "2 days", 48],
    ["time", "2 d", 48],
    ["hardness", "200 HB", 200],
    ["hardness", "180 HBW", 180],
    ["hardness", "180", 180],
    ["percent", "0.12", 0.12],
    ["wearRate", "2 1e-6 mm³/(N·m)", 2e-6],
    ["wearRate", "2 10⁻⁶ mm³/(N·m)", 2e-6],
    ["expansion", "90 10^-6 1/K", 90e-6],
    ["rate", "2 s⁻¹", 120],
  ])("%s: %s", (kind, text, value) => {
    expect(read(kind, text)).toBeCloseTo(value, 10);
  });

  test("a unit on the text overrides the sheet's system", () => {
    close(read("force", "250 lbf", "metric"), 1112.055403815125, 1e-15);
    expect(read("force", "250 N", "inch")).toBe(250);
    close(read("force", "250", "inch"), 1112.055403815125, 1e-15);
  });
});

describe("what is wrong is said", () => {
  test("wrong dimension, unknown unit, no number", () => {
    expect(messageOf(() => readQuantity("load", "force", "250 psi", "metric"))).toBe(
      'load must be in a unit like N or lbf, got "psi"',
    );
    expect(messageOf(() => readQuantity("load", "force", "250 kgg", "metric"))).toContain(
      "load must be in a unit like N or lbf",
    );
    expect(messageOf(() => readQuantity("load", "force", "heavy", "metric"))).toContain("load must be a number");
    expect(messageOf(() => readQuantity("temperature", "temperature", "20 mm", "metric"))).toContain("°C or °F");
    for (const text of ["5 mm", "EUR", "EUR 1/2", "1/2 EUR", "EUR 5 USD"])
      expect(messageOf(() => readQuantity("price", "money", text, "metric"))).toContain("an amount like");
    expect(messageOf(() => readQuantity("α", "expansion", "11e-6 10^-6/K", "metric"))).toBe(
      'α must be a number with one power of ten, got "11e-6 10^-6/K"',
    );
    expect(readQuantity("α", "expansion", "110 10^-6/K", "metric")).toBeCloseTo(110e-6, 12);
    expect(readQuantity("α", "expansion", "110e-6 1/K", "metric")).toBeCloseTo(110e-6, 12);
  });
  test.each(Object.keys(kinds) as Kind[])("what every object has is no unit of %s", (kind) => {
    for (const word of ["constructor", "toString", "valueOf", "__proto__"])
      expect(messageOf(() => readQuantity("x", kind, `4 ${word}`, "metric"))).toMatch(/^x must be .*, got "/);
  });
  test("pounds of mass are not a force", () => {
    expect(messageOf(() => readQuantity("load", "force", "250 lb", "metric"))).toContain('got "lb"');
  });
});

/** From the definitions, not from a table; SI Brochure, 9th ed. (2019), and NIST SP 811 (2008), app. B.8 (memory). */
test.each<[string, string, number]>([
  ["torr", "Pa", 101325 / 760],
  ["mmHg", "Pa", 13.5951 * 9.80665],
  ["mmhg", "Pa", 133.322387415],
  ["eV", "J", 1.602176634e-19],
  ["keV", "J", 1.602176634e-16],
  ["electronvolt", "J", 1.602176634e-19],
  ["acre", "m²", 43560 * 0.3048 ** 2],
  ["acres", "m²", 4046.8564224],
  ["hp", "ft·lbf/s", 550],
  ["kips", "lbf", 1000],
  ["kip", "N", 4448.2216152605],
])("one %s is exactly so many %s", (from, to, factor) => {
  close(convert(1, from, to), factor, 1e-15);
});

test.each<[string, Kind, string]>([
  ["15 Mm", "length", "mm"],
  ["5 mPa", "pressure", "MPa"],
  ["0.1 mPa*m/s", "pv", "MPa*m/s"],
])("%s is a slip of the shift key, and the unit that was meant is named", (text, kind, meant) => {
  expect(() => readQuantity("value", kind, text, "metric")).toThrow(`did you mean ${meant}?`);
});

test("a unit that would not do either is not proposed", () => {
  expect(() => readQuantity("load", "force", "5 mPa", "metric")).toThrow(
    'load must be in a unit like N or lbf, got "mPa"',
  );
});

test.each<[string, (from: string, to: string) => unknown]>([
  ["a quantity's", (one, other) => readQuantity(`${one}, ${other}`, "length", "5 mm", "metric")],
  ["UNIT's", (from, to) => convert(5, from, to)],
])("of %s spellings without end no more than some thousands are kept", (_, read) => {
  // counted by hand: `npm run mutants` runs these tests without jest
  const clear = Object.getOwnPropertyDescriptor(Map.prototype, "clear")!;
  let cleared = 0;
  Object.defineProperty(Map.prototype, "clear", {
    ...clear,
    value(this: Map<unknown, unknown>) {
      cleared++;
      (clear.value as () => void).call(this);
    },
  });
  const spaced = (count: number) => "mm".padEnd(2 + count);
  try {
    for (let i = 0; i < 50; i++) for (let j = 0; j < 50; j++) read(spaced(i), spaced(j));
  } finally {
    Object.defineProperty(Map.prototype, "clear", clear);
  }
  expect(cleared).toBeGreaterThan(0);
});

describe("UNIT's conversion", () => {
  test("asks whether another unit was meant", () => {
    expect(() => convert(5, "mPa", "psi")).toThrow("did you mean MPa?");
    expect(() => convert(5, "in", "Mm")).toThrow("did you mean mm?");
  });

  test.each<[number, string, string, number]>([
    [20, "celsius", "K", 293.15],
    [300, "kelvin", "°C", 26.85],
    [9, "K", "rankine", 16.2],
    [1, "°R", "K", 5 / 9],
    [0, "°R", "°C", -273.15],
    [1, "psi", "Pa", 6894.757293168361],
    [100, "degC", "degF", 212],
    [100, "C", "F", 212],
    [0, "K", "°C", -273.15],
    [1, "BTU·in/(h·ft²·°F)", "W/(m·K)", 0.14422788886428256],
    [1, "mi", "km", 1.609344],
    [60, "rpm", "Hz", 1],
  ])("%d %s in %s", (value, from, to, expected) => {
    close(convert(value, from, to), expected, 1e-14);
  });
  test.each<[number | string, string, string, string]>([
    [-500, "°C", "K", "value must be -273.15 °C or more, got -500"],
    [-1, "K", "°C", "value must be 0 K or more, got -1"],
    [-460, "F", "C", "value must be -459.67 F or more, got -460"],
    [-0.1, "degR", "K", "value must be 0 degR or more, got -0.1"],
    ["-5 K", "°C", "°F", "value must be 0 K or more, got -5"],
    ["68 fahrenheit", "psi", "Pa", 'from must be of the same dimension as fahrenheit, got "psi"'],
    ["0x10", "m", "mm", 'value must be a unit such as "MPa", "psi" or "ft/min", got "x10"'],
  ])("%s %s in %s is refused", (value, from, to, said) => {
    expect(messageOf(() => functions.UNIT({ value, from, to }))).toBe(said);
  });
  test("absolute zero itself converts", () => {
    expect(convert(-459.67, "°F", "K")).toBeCloseTo(0, 12);
    expect(convert(-273.15, "°C", "°F")).toBeCloseTo(-459.67, 12);
  });
  test("text brings its own temperature", () => {
    close(functions.UNIT({ value: "68 fahrenheit", from: "°C", to: "K" }), 293.15, 1e-14);
  });
  test("checks the dimension", () => {
    expect(messageOf(() => convert(1, "psi", "mm"))).toBe('to must be of the same dimension as psi, got "mm"');
    expect(messageOf(() => convert(1, "quux", "mm"))).toContain("from must be a unit");
    expect(messageOf(() => convert(1, "", "mm"))).toContain("from must be a unit");
    expect(messageOf(() => convert(1, "mm", "degC"))).toBe('to must be of the same dimension as mm, got "degC"');
    expect(messageOf(() => convert(1, "degC", "mm"))).toBe('to must be of the same dimension as degC, got "mm"');
  });
});

test.each([
  ["2.40", "EUR", "2.40 EUR"],
  ["2.40 each", "EUR", "2.40 EUR"],
  ["2.40 USD", "EUR", "2.40 USD"],
  ["$2.40", "USD", "2.40 USD"],
  ["$2.40", "EUR", "$2.40"],
  ["two forty", "EUR", "two forty"],
])("%s below a heading in %s reads %s away from it", (cell, heading, told) => {
  expect(inCurrency(cell, heading)).toBe(told);
});

test("every kind converts there and back in both systems", () => {
  for (const kind of Object.keys(kinds) as Kind[])
    for (const system of systems) close(fromWorking(kind, toWorking(kind, 37.5, system), system), 37.5, 1e-14);
});
