import { readDuties } from "../../../src/core/duties/model/readDuties";
import { readQuantity } from "../../../src/core/units/quantity";

const quantity = (kind: "length" | "force" | "count", text: string) => readQuantity("x", kind, text, "metric");
const lines = (...cells: unknown[][]) => readDuties(cells as never, "metric", "duties").lines;
const fault = (...cells: unknown[][]) => String((lines(...cells)[0]!.duty as unknown as Error).message);
const headings = ["duty", "load", "bore", "length", "rpm", "temperature"];

describe("numerals", () => {
  test("a comma before three digits is no length: it could group or be decimal", () => {
    expect(() => quantity("length", "1,234")).toThrow("could be 1234 or 1.234");
    expect(quantity("length", "1.234")).toBe(1.234);
    expect(quantity("force", "1,234")).toBe(1234);
  });
  test("a fraction is a length", () => {
    expect(quantity("length", "1/2 in")).toBe(12.7);
    expect(() => quantity("force", "1/2")).toThrow("fraction is for lengths alone");
  });
});

describe("bands", () => {
  test.each(["800 ± 0", "800 ± 0 %", "800 ± x %"])("%s is none", (text) =>
    expect(fault(headings, ["a", text, 20, 20, 60, 23])).toContain("load must be"),
  );
  test("what it is off by is in its own unit, or in that of the value", () => {
    const load = (text: string) => {
      const [{ duty }] = lines(headings, ["a", text, 20, 20, 60, 23]) as never as [
        { duty: { values: { load: object } } },
      ];
      return duty.values.load;
    };
    expect(load("1 kN ± 50 N")).toMatchObject({ low: 950, high: 1050, likely: 1000 });
    expect(load("1 kN ± 0.05")).toMatchObject({ low: 950, high: 1050, likely: 1000 });
    expect(load("1000 ± 50")).toMatchObject({ low: 950, high: 1050, likely: 1000 });
  });
});

describe("headings", () => {
  const wide = (headed: number, blank: number) => {
    const more = Array.from({ length: headed - headings.length }, (_, i) => `extra ${i}`);
    const blanks = Array.from({ length: blank }, (_, i) => (i % 2 ? null : 0));
    return () => lines([...headings, ...more, ...blanks], ["a", 300, 20, 20, 60, 23]);
  };
  test("are at most 500, blank ones not counted", () => {
    expect(wide(500, 20)).not.toThrow();
    expect(wide(501, 0)).toThrow("duties has 501 headings, at most 500 are read");
  });
  test("have at most 300 characters", () => {
    const named = (length: number) => () => lines([...headings, "x".repeat(length)], ["a", 300, 20, 20, 60, 23]);
    expect(named(300)).not.toThrow();
    expect(named(301)).toThrow("a heading has at most 300 characters, got 301");
  });
  test("side by side make a table, though a row below begins with the name of one", () =>
    expect(lines(["duty", "load"], ["bore", 300]).map(({ name }) => name)).toEqual(["bore"]));
});
