import { functions } from "../../src/core";
import { answer } from "../../src/edge/sheet";
import { call, host, message } from "../support";

/** Faults that the fuzz run found, each held by a call of its own. */
const thing = { type: "Entity", text: "a thing", properties: {} };

const heading = ["part", "supplier", "grade", "bore", "length", "price", "duty %", "life allowance"];
const quote = ["A", "S", "Demo Sorrel", 20, 15, 1.9, 4, 0.3];
const card = (load: number) => Object.entries({ load, bore: 20, length: 15, rpm: 96, temperature: 20, hours: 10 });
const rank = (rows: unknown[][], load: number) => call(functions.QUOTES, [[heading, ...rows], card(load)]);

test("an object without a plain value in a range is told by the argument", () => {
  expect(message(call(functions.DUTYPV, [[[thing]], [[1]], [[1]]]))).toBe(
    "a cell of pressures must be a number or text, got an object",
  );
  expect(message(call(functions.SHORTLIST, [2, 0.06, 20, "turning", "dry", [["grade"], [thing]]]))).toBe(
    "grades row 2: a cell of grades must be a number or text, got an object",
  );
});

test("a wide range of unit systems is named", () => {
  const cells = answer(functions.LIMITS, [25, "H7", [["metric", "inch"]]], host);
  expect(message(cells)).toBe("units must be one column here: each row answers several values");
});

test("GRADES names the argument that holds an unknown heading", () => {
  expect(message(call(functions.GRADES, [[["no such thing"]]]))).toMatch(/^properties "no such thing" is unknown/);
});

test("an answer beyond all numbers names what went in, whatever its kind", () => {
  expect(message(call(functions.UNIT, [1e308, "km", "mm"]))).toBe(
    "value, from or to: out of range, the answer is not a finite number",
  );
  expect(message(call(functions.DUTYPV, [[[1e308]], [[1e10]], [[1]]]))).toMatch(
    /^pressures, speeds, times or timeconstant: out of range/,
  );
});

test("a duty that hardly wears anything leaves an offer without a life, not the whole table in error", () => {
  const [, row] = rank([quote], 5e-324);
  expect(row![0]).toBe(1);
  expect(row!.at(-1)).toContain("no life known: ranked by landed cost");
});

test("a landed cost beyond all numbers leaves its own row unranked", () => {
  const [, first, second] = rank([["B", "S", "Demo Sorrel", 20, 15, 1e308, 1e6, 0.3], quote], 150);
  expect([first![1], first![0]]).toEqual(["A", 1]);
  expect(second![0]).toBe("not ranked");
});

test("a price that a thousand million share is no price of zero", () => {
  const [, row] = call(functions.QUOTES, [
    [
      [...heading, "price per"],
      ["A", "S", "Demo Sorrel", 20, 15, 5e-324, 4, 0.3, 1e9],
    ],
    card(150),
  ]);
  expect(row!.at(-1)).toContain("price: out of range");
});

test("a number that outgrew all numbers is ∞ in a text", () => {
  expect(message(call(functions.SHAFTSLOPE, ["overhung", 1, 200, 1e-200, 206000, 60]))).toBe(
    "load bends the shaft by ∞°, at most 5° is small enough for the theory of beams",
  );
});
