import fc from "fast-check";
import greenhouse from "../../../data/greenhouse/quotes.json";
import { functions } from "../../../src/core";
import { answer } from "../../../src/edge/sheet";
import { seed } from "../../laws/check";

type Rows = readonly (readonly unknown[])[];
const host = { error: (code: string, message?: string) => ({ code, message }) };

/** The answer's rows as objects under the headings' names; their units are kept apart. */
function rank(rows: Rows, duty: readonly unknown[] = [0.6, 0.1, "5 to 45"]) {
  const [heading, ...lines] = answer(functions.QUOTES, [rows, ...duty], host) as [string[], ...unknown[][]];
  const names = heading.map((text) => text.replace(/ \[.*\]$/, ""));
  const all = lines.map((line) => Object.fromEntries(names.map((name, i) => [name, line[i]])));
  return {
    heading,
    ranked: all.filter((row) => typeof row.rank === "number"),
    rest: all.filter((row) => row.rank === "not ranked"),
    notes: all.filter((row) => row.rank === "note").map((row) => row.notes as string),
  };
}
const fault = (rows: unknown, duty: readonly unknown[] = [0.6, 0.1, 20]) =>
  answer(functions.QUOTES, [rows, ...duty], host)[0]![0];

const heading = ["part", "supplier", "grade", "bore", "length", "price", "order quantity", "life allowance"];
const quote = (part: string, grade = "Demo Sorrel", price: unknown = 2, allowance: unknown = 0.2) =>
  [part, "Supplier A", grade, 15, 20, price, 100, allowance] as unknown[];
/** One quote with further columns. */
const withColumns = (columns: Record<string, unknown>) =>
  rank([
    [...heading, ...Object.keys(columns)],
    [...quote("a"), ...Object.values(columns)],
  ]);
const one = (columns: Record<string, unknown>) => {
  const { ranked, rest } = withColumns(columns);
  return [...ranked, ...rest][0]!;
};

describe("ranking", () => {
  test("cost per 1000 h is the landed cost over the life by the grade's high wear rate", () => {
    const row = one({ "price per": 10, tooling: 500, "planned volume": 1000, "freight per lot": 20, "duty %": 5 });
    const landed = functions.LANDED({ price: 0.2, quantity: 100, tooling: 500, volume: 1000, freight: 20, duty: 0.05 });
    const life = functions.LIFE({ wearrate: 1.5e-6, pressure: 0.6, speed: 0.1, allowance: 0.2 });
    expect(row).toMatchObject({ rank: 1, lot: 100, "unit price": 0.2, "landed cost": landed, "shortest life": life });
    expect(row["parts per 1000 h"]).toBe(functions.RUNCOST({ landed, life }));
  });

  test("cheapest to run first, not cheapest to buy", () => {
    const { ranked } = rank([heading, quote("cheap", "Demo Medlar", 1), quote("lasting", "Demo Lovage", 1.5)]);
    expect(ranked.map((row) => row.part)).toEqual(["lasting", "cheap"]);
  });

  test("whatever the order of the rows, the same ranking; every row is in the answer", () => {
    const rows = Array.from({ length: 8 }, (_, i) => quote(`part ${i}`, i % 3 ? "Demo Sorrel" : "unheard of", 1 + i));
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: 8 }), (shuffled) => {
        const { ranked, rest } = rank([heading, ...shuffled]);
        expect(ranked.map((row) => row.part)).toEqual(["part 1", "part 2", "part 4", "part 5", "part 7"]);
        expect(rest.map((row) => row.part)).toEqual(
          shuffled.map((row) => row[0]).filter((p) => /[036]/.test(p as string)),
        );
      }),
      { seed },
    );
  });

  test("equal cost: one rank, the table's order, and said", () => {
    const { ranked } = rank([heading, quote("z"), quote("y"), quote("dear", "Demo Sorrel", 3), quote("x")]);
    expect(ranked.map((row) => [row.rank, row.part])).toEqual([
      [1, "z"],
      [1, "y"],
      [1, "x"],
      [4, "dear"],
    ]);
    expect(ranked.map((row) => row.notes)).toEqual([...Array<string>(3).fill("equal cost: in the table's order"), ""]);
  });

  test("500 rows, one answer for each", () => {
    const rows = Array.from({ length: 500 }, (_, i) =>
      quote(`p${i}`, i % 7 ? "Demo Sorrel" : `unknown ${i}`, 1 + i / 100),
    );
    const { ranked, rest } = rank([heading, ...rows]);
    expect([ranked.length, rest.length]).toEqual([428, 72]);
    const costs = ranked.map((row) => row["parts per 1000 h"] as number);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });
});

