import fc from "fast-check";
import greenhouse from "../../../data/greenhouse/quotes.json";
import { functions } from "../../../src/core";
import { seed } from "../../laws/check";
import { call, message } from "../../support";
import { bare, card, duty, one, rank, speed, table, told } from "./offers";

const { QUOTES } = functions;

/** Hours of a depth at that rate on that work: h/(k·p·v·3600), linear wear. */
const hours = (rate: number, depth: number, pressure = 0.6) => depth / (rate * pressure * speed * 3600);

describe("costs", () => {
  test("landed, order value, life and cost of 1000 h by hand", () => {
    const row = one({
      ...{ price: 20, "price per": 10, "order quantity": 100, tooling: 500, "planned volume": 1000 },
      ...{ "freight per lot": 20, "customs duty [%]": 5 },
    });
    // 2.00 with 5 %, freight 20 over 100, tooling 500 over 1000
    const landed = 2 * 1.05 + 0.2 + 0.5;
    const life = hours(1.5e-6, 0.2);
    expect(row).toMatchObject({
      rank: 1,
      quantity: 100,
      "unit price": 2,
      "order value": 200,
      verdict: "fits, PV 68 %",
    });
    expect(row.landed).toBeCloseTo(landed, 12);
    expect(row["shortest life"]).toBeCloseTo(life, 6);
    expect(row["all in per 1000 h"]).toBeCloseTo(((landed + 58) / life) * 1000, 8);
    expect(row["of it parts"]).toBeCloseTo((landed / life) * 1000, 8);
    // 60 pieces a year of 100 h each are 6000 h
    expect(row["cost a year"]).toBeCloseTo(((landed + 58) / life) * 6000, 6);
  });
  test("labour and downtime turn the order round", () => {
    const offers = table(
      { part: "cheap", grade: "Demo Medlar", price: 0.1 },
      { part: "lasting", grade: "Demo Lovage", price: 2 },
    );
    const order = (fields: Record<string, unknown>) => rank(offers, fields).rows.map((row) => row.part);
    expect(order({ ...duty, labour: 0, downtime: 0 })).toEqual(["cheap", "lasting"]);
    expect(order(duty)).toEqual(["lasting", "cheap"]);
    const { labour: _, downtime: __, ...silent } = duty;
    expect(rank(offers, silent).notes[0]).toMatch(/^the duty states no labour and no downtime/);
  });
  test("each part is judged with its own sizes", () => {
    // a quarter of the length, four times the pressure: PV 270 %
    expect(one({ length: 5 }).verdict).toBe("fails, PV 270 %");
    expect(one({ length: 40 })["shortest life"]).toBeCloseTo(hours(1.5e-6, 0.2, 0.3), 6);
    expect(told({ bore: 20 })).toContain("bore 20 mm, the duty's is 15 mm");
    expect(told({ bore: 15.01 })).not.toContain("the duty's");
    expect(told({}, { ...duty, wall: 2 })).toContain("no wall: the duty's 2 mm taken");
  });
  test("a wall that the outside contradicts is an error of the offer", () => {
    expect(told({ wall: 1.5, outside: 18 })).not.toContain("contradict");
    expect(told({ wall: 1.5, outside: 19 })).toContain(
      "wall and outside contradict each other: 15 + 2 × 1.5 is not 19 mm",
    );
  });
  test("what does not hold says what it would take, to the next tenth", () => {
    // PV of Sorrel at 30 mm/s is 68 % at 20 mm: at 12 mm 113 %, so that 13.6 mm hold
    expect(told({ length: 12 })).toContain("would hold with 13.6 mm length");
    expect(one({ length: 13.6 }).verdict).toMatch(/^fits, PV (99|100)/);
    expect(told({ length: 13.5 })).toContain("would hold with");
  });
  test("a wear allowance at or above the wall, a volume below the order, a lead time beyond three years: errors of the row", () => {
    expect(told({ wall: 1.5, "wear allowance": 3 })).toContain(
      "wear allowance must be below the wall of 1.5 mm, got 3 mm",
    );
    expect(one({ wall: 1.5, "wear allowance": 1.5 }).rank).toBe("not ranked");
    expect(told({ "order quantity": 100, tooling: 5, "planned volume": 99 })).toContain("below the order of 100");
    expect(one({ "order quantity": 100, tooling: 5, "planned volume": 100 }).rank).toBe(1);
    expect(told({ "lead time": "160 weeks" })).toContain("lead time must be at most three years, got 1120 d");
    expect(one({ "lead time": "156 weeks" })).toMatchObject({ rank: 1, "lead time": 1092 });
  });
  test("pieces are whole", () => {
    for (const heading of ["order quantity", "least order", "price per", "planned volume"])
      expect(told({ [heading]: 2.5 })).toContain(`${heading} must be a whole number`);
  });
});

