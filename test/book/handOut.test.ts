import { exercises, handOut, mistakeText } from "../../src/book/handOut/handOut";
import { handOutPage } from "../../src/book/handOut/page";
import { handOutSheets } from "../../src/book/handOut/sheets";
import type { Task } from "../../src/book/handOut/tasks";

const all = exercises.map(({ name }) => name);
const wish = { number: 7, system: "metric", chosen: all, hasMistake: true } as const;
const numbers = Array.from({ length: 10 }, (_, i) => i);

/** By symbol, so that the tests write each formula as a textbook does. */
const given = (task: Task): Record<string, number> =>
  Object.fromEntries([...task.given, ...task.data].map(({ symbol, value }) => [symbol, Number(value)]));

/** Textbook definitions (common practice, no source), in the metric units of the sheet and in inch units. */
const textbook: Readonly<Record<string, (g: Record<string, number>, isInch: boolean) => number>> = {
  PRESSURE: ({ F, d, L }) => F! / (d! * L!),
  WASHERPRESSURE: ({ F, Di, Do }) => F! / ((Math.PI / 4) * (Do! ** 2 - Di! ** 2)),
  // mm in a minute are 1/60 000 m/s; 12 in are 1 ft
  SPEED: ({ d, n }, isInch) => (Math.PI * d! * n!) / (isInch ? 12 : 60000),
  PVVALUE: ({ p, v }) => p! * v!,
  // the lever is half the bore; N·mm to N·m, lbf·in stay
  TORQUE: ({ F, d, μ }, isInch) => (μ! * F! * d!) / 2 / (isInch ? 1 : 1000),
  // 1 ft·lbf/min = 0.0225970 W (NIST SP 811, 2008, app. B)
  HEAT: ({ F, v, μ }, isInch) => μ! * F! * v! * (isInch ? 0.022597 : 1),
  FREETILT: ({ C, L }) => (Math.atan(C! / L!) * 180) / Math.PI,
};

test.each(["metric", "inch"] as const)("answers in %s units are those of the textbook's formulas", (system) => {
  for (const number of numbers) {
    const { tasks } = handOut({ ...wish, chosen: Object.keys(textbook), number, system, hasMistake: false });
    expect(tasks).toHaveLength(Object.keys(textbook).length);
    for (const task of tasks) {
      const expected = textbook[task.lesson.name]!(given(task), system === "inch");
      expect(Number(task.asked[0]!.value) / expected).toBeCloseTo(1, 5);
    }
  }
});

test("the same number brings the same figures, another one others, which stay as sensible as the example's", () => {
  expect(handOut(wish)).toEqual(handOut(wish));
  const drawn = numbers.map((number) => handOut({ ...wish, number }).tasks);
  const sets = new Set(drawn.map((tasks) => JSON.stringify(tasks.map((task) => task.given))));
  expect(sets.size).toBe(numbers.length);
  for (const task of drawn.flat())
    task.given.forEach(({ value }, i) => {
      const example = task.lesson.inputs[i]!;
      if (typeof example !== "number") return expect(value).toBe(example);
      // 20 % up or down, rounded to two digits
      expect(Math.abs(Number(value) / example - 1)).toBeLessThan(0.25);
    });
  for (const { d, D } of drawn.flat().map(given)) if (D !== undefined) expect(D).toBeGreaterThan(d!);
});

test("on request one result to check is wrong, and the answers alone say which", () => {
  for (const number of numbers) {
    const made = handOut({ ...wish, number });
    const { slip } = made;
    const [right, wrong] = [slip!.task.asked.map(({ value }) => Number(value)), slip!.results.map(Number)];
    expect(wrong.some((value, i) => Math.abs(value / right[i]! - 1) > 0.09)).toBe(true);
    const told = mistakeText(made, slip!);
    expect(told).toContain(`The mistake is in task ${made.tasks.indexOf(slip!.task) + 1}, `);
    const [exercise, answers] = handOutSheets(made, ["Exercise", "Answers"]);
    expect(JSON.stringify(exercise)).not.toContain("The mistake is in task");
    expect(JSON.stringify(exercise!.cells).match(/To check: /g)).toHaveLength(
      made.tasks.flatMap((t) => t.asked).length,
    );
    expect(answers!.cells.A3!.value).toBe(told);
    const [forClass = "", forTrainer = ""] = handOutPage(made).split('class="answers"');
    expect([forClass, forTrainer].map((part) => part.includes("The mistake is in task"))).toEqual([false, true]);
  }
});

test("a wrong result is the function's own for the figure put in wrongly", () => {
  // F/(d/2·L) is twice F/(d·L)
  const made = handOut({ ...wish, chosen: ["PRESSURE"], number: numbers.find(isRadius)! });
  const [{ asked }] = made.tasks as [Task];
  expect(made.slip!.results[0]).toBeCloseTo(2 * Number(asked[0]!.value), 12);
  expect(mistakeText(made, made.slip!)).toMatch(/the radius instead of the diameter: Bore of the bush d was put in as/);
});
const isRadius = (number: number): boolean =>
  handOut({ ...wish, chosen: ["PRESSURE"], number }).slip!.why === "the radius instead of the diameter";

test("without a mistake nothing is to check", () => {
  const made = handOut({ ...wish, hasMistake: false });
  expect(handOutPage(made)).not.toMatch(/to check|the mistake/i);
  expect(JSON.stringify(handOutSheets(made, ["E", "A"]))).not.toMatch(/to check|the mistake/i);
});

test("what cannot be made is refused in a sentence", () => {
  expect(() => handOut({ ...wish, chosen: [] })).toThrow("choose one calculation at least");
  expect(() => handOut({ ...wish, number: -1 })).toThrow("the number must be a whole number of at least 0, got -1");
  expect(() => handOut({ ...wish, number: 1.5 })).toThrow("got 1.5");
});

test("the answer sheet works from the figures of the exercise", () => {
  const made = handOut({ ...wish, chosen: ["PRESSURE"], system: "inch" });
  const [exercise, answers] = handOutSheets(made, ["Exercise 7", "Answers 7"]);
  const formula = Object.values(answers!.cells).find((cell) => cell.formula)!.formula;
  expect(formula).toBe(`=BUSH.STEPS("PRESSURE",'Exercise 7'!$C$6,'Exercise 7'!$C$7,'Exercise 7'!$C$8,"inch")`);
  const figures = made.tasks[0]!.given.map(({ value }) => value);
  expect(["C6", "C7", "C8"].map((at) => exercise!.cells[at]!.value)).toEqual(figures);
});
