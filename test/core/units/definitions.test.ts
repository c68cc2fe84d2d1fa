import { all, create } from "mathjs";
import { prefixes, withoutPrefix, withSymbols, withWords } from "../../../src/core/units/definitions";
import { isOfSameDimension, parseUnit, ratioOf } from "../../../src/core/units/unitAlgebra";

/** mathjs 15.2.0 has units and an algebra of its own. */
const math = create(all!);
const namesOf = (...groups: Readonly<Record<string, string>>[]) =>
  groups.flatMap((group) => Object.keys(group).flatMap((names) => names.split(" ")));

/** One of a unit in the coherent unit of the SI; `undefined` where the text is none. */
const ours = (text: string): number | undefined => parseUnit(text)?.value;
function theirs(text: string): number | undefined {
  try {
    return Number(
      math
        .unit(`1 ${text}`)
        .toSI()
        .toNumber(null as unknown as string),
    );
  } catch {
    return undefined;
  }
}
const isNear = (a: number, b: number, within: number) => Math.abs(a / b - 1) <= within;

/** What mathjs rounds or lacks, to the digits that are printed: SI Brochure, 9th ed. (2019); NIST SP 811 (2008), app. B (memory). */
const printed: Readonly<Record<string, [value: number, digits: number]>> = {
  psi: [6.894757e3, 7],
  ksi: [6.894757e6, 7],
  "kip kips": [4.448222e3, 7],
  torr: [1.333224e2, 7],
  "mmHg mmhg": [1.333224e2, 7],
  eV: [1.602176634e-19, 10],
  "electronvolt electronvolts": [1.602176634e-19, 10],
  "acre acres": [4.046856e3, 4],
  hp: [7.456999e2, 7],
  rpm: [1 / 60, 15],
  fpm: [5.08e-3, 15],
  thou: [2.54e-5, 15],
  uin: [2.54e-8, 15],
  d: [8.64e4, 15],
  millibar: [100, 15],
  "metre metres pascal pascals newtons": [1, 15],
  dynes: [1e-5, 15],
  // as differences, which mathjs has for degR and rankine alone
  "degC celsius": [1, 15],
  "degF fahrenheit": [5 / 9, 15],
};
const known = namesOf(withSymbols, withWords, withoutPrefix);
const fromPrint = Object.entries(printed).flatMap(([names, [value, digits]]) =>
  names.split(" ").map((name) => [name, value, digits] as const),
);

test.each(fromPrint)("1 %s is %d, as printed", (name, value, digits) => {
  expect(known).toContain(name);
  expect(isNear(ours(name)!, value, 0.6 * 10 ** (1 - digits))).toBe(true);
});

test("every other unit is as large as mathjs has it, of the same dimension", () => {
  const printedNames = fromPrint.map(([name]) => name);
  const off = known.filter((name) => {
    const [a, b] = [ours(name), theirs(name)];
    return !printedNames.includes(name) && (a === undefined || b === undefined || !isNear(a, b, 1e-12));
  });
  expect(off).toEqual([]);
  const dimensions = known.filter((name) => !printedNames.includes(name) && theirs(name) !== undefined);
  for (const name of dimensions)
    for (const other of ["kg", "m", "m^2", "m^3", "s", "A", "K", "rad", "N", "J", "W", "Pa", "V", "V/A", "s^-1"])
      expect([name, other, isOfSameDimension(parseUnit(name)!, parseUnit(other)!)]).toEqual([
        name,
        other,
        math.unit(1, name).equalBase(math.unit(1, other)),
      ]);
});

test("every prefix stands before each unit that takes it, as a symbol or as a word, and before no other", () => {
  const exact = new Set(known);
  for (const [size, symbol, word] of prefixes) {
    for (const name of namesOf(withSymbols).filter((unit) => !exact.has(symbol + unit)))
      expect([symbol + name, isNear(ours(symbol + name)!, size * ours(name)!, 1e-15)]).toEqual([symbol + name, true]);
    for (const name of namesOf(withWords)) expect(ours(word + name)).toBe(size * ours(name)!);
    for (const name of namesOf(withoutPrefix))
      expect([word + name, ours(word + name)]).toEqual([word + name, undefined]);
    expect(isNear(theirs(`${word}meter`)!, size, 1e-15)).toBe(true);
    expect(isNear(theirs(`${symbol}N`)!, size, 1e-15)).toBe(true);
  }
});

test.each([
  "N m",
  "N  m / s",
  "W/m K",
  "W/(m*K)",
  "W / (m K)",
  "mm^3/(N*m)",
  "mm^3/N/m",
  "/K",
  "/K*m",
  "m^-2",
  "m^ 2",
  "m ^2",
  "m^0.5",
  "(N*m)/(s)",
  "(N m)s",
  "m(N)",
  "((m))",
  "BTU in/(h ft^2 degF)",
  "in^3 min/(ft lbf h)",
])("%s is read as mathjs reads it", (text) => {
  expect(isNear(ours(text)!, theirs(text)!, 1e-14)).toBe(true);
});

test.each(
  "|*m|m*|/|m^-|1^2|m/|(m|m)|()|m^|m^x|m^+2|m^~2|m^'2'|m^true|m^(2-1)|m^-x|m^(|^2|2|2 m|2*m|m 2|m*2|m/2|m+s|m-s|m//s|m**s|m,s|'m'|[m]|m.s|m;s|m=s|-m|~m|!m|m?s:s|$|constructor|toString|__proto__|this|true|1 1 m|1*m".split(
    "|",
  ),
)("%s is no unit", (text) => {
  expect(ours(text)).toBeUndefined();
});

test("a unit counts per unit with a one above the stroke alone", () => {
  expect(ours("1/min")).toBe(1 / 60);
  expect(ours("2/min")).toBeUndefined();
  expect(ratioOf(parseUnit("1/h")!, parseUnit("/min")!)).toBeCloseTo(1 / 60, 15);
});