describe("order", () => {
  test("fits, care, no data, fails; inside each by cost, without a life behind by landed cost", () => {
    const rows = rank(
      table(
        { part: "fails", length: 5, price: 0.01 },
        { part: "family", grade: "Bare", price: 0.01 },
        { part: "dear", price: 3 },
        { part: "cheap", price: 1 },
        { part: "care", length: 31 },
        { part: "dear family", grade: "Bare", price: 0.02 },
        { part: "no price", price: null },
      ),
      duty,
      bare,
    ).rows;
    expect(rows.map((row) => row.part)).toEqual([
      "cheap",
      "dear",
      "care",
      "family",
      "dear family",
      "fails",
      "no price",
    ]);
    expect(rows.map((row) => row.rank)).toEqual([1, 2, 3, 4, 5, 6, "not ranked"]);
    expect(rows[3]!["reason or question"]).toMatch(/ranked by landed cost; ask for .*wear rate high of Bare/);
    expect(rows[6]!["reason or question"]).toMatch(/^no price; .*ask for price, wall, lead time$/);
  });
  test("whatever the order of the rows, the same ranking", () => {
    const offers = Array.from({ length: 8 }, (_, i) => ({ part: `p${i}`, price: 1 + i, length: i % 3 ? 20 : 5 }));
    fc.assert(
      fc.property(fc.shuffledSubarray(offers, { minLength: 8 }), (shuffled) => {
        expect(rank(table(...shuffled)).rows.map((row) => row.part)).toEqual([
          "p1",
          "p2",
          "p4",
          "p5",
          "p7",
          "p0",
          "p3",
          "p6",
        ]);
      }),
      { seed, numRuns: 50 },
    );
  });
  test("equal costs share a rank in the table's order", () => {
    const rows = rank(table({ part: "z" }, { part: "y" }, { part: "dear", price: 3 }, { part: "x" })).rows;
    expect(rows.map((row) => [row.rank, row.part])).toEqual([
      [1, "z"],
      [1, "y"],
      [1, "x"],
      [4, "dear"],
    ]);
    expect(String(rows[0]!["reason or question"])).toContain("equal cost");
    expect(String(rows[3]!["reason or question"])).not.toContain("equal cost");
  });
  test("a quote may name its own duty", () => {
    const duties = [
      ["duty", "load", "bore", "length", "rpm", "temperature"],
      ["slow", 180, 15, 20, 12, 20],
      ["fast", 180, 15, 20, 1200, 20],
    ];
    const of = (heading: string) => {
      const cells = table({ [heading]: "fast" }, { [heading]: "SLOW" }, {}, { [heading]: "other" });
      const [, ...rows] = call(QUOTES, [cells, duties, "slow"]);
      return rows.map((row) => [row[4], String(row[17]).split(",")[0]]);
    };
    for (const heading of ["for duty", "duty"])
      expect(of(heading).slice(0, 4)).toEqual([
        ["slow", "fits"],
        ["slow", "fits"],
        ["fast", "fails"],
        ["other", "cannot be judged"],
      ]);
  });
  test("no order quantity: the least order, else the least with a price, said", () => {
    expect(told({ "least order": 50 })).toContain("no order quantity: 50 taken");
    expect(told({ "price from 10": 3, price: null })).toContain("no order quantity: 10 taken");
    expect(told({})).toContain("no order quantity: 1 taken");
    expect(told({ "order quantity": 10, "least order": 50 })).toContain("the least order of 50 is bought, not 10");
  });
});

