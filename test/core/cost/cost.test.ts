import fc from "fast-check";
import { functions } from "../../../src/core";
import { answer } from "../../../src/edge/sheet";
import { seed } from "../../laws/check";
import { host } from "../../support";

const { LANDED, PRICEAT, RUNCOST } = functions;

const first = (f: Parameters<typeof answer>[0], given: unknown[]) => answer(f, given, host)[0]![0];

describe("LANDED", () => {
  test("by hand: 2.40 with 4 % duty, freight 60 over 200, tooling 900 over 5000", () => {
    for (const duty of [0.04, "4 %", "0.04"])
      expect(first(LANDED, [2.4, 200, 900, 5000, 60, duty])).toBeCloseTo(2.496 + 0.3 + 0.18, 12);
  });
  test("a duty typed in per cent is refused, and what to type is said", () => {
    const message = "duty must be from 0 % to 100 %, got 4: type 4 %";
    expect(first(LANDED, [2.4, 200, 900, 5000, 60, 4])).toEqual({ code: "#VALUE!", message });
    expect(answer(LANDED, [[[2.4], [2.4]], 200, null, null, null, [[4], [0.5]]], host)).toEqual([
      [{ code: "#VALUE!", message }],
      [2.4 * 1.5],
    ]);
    expect(() => LANDED({ price: 2.4, quantity: 200, duty: 4 })).toThrow(message);
  });
  test("price alone is the landed cost, whatever the lot", () => {
    expect(first(LANDED, [2.4, 200])).toBe(2.4);
    expect(first(LANDED, [2.4, 1, null, 5000])).toBe(2.4);
  });
  test("blanks that a host hands over as 0 cost nothing", () => {
    expect(first(LANDED, [2.4, 200, 0, 0, 0, 0])).toBe(2.4);
  });
  test("tooling without a volume is an error, never left out", () => {
    const expected = { code: "#VALUE!", message: "volume is missing: tooling of 900 is shared by the pieces planned" };
    expect(first(LANDED, [2.4, 200, 900])).toEqual(expected);
    expect(first(LANDED, [2.4, 200, 900, 0])).toEqual(expected);
  });
  test("freight and duty as text; quantity in thousands", () => {
    expect(first(LANDED, ["1,200.50", "1,000", null, null, "2,000", "8 %"])).toBeCloseTo(1200.5 * 1.08 + 2, 10);
  });
  test("a greater lot never costs more for each piece", () => {
    const amount = fc.double({ min: 0.01, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 1e5 }), amount, (price, quantity, freight) => {
        const cost = LANDED({ price, quantity, freight });
        expect(LANDED({ price, quantity: 2 * quantity, freight })).toBeLessThanOrEqual(cost);
        expect(LANDED({ price, quantity, freight: 2 * freight }) - cost).toBeCloseTo(freight / quantity, 6);
      }),
      { seed },
    );
  });
  test("wrong inputs", () => {
    expect(first(LANDED, [-2, 200])).toEqual({ code: "#VALUE!", message: "price must be above 0, got -2" });
    expect(first(LANDED, [2, null])).toEqual({ code: "#VALUE!", message: "quantity is missing" });
  });
});

describe("RUNCOST", () => {
  test("by hand: (3 + 18 + 40) each 4000 h", () => {
    expect(first(RUNCOST, [3, 4000, 18, 40])).toBeCloseTo(15.25, 12);
    expect(first(RUNCOST, [3, 4000])).toBeCloseTo(0.75, 12);
  });
  test("twice the life, half the cost", () => {
    expect((first(RUNCOST, [3, 4000, 18]) as number) / (first(RUNCOST, [3, 8000, 18]) as number)).toBeCloseTo(2, 12);
  });
  test("without a life there is no cost per hour", () => {
    expect(first(RUNCOST, [3, 0])).toEqual({ code: "#VALUE!", message: "life must be above 0 h, got 0" });
  });
});

describe("PRICEAT", () => {
  const breaks = [
    ["from", "unit price"],
    [1, 4.2],
    [100, 3.1],
    [500, 2.4],
  ];
  test("the greatest break not above the order", () => {
    const orders = [[1], [99], [100], [101], [499], [500], [1e6]];
    expect(answer(PRICEAT, [orders, breaks], host).flat()).toEqual([4.2, 4.2, 3.1, 3.1, 3.1, 2.4, 2.4]);
  });
  test("any order, no heading, blank rows, thousands as text", () => {
    const shuffled = [
      ["1,000", "1,250.50"],
      [null, ""],
      [0, 0],
      [10, 2000],
      ["250", "1.500,75"],
    ];
    expect(answer(PRICEAT, [[[10], [249], [250], [1000]], shuffled], host).flat()).toEqual([
      2000, 2000, 1500.75, 1250.5,
    ]);
  });
  test("the order of the breaks makes no difference", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(breaks.slice(1), { minLength: 3 }),
        fc.integer({ min: 1, max: 2000 }),
        (rows, n) => {
          expect(first(PRICEAT, [n, rows])).toBe(first(PRICEAT, [n, breaks]));
        },
      ),
      { seed },
    );
  });
  test("below the least break no price was quoted", () => {
    expect(
      first(PRICEAT, [
        5,
        [
          [10, 2],
          [100, 1],
        ],
      ]),
    ).toEqual({
      code: "#N/A",
      message: "quantity 5 is below the least price break, 10",
    });
  });
  test("the same break twice: one price is read once, two prices are an error", () => {
    expect(
      first(PRICEAT, [
        10,
        [
          [10, 2],
          [10, 2],
        ],
      ]),
    ).toBe(2);
    expect(
      first(PRICEAT, [
        10,
        [
          [10, 2],
          [10, 3],
        ],
      ]),
    ).toEqual({
      code: "#VALUE!",
      message: "breaks gives two prices for quantity 10: 2 and 3",
    });
  });
  test.each([
    ["breaks is missing", [[null, null]]],
    ["breaks holds no price", [["from", "price"]]],
    ["breaks must be two columns, quantity and price, or three, from, to and price, got 4", [[1, 2, 3, 4]]],
    [
      "breaks row 2, price is missing",
      [
        ["from", "price"],
        [10, null],
      ],
    ],
    ["breaks row 1, price must be above 0, got -2", [[10, -2]]],
    [
      'breaks row 2, quantity must be pieces like "100" or "100-499", got "many"',
      [
        [10, 2],
        ["many", 1],
      ],
    ],
    ["breaks row 1, price must be a number, got TRUE", [[10, true]]],
  ])("%s", (message, table) => {
    expect(first(PRICEAT, [10, table])).toEqual({ code: "#VALUE!", message });
  });
  test("an error in the breaks passes through", () => {
    expect(first(PRICEAT, [10, [[10, "#REF!"]]])).toEqual({ code: "#REF!", message: undefined });
  });
});
