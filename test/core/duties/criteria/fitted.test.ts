import { functions } from "../../../../src/core";
import { criteria } from "../../../../src/core/duties";
import { call, pressedBush } from "../../../support";

/** The verdicts and figures of one duty, by criterion. */
const checks = (fields: Record<string, unknown>, grade = "Demo Sorrel") =>
  call(functions.DUTYCHECKS, [pressedBush(fields), "", grade]).slice(1);
function lineOf(id: string, fields: Record<string, unknown>, grade?: string) {
  const row = checks(fields, grade).find(([name]) => name === id)!;
  return { word: String(row[5]), reason: String(row[6]) };
}

test("each criterion stands once among the checks, judged or not asked", () => {
  const names = checks({}).map(([name]) => name);
  expect([...names].sort()).toEqual(criteria.map(({ heading }) => heading).sort());
});

test("a bush that is loose from the first is told as loose, one that comes loose by when it does", () => {
  // outside 22.95 to 22.98 in a seat of 23 to 23.021 mm: 0.071 mm at the worst
  expect(lineOf("grip", { "outside zone": "-0.05/-0.02", temperature: 23 })).toEqual({
    word: "fails",
    reason: "grip: loose in the housing by 0.071 mm",
  });
  const kept = { "outside zone": "0.05/0.05", "share of grip kept": "60 %" };
  expect(lineOf("grip", kept).reason).toMatch(/^grip lost when cold again, by /);
});

test("edge pressure fails where the lower figure is above the strength, is care where the upper alone is", () => {
  const said = new Set<string>();
  for (const load of [50, 200, 300, 500, 2000]) {
    const { word, reason } = lineOf("edge pressure", { load, slope: 0.3 }, "Demo Fennel");
    const [, low, high] = /edge pressure (\d+) % to (\d+) %/.exec(reason) ?? [];
    said.add(word);
    if (low !== undefined) expect([word, Number(high) >= 100]).toEqual([Number(low) > 100 ? "fails" : "care", true]);
    else expect(word).toBe("fits");
  }
  expect([...said]).toEqual(["fits", "care", "fails"]);
  // Sorrel is rated fair for edge load
  expect(lineOf("edge pressure", { load: 5, slope: 0.01 })).toMatchObject({
    word: "care",
    reason: expect.stringMatching(/^edge load fair/) as string,
  });
});