describe("price breaks", () => {
  const price = (offer: Record<string, unknown>) => one({ price: null, ...offer })["unit price"];
  test("in headings, with the currency there", () => {
    const breaks = { "price from 1 [EUR]": 4, "price from 100 [EUR]": 3, "price from 500": "2 EUR" };
    expect([1, 99, 100, 499, 500].map((n) => price({ ...breaks, "order quantity": n }))).toEqual([4, 4, 3, 3, 2]);
  });
  test("in rows: from, from and to, and cells such as 100-499", () => {
    const inRows = (heading: string, cells: unknown[], to?: unknown[]) =>
      rank(
        table(
          ...[4, 3, 2].map((price, i) => ({
            price,
            [heading]: cells[i],
            ...(to ? { to: to[i] } : {}),
            "least order": 200,
          })),
        ),
      ).rows;
    for (const rows of [
      inRows("from quantity", [1, 100, 500]),
      inRows("from", [1, 100, 500], [99, 499, null]),
      inRows("quantity", ["1-99", "100-499", "500+"]),
      inRows("qty", ["1 to 99", "100 bis 499", "from 500"]),
    ])
      expect(rows.map((row) => row["unit price"])).toEqual([3]);
    expect(told({ from: 100, to: 499, "least order": 600 })).toContain("no price for 600 pieces");
  });
  test("two prices for one quantity are an error of the offer", () => {
    expect(told({ "price from 1": 3 })).toContain("gives two prices for quantity 1");
  });
});

