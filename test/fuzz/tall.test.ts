import fc from "fast-check";
import { functions } from "../../src/core";
import { isWhole } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { answer } from "../../src/edge/sheet";
import { call, CellError, host } from "../support";
import { faultIn, hostileCell } from "./hostile";

/** Columns as tall as a sheet's owner may fill them, with hostile cells throughout. */
const rows = 100_000;
const cells = fc.sample(hostileCell, { numRuns: 5000, seed: 7 });
const isError = (cell: unknown): boolean => cell instanceof CellError;
const column = (every: number, good: unknown) =>
  Array.from({ length: rows }, (_, i) => [i % every === 0 ? cells[(i / every) % cells.length] : good]);

const tall: readonly Formula[] = [
  functions.PRESSURE,
  functions.RUNTEMP,
  functions.LIFE,
  functions.UNIT,
  functions.VERDICT,
  functions.USE,
];

test.each(tall.map((f) => [f.spec.id, f] as const))("%s over 100 000 rows, every third cell hostile", (_, f) => {
  const given = Object.values<Arg>(f.spec.args).map((arg, i) =>
    isWhole(arg) || f.spec.example[i] === undefined ? null : column(3 + i, f.spec.example[i]),
  );
  const found = answer(f, given, host);
  expect(found).toHaveLength(rows);
  expect(faultIn(f, found, isError)).toBeUndefined();
});

/** More than fits into one call's arguments, so that no helper spreads a column. */
const many = 150_000;
const lines = <T>(line: (i: number) => T): T[] => Array.from({ length: many }, (_, i) => line(i));

test("a spectrum, price breaks, grades and quotes of 150 000 rows are read whole", () => {
  expect(call(functions.DUTYPV, [lines(() => [2]), lines(() => [0.1]), lines(() => [1])])[0]![0]).toBeCloseTo(0.2, 9);
  expect(call(functions.PRICEAT, [many, lines((i) => [i + 1, many - i])])[0]![0]).toBe(1);
  const grades = [["grade", "PV limit", "running pressure limit"], ...lines((i) => [`G${i}`, 0.1, 10])];
  expect(call(functions.GRADES, [null, grades]).length).toBeGreaterThan(many);
  expect(call(functions.SHORTLIST, [1, 0.01, 20, "turning", "dry", grades]).length).toBeGreaterThan(many);
  const heading = ["part", "supplier", "grade", "bore", "length", "price", "life allowance"];
  const quotes = [heading, ...lines((i) => [`P${i}`, "S", "Demo Sorrel", 20, 15, 1 + i, 0.3])];
  const card = Object.entries({ load: 150, bore: 20, length: 15, rpm: 96, temperature: 20 });
  expect(call(functions.QUOTES, [quotes, card]).length).toBeGreaterThan(many);
});

/** A place of a range answers for itself; what takes one column, or reads a range as a whole, says in one cell what is wrong. */
const widest = 16_384;
test.each([
  ["PRESSURE", widest],
  ["UNIT", widest],
  ["LIMITS", 1],
  ["PRICEAT", widest],
  ["QUOTES", 1],
] as const)("a row of 16 384 cells, the widest a sheet has: %s answers %s", (id, width) => {
  const f: Formula = functions[id];
  const wide = [Array.from({ length: widest }, (_, i) => cells[i % cells.length])];
  const given = Object.values<Arg>(f.spec.args).map((_, i) => (i === 0 ? wide : f.spec.example[i]));
  const found = call(f, given);
  expect(faultIn(f, found, isError)).toBeUndefined();
  expect([found.length, found[0]!.length]).toEqual([1, width]);
});
