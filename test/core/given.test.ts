import { BushError, catalogue, functions, readers } from "../../src/core";
import { isNumberArg } from "../../src/core/formula";
import type { Arg, Args, Formula, FormulaOf } from "../../src/core/formula";
import { readGiven } from "../../src/core/given";
import type { Kind } from "../../src/core/kinds";
import { readQuantity } from "../../src/core/units/quantity";
import { call } from "../support";

/** Calls past the compiler, as a JavaScript program may make them. */
const direct = (f: Formula, given: object): unknown => (f as FormulaOf<Args, unknown>)(given as Record<string, never>);
const errorOf = (run: () => unknown): BushError => {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(BushError);
    return error as BushError;
  }
  throw new Error("expected an error");
};
const said = (f: Formula, given: object): string => errorOf(() => direct(f, given)).message;

const args = (f: Formula) => Object.entries<Arg>(f.spec.args);
/** The example by name, as a direct call gives it: a range of one list flat, a table as its rows. */
const exampleOf = (f: Formula): Record<string, unknown> =>
  Object.fromEntries(
    args(f).map(([name, arg], i) => {
      const example = f.spec.example[i] === "" ? undefined : f.spec.example[i];
      if (isNumberArg(arg)) return [name, working(arg.kind, example)];
      if (arg.kind === "table" && typeof example === "string") return [name, [[example]]];
      if (arg.kind !== "list") return [name, example];
      const { of } = arg;
      return [name, [example].flat(2).map((one) => (of === "text" ? one : working(of, one)))];
    }),
  );
/** A number typed with its unit, as a direct call gives it. */
const working = (kind: Kind, typed: unknown): unknown =>
  typeof typed === "string" ? readQuantity("example", kind, typed, "metric") : typed;

const byId = catalogue
  .filter((f) => !args(f).some(([, arg]) => arg.kind === "rest"))
  .map((f) => [f.spec.id, f] as const);
const unreadable = {
  number: [true, [800], "0x10", "800", NaN, Infinity, {}, new Date(0)],
  choice: ["bogus", 1, true, ["new"], {}],
  text: [5, true, ["POM copolymer"], {}, "  "],
  span: [
    true,
    {},
    { low: 20 },
    { low: NaN, high: 20 },
    { low: 20, high: Infinity },
    { low: 40, high: 20 },
    [20],
    "x",
    10n,
    () => 0,
  ],
  notation: [true, 7, "no zone", {}, [25], NaN],
  table: ["POM copolymer", 5, true, () => 0, {}, [1, 2], new Map(), NaN, [[{}]]],
  list: [5, "5", {}, [true], [NaN], [[1]]],
  any: [true, NaN, {}, [1], () => 0],
} as const;

describe.each(byId)("%s called directly", (_, f) => {
  test("answers its example as a sheet does", () => {
    const [[inSheet]] = call(f, [...f.spec.example]) as [[unknown]];
    const answer = direct(f, exampleOf(f));
    if (typeof answer === "number" || typeof answer === "string") expect(answer).toEqual(inSheet);
    else expect(answer).toBeDefined();
  });

  test("refuses what its arguments are not, and names them", () => {
    for (const [name, arg] of args(f)) {
      for (const given of unreadable[isNumberArg(arg) ? "number" : (arg.kind as "text")]) {
        const error = errorOf(() => direct(f, { ...exampleOf(f), [name]: given }));
        expect([error.code, error.argument.split(" ")[0]]).toEqual(["value", name]);
        expect(error.message).toMatch(new RegExp(`^${name}( \\d)? (must be|is missing)`));
      }
      for (const blank of [null, undefined]) {
        if (arg.optional) expect(readGiven(name, arg, blank)).toBe("default" in arg ? arg.default : undefined);
        else expect(said(f, { ...exampleOf(f), [name]: blank })).toBe(`${name} is missing`);
      }
    }
  });
});

test.each(Object.entries(readers))("the reader of %s refuses what it cannot read, and names it", (name, read) => {
  for (const given of [5, true, NaN, {}, () => 0, null, [["no such heading"], ["text"]]]) {
    const error = errorOf(() => (read as (given: unknown) => unknown)(given));
    expect([given, error.message]).toEqual([given, expect.stringContaining(name)]);
  }
});

