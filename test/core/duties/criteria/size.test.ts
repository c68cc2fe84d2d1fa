import { criteria, field, fieldKeys } from "../../../../src/core/duties";
import type { FieldValues } from "../../../../src/core/duties";
import { finding, full, isAsked, line, on, resting, said } from "../support";

describe("length over bore from 0.5 to 2 (common practice, no source)", () => {
  const ratio = (length: number, bore = 20) => on({ bore, length, load: 60 });
  test("at, just inside and just outside", () => {
    for (const [length, word] of [
      [9.99, "care"],
      [10, "fits"],
      [10.01, "fits"],
      [39.99, "fits"],
      [40, "fits"],
      [40.01, "care"],
    ] as const)
      expect([length, finding("lengthOverBore", full, ratio(length)).word]).toEqual([length, word]);
    expect(finding("lengthOverBore", full, ratio(30))).toMatchObject({ value: 1.5, limit: 2, figures: [] });
    expect(finding("lengthOverBore", full, ratio(8))).toMatchObject({ value: 0.4, limit: 0.5 });
    expect(said("lengthOverBore", full, ratio(8))).toBe("care, length 0.4 times the bore, 0.5 to 2 is common practice");
    expect(said("lengthOverBore", full, ratio(40.5))).toBe(
      "care, length 2.02 times the bore, 0.5 to 2 is common practice",
    );
  });
  test("inches that make exactly a half or a double are no care", () => {
    for (let i = 1; i <= 400; i++) {
      const bore = i * 0.05 * 25.4;
      for (const length of [i * 0.025 * 25.4, i * 0.1 * 25.4])
        expect([i, finding("lengthOverBore", full, ratio(length, bore)).word]).toEqual([i, "fits"]);
    }
  });
  test("at rest too, and with the least use to follow", () => {
    expect(line(full, on({ length: 5 }, resting))).toBe(
      "care, length 0.25 times the bore, 0.5 to 2 is common practice; static pressure 10 %",
    );
  });
});

describe("what nothing judges is told, and leaves care", () => {
  const open = criteria.find(({ id }) => id === "notJudged")!.fields;
  test("one by one, by heading", () => {
    expect(open).toContain("loadTurns");
    expect(line(full, on({ loadTurns: "yes" }))).toBe("care, not judged: load turns; PV 50 %");
  });
  test("a default says nothing", () => expect(isAsked("notJudged", on({ loadTurns: "no" }))).toBe(false));
  test("names and costs are not for judging", () => {
    const priced: FieldValues = { grade: "PA66", piecesAYear: 50, labour: 20, downtime: 40 };
    expect(isAsked("notJudged", on(priced))).toBe(false);
  });
  test("every field is judged by some criterion, told as not judged, or a name or a cost", () => {
    const looked = new Set(criteria.flatMap(({ fields }) => fields));
    const rest = fieldKeys.filter((key) => !looked.has(key));
    expect(rest.filter((key) => field(key).group !== "cost")).toEqual(["duty", "part", "grade"]);
    const judged = criteria.filter(({ id }) => id !== "notJudged").flatMap(({ fields }) => fields);
    for (const key of open) expect(judged).not.toContain(key);
  });
});
