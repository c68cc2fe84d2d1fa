import { catalogue, familyList } from "../../src/core";
import { resultSymbols } from "../../src/core/formula";
import { halfOfLastDigit, outcomeOf } from "./case";
import { referenceCases } from "./cases";

const named = referenceCases.map((one) => [`${one.what} (${one.source})`, one] as const);

test.each(named)("%s", (_, one) => {
  const { holds, ...sides } = outcomeOf(one);
  if (!holds) throw new Error(`${one.what}: ${JSON.stringify(sides)}`);
});

test("a value that is off by more than the tolerance is caught", () => {
  const off = { ...referenceCases[0]!, compute: () => Number(referenceCases[0]!.compute()) * 1.01 };
  expect(outcomeOf(off).holds).toBe(false);
  expect(outcomeOf({ ...off, expected: "fits", compute: () => "fails" }).holds).toBe(false);
  expect(outcomeOf({ ...off, expected: "1.0", compute: () => NaN }).holds).toBe(false);
});

test("the tolerance of a printed value is half of its last digit", () => {
  for (const [printed, half] of [
    ["8.3", 0.05],
    ["13064", 0.5],
    ["5.08e-3", 5e-6],
    ["-0.025973", 5e-7],
  ] as const)
    expect(halfOfLastDigit(printed) / half).toBeCloseTo(1, 12);
});

test("a misprint holds by its recomputation alone", () => {
  const misprinted = referenceCases.find(({ misprint }) => misprint !== undefined)!;
  expect(outcomeOf(misprinted).holds).toBe(true);
  expect(outcomeOf({ ...misprinted, misprint: { should: misprinted.expected as string, why: "" } }).holds).toBe(false);
  expect(outcomeOf({ ...misprinted, expected: misprinted.misprint!.should }).holds).toBe(false);
});

test("every family has at least three printed examples that were read", () => {
  for (const { title: family } of familyList) {
    const own = referenceCases.filter((one) => one.family === family && one.kind === "printed example");
    expect([family, own.length >= 3]).toEqual([family, true]);
  }
});

test("every function that a formula answers is held against something outside", () => {
  const unchecked = catalogue.filter(
    ({ spec: { id, result } }) =>
      resultSymbols(result).length > 0 && !referenceCases.some(({ what }) => new RegExp(`\\b${id}\\b`).test(what)),
  );
  expect(unchecked.map(({ spec: { id } }) => `${id} stands in no "what" of test/reference/cases`)).toEqual([]);
});
