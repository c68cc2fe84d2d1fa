import { all, create } from "mathjs";
import { catalogue, workedSteps } from "../../../src/core";
import { resultSymbols } from "../../../src/core/formula";
import { call, CellError } from "../../support";

const math = create(all!);
const worked = catalogue.filter((f) => f.spec.working).map((f) => [f.spec.id, f] as const);
const steps = (id: string, ...given: unknown[]) => call(workedSteps, [id, ...given]);

/** STEPS hands its arguments over one by one; a range stays a range. */
function stepsOf(id: string, given: readonly unknown[]): unknown[][] {
  return steps(id, ...given);
}

describe.each(worked)("STEPS of %s", (id, f) => {
  const isPlain = f.spec.example.every((value) => !Array.isArray(value));
  if (!isPlain) return;
  const lines = stepsOf(id, f.spec.example);

  test("each line with its numbers put in evaluates to the result beside it", () => {
    const calculations = lines.filter(([what]) => what === "Calculation");
    expect(calculations.length).toBeGreaterThan(0);
    for (const [, formula, numbers, result] of calculations as [string, string, string, number][]) {
      const symbol = formula.slice(0, formula.indexOf("=")).trim();
      expect(numbers.startsWith(`${symbol} = `)).toBe(true);
      // units stand in brackets; what is left is arithmetic
      const plain = numbers.slice(numbers.indexOf("=") + 1).replace(/\[[^\]]*\]/g, "");
      const value = math.evaluate(plain, { ln: Math.log }) as number;
      // seven digits are shown of each number
      expect(Math.abs(value - result)).toBeLessThanOrEqual(2e-5 * Math.abs(result) + 1e-9);
    }
  });

  test("the last results are the calculation's own, and the source is named", () => {
    const answer = call(f, [...f.spec.example])[0]!.filter((cell) => typeof cell === "number");
    const results = lines.filter(([what]) => what === "Calculation").map((line) => line[3] as number);
    resultSymbols(f.spec.result).forEach((_, i, { length }) => {
      const shown = results[results.length - length + i]!;
      expect(Math.abs(shown - (answer[i] as number))).toBeLessThanOrEqual(1e-11 * Math.abs(shown) + 1e-15);
    });
    expect(lines.some(([what]) => what === "Source")).toBe(true);
  });
});

test("inch inputs are shown converted, and the answer goes back", () => {
  const lines = steps("PRESSURE", "250 lbf", 0.75, 0.5, "inch");
  expect(lines[1]).toEqual(["Radial load", "F", "250 lbf = 1112.055 N", expect.closeTo(1112.055403815125, 9), "N"]);
  const answer = lines.find(([what]) => what === "Answer in inch units")!;
  expect(answer[3]).toBeCloseTo(250 / (0.75 * 0.5), 9);
  expect(answer[4]).toBe("psi");
});

test("the name may be typed as in a cell", () => {
  for (const name of ["pressure", "BUSH.PRESSURE", "=BUSH.PRESSURE(", "bush_pressure"])
    expect(steps(name, 800, 20, 15)).toEqual(steps("PRESSURE", 800, 20, 15));
});

test("what is wrong with the arguments is what the function itself says", () => {
  expect(steps("PRESSURE", 800, -20, 15)).toEqual([[new CellError("#VALUE!", "bore must be above 0 mm, got -20")]]);
  expect(steps("PRESSURE", 800, 20)).toEqual([[new CellError("#VALUE!", "length is missing")]]);
});

test("a function without a formula, or none at all, is said", () => {
  const [[unknown]] = steps("PRESURE", 1) as [[CellError]];
  expect(unknown.code).toBe("#N/A");
  expect(unknown.message).toContain('calculation must be a function of this add-in, got "PRESURE"');
  const [[wordy]] = steps("VERDICT", "POM", 1, 1, 20) as [[CellError]];
  expect(wordy.message).toContain("VERDICT has no formula to work");
});

test("every scalar calculation but the look-ups shows its steps", () => {
  const scalar = catalogue.filter((f) => resultSymbols(f.spec.result).length === 1).map((f) => f.spec.id);
  const without = scalar.filter((id) => !worked.some(([name]) => name === id));
  expect(without).toEqual(["PRICEAT"]);
});
