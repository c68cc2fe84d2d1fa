import { verdictText } from "../../src/core/duties";
import { libraryOf, property, readGrades } from "../../src/core/grades/model";
import type { PropertyKey } from "../../src/core/grades/model";
import { standingCautions } from "../../src/core/grades/cautionsOf";
import { emptyForm } from "../../src/taskpane/state/form";
import type { Texts } from "../../src/taskpane/state/form";
import { neededFor } from "../../src/taskpane/state/needed";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { checkScores, scoreOf, sideWords } from "../../src/taskpane/shortlist/better";
import { boundUnit, filterRanked, noFilter } from "../../src/taskpane/shortlist/filter";
import { listOf } from "./listOf";
import { countWords, dataText, ownCautions, reasonsOf } from "../../src/taskpane/shortlist/words";

const dutyOf = (more: Partial<Texts> = {}) => {
  // 600/(20·15) = 2 MPa; v = π·d·n/60 000 = 0.1 m/s
  const shaft = { load: "600", bore: "20", length: "15", rpm: String(6000 / (20 * Math.PI)), temperature: "20 to 60" };
  return readDuty([{ ...emptyForm[0], ...shaft, ...more }], "metric").duty!;
};
const own = readGrades(
  [
    [
      "grade",
      "running pressure limit [MPa]",
      "speed limit turning [m/s]",
      "PV limit [MPa*m/s]",
      "highest temperature",
      "shafts suited",
      "soft shaft",
      "least shaft hardness",
    ],
    ["Own strong", 10, 2, 1, 100, "soft steel", "good", 300],
    ["Own weak", 1, 2, 0.1, 100, null, null, null],
    ["Own cool", 10, 2, 1, 50, null, null, null],
    ["Own silent", 10, 2, null, 100, null, null, null],
  ],
  "metric",
  "grades",
);
const ranked = listOf(dutyOf(), own);
const named = (name: string, list = ranked) => list.find(({ grade }) => grade.name === name)!;
const names = (list: readonly { grade: { name: string } }[]) => list.map(({ grade }) => grade.name);
const told = (name: string, list = ranked) => verdictText(named(name, list).checks, "metric", named(name, list));

// in surroundings of 60 °C a limit stated at 23 °C is (100 − 60)/(100 − 23) of itself
test("the verdict is the line that VERDICT answers, and every reason stands below it with its numbers", () => {
  expect(told("Own strong")).toBe("fits, PV 39 %");
  expect(reasonsOf(named("Own strong"), "metric")).toEqual([]);
  expect(told("Own weak")).toBe("fails, PV 385 %");
  expect(reasonsOf(named("Own weak"), "metric")).toEqual([
    "fails, running pressure 200 %: 2 MPa against 1 MPa",
    "fails, PV 385 %: 0.2 MPa·m/s against 0.05195 MPa·m/s",
    "fails, bore temperature 385 %: 214 °C against 100 °C",
  ]);
  expect(told("Own silent")).toBe("no data, PV");
  expect(reasonsOf(named("Own silent"), "metric")).toEqual(["no data, bore temperature: PV limit"]);
  expect(told("Own cool")).toBe("fails, temperature 60 °C above 50 °C");
  // all that is not known in one line
  const blank = listOf(
    dutyOf(),
    readGrades(
      [
        ["grade", "density"],
        ["Own blank", 1.4],
      ],
      "metric",
      "grades",
    ),
  );
  expect(told("Own blank", blank)).toBe("no data, running pressure");
  expect(reasonsOf(named("Own blank", blank), "metric")).toEqual([
    "no data, highest temperature; speed; PV; bore temperature: PV limit",
  ]);
});

test("what asks for care stands in the open, with the greatest use beside it: a soft shaft", () => {
  const list = listOf(dutyOf({ shaft: "soft steel", hardness: "150" }), own);
  const strong = named("Own strong", list);
  expect(strong.word).toBe("care");
  expect(told("Own strong", list)).toBe("care, shaft 150 HB, at least 300 HB wanted; PV 39 %");
  // its bar is that of the greatest use
  expect(strong.use).toBeCloseTo((0.2 * 77) / 40, 9);
  expect(reasonsOf(strong, "metric")).toEqual([]);
  // beside a worse reason care is still a line of its own
  const soft = listOf(dutyOf({ shaft: "soft steel", hardness: "150", load: "6000" }), own);
  expect(reasonsOf(named("Own strong", soft), "metric")).toEqual([
    "fails, running pressure 200 %: 20 MPa against 10 MPa",
    "fails, PV 385 %: 2 MPa·m/s against 0.5195 MPa·m/s",
    "fails, bore temperature 385 %: 214 °C against 100 °C",
    "care, shaft 150 HB, at least 300 HB wanted",
  ]);
});

test("how well the weakest figure is known stands beside the verdict", () => {
  expect(dataText(named("Own strong"))).toBe("data: own");
  expect(dataText(named("Demo Quince"))).toBe("data: invented");
  const [family] = ranked.filter(({ grade, word }) => grade.kind === "generic" && word !== "no data");
  expect(dataText(family!)).toMatch(/^data: (read|derived|memory|common practice|memory, band only)$/);
});

test("kinds stand apart, in the order in which functions look for a grade, each ranked: fits, care, no data, fails", () => {
  const kinds = ranked.map(({ grade }) => grade.kind);
  expect([...new Set(kinds)]).toEqual(["own", "generic", "demo"]);
  expect(kinds).toEqual([...kinds].sort((a, b) => kinds.indexOf(a) - kinds.indexOf(b)));
  expect(names(ranked).slice(0, 4)).toEqual(["Own strong", "Own silent", "Own weak", "Own cool"]);
  expect(countWords(ranked.slice(0, 4))).toBe("1 fits, 1 no data, 2 fails");
  expect(countWords([])).toBe("0 fits");
});

