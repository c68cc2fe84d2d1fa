/** One offer evaluated: which of its figures count, and what is said of it. */
import { functions } from "../../../src/core";
import { call, message } from "../../support";
import { bare, card, decide, duty, one, rank, speed, table, told } from "./offers";

/** Hours of a depth at Sorrel's greatest rate, h/(k·p·v·3600), linear wear at 0.6 MPa. */
const hours = (depth: number) => depth / (1.5e-6 * 0.6 * speed * 3600);
const { hours: _, "wear allowance": __, ...asksNoLife } = duty;

test("the offer's own wear allowance counts, not the duty's", () => {
  // 0.2 mm last 655 h, 0.1 mm half of them
  expect(one({}, { ...duty, hours: 400 }).verdict).toMatch(/^fits/);
  expect(one({ "wear allowance": 0.1 }, { ...duty, hours: 400 }).verdict).toMatch(/^fails, wear life/);
  expect(one({ "wear allowance": 0.1 }, asksNoLife)["shortest life"]).toBeCloseTo(hours(0.1), 6);
  expect(one({ "wear allowance": 0.1 }, { ...asksNoLife, hours: 400 }).verdict).toMatch(/^fails, wear life/);
});

test("a duty that asks for no life is not judged by it; without an allowance there is none", () => {
  const allowed = one({ "wear allowance": 0.1 }, asksNoLife);
  const open = one({}, asksNoLife);
  expect([allowed.verdict, open.verdict]).toEqual(["fits, PV 68 %", "fits, PV 68 %"]);
  expect([open["shortest life"], open["all in per 1000 h"], open["cost a year"]]).toEqual(["", "", ""]);
  expect(told({}, asksNoLife)).toContain("no life known: ranked by landed cost");
  expect(told({})).not.toContain("no life known");
  const lines = decide(table({}), asksNoLife);
  expect(lines.get("because")![0]).toContain("its life is not known, so that landed cost decides");
  expect(lines.has("shortest life")).toBe(false);
});

test("a cost a year wants both the pieces and the hours of each", () => {
  const { hours: _hours, ...noHours } = duty;
  const { "pieces a year": _pieces, ...noPieces } = duty;
  for (const fields of [noHours, noPieces]) {
    expect(one({}, fields)["all in per 1000 h"]).toBeCloseTo((60 / hours(0.2)) * 1000, 8);
    expect(one({}, fields)["cost a year"]).toBe("");
    expect(decide(table({}), fields).has("cost a year")).toBe(false);
  }
});

test("the wall follows from the outside", () => {
  // (18 - 15)/2
  expect(told({ outside: 18, "wear allowance": 1.6 })).toContain("wear allowance must be below the wall of 1.5 mm");
  expect(one({ outside: 18, "wear allowance": 0.2 }).rank).toBe(1);
  expect(told({ outside: 15 })).toContain("outside of 15 mm is not above the bore of 15 mm");
  expect(told({ outside: 18 })).not.toContain("taken, the duty's");
  expect(told({ outside: 18 })).not.toContain("ask for wall");
  expect(told({ wall: 1.5 })).not.toContain("ask for wall");
});

test("the duty's wall, where the offer gives neither wall nor outside", () => {
  expect(told({ "wear allowance": 2 }, { ...duty, wall: 2 })).toContain(
    "wear allowance must be below the wall of 2 mm",
  );
  expect(one({ "wear allowance": 1.9 }, { ...duty, wall: 2 }).rank).toBe(1);
});

/** What DUTIES says of Sorrel on a duty. */
function judged(fields: Record<string, unknown>) {
  const [, row] = call(functions.DUTIES, [card({ ...fields, grade: "Demo Sorrel" }), null]);
  return { use: row![7], verdict: row![9] };
}

test("a washer offered is judged by its bore and outside, as the duty is that has them", () => {
  const washer = { duty: "Stop", part: "washer", load: 180, inner: 10, outer: 40, rpm: 120, temperature: 20 };
  const offered = one({ bore: 15, length: null, outside: 30 }, washer);
  const { use, verdict } = judged({ ...washer, inner: 15, outer: 30 });
  expect(offered).toMatchObject({ use, verdict });
  expect(judged(washer).use).not.toBe(use);
  expect(one({ bore: 15, outside: null }, washer).verdict).toBe("no data, outside");
  expect(one({ bore: null, outside: 30 }, washer).verdict).toBe("no data, bore");
});