describe("money", () => {
  const rates = [
    ["currency", "rate [EUR]", "date"],
    ["USD", 0.9, 46357],
  ];
  test.each([["EUR 1,250.50"], ["1.250,50 EUR"], ["eur1250.5"], ["€ 1250.50"], ["1250,50 €/pc"]])("%s", (price) => {
    expect(one({ price })).toMatchObject({ "unit price": 1250.5, currency: "EUR" });
  });
  test("a dollar is the heading's where that names one, else it is asked for", () => {
    expect(told({ price: "$0.60" })).toContain('price "$": which dollar?');
    expect(one({ price: undefined, "price [EUR]": "$0.60" }).rank).toBe("not ranked");
    expect(
      rank([
        ["grade", "bore", "length", "price [CAD]"],
        ["Demo Sorrel", 15, 20, "$0.60"],
      ]).rows[0],
    ).toMatchObject({
      currency: "CAD",
      "unit price": 0.6,
    });
    expect(told({ price: "¥60" })).toContain("Type JPY or CNY");
    expect(one({ price: "US$ 0.60" })).toMatchObject({ currency: "USD", rank: 1 });
  });
  test("another currency is converted by rates alone, a cell's own before the heading's", () => {
    const cells = [
      ["part", "grade", "bore", "length", "price [EUR]"],
      ["a", "Demo Sorrel", 15, 20, 2],
      ["b", "Demo Sorrel", 15, 20, "USD 2"],
    ];
    const [first, second] = rank(cells).rows;
    expect(first).toMatchObject({ part: "a", rank: 1, currency: "EUR" });
    expect(second).toMatchObject({ part: "b", rank: "not ranked" });
    expect(second!["reason or question"]).toContain("amount in USD, the others in EUR: rates of both are wanted");
    const converted = rank(cells, duty, null, rates);
    expect(converted.rows.map((row) => [row.part, row["unit price"]])).toEqual([
      ["b", 1.8],
      ["a", 2],
    ]);
    // 46 357 days after 30 December 1899
    expect(converted.notes).toContain("USD at 0.9 EUR of 2026-12-01");
  });
  test("the day of a rate is told as a date, on either side of every leap day from 2000 to 2099", () => {
    const cells = [
      ["part", "grade", "bore", "length", "price [EUR]"],
      ["a", "Demo Sorrel", 15, 20, "USD 2"],
    ];
    // another calendar: that of the language, whose day 0 is 1 January 1970, 25 569 days after a sheet's
    const days = Array.from({ length: 100 }, (_, i) => 2000 + i).flatMap((year) =>
      [59, 60, 61, 366].map((day) => Date.UTC(year, 0, day) / 86_400_000 + 25_569),
    );
    for (const day of days.filter((each) => each < 73_051)) {
      const { notes } = rank(cells, duty, null, [
        ["currency", "rate [EUR]", "date"],
        ["USD", 0.9, day],
      ]);
      const date = new Date((day - 25_569) * 86_400_000).toISOString().slice(0, 10);
      expect(notes).toContain(`USD at 0.9 EUR of ${date}`);
    }
  });
  test("a table of rates that contradicts itself", () => {
    const rank2 = (rows: unknown[][]) => message(call(QUOTES, [table({}), card(duty), null, null, rows]));
    expect(
      rank2([
        ["currency", "rate"],
        ["USD", 1],
        ["USD", 2],
      ]),
    ).toContain("two rates for USD");
    expect(
      rank2([
        ["currency", "rate [EUR]"],
        ["EUR", 2],
      ]),
    ).toContain("the rate of EUR in EUR must be 1");
    expect(
      rank2([
        ["currency", "rate"],
        ["money", 2],
      ]),
    ).toContain("ISO 4217");
  });
  test("4.5 % under a percentage's heading is 4.5 %, a plain number needs % or ratio", () => {
    for (const heading of ["duty %", "duty [%]", "Duty (%)", "import duty [%]", "customs duty %"])
      for (const cell of [4.5, "4.5", "4.5 %", "4,5 %", "4,5"])
        expect([heading, cell, one({ [heading]: cell }).landed]).toEqual([heading, cell, expect.closeTo(2.09, 12)]);
    expect(one({ "customs duty [ratio]": 0.045 }).landed).toBeCloseTo(2.09, 12);
    expect(told({ "customs duty": 4.5 })).toContain("could be % or a ratio");
    expect(told({ "duty %": 0.04 })).toContain("customs duty is 0.04 %: 4 % is written as 4");
  });
});

describe("lead time", () => {
  test.each<[unknown, unknown]>([
    ...([
      ["4-6 weeks", 42],
      ["4 to 6 wks", 42],
      ["ca. 3 Wochen", 21],
      ["ex stock", 0],
      ["10 working days", 14],
    ] as [string, number][]),
    ...([
      [21, 21],
      ["21", 21],
      ["2 months", 730 / 12],
      ["3 semaines", 21],
      ["6 weeks ARO", 42],
    ] as [unknown, number][]),
  ])("%s is %p d", (cell, days) => expect(one({ "lead time": cell })["lead time"]).toBeCloseTo(days as number, 9));
  test("in the heading's unit", () => expect(one({ "lead time [weeks]": "4-6" })["lead time"]).toBe(42));
  test.each(["2026-12-01", "01.12.2026", 46357])("%s is a date, which costs nothing else", (cell) => {
    expect(one({ "lead time": cell })).toMatchObject({ rank: 1, "lead time": "" });
    expect(told({ "lead time": cell })).toContain("is a date: type the time from the order");
  });
  test("an unreadable one is a note and costs nothing else", () => {
    expect(one({ "lead time": "on request" })).toMatchObject({ rank: 1, "lead time": "" });
    expect(told({ "lead time": "soon" })).toContain(
      'lead time must be a time like "3 weeks" or "ex stock", got "soon"',
    );
  });
});

