import { functions } from "../../../src/core";
import { call, CellError, message } from "../../support";

const heading = ["part", "supplier", "grade", "bore", "length", "price", "life allowance"];
const good = ["A", "S", "Demo Sorrel", 20, 15, 2, 0.3];
const at = (name: string) => heading.indexOf(name);

/** Notes and rank of one quote in which one column has that value; further columns stand at the end. */
function quoteWith(columns: Record<string, unknown>): { rank: unknown; notes: string; row: unknown[] } {
  const added = Object.keys(columns).filter((name) => at(name) < 0);
  const row = [
    ...good.map((value, i) => (heading[i]! in columns ? columns[heading[i]!] : value)),
    ...added.map((name) => columns[name]),
  ];
  const answer = call(functions.QUOTES, [[[...heading, ...added], row], 0.5, 0.1, 20])[1]!;
  return { rank: answer[0], notes: String(answer.at(-1)), row: answer };
}

describe("columns of a quote table", () => {
  test.each(["bore", "length", "price", "life allowance", "wall", "price per", "order quantity", "planned volume"])(
    "%s: above zero, a little counts, a zero is a blank",
    (name) => {
      expect(quoteWith({ [name]: -0.5 }).notes).toContain(`${name} must be above 0`);
      expect(quoteWith({ [name]: 0.5 }).notes).not.toContain(`${name} must be`);
      expect(quoteWith({ [name]: 0 }).notes).not.toContain(`${name} must be`);
      expect(quoteWith({ [name]: 0 }).notes).toBe(quoteWith({ [name]: null }).notes);
    },
  );
  test("a duty: from nothing to all of the price", () => {
    for (const duty of [-0.5, 101]) expect(quoteWith({ "duty %": duty }).notes).toContain("duty must be from 0 %");
    for (const duty of [0, 0.5, 100]) expect(quoteWith({ "duty %": duty }).rank).toBe(1);
  });
  test.each(["least order", "tooling", "freight per lot", "lead time"])("%s: zero or more", (name) => {
    const more = { "order quantity": 10, "planned volume": 10 };
    expect(quoteWith({ ...more, [name]: -0.5 }).notes).toContain(`${name} must be 0`);
    for (const value of [0, 0.5]) expect(quoteWith({ ...more, [name]: value }).rank).toBe(1);
  });
  test("a lead time of zero is shown as one", () => expect(quoteWith({ "lead time": 0 }).row[13]).toBe(0));
  test("a blank grade is no data, and the other rows stay", () => {
    const { rank, notes, row } = quoteWith({ grade: null });
    expect([rank, notes, row[14]]).toEqual(["not ranked", "no data, grade", "no data, grade"]);
  });
  test("any tooling needs the volume that shares it, any freight the lot", () => {
    expect(quoteWith({ tooling: 0.5 }).notes).toContain("no data, planned volume");
    expect(quoteWith({ "freight per lot": 0.5 }).notes).toContain("no data, order quantity");
    expect(quoteWith({ tooling: 0, "freight per lot": 0 }).rank).toBe(1);
  });
  test("a duty between 0 and 0.3 % is probably a ratio", () => {
    const remarkOn = (duty: number) => quoteWith({ "duty %": duty }).notes.includes("is written as");
    expect([0, 0.04, 0.299, 0.3, 1, 4].map(remarkOn)).toEqual([false, true, true, false, false, false]);
  });
  test("prices beyond all numbers, either way, are out of range", () => {
    for (const [price, per] of [
      [1e308, 1e-10],
      [5e-324, 1e9],
    ] as const)
      expect(quoteWith({ price, "price per": per }).notes).toContain("price: out of range");
  });
  test("one currency label, before or behind", () => {
    for (const price of ["EUR 5", "5 EUR", "€5", "5 €"]) expect(quoteWith({ price }).rank).toBe(1);
    for (const price of ["EUR 5 USD", "5 dollars", "EUR", "5 5"])
      expect(quoteWith({ price }).notes).toContain("price must be an amount");
  });
});

describe("headings of a quote table", () => {
  const rank = (headings: unknown[], row: unknown[]) => call(functions.QUOTES, [[headings, row], 0.5, 0.1, 20]);
  test("a cell error in a heading goes through, a filled column without a heading is named", () => {
    expect((rank([...heading, "#REF!"], [...good, 1])[0]![0] as CellError).code).toBe("#REF!");
    const notes = rank([...heading, null], [...good, 1]).map((line) => line.at(-1));
    expect(notes.filter((note) => String(note).startsWith("columns not read"))).toEqual(["columns not read: column 8"]);
  });
  test("units of counts and words say nothing, others must fit their column", () => {
    const renamed = (name: string, to: string) => heading.map((h) => (h === name ? to : h));
    expect(rank([...renamed("grade", "grade [trade]"), "order quantity [pcs]"], [...good, 10])[1]![0]).toBe(1);
    expect(rank([...heading, "order quantity [pieces]"], [...good, 10])[1]![0]).toBe(1);
    expect(message(rank([...heading, "order quantity [mm]"], [...good, 10]))).toContain("unit of order quantity");
    expect(message(rank(renamed("bore", "bore [psi]"), good))).toContain("unit of bore");
    expect(rank(renamed("bore", "bore [in]"), [...good.slice(0, 3), 0.5, ...good.slice(4)])[1]![4]).toBeCloseTo(
      12.7,
      12,
    );
    expect(message(rank(renamed("price", "price [dollars]"), good))).toContain("a currency label");
  });
});

