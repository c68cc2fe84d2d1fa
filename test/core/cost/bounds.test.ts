import { functions } from "../../../src/core";
import { call, CellError } from "../../support";

const { LANDED, PRICEAT } = functions;

test("LANDED: tooling of any size needs its volume", () => {
  expect(() => LANDED({ price: 1, quantity: 1, tooling: 0.5 })).toThrow("volume is missing");
  expect(LANDED({ price: 1, quantity: 1, tooling: 0 })).toBe(1);
  expect(LANDED({ price: 1, quantity: 1, volume: 0 })).toBe(1);
});

test("LANDED: amounts name one currency or none, pieces are whole, in a range as in a cell", () => {
  const of = (...given: unknown[]) =>
    call(LANDED, given).map(([cell]) => (cell instanceof CellError ? cell.message : cell));
  // 2.40 and 60 of freight over 200
  expect(of("EUR 2.40", 200, null, null, "60 €")).toEqual([expect.closeTo(2.7, 12)]);
  expect(of("EUR 2.40", 200, null, null, 60)).toEqual([expect.closeTo(2.7, 12)]);
  const mixed = "price: amounts in EUR and in USD are never added up";
  expect(of("EUR 2.40", 200, null, null, "USD 60")).toEqual([mixed]);
  expect(of([["EUR 2.40"], ["USD 2.40"]], 200, null, null, "USD 60")).toEqual([mixed, expect.closeTo(2.7, 12)]);
  expect(of([[2.4], [2.4]], 200, "EUR 900", 5000, "USD 60")[0]).toContain("never added up");
  expect(of([[2.4], [2.4]], [[200], [0.04]])).toEqual([2.4, "quantity must be a whole number and above 0, got 0.04"]);
  expect(of(2.4, 200, 900, 0.04)).toEqual(["volume must be a whole number and 0 or more, got 0.04"]);
});

describe("PRICEAT", () => {
  const of = (quantity: number, breaks: unknown[][]) => call(PRICEAT, [quantity, breaks])[0]![0];
  test("one break alone, and a break from zero", () => {
    expect(of(5, [[1, 4.2]])).toBe(4.2);
    expect(of(1, [[0, 5]])).toBe(5);
    expect((of(0.5, [[0, 5]]) as CellError).message).toContain("quantity must be a whole number");
    expect(of(1, [[1, 4.2]])).toBe(4.2);
    expect(of(1, [[1, 0.5]])).toBe(0.5);
  });
  test("a heading is words alone, in the first row alone", () => {
    expect(
      (
        of(5, [
          ["from", 3],
          [1, 4],
        ]) as CellError
      ).message,
    ).toContain("breaks row 1, quantity");
    expect(
      (
        of(5, [
          [1, 4],
          ["from", "price"],
        ]) as CellError
      ).message,
    ).toContain("breaks row 2, quantity");
    expect(
      of(5, [
        [null, "price"],
        [1, 4],
      ]),
    ).toBe(4);
  });
  test("the same break twice is one, at two prices an error", () => {
    expect(
      of(5, [
        [1, 4],
        [1, 4],
      ]),
    ).toBe(4);
    expect(
      (
        of(5, [
          [1, 4],
          [1, 3],
        ]) as CellError
      ).message,
    ).toContain("two prices for quantity 1");
  });
  test("from, to and price; cells such as 100-499; beyond the last no price was quoted", () => {
    const three = [
      ["from", "to", "price"],
      [1, 99, 4],
      [100, 499, 3],
    ];
    const spans = [
      ["1-99", "EUR 4"],
      ["100 to 499", "3 €"],
    ];
    for (const breaks of [three, spans]) {
      expect([1, 99, 100, 499].map((quantity) => of(quantity, breaks))).toEqual([4, 4, 3, 3]);
      expect((of(500, breaks) as CellError).message).toBe("no price break holds for quantity 500");
    }
    expect((of(5, [["499-100", 3]]) as CellError).message).toContain("lower end first");
    expect(
      (
        of(5, [
          ["1", "EUR 4"],
          ["9", "USD 4"],
        ]) as CellError
      ).message,
    ).toContain("never added up");
  });
  test("a break may be one piece wide; an end below its beginning, a span in two cells, a price without pieces are none", () => {
    const narrow = [
      [1, 1, 4],
      [2, 99, 3],
    ];
    expect([of(1, narrow), of(2, narrow)]).toEqual([4, 3]);
    for (const row of [
      [9, 8, 4],
      ["1-9", 99, 4],
      [1, "9-99", 4],
    ])
      expect((of(5, [row]) as CellError).message).toContain("to must be a number of pieces not below that in front");
    expect(of(500, [[1, null, 4]])).toBe(4);
    const open = [
      [null, 4],
      [1, 3],
    ];
    expect((of(5, open) as CellError).message).toBe("breaks row 1, quantity is missing");
  });
  test("a price without a currency goes with any", () => {
    const breaks = [
      ["1", "EUR 4"],
      ["9", "3"],
      ["20", "EUR 2"],
    ];
    expect([1, 9, 20].map((quantity) => of(quantity, breaks))).toEqual([4, 3, 2]);
  });
  test("four columns are none, nor is a table of blanks", () => {
    expect((of(5, [[1, 4, 2, 3]]) as CellError).message).toContain("two columns");
    expect((of(5, [["from", "price"]]) as CellError).message).toContain("holds no price");
  });
});
