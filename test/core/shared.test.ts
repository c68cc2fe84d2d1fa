import { capitalised } from "../../src/core/capitalised";
import { BushError, clash, orFault } from "../../src/core/errors";
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