test("STEPS called directly refuses what is no name of a calculation and no reader of arguments", () => {
  const reader = { read: () => ({ values: {}, system: "metric", answers: [] }) };
  for (const calculation of [5, true, NaN, {}, ["PRESSURE"], "", null])
    expect(said(functions.STEPS, { calculation, argument: reader })).toMatch(/^calculation (must be text|is missing)/);
  for (const argument of [5, true, NaN, {}, "800", [800, 20, 15]])
    expect(said(functions.STEPS, { calculation: "PRESSURE", argument })).toMatch(
      /^argument must be a reader of arguments, got/,
    );
});

test("each kind says what it wants", () => {
  const pressure = { load: 800, bore: 20, length: 15 };
  expect(said(functions.PRESSURE, { ...pressure, load: true })).toBe("load must be a number, got TRUE");
  expect(said(functions.PRESSURE, { ...pressure, load: [800] })).toBe("load must be a number, got a list");
  expect(said(functions.PRESSURE, { ...pressure, bore: "0x10" })).toBe('bore must be a number, got "0x10"');
  expect(said(functions.PRESSURE, { ...pressure, bore: NaN })).toBe("bore must be above 0 mm, got NAN");
  const washer = { load: 500, inner: 21, outer: 40, friction: 0.2 };
  expect(said(functions.WASHERTORQUE, { ...washer, wearstate: "bogus" })).toBe(
    'wearstate must be "new" or "worn", got "bogus"',
  );
  const steps = { pressures: [2, 4], speeds: [0.1, 0.05], times: [10, 5] };
  expect(said(functions.DUTYPV, { ...steps, speeds: [0.1, NaN] })).toBe("speeds 2 must be 0 m/s or more, got NAN");
  expect(said(functions.DUTYPV, { ...steps, pressures: [-5, 4] })).toBe("pressures 1 must be 0 MPa or more, got -5");
  const duty = { grade: "Demo Medlar", pressure: 0.6, speed: 0.094, temperature: { low: 5, high: 45 } };
  expect(said(functions.VERDICT, { ...duty, motion: "flying" })).toMatch(
    /^motion must be "turning", "swinging", .* got "flying"$/,
  );
  expect(said(functions.VERDICT, { ...duty, temperature: { low: 5 } })).toBe(
    "temperature must be two temperatures { low, high }, got an object",
  );
  expect(said(functions.VERDICT, { ...duty, temperature: { low: -300, high: 5 } })).toBe(
    "temperature must be -273.15 °C or more, got -300",
  );
  expect(said(functions.UNIT, { value: NaN, from: "m", to: "mm" })).toBe("value must be a number or text, got NAN");
  expect(said(functions.LIMITS, { size: 25, zone: "Hh7" })).toMatch(
    /^zone must be ISO 286 class "H7", or two deviations/,
  );
});

test("an argument's own notation is read", () => {
  expect(functions.LIMITS({ size: 25, zone: "H7" })).toEqual([25, 25.021]);
  const duty = { grade: "Demo Medlar", pressure: 0.6, speed: 0.094 };
  for (const temperature of ["5 to 45", { low: 5, high: 45 }])
    expect(functions.VERDICT({ ...duty, temperature })).toBe("fits, PV 55 %");
  expect(functions.VERDICT({ ...duty, temperature: 20 })).toBe(
    functions.VERDICT({ ...duty, temperature: { low: 20, high: 20 } }),
  );
  expect(
    functions.WASHERTORQUE({ load: 500, inner: 21, outer: 40, friction: 0.2, wearstate: "Worn" as "worn" }),
  ).toBeCloseTo(1.525, 12);
  const breaks = [
    [1, 4.2],
    [100, 3.1],
  ];
  expect(functions.PRICEAT({ quantity: 250, breaks })).toBe(3.1);
});

test("what a reader has read may be given to several functions, and to no argument of another kind", () => {
  const rows = [
    ["duty", "grade", "load", "bore", "length", "rpm", "temperature"],
    ["Seed-drum spindle", "Demo Medlar", 180, 15, 20, 120, "5 to 45"],
  ];
  const duties = readers.duties(rows);
  for (const f of [functions.DUTIES, functions.DUTYCHECKS]) expect(f({ duties })).toEqual(f({ duties: rows }));
  expect(functions.LIMITS({ size: 25, zone: readers.zone("+0.05/+0.10") })).toEqual([25.05, 25.1]);
  expect(said(functions.DUTIES, { duties: readers.grades([["grade"], ["A"]]) })).toMatch(
    /^duties must be rows of cells/,
  );
  expect(errorOf(() => readers.zone("no zone")).argument).toBe("zone");
  expect(errorOf(() => readers.quotes([["part"]])).argument).toBe("quotes");
});
