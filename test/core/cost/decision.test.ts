import { functions } from "../../../src/core";
import { call } from "../../support";
import { bare, decide, duty, one, rank, table } from "./offers";

/** Two that fit: L lasts 2.5 times as long by its lower wear rate and costs more. */
const cheap = { part: "cheap", supplier: "Supplier A", grade: "Demo Sorrel", "price [EUR]": 1, price: undefined };
const lasting = { part: "lasting", supplier: "Supplier B", grade: "Demo Lovage", "price [EUR]": 9, price: undefined };
const two = table(cheap, lasting);
const first = (lines: Map<string, string[]>, what: string) => lines.get(what)?.[0] ?? "";
const numberIn = (text: string, before: string): number => Number(new RegExp(`${before} ([\\d.]+)`).exec(text)![1]);

test("which to buy, why, the runner-up and what it costs more a year", () => {
  const lines = decide(two);
  expect(first(lines, "buy")).toBe("lasting from Supplier B (Demo Lovage)");
  expect(first(lines, "because")).toMatch(/^fits, PV \d+ %; [\d.]+ EUR per 1000 h with labour and downtime/);
  const [best, next] = rank(two).rows as [Record<string, number>, Record<string, number>];
  const more = next["cost a year"]! - best["cost a year"]!;
  expect(first(lines, "runner-up")).toContain(`cheap from Supplier A (Demo Sorrel)`);
  expect(first(lines, "runner-up")).toContain(`${more.toFixed(2)} EUR a year`);
  // Lovage's 8e-7 mm³/(N·m): 0.2 mm of it at 0.6 MPa and 0.0942 m/s
  expect(first(lines, "shortest life")).toBe("1230 h");
  expect(first(lines, "note")).toContain("no order quantity: 1 taken");
  expect(decide(table({ ...cheap, "order quantity": 1 })).has("note")).toBe(false);
});

test("of two that cost alike neither is dearer, and nothing turns them round", () => {
  const lines = decide(table({ part: "a" }, { part: "b" }));
  expect(first(lines, "runner-up")).toMatch(/, 0 % dearer, 0 a year$/);
  expect(lines.has("turns round")).toBe(false);
});

test("turning points are where the ranking does turn round", () => {
  const lines = decide(two).get("turns round")!;
  const order = (fields: Record<string, unknown>) => rank(two, { ...duty, downtime: 0, ...fields }).rows[0]!.part;
  const change = numberIn(lines[0]!, "one change below");
  expect(order({ labour: change * 1.01 })).toBe("lasting");
  expect(order({ labour: change * 0.99 })).toBe("cheap");
  // the life falls with the allowance
  const share = Number(/below (\d+) %/.exec(lines[1]!)![1]) / 100;
  const allowed = (depth: number) =>
    rank(table({ ...cheap, "wear allowance": 0.2 }, { ...lasting, "wear allowance": depth })).rows[0]!.part;
  expect(allowed(0.2 * (share + 0.01))).toBe("lasting");
  expect(allowed(0.2 * (share - 0.01))).toBe("cheap");
});

test("a runner-up without a life is told by what it costs landed, and not as dearer by the hour", () => {
  const { hours: _, "wear allowance": __, ...asksNoLife } = duty;
  const runnerUp = (...offers: Record<string, unknown>[]) => first(decide(table(...offers), asksNoLife), "runner-up");
  expect(runnerUp({ part: "a", "wear allowance": 0.1 }, { part: "b" })).toMatch(/^b from .*; its life is not known$/);
  expect(runnerUp({ part: "a", price: 2 }, { part: "b", price: 3.25 })).toMatch(/^b from .*; 1.25 more landed$/);
});

test("a year is compared where both run through one", () => {
  const { "pieces a year": pieces, ...open } = duty;
  const headings = Object.keys(open);
  const runnerUp = (...each: (number | null)[]) => {
    const row = (year: number | null, i: number) => [`d${i}`, ...Object.values(open).slice(1), year];
    const duties = [[...headings, "pieces a year"], ...each.map(row)];
    const offers = table({ part: "a", "for duty": "d0" }, { part: "b", "for duty": "d1", price: 3 });
    const lines = call(functions.DECISION, [offers, duties, null]) as [string, string][];
    return lines.find(([what]) => what === "runner-up")![1];
  };
  // 1 more each of 655 h, of 60 pieces that run 100 h
  expect(runnerUp(pieces, pieces)).toMatch(/dearer, 9.161 a year$/);
  for (const each of [
    [pieces, null],
    [null, pieces],
    [null, null],
  ])
    expect(runnerUp(...each)).toMatch(/dearer$/);
});

