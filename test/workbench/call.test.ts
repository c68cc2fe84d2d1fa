import { callFunction } from "../../src/workbench/adapter/call";
import type { Given } from "../../src/workbench/adapter/call";
import { CellError } from "../../src/edge/host";
import { supplyCustomFunctions } from "../../src/workbench/adapter/customFunctions";
import { signature } from "../../src/workbench/adapter/metadata";
import type { FunctionMeta, ParameterMeta } from "../../src/workbench/adapter/metadata";

const meta = (...parameters: ParameterMeta[]): FunctionMeta => ({ id: "TEST", name: "TEST", parameters });
const matrix = (name: string, more: Partial<ParameterMeta> = {}): ParameterMeta => ({
  name,
  dimensionality: "matrix",
  ...more,
});
/** What a function is handed. */
function handed(about: FunctionMeta, given: Given[]): unknown[] {
  const seen: unknown[] = [];
  callFunction(about, (...args) => void seen.push(...args), given, true);
  return seen;
}

test("a function file registers through the page's CustomFunctions, in any case", () => {
  const page: { CustomFunctions?: unknown } = {};
  const functions = supplyCustomFunctions(page);
  const host = page.CustomFunctions as { associate(id: string, fn: () => number): void; Error: typeof CellError };
  host.associate("Test", () => 1);
  expect(functions.get("TEST")?.()).toBe(1);
  expect(new host.Error("#N/A", "why")).toMatchObject({ code: "#N/A", message: "why" });
});

test("a matrix argument arrives as rows, one that was left out as null", () => {
  expect(handed(meta(matrix("a"), matrix("b", { optional: true })), [[[1]]])).toEqual([[[1]], null]);
  expect(handed(meta(matrix("a"), matrix("b")), [null, [[1, null]]])).toEqual([null, [[1, null]]]);
});

test("a scalar argument takes one cell and no range", () => {
  const about = meta({ name: "a" });
  expect(handed(about, [[["3E5"]]])).toEqual(["3E5"]);
  expect(callFunction(about, () => 1, [[[1], [2]]], true)).toEqual([
    [new CellError("#VALUE!", "a takes one cell, not a range", "TEST")],
  ]);
});

test("repeating arguments arrive in one list, as many as were given", () => {
  const about = meta(matrix("a"), matrix("more", { repeating: true }));
  expect(handed(about, [[[1]], [[2]], [[3, 4]]])).toEqual([[[1]], [[[2]], [[3, 4]]]]);
  expect(handed(about, [[[1]]])).toEqual([[[1]], []]);
  expect(signature(about)).toBe("BUSH.TEST(a, more, …)");
});

test("too many arguments are an error that says how many there may be", () => {
  expect(callFunction(meta(matrix("a")), () => 1, [[[1]], [[2]]], true)).toEqual([
    [new CellError("#VALUE!", "BUSH.TEST takes 1 arguments at most", "TEST")],
  ]);
});

test("a cell error reaches only functions that take errors", () => {
  const error = new CellError("#REF!");
  const seen = jest.fn(() => 1);
  expect(callFunction(meta(matrix("a")), seen, [[[error]]], false)).toEqual([[error]]);
  expect(seen).not.toHaveBeenCalled();
  expect(callFunction(meta(matrix("a")), seen, [[[error]]], true)).toEqual([[1]]);
});

test("an error that passes through keeps the message with which it came to its place", () => {
  const bare = new CellError("#VALUE!");
  const came = (place: string) => new CellError("#VALUE!", `bore of ${place} is missing`, "OTHER");
  const down = () => [[1], [bare], [bare], [new CellError("#N/A")]];
  const rows = ["first", "second", "third", "fourth"].map((place) => [came(place)]);
  expect(callFunction(meta(matrix("a")), down, [rows], true)).toEqual([
    [1],
    [came("second")],
    [came("third")],
    [new CellError("#N/A")],
  ]);
  const across = () => [[1, bare, bare]];
  const columns = [[came("first"), came("second"), came("third")]];
  expect(callFunction(meta(matrix("a")), across, [columns], true)).toEqual([[1, came("second"), came("third")]]);
});

test("an error says which function made it, also when another hands it on", () => {
  const made = callFunction(meta(matrix("bore")), () => [[new CellError("#VALUE!", "bore is missing")]], [], true);
  expect(made).toEqual([[new CellError("#VALUE!", "bore is missing", "TEST")]]);
  const other: FunctionMeta = { ...meta(matrix("a")), id: "OTHER" };
  expect(callFunction(other, () => [[new CellError("#VALUE!")]], [made], true)).toEqual(made);
});

test("whatever comes back becomes cells: thrown errors, bare values, numbers that are none", () => {
  const about = meta();
  const thrown = new CellError("#N/A", "why", "TEST");
  const answer = (fn: () => unknown) => callFunction(about, fn, [], true);
  expect(
    answer(() => {
      throw thrown;
    }),
  ).toEqual([[thrown]]);
  expect(
    answer(() => {
      throw new Error("broken");
    })[0]![0],
  ).toMatchObject({ code: "#VALUE!", message: "Error: broken" });
  expect(answer(() => "text")).toEqual([["text"]]);
  expect(answer(() => [1, 2])).toEqual([[1], [2]]);
  expect(answer(() => NaN)[0]![0]).toMatchObject({ code: "#NUM!" });
});
