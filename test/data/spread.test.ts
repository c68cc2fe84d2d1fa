import { assess, standardLibrary, verdictOf } from "../../src/core/grade";
import type { Criterion, Grade } from "../../src/core/grade";
import { dutyOf, rows } from "./greenhouse";

/** What the demo is for: each criterion governs somewhere, and no grade is the answer to everything. */

const demo = standardLibrary().grades.filter((grade) => grade.kind === "demo");
const judged = rows.map((row) => ({
  row,
  verdicts: demo.map((grade) => ({ grade, ...verdictOf(assess(grade, dutyOf(row))) })),
}));

test.each<Criterion>([
  "static pressure",
  "running pressure",
  "speed",
  "PV",
  "lowest temperature",
  "highest temperature",
  "moisture",
  "wear",
])("%s governs for some duty with some demo grade", (criterion) => {
  const governed = judged.filter(({ verdicts }) => verdicts.some((v) => v.governing.criterion === criterion));
  expect(governed.map(({ row }) => row.id)).not.toEqual([]);
});

test("demo grades lack nothing that any duty asks", () => {
  for (const { row, verdicts } of judged)
    for (const { grade, word } of verdicts) expect([row.id, grade.name, word]).not.toContain("no data");
});

const winner = (verdicts: readonly { grade: Grade; word: string; use?: number }[]) =>
  verdicts.filter((v) => v.word === "fits").sort((a, b) => a.use! - b.use!)[0]?.grade.name;

test("every duty has a demo grade that fits, every demo grade fails a duty and fits another, none wins everywhere", () => {
  const winners = judged.map(({ verdicts }) => winner(verdicts));
  expect(winners).not.toContain(undefined);
  expect(new Set(winners).size).toBeGreaterThanOrEqual(3);
  for (const grade of demo) {
    const words = judged.map(({ verdicts }) => verdicts.find((v) => v.grade === grade)!.word);
    expect([grade.name, words.includes("fits"), words.includes("fails")]).toEqual([grade.name, true, true]);
  }
});

test("the grade chosen for a duty mostly fits; the sheet also shows a failure of PV, one of temperature and a missing datum", () => {
  const library = standardLibrary();
  const chosen = rows.map((row) => verdictOf(assess(library.byName.get(row.grade.toLowerCase().replace(" ", ""))!, dutyOf(row))));
  const not = chosen.filter((v) => v.word !== "fits").map((v) => `${v.word}, ${v.governing.criterion}`);
  expect(not.sort()).toEqual(["fails, PV", "fails, highest temperature", "no data, lowest temperature"]);
});