test("a grade's own cautions leave out those that every verdict carries", () => {
  const cautions = ownCautions(named("Demo Quince"), dutyOf(), "metric", own);
  expect(cautions[0]).toMatch(/^Demo Quince is invented for the demo/);
  expect(cautions.filter((caution) => standingCautions.includes(caution))).toEqual([]);
});

test("a band that begins at rest is cautioned as the motion that it reaches", () => {
  const wet = (rpm: string) => ownCautions(named("Demo Quince"), dutyOf({ rpm, moisture: "wet" }), "metric", own);
  expect(wet("0 to 60")).toContain("PV limits are for dry running unless their condition says otherwise.");
  expect(wet("0 to 60")).toEqual(wet("60"));
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
  expect(names(filterRanked(ranked, bound, "rank", "metric").list)).toEqual(["Own strong", "Own silent", "Own weak"]);
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
  expect(listOf(dutyOf(), libraryOf()).some(({ grade }) => grade.kind === "own")).toBe(false);
});

describe("side by side", () => {
  test("the better side is told in a word where it is known and they differ", () => {
    expect(sideWords([1, 2])).toEqual(["", "better"]);
    expect(sideWords([1, 3, 2])).toEqual(["", "best", ""]);
    expect(sideWords([3, 3, 2])).toEqual(["better", "better", ""]);
    expect(sideWords([undefined, 2, 1])).toEqual(["", "better", ""]);
    expect(sideWords([2, 2])).toEqual(["", ""]);
    // one figure alone is better than nothing known of the other
    expect(sideWords([undefined, 2])).toEqual(["", ""]);
  });

  test("more pressure, a good rating and a softer shaft are better; what the duty decides has no better side", () => {
    const [strong, weak] = [named("Own strong").grade, named("Own weak").grade];
    const score = (key: string) => [strong, weak].map((grade) => scoreOf(grade, property(key as PropertyKey)));
    expect(sideWords(score("runningPressure"))).toEqual(["better", ""]);
    const other = readGrades(
      [
        ["grade", "least shaft hardness", "dirt", "friction high", "compressive modulus [MPa]"],
        ["A", 300, "good", 0.2, 3000],
        ["B", 250, "fair", 0.1, 2000],
      ],
      "metric",
      "grades",
    ).grades;
    const words = (key: string) => sideWords(other.slice(0, 2).map((g) => scoreOf(g, property(key as PropertyKey))));
    expect(words("shaftHardness")).toEqual(["", "better"]);
    expect(words("dirt")).toEqual(["better", ""]);
    expect(words("frictionHigh")).toEqual(["", "better"]);
    expect(words("compressiveModulus")).toEqual(["", ""]);
  });

  test("a criterion is met better by its word, then by its use; without data it has no place", () => {
    const pv = (name: string) => named(name).checks.find(({ criterion }) => criterion.id === "pv")!;
    expect(sideWords(checkScores([pv("Own weak"), pv("Own strong")]))).toEqual(["", "better"]);
    expect(sideWords(checkScores([pv("Own silent"), pv("Own strong")]))).toEqual(["", ""]);
    const { criterion, duty } = pv("Own strong");
    const made = (word: "fits" | "care", use?: number) => ({ ...pv("Own strong"), criterion, duty, word, use });
    // 95 % fits, and is better than 20 % that asks for care
    expect(sideWords(checkScores([made("fits", 0.95), made("care", 0.2)]))).toEqual(["better", ""]);
    expect(sideWords(checkScores([made("fits", 0.95), made("fits")]))).toEqual(["", ""]);
  });
});

describe("what would have to be known for a verdict", () => {
  const needed = (more: Partial<Texts>, library = libraryOf()) => {
    const duty = dutyOf(more);
    return neededFor(duty, listOf(duty, library));
  };

  test("a life by a rate of flat tests needs the fit, which is asked for as a whole", () => {
    const asked = { hours: "100", allowance: "0.2" };
    expect(needed(asked)).toMatchObject({
      fields: ["boreZone", "shaftZone", "outsideZone", "housingZone", "housing", "shaft", "wall"],
      waiting: ["wear life"],
    });
    const fit = { boreZone: "D10", shaftZone: "h9", outsideZone: "s7", housingZone: "H7", housing: "carbon steel" };
    expect(needed({ ...asked, ...fit, shaft: "hardened steel", outside: "24" }).fields).toEqual([]);
    expect(needed({ ...asked, ...fit, outside: "24" }).fields).toEqual(["shaft"]);
    expect(needed({ hours: "100" }).fields).toContain("allowance");
  });

  test("figures that grades lack are told where none but invented grades hold", () => {
    const headings = [
      "grade",
      "running pressure limit [MPa]",
      "speed limit turning [m/s]",
      "PV limit [MPa*m/s]",
      "highest temperature",
    ];
    const rows = (pv: number | null) => {
      const { own: grades, ...rest } = readGrades([headings, ["A", 10, 2, pv, 100]], "metric", "grades");
      return { ...rest, own: grades, grades };
    };
    expect(needed({}, rows(1))).toEqual({ fields: [], waiting: [], lacksFigures: false });
    expect(needed({}, rows(null))).toEqual({ fields: [], waiting: [], lacksFigures: true });
  });
});