test("a grade that is unknown or missing is asked for, one that came in as an error is not", () => {
  expect(told({ grade: "Demo Sorrle" })).toContain("ask for limits and wear rate of Demo Sorrle");
  expect(told({})).not.toContain("limits and wear rate");
  expect(told({ grade: null })).toContain("ask for grade");
  expect(told({ grade: "#REF!" })).toContain("grade holds #REF!");
  expect(told({ grade: "#REF!" })).not.toMatch(/ask for .*grade/);
});

test("nothing is priced from an amount or a number of pieces that cannot be read", () => {
  for (const heading of ["price", "tooling", "freight per lot", "customs duty", "price per", "planned volume"])
    expect([heading, one({ [heading]: "?!" })["order value"]]).toEqual([heading, ""]);
  for (const heading of ["order quantity", "least order", "from quantity", "to quantity"])
    expect([heading, one({ [heading]: "?!" })["order value"]]).toEqual([heading, ""]);
});

test("the offer's wall takes the place of the duty's outside, which else tells the wall", () => {
  const sleeved = { ...duty, outside: 19 };
  expect(told({ wall: 1.5, "wear allowance": 1.6 }, sleeved)).toContain("must be below the wall of 1.5 mm");
  expect(told({ "wear allowance": 2.1 }, sleeved)).toContain("must be below the wall of 2 mm");
});

test("sizes that differ by a hundredth are told, larger and smaller", () => {
  for (const bore of [20, 12]) expect(told({ bore })).toContain(`bore ${bore} mm, the duty's is 15 mm`);
  for (const outside of [17, 19]) expect(told({ wall: 1.5, outside })).toContain(`is not ${outside} mm`);
  expect(told({ wall: 1.5, outside: 18.1 })).not.toContain("contradict");
});

test("a wear rate is asked for where there is wear, whether the duty asks for a life or not", () => {
  expect(told({ grade: "Bare" }, asksNoLife, bare)).toContain("wear rate high of Bare");
  const still = { ...asksNoLife, motion: "static", rpm: undefined };
  expect(told({ grade: "Bare" }, still, bare)).not.toContain("wear rate");
});

test("a reason against an offer keeps it from being judged", () => {
  expect(one({ "lead time": "160 weeks" })).toMatchObject({ rank: "not ranked", verdict: "cannot be judged" });
  expect(one({ bore: -15 })).toMatchObject({ rank: "not ranked", verdict: "cannot be judged" });
});

test("the length at which it would hold does hold, the next tenth below does not", () => {
  for (const [load, length] of [
    [180, 5],
    [180, 13],
    [393, 22],
    [390, 28],
  ] as const) {
    const [, said] = /would hold with ([\d.]+) mm length/.exec(told({ length }, { ...duty, load }))!;
    const at = (tried: number) => String(one({ length: tried }, { ...duty, load }).verdict).split(",")[0];
    expect([load, at(Number(said)), at(Number(said) - 0.1)]).toEqual([load, "fits", "fails"]);
  }
  // 13.6 mm for 180 N is 34 mm for 450 N, above two bores: no answer
  expect(told({ length: 22 }, { ...duty, load: 450 })).not.toContain("would hold");
  expect(told({ length: 31 }, { ...duty, load: 450 })).not.toContain("would hold");
});

test("a currency that is not given is told where a price was, and the others name one", () => {
  const remarks = (...offers: Record<string, unknown>[]) =>
    [...rank(table(...offers.map((offer, i) => ({ part: `p${i}`, ...offer })))).rows]
      .sort((a, b) => (String(a.part) < String(b.part) ? -1 : 1))
      .map((row) => String(row["reason or question"]).includes("no currency given, taken as EUR"));
  expect(remarks({ price: "2 EUR" }, { price: 2 }, { price: null })).toEqual([false, true, false]);
  expect(remarks({ price: 2 }, { price: 3 })).toEqual([false, false]);
});

test("pieces are a number alone: no other word behind it, no fraction", () => {
  for (const cell of ["5 boxes", "4 1/2", "many"])
    expect(told({ "order quantity": cell })).toContain('order quantity must be pieces like "100" or "100-499"');
  expect(one({ "order quantity": "500 pcs" }).quantity).toBe(500);
});

test("days of the years 2000 to 2099 are dates", () => {
  // 1 January 2000 is day 36 526 of a sheet, 31 December 2099 day 73 050
  for (const day of [36_526, 73_050]) expect(told({ "lead time": day })).toContain("is a date");
  for (const day of [36_525, 73_051])
    expect(told({ "lead time": day })).toContain(`lead time must be at most three years, got ${day} d`);
  expect(one({ "lead time": 1095 })).toMatchObject({ rank: 1, "lead time": 1095 });
  expect(one({ "lead time": 1096 }).rank).toBe("not ranked");
});