describe("the whole table", () => {
  const table = (...rows: unknown[][]) => call(functions.QUOTES, [[heading, ...rows], 0.5, 0.1, 20]).slice(1);
  const priced = (part: string, price: unknown) => [part, ...good.slice(1, 5), price, 0.3];
  const ranks = (...prices: unknown[]) =>
    table(...prices.map((price, i) => priced(String(i), price))).map((row) => row[0]);
  test("equal costs share a rank, the next counts on; a difference of a millionth is one", () => {
    expect(ranks(2, 2, 3).slice(0, 3)).toEqual([1, 1, 3]);
    expect(ranks(2, 2 * (1 + 5e-10), 2 * (1 + 1e-6)).slice(0, 3)).toEqual([1, 1, 3]);
    const remarks = table(priced("a", 2), priced("b", 2), priced("c", 3)).map((row) => String(row.at(-1)));
    expect(remarks.slice(0, 3).map((text) => text.includes("equal cost"))).toEqual([true, true, false]);
    const later = table(priced("a", 1), priced("b", 2), priced("c", 2)).map((row) => String(row.at(-1)));
    expect(later.slice(0, 3).map((text) => text.includes("equal cost"))).toEqual([false, true, true]);
  });
  test("the most frequent currency counts, the first of equals", () => {
    const kept = (...prices: string[]) =>
      table(...prices.map((price, i) => priced(String(i), price)))
        .filter((row) => typeof row[0] === "number")
        .map((row) => row[1]);
    expect(kept("EUR 2", "USD 3", "USD 4")).toEqual(["1", "2"]);
    expect(kept("EUR 2", "USD 3")).toEqual(["0"]);
    expect(kept("USD 2", "EUR 3", "eur 4", "USD 5")).toEqual(["0", "3"]);
  });
  test("sizes a hundredth apart are one size, more are told; one without a size is no size", () => {
    const noted = (...bores: unknown[]) =>
      table(...bores.map((bore) => [...good.slice(0, 3), bore, ...good.slice(4)])).some((row) =>
        String(row.at(-1)).includes("bores differ"),
      );
    expect([noted(20, 20.19), noted(20, 20.21), noted(20.21, 20), noted(20, null), noted(null, 20)]).toEqual([
      false,
      true,
      true,
      false,
      false,
    ]);
    expect([noted(20, 25, null), noted(null, 20, 25), noted(0.5, 0.5)]).toEqual([true, true, false]);
  });
  test("one column not read is told like several", () => {
    const notes = call(functions.QUOTES, [
      [
        [...heading, "colour"],
        [...good, "red"],
      ],
      0.5,
      0.1,
      20,
    ]).map((row) => row.at(-1));
    expect(notes).toContain("columns not read: colour");
  });
  test("one column that lacks is told like several", () => {
    const without = (row: unknown[]) => row.filter((_, i) => i !== at("price"));
    const [[error]] = call(functions.QUOTES, [[without(heading), without(good)], 0.5, 0.1, 20]) as [[CellError]];
    expect(error.message).toBe('quotes has no column "price"');
  });
  test("a row of blanks and zeros is spare, a table of them holds no row", () => {
    expect(table(good, [null, 0, null, 0, null, null, null], good).filter((row) => row[0] === 1)).toHaveLength(2);
    expect(
      (call(functions.QUOTES, [[heading, [0, 0, 0, 0, 0, 0, 0]], 0.5, 0.1, 20])[0]![0] as CellError).message,
    ).toContain("no row below");
  });
});

test("LANDED: tooling of any size needs its volume", () => {
  expect(() => functions.LANDED({ price: 1, quantity: 1, tooling: 0.5 })).toThrow("volume is missing");
  expect(functions.LANDED({ price: 1, quantity: 1, tooling: 0 })).toBe(1);
  expect(functions.LANDED({ price: 1, quantity: 1, volume: 0 })).toBe(1);
});

describe("PRICEAT", () => {
  const of = (quantity: number, breaks: unknown[][]) => call(functions.PRICEAT, [quantity, breaks])[0]![0];
  test("one break alone, and a break from zero", () => {
    expect(of(5, [[1, 4.2]])).toBe(4.2);
    expect(of(0.5, [[0, 5]])).toBe(5);
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
  test("three columns are none, nor is a table of blanks", () => {
    expect((of(5, [[1, 4, 2]]) as CellError).message).toContain("two columns");
    expect((of(5, [["from", "price"]]) as CellError).message).toContain("holds no price");
  });
});
