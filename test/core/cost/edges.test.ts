import { functions } from "../../../src/core";
import { readPieces } from "../../../src/core/cost/priceBreaks";
import { reasonText } from "../../../src/core/cost/quotes";
import { changeCostBetween } from "../../../src/core/cost/turningPoints";
import type { Costed } from "../../../src/core/cost/turningPoints";
import type { RankedQuote } from "../../../src/core/cost/rankQuotes";
import { call, message } from "../../support";
import { card, duty, one, rank, table, told } from "./offers";

const rated = (...rows: unknown[][]) => [["currency", "rate", "date"], ["EUR", 1, null], ...rows];
const refused = (rates: unknown) => message(call(functions.QUOTES, [table({}), card(duty), null, null, rates]));

// days since the end of 1899, of which 2000-01-01 is the 36526th and 2026-01-01 the 46023rd
test.each([
  [36526, "2000-01-01"],
  [36585, "2000-02-29"],
  [46112, "2026-03-31"],
  [46113, "2026-04-01"],
  [73050, "2099-12-31"],
  [36525, "36525"],
  [73051, "73051"],
])("the day %d of a rate is told as %s: a date of this century alone is one", (days, told) => {
  expect(rank(table({ price: "2 USD" }), duty, null, rated(["USD", 0.9, days])).notes).toContain(
    `USD at 0.9 EUR of ${told}`,
  );
});

test("a table of rates holds one, and no unit but that of the rate", () => {
  expect(
    refused([
      ["currency", "rate", "date"],
      [null, null, null],
    ]),
  ).toMatch(/rates holds no r/);
  expect(
    refused([
      ["currency", "rate [EUR]", "date [d]"],
      ["USD", 0.9, "today"],
    ]),
  ).toContain("unit of date must be left out");
});

test("a single question is asked, none is not", () => {
  const quote = (questions: string[]) =>
    ({ reasons: [], remarks: [], questions, isEqual: false }) as unknown as RankedQuote;
  expect(reasonText(quote(["wall"]))).toBe("ask for wall");
  expect(reasonText(quote([]))).toBe("");
});

test("what a duty leaves open of the cost of a change or a year is noted", () => {
  const { hours: _, ...noHours } = duty;
  const notes = (fields: Record<string, unknown>) => rank(table({}), fields).notes.join("; ");
  const [change, year] = ["states no labour and no downtime", "cost a year: the duty has to state"];
  expect(notes({ ...duty, labour: 40, downtime: 40 })).not.toContain(change);
  expect(notes({ ...duty, labour: 0, downtime: 0 })).toContain(change);
  expect(notes(duty)).not.toContain(year);
  expect(notes(noHours)).toContain(year);
});

describe("the quantity that is priced", () => {
  test("is the order's where it is the least order itself", () => {
    expect(told({ "least order": 100, "order quantity": 100 })).not.toContain("least order");
    expect(told({ "least order": 101, "order quantity": 100 })).toContain("the least order of 101 is bought, not 100");
  });
  test("tooling asks for the planned volume, however little it is", () => {
    expect(told({ tooling: 0.5 })).toContain("no data, planned volume: tooling is shared by it");
    expect(told({ tooling: 0 })).not.toContain("planned volume");
  });
  test("whose value outgrows all numbers has no price", () => {
    expect(told({ price: 1e308, "order quantity": 100 })).toContain("price: out of range");
    expect(one({ price: 1e308, "order quantity": 100 }).rank).toBe("not ranked");
  });
});

test("a size of 0 is one that was left open, and asked for", () => {
  expect(told({ bore: 0 })).toContain("ask for bore");
  expect(told({ bore: -1 })).toContain("bore must be above 0");
  expect(told({})).not.toContain("ask for bore");
});

test("without an order quantity, a least order or a price one piece is taken", () =>
  expect(told({ price: null })).toContain("no order quantity: 1 taken"));

test.each(["grade", "price"])("a table of offers without the column %s says so", (column) =>
  expect(message(call(functions.QUOTES, [table({ [column]: undefined }), card(duty), null]))).toContain(
    `has no column "${column}"`,
  ),
);

test("pieces from a number to the same are that number; the lower end stands first", () => {
  const pieces = (text: string) => readPieces("pieces", { kind: "count", whole: true, from: 1 }, text);
  expect(pieces("100-100")).toEqual({ from: 100, to: 100 });
  expect(() => pieces("101-100")).toThrow("lower end first");
});

// (L1 + W)/t1 = (L2 + W)/t2
test.each([
  ["20 + 2·W = 21 + W", [10, 100], [21, 200], 1],
  ["20 + 2·W = 20.5 + W", [10, 100], [20.5, 200], 0.5],
  ["10 + W = 8 + 2·W", [10, 200], [4, 100], 2],
  ["20 + 2·W = 19 + W: below nothing", [10, 100], [19, 200], undefined],
  ["lives are alike", [10, 100], [19, 100], undefined],
])("labour and downtime at which two offers cost alike: %s", (_, [landed1, life1], [landed2, life2], expected) => {
  const costed = (landed: number, life: number) => ({ pricing: { landed }, judged: { life } }) as unknown as Costed;
  const found = changeCostBetween(costed(landed1!, life1!), costed(landed2!, life2!));
  if (expected === undefined) expect(found).toBeUndefined();
  else expect(found).toBeCloseTo(expected, 12);
});

test("a length that would hold is told to the next hundredth of an inch where the sheet is in inches", () => {
  // PV of Sorrel is 68 % at 20 mm, so that 13.51 to 13.6 mm hold at least: 0.532 to 0.535 in
  const inMetric = card(duty).map(([key, value]) => [
    {
      load: "load [N]",
      bore: "bore [mm]",
      length: "length [mm]",
      temperature: "temperature [°C]",
      "wear allowance": "wear allowance [mm]",
    }[String(key)] ?? key,
    value,
  ]);
  const offer = [
    ["part", "supplier", "grade", "bore [mm]", "length [mm]", "price"],
    ["a", "Supplier A", "Demo Sorrel", 15, 12, 2],
  ];
  const [, line] = call(functions.QUOTES, [offer, inMetric, null], "inch") as [unknown, unknown[]];
  expect(line.join(" ")).toContain("would hold with 0.54 in length");
});

test("a lead time in a column of hours is told in days", () => {
  expect(one({ "lead time": undefined, "lead time [h]": 48 })).toMatchObject({ rank: 1, "lead time": 2 });
});