describe("what keeps a part out of the ranking is said, and the part stays in the answer", () => {
  const reasonOf = (row: unknown[], duty?: unknown[]) => rank([heading, row], duty).rest[0]!;
  test("an unknown grade, with the nearest name", () => {
    const row = reasonOf(quote("a", "Demo Sorel"));
    expect(row).toMatchObject({ grade: "Demo Sorel", verdict: "no data, grade", "shortest life": "" });
    expect(row.notes).toBe('grade "Demo Sorel" is unknown; nearest: Demo Sorrel');
  });
  test("a part that does not fit shows its verdict, and no life by a law beyond its limits", () => {
    const row = reasonOf(quote("a"), [0.6, 5, "5 to 45"]);
    expect(row.verdict).toMatch(/^fails, PV \d+ %$/);
    expect(row).toMatchObject({ "landed cost": 2, "shortest life": "", "parts per 1000 h": "" });
  });
  test("a grade whose data do not tell", () => {
    const row = reasonOf(quote("a", "PEEK"));
    expect(row.verdict).toMatch(/^no data, /);
    expect(row.notes).toBe("no data, wear rate high");
  });
  test.each([null, "", "-", "n/a", 0])("no price: %p", (price) => {
    expect(reasonOf(quote("a", "Demo Sorrel", price))).toMatchObject({ "unit price": "", notes: "no price" });
  });
  test("no life allowance is no guess", () => {
    expect(reasonOf(quote("a", "Demo Sorrel", 2, null)).notes).toBe("no data, life allowance");
    const without = heading.slice(0, 7);
    expect(rank([without, quote("a").slice(0, 7)]).rest[0]!.notes).toBe("no data, life allowance");
  });
  test("nothing wears at rest", () => {
    const expected = "nothing wears in this duty: no cost per running hour";
    expect(reasonOf(quote("a"), [0.6, 0.1, 20, "static"]).notes).toBe(expected);
    expect(reasonOf(quote("a"), [0.6, 0, 20]).notes).toBe(expected);
  });
  test("freight or tooling that cannot be shared out", () => {
    const bare = [
      "part",
      "supplier",
      "grade",
      "bore",
      "length",
      "price",
      "life allowance",
      "freight per lot",
      "tooling",
    ];
    const row = ["a", "Supplier A", "Demo Sorrel", 15, 20, 2, 0.2];
    expect(rank([bare, [...row, 60, null]]).rest[0]).toMatchObject({
      "landed cost": "",
      notes: "no data, order quantity",
    });
    expect(rank([bare, [...row, 0, 900]]).rest[0]).toMatchObject({
      "landed cost": "",
      notes: "no data, planned volume",
    });
    expect(rank([bare, [...row, null, null]]).ranked[0]).toMatchObject({ lot: "", "landed cost": 2 });
  });
  test("several reasons stand side by side", () => {
    expect(reasonOf(quote("a", "Demo Sorrel", null, null)).notes).toBe("no price; no data, life allowance");
  });
});

describe("cells that cannot be read stay in their row", () => {
  test("an error that came in goes out in its place", () => {
    const row = quote("a");
    row[3] = "#REF!";
    const { ranked, rest } = rank([heading, row, quote("b")]);
    expect(rest[0]).toMatchObject({ bore: { code: "#REF!" }, notes: "bore holds #REF!" });
    expect(ranked.map((r) => r.part)).toEqual(["b"]);
  });
  test("a wrong cell becomes an error with its message", () => {
    const row = quote("a");
    row[4] = -5;
    expect(rank([heading, row]).rest[0]).toMatchObject({
      length: { code: "#VALUE!", message: "length must be above 0 mm, got -5" },
      notes: "length must be above 0 mm, got -5",
    });
    row[4] = true;
    expect(rank([heading, row]).rest[0]!.notes).toBe("length must be a number, got TRUE");
  });
  test("a price in words", () => {
    expect(rank([heading, quote("a", "Demo Sorrel", "on request")]).rest[0]!.notes).toBe(
      'price must be an amount with at most a currency label, got "on request"',
    );
  });
  test("a fault in what makes the landed cost", () => {
    expect(one({ "duty %": "high" })).toMatchObject({ rank: "not ranked", "landed cost": { code: "#VALUE!" } });
  });
});

