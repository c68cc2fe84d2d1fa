import { libraryOf, rank, readGrades } from "../../src/core/grade";
import type { Duty } from "../../src/core/grade";
import { boundUnit, filterRanked, noFilter } from "../../src/taskpane/shortlist/filter";
import { reasonsOf, verdictWords } from "../../src/taskpane/shortlist/words";

const duty: Duty = { pressure: 2, speed: 0.1, temperature: { low: 20, high: 60 }, motion: "turning" };
const own = readGrades(
  [
    ["grade", "running pressure limit [MPa]", "speed limit turning [m/s]", "PV limit [MPa*m/s]", "highest temperature"],
    ["Own strong", 10, 2, 1, 100],
    ["Own weak", 1, 2, 0.1, 100],
    ["Own cool", 10, 2, 1, 50],
    ["Own silent", 10, 2, null, 100],
  ],
  "metric",
  "grades",
);
const ranked = rank(duty, own);
const named = (name: string) => ranked.find(({ grade }) => grade.name === name)!;
const names = (list: readonly { grade: { name: string } }[]) => list.map(({ grade }) => grade.name);

test("verdicts in words, with every reason of a failure", () => {
  expect(verdictWords(named("Own strong"), "metric")).toEqual({
    verdict: "Fits",
    why: "running pressure 20 % governs",
  });
  expect(verdictWords(named("Own weak"), "metric")).toEqual({
    verdict: "Fails",
    why: "running pressure 200 % governs",
  });
  expect(verdictWords(named("Own silent"), "metric")).toEqual({ verdict: "Not judged", why: "no data on PV limit" });
  expect(reasonsOf(named("Own weak"), "metric")).toEqual([
    "running pressure 200 %: 2 MPa against 1 MPa",
    "PV 200 %: 0.2 MPa·m/s against 0.1 MPa·m/s",
  ]);
  expect(reasonsOf(named("Own cool"), "metric")).toEqual(["temperature 60 °C above 50 °C"]);
});

test("filters by words, by kind and by a bound, which the unknown do not pass", () => {
  const filtered = (filter: object) => filterRanked(ranked, { ...noFilter, ...filter }, "rank", "metric").list;
  expect(names(filtered({ text: "own S" }))).toEqual(["Own strong", "Own silent"]);
  expect(filtered({ kind: "own" })).toHaveLength(4);
  expect(filtered({ kind: "generic" }).every(({ grade }) => grade.kind === "generic")).toBe(true);
  expect(names(filtered({ kind: "own", property: "pvLimit", side: "least", bound: "0.5" }))).toEqual([
    "Own strong",
    "Own cool",
  ]);
  expect(names(filtered({ kind: "own", property: "pvLimit", side: "most", bound: "0.5" }))).toEqual(["Own weak"]);
});

test("a bound takes a unit, and a wrong one is told and filters nothing", () => {
  const bound = { ...noFilter, kind: "own" as const, property: "highestTemperature" as const, bound: "200 °F" };
  expect(names(filterRanked(ranked, bound, "rank", "metric").list)).toEqual(["Own strong", "Own weak", "Own silent"]);
  const wrong = filterRanked(ranked, { ...bound, bound: "200 mm" }, "rank", "metric");
  expect(wrong.fault).toMatch(/highest temperature must be in a unit/);
  expect(wrong.list).toHaveLength(ranked.length);
});

test("a bound on a percentage is in %, as the pane shows it, unless it says otherwise", () => {
  const least = { ...noFilter, kind: "demo" as const, property: "swellingSaturated" as const, side: "most" as const };
  for (const bound of ["0.22", "0.22 %", "0.0022 ratio"]) {
    const passed = names(filterRanked(ranked, { ...least, bound }, "name", "metric").list);
    expect(passed).toEqual(["Demo Fennel", "Demo Lovage", "Demo Medlar", "Demo Quince", "Demo Tansy"]);
  }
  expect(boundUnit("swellingSaturated", "inch")).toBe("%");
  expect(boundUnit("pvLimit", "inch")).toBe("psi·ft/min");
});

test("sorts by name and by property, those without data last", () => {
  const only = ranked.filter(({ grade }) => grade.kind === "own");
  expect(names(filterRanked(only, noFilter, "name", "metric").list)).toEqual([
    "Own cool",
    "Own silent",
    "Own strong",
    "Own weak",
  ]);
  expect(names(filterRanked(only, noFilter, "pvLimit", "metric").list).at(-1)).toBe("Own silent");
});

test("the library alone has no own grades", () => {
  expect(rank(duty, libraryOf()).some(({ grade }) => grade.kind === "own")).toBe(false);
});