test("breaks in rows below each other are one offer where part, supplier and grade are the same", () => {
  const rows = (second: Record<string, unknown>) =>
    rank(table({ from: 1, price: 4 }, { from: 100, price: 3, ...second })).rows.length;
  expect([rows({}), rows({ part: null }), rows({ supplier: " supplier a" })]).toEqual([1, 1, 1]);
  for (const other of [{ part: "b" }, { supplier: "Supplier B" }, { grade: "Demo Lovage" }])
    expect(rows(other)).toBe(2);
  expect(rank(table({ part: "a", price: 4 }, { part: "a", price: 3 })).rows).toHaveLength(2);
});

test("two of three that cost alike share their rank, the third does not", () => {
  const { rows } = rank(table({ part: "dear", price: 3 }, { part: "b" }, { part: "a" }));
  const equal = rows.map((row) => String(row["reason or question"]).includes("equal cost"));
  expect(rows.map(({ part, rank: place }, i) => [part, place, equal[i]])).toEqual([
    ["b", 1, true],
    ["a", 1, true],
    ["dear", 3, false],
  ]);
});

test("the row whose rate is 1 names the currency of the rates", () => {
  const rates = [
    ["currency", "rate"],
    ["USD", 0.9],
    ["EUR", 1],
  ];
  expect(one({ price: "2.00 USD" }, duty, null, rates)).toMatchObject({ currency: "EUR", "unit price": 1.8 });
});

test("a least order of none is none", () => {
  expect(one({ "least order": "0", "order quantity": 1 })).toMatchObject({ rank: 1, quantity: 1 });
  expect(told({ "least order": "-1" })).toContain("least order must be a whole number");
});

test("rates without a base lead to the currency that most offers name", () => {
  const rates = [
    ["currency", "rate"],
    ["USD", 1.1],
    ["GBP", 1.3],
  ];
  const { rows } = rank(
    table({ part: "a", price: "1 GBP" }, { part: "b", price: "3 USD" }, { part: "c", price: "4 USD" }),
    duty,
    null,
    rates,
  );
  expect(rows.map((row) => [row.part, row.currency, row["unit price"]])).toEqual([
    ["a", "USD", expect.closeTo(1.3 / 1.1, 12)],
    ["b", "USD", 3],
    ["c", "USD", 4],
  ]);
});

test("tooling without its volume keeps the price open, none costs nothing", () => {
  expect(told({ tooling: 5 })).toContain("no data, planned volume: tooling is shared by it");
  expect(one({ tooling: 5 }).rank).toBe("not ranked");
  expect(one({ tooling: "0" })).toMatchObject({ rank: 1, landed: 2 });
});

test("of an offer that leaves nothing open nothing is said", () => {
  expect(told({ wall: 1.5, "lead time": 10, "order quantity": 1 })).toBe("");
});

test("inside a verdict one whose life is known comes first, whatever it costs", () => {
  const offers = [
    { part: "dear", price: 9, "wear allowance": 0.2 },
    { part: "open", price: 1 },
    { part: "open too", price: 2 },
    { part: "cheap", price: 3, "wear allowance": 0.2 },
  ];
  const order = (...rows: typeof offers) => rank(table(...rows), asksNoLife).rows.map((row) => row.part);
  expect(order(...offers)).toEqual(["cheap", "dear", "open", "open too"]);
  expect(order(...offers.reverse())).toEqual(["cheap", "dear", "open", "open too"]);
});

test("a price longer than any notation is refused by its length", () => {
  expect(told({ price: "1".repeat(2001) })).toContain("price must be at most 2000 characters long, got 2001");
});

test("a rate of nothing, a count in a unit of something else: refused", () => {
  const rates = [
    ["currency", "rate [EUR]"],
    ["USD", "0"],
  ];
  expect(message(call(functions.QUOTES, [table({}), card(duty), null, null, rates]))).toContain("rate must be above 0");
  const headed = (heading: string) => call(functions.QUOTES, [table({ [heading]: 5 }), card(duty), null]);
  for (const heading of ["order quantity [pcs]", "planned volume [pieces]"]) expect(headed(heading)[1]![0]).toBe(1);
  for (const heading of ["order quantity [mm]", "planned volume [mm]"])
    expect(message(headed(heading))).toContain(`unit of ${heading.slice(0, -5)}`);
});