describe("units, order quantity, money", () => {
  test("headings and cells in any unit come out in the sheet's", () => {
    const mixed = [
      "part",
      "supplier",
      "grade",
      "Bore [in]",
      "LENGTH (cm)",
      "price",
      "life-allowance [µm]",
      "lead time",
    ];
    const row = ["a", "Supplier A", "Demo Sorrel", 0.75, "0.5 in", 2, 200, "3 weeks"];
    const metric = rank([mixed, row]);
    expect(metric.heading).toContain("bore [mm]");
    expect(metric.ranked[0]).toMatchObject({
      bore: expect.closeTo(19.05, 10) as number,
      length: expect.closeTo(12.7, 10) as number,
      "lead time": expect.closeTo(21, 10) as number,
    });
    const inch = rank([mixed, row], ["0.6 MPa", "0.1 m/s", "5 to 45 °C", null, null, "inch"]);
    expect(inch.heading).toContain("length [in]");
    expect(inch.ranked[0]).toMatchObject({ bore: expect.closeTo(0.75, 10), length: expect.closeTo(0.5, 10) });
    expect(inch.ranked[0]!["parts per 1000 h"]).toBeCloseTo(metric.ranked[0]!["parts per 1000 h"] as number, 10);
  });
  test("plain numbers without a unit in the heading are in the sheet's system", () => {
    const row = ["a", "Supplier A", "Demo Sorrel", 0.75, 0.5, 2, 100, 0.008];
    const { ranked } = rank([heading, row], ["0.6 MPa", "0.1 m/s", "5 to 45 °C", null, null, "inch"]);
    expect(ranked[0]).toMatchObject({ bore: expect.closeTo(0.75, 12), length: expect.closeTo(0.5, 12) });
    const metric = rank([heading, quote("a", "Demo Sorrel", 2, "0.008 in")]).ranked[0]!;
    expect(ranked[0]!["shortest life"]).toBeCloseTo(metric["shortest life"] as number, 8);
  });
  test("where the least order is above the order quantity, the least order is bought", () => {
    const row = one({ "least order": 500, "freight per lot": 50 });
    expect(row).toMatchObject({ lot: 500, "landed cost": 2.1, notes: "the least order of 500 is bought, not 100" });
    expect(one({ "least order": 100, "freight per lot": 50 })).toMatchObject({
      lot: 100,
      "landed cost": 2.5,
      notes: "",
    });
  });
  test.each([["EUR 1,250.50"], ["1.250,50 EUR"], ["eur1250.5"]])("one label throughout is shown: %s", (price) => {
    const { ranked } = rank([heading, quote("a", "Demo Sorrel", price)]);
    expect(ranked[0]).toMatchObject({ "unit price": 1250.5, currency: expect.stringMatching(/^eur$/i) as string });
  });
  test("the heading's label serves for plain numbers", () => {
    const labelled = heading.map((text) => (text === "price" ? "price [EUR]" : text));
    const { ranked, rest } = rank([
      labelled,
      quote("a"),
      quote("b", "Demo Sorrel", "3 EUR"),
      quote("c", "Demo Sorrel", "$3"),
    ]);
    expect(ranked.map((row) => row.currency)).toEqual(["EUR", "EUR"]);
    expect(rest[0]).toMatchObject({ part: "c", currency: "$", notes: "amount in $, others in EUR: never converted" });
  });
  test("a second label is an error of its rows; a price without one is taken as the table's, and said", () => {
    const prices = ["2 USD", "3 EUR", "4 EUR", 5];
    const { ranked, rest } = rank([heading, ...prices.map((price, i) => quote(`p${i}`, "Demo Sorrel", price))]);
    expect(rest.map((row) => [row.part, row["landed cost"], row.notes])).toEqual([
      ["p0", "", "amount in USD, others in EUR: never converted"],
    ]);
    expect(ranked.map((row) => row.notes)).toEqual(["", "", "no currency given, taken as EUR"]);
    expect(one({ "freight per lot": "20 USD", tooling: "10 EUR", "planned volume": 10 }).notes).toMatch(
      /never converted/,
    );
  });
  test("a duty is in % where its heading says so, and a small one may be a percent cell", () => {
    for (const name of ["duty %", "duty [%]", "Duty (%)"]) {
      expect(one({ [name]: 4 })).toMatchObject({ "landed cost": 2.08, notes: "" });
      expect(one({ [name]: "4 %" })).toMatchObject({ "landed cost": 2.08, notes: "" });
      expect(one({ [name]: "0.2 %" })).toMatchObject({ "landed cost": 2.004, notes: "" });
      expect(one({ [name]: 0.04 }).notes).toBe("duty is 0.04 %: 4 % is written as 4");
      expect(one({ [name]: "0.04" }).notes).toBe("duty is 0.04 %: 4 % is written as 4");
    }
  });
  test("a duty is a ratio where its heading says so; where it says nothing, a plain number could be either", () => {
    for (const name of ["duty [ratio]", "duty (1)"]) expect(one({ [name]: 0.04 })["landed cost"]).toBe(2.08);
    expect(one({ "duty [ratio]": 4 }).notes).toBe("duty must be from 0 % to 100 %, got 4: type 4 %");
    for (const found of [0.04, 4])
      expect(one({ duty: found })).toMatchObject({
        rank: "not ranked",
        notes: `duty ${found} could be % or a ratio: put [%] or [ratio] in the heading`,
      });
    expect(one({ duty: 0 })["landed cost"]).toBe(2);
    expect(one({ duty: "4 %" })["landed cost"]).toBe(2.08);
  });
});