test("a quantity that turns the order round is named to the piece", () => {
  const ordered = (quantity: number) =>
    table(
      { ...cheap, part: "a", "order quantity": quantity, "freight per lot": 5 },
      { ...cheap, part: "b", "price [EUR]": 0.9, "order quantity": quantity, "freight per lot": 55 },
    );
  // 0.1 a piece pays 50 of freight from 500 pieces on; at 500 both cost alike
  const lines = decide(ordered(100));
  expect(first(lines, "buy")).toMatch(/^a /);
  expect(lines.get("turns round")).toContain("orders of 501 pieces or more");
  expect(rank(ordered(501)).rows[0]!.part).toBe("b");
  expect(decide(ordered(1000)).get("turns round")).toContain("orders of 499 pieces or fewer");
  const none = "by no order quantity that both quoted";
  expect(decide(ordered(100)).get("turns round")).not.toContain(none);
  expect(decide(ordered(1000)).get("turns round")).not.toContain(none);
  expect(decide(table({ part: "a" }, { part: "dear", price: 3 })).get("turns round")).toContain(none);
});

test("a quantity is sought to a million times and a millionth of the present", () => {
  const ordered = (quantity: number) =>
    table(
      { ...cheap, part: "a", "order quantity": quantity, "freight per lot": 5 },
      { ...cheap, part: "b", "price [EUR]": 0.99, "order quantity": quantity, "freight per lot": 505 },
    );
  // 0.01 a piece pays 500 of freight from 50 000 pieces on
  expect(decide(ordered(1)).get("turns round")).toContain("orders of 50001 pieces or more");
  expect(decide(ordered(5e7)).get("turns round")).toContain("orders of 49999 pieces or fewer");
});

test("where parts alone cost alike, labour turns nothing round", () => {
  // twice the depth for twice the price
  const lines = decide(
    table({ part: "thin", price: 1, "wear allowance": 0.1 }, { part: "thick", price: 2, "wear allowance": 0.2 }),
  );
  expect(first(lines, "buy")).toMatch(/^thick/);
  expect(lines.get("turns round")![0]).toBe("by no labour or downtime of a change");
});

test("a rate of exchange that turns the order round", () => {
  const rates = (rate: number) => [
    ["currency", "rate [EUR]"],
    ["USD", rate],
  ];
  const cells = [
    ["part", "grade", "bore", "length", "price"],
    ["home", "Demo Sorrel", 15, 20, "2.00 EUR"],
    ["away", "Demo Sorrel", 15, 20, "2.00 USD"],
  ];
  const lines = decide(cells, duty, null, rates(0.9));
  expect(first(lines, "buy")).toMatch(/^away/);
  expect(lines.get("turns round")).toContain("USD above 1 EUR, now 0.9");
  expect(lines.get("rate")).toEqual(["USD at 0.9 EUR"]);
  expect(first(decide(cells, duty, null, rates(1.01)), "buy")).toMatch(/^home/);
  // both in dollars: at no rate do they change places
  const dollars = table(
    { ...cheap, "price [EUR]": undefined, "price [USD]": 1 },
    { part: "b", "price [USD]": 2, price: undefined },
  );
  expect(decide(dollars, duty, null, rates(0.9)).get("turns round")!.join()).not.toContain("USD");
});

test("nothing fits: nothing is to be bought, and what the nearest would take", () => {
  const lines = decide(table({ length: 12 }, { part: "b", length: 6 }));
  expect(first(lines, "buy")).toBe("none of these yet: no offer fits");
  expect(first(lines, "nearest")).toContain("would hold with 13.6 mm length");
  expect(first(decide(table({ grade: "Bare" }), duty, bare), "buy")).toMatch(/^none/);
});

test("one offer with care is bought with it said", () => {
  expect(one({ length: 31 }).verdict).toMatch(/^care/);
  const lines = decide(table({ length: 31 }));
  expect(first(lines, "because")).toContain("none fits without care");
  expect(first(lines, "runner-up")).toBe("none: no other offer fits");
});

test("a sentence for each supplier asks for every missing figure by name; what is left out has its reason", () => {
  const lines = decide(
    table(
      { part: "a", wall: 1.5, "lead time": 10 },
      { part: "b", supplier: "Supplier B", price: null, wall: 1.5, "lead time": 3 },
      { part: "c", supplier: "Supplier B", grade: "Bare", length: "?", wall: 1.5 },
    ),
    duty,
    bare,
  );
  expect(lines.get("ask Supplier A")).toBeUndefined();
  expect(lines.get("ask Supplier B")).toEqual(["Please state for c: length, lead time; for b: price."]);
  expect(lines.get("not ranked")).toEqual(["b from Supplier B (Demo Sorrel): no price"]);
  expect(lines.get("caution")).toContain("Preliminary sizing: test in the application before use.");
});

test("a field that the duty leaves open is asked of whoever states the duty, with the offers that wait for it", () => {
  // a rate of flat tests needs the clearance, and that the bore's zone
  const lines = decide(table({ part: "flat", grade: "PTFE fabric", wall: 2 }, { part: "known", wall: 2 }));
  expect(lines.get("state in the duty")).toEqual(["bore zone, to judge flat from Supplier A (PTFE fabric)"]);
  expect(decide(two).has("state in the duty")).toBe(false);
});
