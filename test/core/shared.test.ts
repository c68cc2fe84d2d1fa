import { capitalised } from "../../src/core/capitalised";
import { BushError, clash, mustBe, orFault } from "../../src/core/errors";
import { functions } from "../../src/core";
import { formulaNamed } from "../../src/core/families";
import { keysOf, mapped } from "../../src/core/keyed";

test("a fault is handed back instead of thrown, what was made as it is; any other error goes on", () => {
  const fault = clash("bore", "bore must be above 0 mm, got -5");
  const failing = (error: Error) => () => {
    throw error;
  };
  expect(orFault(failing(fault))).toBe(fault);
  expect(orFault(() => 0)).toBe(0);
  expect(() => orFault(failing(new TypeError("no list")))).toThrow(TypeError);
  expect(orFault(failing(fault))).toBeInstanceOf(BushError);
});

describe("a message that hosts would cut off", () => {
  const long = (count: number) => Array.from({ length: count }, (_, i) => `"choice ${i}"`).join(", ");
  const shortened = (message: string) => clash("x", message).message;
  test("keeps what was found, and of what is accepted whole items", () => {
    const { message } = mustBe("shaft", long(20), "brass");
    expect(message).toBe(
      'shaft must be "choice 0", "choice 1", "choice 2", "choice 3", "choice 4", "choice 5", "choice 6", …, got "brass"',
    );
    const behind = shortened(`duties row 10000: ${message}`);
    expect(behind).toMatch(/^duties row 10000: shaft must be "choice 0", .*"choice 5", …, got "brass"$/);
    expect(behind.length).toBeLessThanOrEqual(120);
  });
  test("fills its room where what is accepted is no list, and where nothing was found", () => {
    expect(shortened(`${"a".repeat(200)}, got 5`)).toBe(`${"a".repeat(112)}…, got 5`);
    expect(shortened("a".repeat(121))).toBe(`${"a".repeat(119)}…`);
    expect(shortened(`a, got ${"b".repeat(200)}`)).toBe(`a, got ${"b".repeat(112)}…`);
    expect(shortened("a".repeat(120))).toBe("a".repeat(120));
  });
});

test("a function is found by its name alone, and by no name that every object has", () => {
  expect(formulaNamed("PRESSURE")).toBe(functions.PRESSURE);
  expect(formulaNamed("pressure")).toBeUndefined();
  expect(formulaNamed("constructor")).toBeUndefined();
});

test("a record keeps its keys, each with what is made of its value", () => {
  const sizes: Partial<Record<"bore" | "length" | "wall", number>> = { bore: 20, length: 15 };
  expect(keysOf(sizes)).toEqual(["bore", "length"]);
  expect(mapped(sizes, (size, key) => `${key} ${size} mm`)).toEqual({ bore: "bore 20 mm", length: "length 15 mm" });
});

test("a capital goes in front, whatever is there; of nothing nothing is made", () => {
  expect(["wear rate", "PV", "°C", ""].map(capitalised)).toEqual(["Wear rate", "PV", "°C", ""]);
});