describe("the table as a whole", () => {
  test("blank rows are skipped, also where the host hands blanks over as 0", () => {
    const blank = heading.map(() => null);
    const zeros = heading.map(() => 0);
    const { ranked, rest } = rank([blank, heading, blank, quote("a"), zeros, quote("b"), blank]);
    expect([ranked.length, rest.length]).toEqual([2, 0]);
  });
  test("unknown columns and differing sizes are noted, and the standing caution", () => {
    const row = quote("b");
    row[3] = 20;
    const { notes } = rank([
      [...heading, "colour", "Shade"],
      [...quote("a"), "red", null],
      [...row, "blue", null],
    ]);
    expect(notes).toEqual([
      "columns not read: colour, Shade",
      "bores differ: the duty's pressure and speed are taken for every part",
      "preliminary: figures are typical, not guaranteed; test in the application before buying",
    ]);
  });
  test("own grades are found first", () => {
    const own = [
      [
        ...["grade", "running pressure limit", "speed limit turning", "PV limit", "highest temperature"],
        ...["wear rate high", "wear rate from"],
      ],
      ["House blend", 20, 1, 0.2, 80, 1e-6, "bush"],
    ];
    const { ranked, rest } = rank([heading, quote("a", "house blend")], [0.6, 0.1, "20 to 23", null, own]);
    expect(rest).toEqual([]);
    expect(ranked[0]).toMatchObject({ verdict: "fits, PV 30 %" });
    // a rate of unknown tests counts as one of flat tests, and a quote has no clearance
    const unknown = own.map((row) => row.slice(0, -1));
    expect(rank([heading, quote("a", "house blend")], [0.6, 0.1, "20 to 23", null, unknown]).rest[0]!.notes).toBe(
      "no data, wear rate from (bush)",
    );
    expect(ranked[0]!["shortest life"]).toBeCloseTo(0.2 / (1e-6 * 0.6 * 0.1 * 3600), 8);
  });
  test("several duties: their tables below each other, a blank one blank", () => {
    const many = answer(functions.QUOTES, [[heading, quote("a")], [[0.6], [null], [500]], 0.1, 20], host);
    expect(many[0]!.slice(0, 3)).toEqual(["row", "rank", "part"]);
    expect(many.map((line) => line[0])).toEqual(["row", 1, 1, "", 3, 3]);
    expect(many[4]!.slice(1, 3)).toEqual(["not ranked", "a"]);
  });
  test.each([
    ["quotes is missing", [[null]]],
    [
      'quotes has no column "supplier", "bore" or "price"',
      [
        ["part", "grade", "length"],
        ["a", "b", 1],
      ],
    ],
    ["quotes holds no row below its headings", [heading, heading.map(() => null)]],
    ['quotes has two columns for "bore" (one is "bore")', [[...heading, "Bore [in]"], quote("a")]],
    [
      'unit of bore must be in a unit like mm or in, got "kg"',
      [heading.map((h) => (h === "bore" ? "bore [kg]" : h)), quote("a")],
    ],
    [
      'unit of price must be a currency label, got "EUR/100"',
      [heading.map((h) => (h === "price" ? "price [EUR/100]" : h)), quote("a")],
    ],
  ])("%s", (message, rows) => {
    expect(fault(rows)).toEqual({ code: "#VALUE!", message });
  });
});

test("the greenhouse's quotes: invented, one grade unknown, one price missing, the dearest piece not the dearest hour", () => {
  expect(greenhouse.source).toMatch(/^invented/);
  const { ranked, rest } = rank(greenhouse.rows, [0.6, 0.0942, "5 to 45"]);
  expect(ranked).toHaveLength(7);
  expect(rest.map((row) => row.part)).toEqual(["B-0591-F", "C/15/S", "C/15/F"]);
  expect(rest[0]!.notes).toBe("no price");
  expect(rest[1]!.notes).toMatch(/^grade "Demo Sorel" is unknown/);
  expect(ranked[0]!["landed cost"]).toBeGreaterThan(ranked[2]!["landed cost"] as number);
});
