import { inOneMark, markOf } from "../../../src/core/table/decimals";
import type { Decimals } from "../../../src/core/table/decimals";

const read = (cells: readonly string[], wanted?: Decimals) =>
  inOneMark(
    cells.map((cell) => [cell]),
    [{ index: 0, heading: "load" }],
    { name: "table", place: (row) => `row ${row + 1}`, wanted },
  ).flat();

test("a cell that can be read one way only decides for the others", () => {
  // 1,234 alone is a thousand or a little more than one
  expect(read(["1.25", "1,234"])).toEqual(["1.25", "1234"]);
  expect(read(["1,25", "1,234"])).toEqual(["1.25", "1.234"]);
  expect(read(["1,25", "1.234"])).toEqual(["1.25", "1234"]);
  expect(read(["1.25", "1,234"], "ask")).toEqual(["1.25", "1234"]);
});

test("where nothing decides, cells stay, are read as wanted, or it is asked", () => {
  expect(read(["1,234", "7"])).toEqual(["1,234", "7"]);
  expect(read(["1,234", "7"], "comma")).toEqual(["1.234", "7"]);
  expect(read(["1,234", "7"], "point")).toEqual(["1234", "7"]);
  expect(() => read(["7", "1,234"], "ask")).toThrow(
    'row 2, load "1,234" could be 1.234 or 1234: decimal comma or point?',
  );
  expect(read(["7", "8"], "ask")).toEqual(["7", "8"]);
  expect(markOf({}, "table", undefined)).toBeUndefined();
});

test("two that contradict each other, or what is wanted, are an error", () => {
  for (const wanted of [undefined, "comma", "point"] as const)
    expect(() => read(["1,25", "1.25"], wanted)).toThrow(
      '"1,25" has a decimal comma (row 1, load), "1.25" a point (row 2, load)',
    );
  expect(() => read(["1.25"], "comma")).toThrow('row 1, load "1.25" has no decimal comma, which was asked for');
  expect(() => read(["1,25"], "point")).toThrow('row 1, load "1,25" has no decimal point, which was asked for');
  expect(read(["1,25"], "comma")).toEqual(["1.25"]);
});
