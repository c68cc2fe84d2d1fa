import fc from "fast-check";
import { functions } from "../../src/core";
import { call, CellError } from "../support";
import { between, check, equal } from "./check";

type Fields = Readonly<Record<string, number | string>>;
const card = (fields: Fields) => Object.entries(fields);

/** What DUTIES says of a duty: its use, governing criterion and verdict. */
function judged(fields: Fields, grade: string): { use: unknown; governing: unknown; verdict: string } {
  const [, row] = call(functions.DUTIES, [card({ ...fields, grade }), "demo"]) as [unknown, unknown[]];
  const verdict = row[9] instanceof CellError ? "no duty" : String(row[9]);
  return { use: row[7], governing: row[6], verdict };
}
const wordOf = (verdict: string) => verdict.split(",")[0];

const grade = fc.constantFrom("Demo Sorrel", "Demo Medlar", "Demo Tansy", "Demo Quince", "POM copolymer");
/** Between two numbers, each decade as often as the next. */
const spread = (low: number, high: number) => between(Math.log(low), Math.log(high)).map(Math.exp);
const duty = fc.record({
  load: spread(1, 5000),
  bore: spread(5, 60),
  length: spread(5, 60),
  rpm: spread(1, 3000),
  hardness: fc.constantFrom(150, 250, 400),
  "design factor": between(1, 3),
  "impact factor": fc.constantFrom(1, 1.7),
  hours: spread(10, 1e5),
  "wear allowance": between(0.05, 0.5),
});
const span = fc.tuple(between(-60, 40), between(1, 100));

describe("DUTYROOM", () => {
  const ends: Readonly<Record<string, number>> = { load: 0, rpm: 0, "impact factor": 1, "design factor": 1 };
  const zero: Readonly<Record<string, string>> = { load: "0 N", rpm: "0 1/min" };
  const cold = "temperature, colder end";
  const hot = "temperature, warmer end";
  test("a limit is where the verdict of DUTIES turns, to 1e-9", () => {
    let limits = 0;
    check(
      fc.tuple(duty, span, grade),
      ([fields, [low, width], name]) => {
        const at = (label: string, value: number): Fields => {
          const [from, to] = [label === cold ? value : low, label === hot ? value : low + width];
          return {
            ...fields,
            ...(label in fields ? { [label]: (value === 0 && zero[label]) || value } : {}),
            temperature: `${from} to ${to} °C`,
          };
        };
        const here = at("", 0);
        const word = wordOf(judged(here, name).verdict);
        const [, head, ...rows] = call(functions.DUTYROOM, [card(here), null, name, "demo"]);
        expect(wordOf(String(head![1]))).toBe(word);
        for (const [label, value, , least, below, , greatest, above] of rows as [string, number, ...unknown[]][])
          for (const [way, limit, beyond] of [
            [-1, least, below],
            [1, greatest, above],
          ] as const) {
            if (typeof limit !== "number") continue;
            limits++;
            const off = way * 1e-9 * Math.max(Math.abs(limit), 1e-9 * Math.abs(value));
            const inside = way * (limit - off - value) > 0 ? limit - off : value;
            expect([label, wordOf(judged(at(label, inside), name).verdict)]).toEqual([label, word]);
            // at the end of its domain a number is as far out as it can be
            const outside = way < 0 && limit === ends[label] ? at(label, limit) : at(label, limit + off);
            expect([label, wordOf(judged(outside, name).verdict)]).toEqual([label, wordOf(String(beyond))]);
          }
      },
      150,
    );
    expect(limits).toBeGreaterThan(500);
  });
});

describe("DUTYSWEEP", () => {
  test("says of each value what DUTIES says of the duty with that value", () =>
    check(
      fc.tuple(duty, grade, fc.array(spread(1, 5000), { minLength: 1, maxLength: 3 })),
      ([fields, name, values]) => {
        const here = { ...fields, temperature: "5 to 45" };
        for (const heading of ["load", "rpm", "hours"]) {
          const column = values.map((value) => [value]);
          const [, ...rows] = call(functions.DUTYSWEEP, [card(here), heading, column, null, name, "demo"]);
          rows.forEach((row, i) => {
            const { use, governing, verdict } = judged({ ...here, [heading]: values[i]! }, name);
            expect(row).toEqual([values[i], expect.any(String), name, use, governing, verdict]);
          });
        }
      },
    ));
});

describe("DUTYBAND", () => {
  /** A band about a value, as text and as what it may be. */
  const band = fc.record({ off: between(0.01, 0.6), isLikely: fc.boolean(), at: between(0, 1) });
  const banded = ["load", "rpm", "hours", "wear allowance"] as const;
  test("worst use is no less than likely use, likely no less than best; no value between is beyond them", () => {
    let found = 0;
    check(
      fc.tuple(duty, grade, fc.tuple(band, band, band, band)),
      ([fields, name, bands]) => {
        const typed: Record<string, string> = {};
        const inside: Record<string, number> = {};
        banded.forEach((key, i) => {
          const { off, isLikely, at } = bands[i]!;
          const [low, high] = [fields[key] * (1 - off), fields[key] * (1 + off)];
          typed[key] = isLikely ? `${fields[key]} ± ${off * 100} %` : `${low} to ${high}`;
          inside[key] = low + at * (high - low);
        });
        const here = { ...fields, temperature: "5 to 45" };
        const [, , ...rows] = call(functions.DUTYBAND, [card({ ...here, ...typed }), null, name, "demo"]);
        const checks = call(functions.DUTYCHECKS, [card({ ...here, ...inside }), null, name, "demo"]);
        for (const [criterion, best, likely, worst, word, passes] of rows) {
          const at = checks.find(([heading]) => heading === criterion)!;
          const [use, verdict] = [at[4], at[5]];
          const isNumbered = [best, likely, worst, use].every((x) => typeof x === "number");
          if (isNumbered) {
            found++;
            const [b, l, w, u] = [best, likely, worst, use] as [number, number, number, number];
            expect(w).toBeGreaterThanOrEqual(l);
            expect(l).toBeGreaterThanOrEqual(b);
            expect(u).toBeLessThanOrEqual(w * (1 + 1e-9));
            expect(u).toBeGreaterThanOrEqual(b * (1 - 1e-9));
          }
          if (passes === "passes throughout") expect(verdict).not.toBe("fails");
          if (passes === "fails throughout") expect(verdict).toBe("fails");
          if (word === "fits") expect(verdict).toBe("fits");
        }
      },
      60,
    );
    expect(found).toBeGreaterThan(100);
  });
  test("its worst is what DUTIES says of the same bands", () =>
    check(
      fc.tuple(duty, grade, band),
      ([fields, name, { off }]) => {
        const here = { ...fields, load: `${fields.load} ± ${off * 100} %`, temperature: "5 to 45" };
        const [, [, , , worst, word]] = call(functions.DUTYBAND, [card(here), null, name, "demo"]) as [
          unknown,
          unknown[],
        ];
        const { use, verdict } = judged(here, name);
        expect(word).toBe(wordOf(verdict));
        if (typeof use === "number" && typeof worst === "number" && word === "fails") equal(use, worst);
      },
      60,
    ));
});