describe("cells and the table", () => {
  test("an error that came in stays in its row", () => {
    const { rows } = rank(table({ part: "a", bore: "#REF!" }, { part: "b" }));
    expect(rows.map((row) => [row.rank, row.part])).toEqual([
      [1, "b"],
      ["not ranked", "a"],
    ]);
    expect(rows[1]).toMatchObject({ bore: { code: "#REF!" }, verdict: "cannot be judged" });
  });
  test("an unknown grade has no data, is ranked by its price and asked for", () => {
    const row = one({ grade: "Demo Sorrle" });
    expect(row).toMatchObject({ rank: 1, verdict: "no data, grade" });
    expect(row["reason or question"]).toContain('grade "Demo Sorrle" is unknown; nearest: Demo Sorrel');
  });
  test("a missing size is no data, never the duty's", () => {
    expect(one({ length: null })).toMatchObject({ verdict: "no data, length" });
    expect(told({ length: "tbd" })).toContain("ask for length");
  });
  test("sizes and units come out in the sheet's system", () => {
    const row = one({ bore: "0.591 in", length: "2 cm", wall: "1/16 in" });
    expect([row.bore, row.length, row.wall]).toEqual([0.591 * 25.4, 20, 25.4 / 16]);
    const [heading, line] = call(
      QUOTES,
      [
        table({}),
        card(duty).map(([k, v]) => [
          k === "load"
            ? "load [N]"
            : k === "temperature"
              ? "temperature [°C]"
              : k === "wear allowance"
                ? "wear allowance [mm]"
                : k === "bore" || k === "length"
                  ? `${String(k)} [mm]`
                  : k,
          v,
        ]),
        null,
      ],
      "inch",
    );
    expect(heading).toContain("bore [in]");
    expect(line![5]).toBe(15);
  });
  test("spare rows, unknown columns, the standing caution", () => {
    const cells = table({ colour: "red" }, { part: "b" });
    const { rows, notes } = rank([cells[0]!.map(() => null), cells[0]!, cells[0]!.map(() => 0), ...cells.slice(1)]);
    expect(rows).toHaveLength(2);
    expect(notes[0]).toBe("columns not read: colour");
    expect(notes.at(-1)).toMatch(/^preliminary/);
  });
  test.each<[string, unknown[][]]>([
    ['quotes has no column "grade" or "price"', [["part"], ["a"]]],
    [
      "quotes holds no row below its headings",
      [
        ["grade", "price"],
        [0, 0],
      ],
    ],
    ['quotes has two columns for "bore" (one is "bore")', table({ "Bore [in]": 1 })],
    [
      'unit of price must be a currency by its ISO 4217 code, such as EUR, got "EUR/100"',
      [
        ["grade", "price [EUR/100]"],
        ["a", 1],
      ],
    ],
    ["quotes has 501 headings, at most 500 are read", [Array.from({ length: 501 }, (_, i) => `c${i}`), ["a"]]],
  ])("%s", (text, cells) => {
    expect(message(call(QUOTES, [cells, card(duty), null]))).toBe(text);
  });
  test("own grades are found first; a wear rate of a flat test tells no life without a clearance", () => {
    const own = (from: string) => [
      [
        "grade",
        "running pressure limit",
        "speed limit turning",
        "PV limit",
        "lowest temperature",
        "highest temperature",
        "wear rate high",
        "wear rate from",
      ],
      ["House blend", 20, 1, 0.2, -20, 80, 1e-6, from],
    ];
    expect(one({ grade: "house blend" }, duty, own("bush"))["shortest life"]).toBeCloseTo(hours(1e-6, 0.2), 6);
    expect(one({ grade: "house blend" }, duty, own("flat")).verdict).toMatch(/^no data, wear life/);
  });
});

test("the greenhouse's offers: one grade unknown, one price missing, a dear piece before a cheap one", () => {
  expect(greenhouse.source).toMatch(/^invented/);
  const { rows } = rank(greenhouse.rows);
  expect(rows).toHaveLength(10);
  expect(rows.filter((row) => row.rank === "not ranked").map((row) => row.part)).toEqual(["B-0591-F"]);
  expect(rows[0]!.landed).toBeGreaterThan(rows[2]!.landed as number);
});
