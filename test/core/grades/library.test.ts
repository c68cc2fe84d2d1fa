import { functions } from "../../../src/core";
import { findGrade, labelOf, labels, libraryOf, standardLibrary, weakest } from "../../../src/core/grades/model";
import type { Grade } from "../../../src/core/grades/model";
import { call, one } from "../host";

const mine: Grade = { name: "pa 66", kind: "own", values: { pvLimit: 0.2 }, origins: {}, extra: [] };
const kinds = (grades: readonly Grade[]) => [...new Set(grades.map((g) => g.kind))];

describe("where a grade is looked for that nobody named", () => {
  test("the own rows alone, without any the generic families, never the invented ones", () => {
    const own = libraryOf([mine]);
    expect([own.own, own.scope]).toEqual([[mine], [mine]]);
    for (const library of [standardLibrary(), libraryOf([])]) {
      expect(library.own).toEqual([]);
      expect(kinds(library.scope)).toEqual(["generic"]);
      expect(library.scope.length).toBeGreaterThanOrEqual(10);
    }
  });
  test('"demo" asks for the invented ones; every other grade can still be named', () => {
    const demo = libraryOf("demo");
    expect([demo.own, kinds(demo.scope), demo.grades]).toEqual([[], ["demo"], demo.scope]);
    expect(findGrade("PA66", demo).kind).toBe("generic");
    expect(() => findGrade("PA67", demo)).toThrow("nearest: PA66");
  });
  test("whatever the scope, own rows come first by name and the rest is found", () => {
    const own = libraryOf([mine]);
    expect(findGrade("PA66", own)).toBe(mine);
    expect(findGrade("Demo Sorrel", own).kind).toBe("demo");
    expect(kinds(own.grades)).toEqual(["own", "generic", "demo"]);
  });
});

test('the cell "demo" as grades', () => {
  const invented = libraryOf("demo").scope.map((g) => g.name);
  for (const word of ["demo", " Demo ", [["DEMO"]]]) {
    const table = call(functions.GRADES, [["PV limit"]], word);
    expect(table.slice(1).map((row) => row[0])).toEqual(invented);
  }
  const ranked = call(functions.SHORTLIST, 2, 0.06, "5 to 45", "turning", "dry", "demo");
  expect(ranked.slice(1).map((row) => row[0])).toEqual(expect.arrayContaining(invented));
  expect(ranked).toHaveLength(invented.length + 1);
  expect(one(functions.GRADE, "PA66", "density", "demo")).toBeCloseTo(1.14, 12);
  expect(one(functions.GRADE, "PA66", "density", "demos")).toMatch(
    /^#VALUE! grades must be a table of grades or the word "demo", got "demos"/,
  );
  expect(one(functions.GRADE, "PA66", "density", [["demo", "demo"]])).toMatch(
    /^#VALUE! grades must have a heading row/,
  );
});

describe("labels", () => {
  test("strongest first", () => {
    expect(labels).toEqual(["read", "own", "derived", "memory", "common practice", "memory, band only", "invented"]);
  });
  test("the weakest of those that counted", () => {
    expect(weakest(["read", "memory", "derived"])).toBe("memory");
    expect(weakest(["memory, band only", "common practice"])).toBe("memory, band only");
    expect(weakest(["own"])).toBe("own");
    expect(weakest([])).toBeUndefined();
  });
  test("of a grade's figure", () => {
    const { byName } = standardLibrary();
    expect(labelOf(mine, "pvLimit")).toBe("own");
    expect(labelOf(byName.get("demosorrel")!, "pvLimit")).toBe("invented");
    expect(labelOf(byName.get("pa66")!, "density")).toBe("read");
    expect(labelOf(byName.get("pa66")!, "runningPressure")).toBe("memory");
    expect(labelOf(byName.get("pa66")!, "family")).toBe("common practice");
  });
  test("of a family's media: that of the one named, of several the weakest, as it is of all", () => {
    let compared = 0;
    for (const family of standardLibrary().scope) {
      const rated = family.values.media ?? [];
      const label = ({ origin }: (typeof rated)[number]) => origin!.label;
      for (const one of rated) {
        const same = rated.filter(({ medium }) => medium === one.medium);
        expect(labelOf(family, "media", [one.medium])).toBe(weakest(same.map(label)));
        compared++;
      }
      if (rated.length > 0) expect(labelOf(family, "media")).toBe(weakest(rated.map(label)));
    }
    expect(compared).toBeGreaterThan(10);
    const band = { source: "neale", at: "A4", printed: "1", label: "memory, band only" } as const;
    expect(labelOf({ ...mine, kind: "generic", origins: { density: band } }, "density")).toBe("memory, band only");
  });
});
