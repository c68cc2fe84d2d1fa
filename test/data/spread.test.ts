import { criteria, judge, verdictOf, words } from "../../src/core/duties";
import type { NamedDuty, Word } from "../../src/core/duties";
import { findGrade, standardLibrary } from "../../src/core/grades/model";
import type { Grade } from "../../src/core/grades/model";
import { dutyRows } from "../../src/book/greenhouse/dutyRows";
import { duties, table } from "./greenhouse";

/** What the demo is for: each criterion governs somewhere, each verdict occurs, and no grade is the answer to everything. */

const library = standardLibrary();
const demo = library.grades.filter((grade) => grade.kind === "demo");
const families = library.grades.filter((grade) => grade.kind === "generic");
const judged = duties.map((duty) => ({ duty, verdicts: demo.map((grade) => ({ grade, ...on(grade, duty) })) }));

function on(grade: Grade, duty: NamedDuty) {
  const checks = judge(grade, duty);
  return { checks, ...verdictOf(checks) };
}
const chosen = (name: string) => {
  const duty = duties.find((d) => d.name === name)!;
  return on(findGrade(duty.grade!, library), duty);
};

test("every row is read, a step with its duty, and no column is left over", () => {
  expect(table.lines.map(({ name, duty }) => [name, (duty as NamedDuty).steps?.length ?? String(duty)])).toEqual(
    dutyRows.flatMap(({ duty }, i) => {
      if (duty === undefined) return [];
      const next = dutyRows.findIndex((row, j) => j > i && row.duty !== undefined);
      return [[duty, (next < 0 ? dutyRows.length : next) - i]];
    }),
  );
  expect(table.unknownColumns).toEqual([]);
});

/** Each duty with its own grade, as read through by a person. */
const expected: Readonly<Record<string, readonly [Word, string]>> = {
  "Roof-vent pivot": ["fits", "peakPressure"],
  "Roof-vent stop pin in a storm": ["fits", "staticPressure"],
  "Vent-arm joint on the outside": ["care", "media"],
  "Curtain-rail slide": ["fits", "pv"],
  "Seed-drum spindle": ["fits", "wearLife"],
  "Nutrient-mixer shaft": ["fits", "pv"],
  "Overflow-gate pivot in the tank": ["fails", "clearance"],
  "Belt idler in its lever": ["care", "grip"],
  "Nutrient-mixer thrust collar": ["fits", "pv"],
  "Acid-dosing pump washer": ["care", "media"],
  "Bench roller": ["fits", "pv"],
  "Fog-chamber trolley roller": ["no data", "moisture"],
  "Potting turntable washer": ["care", "shaft"],
  "Shade-screen winding drum": ["fails", "pv"],
  "Irrigation-boom slide": ["fits", "pv"],
  "Compost-auger tail washer": ["care", "dirt"],
  "Air-heater flap shaft": ["fits", "wearLife"],
  "Stand-by burner fan spindle": ["care", "boreTemperature"],
  "Wind-gauge spindle on the mast": ["fits", "speed"],
  "Water-tank trunnion": ["fits", "runningPressure"],
  "Crane-mast collar at rest": ["fits", "facePressure"],
  "Tilting-bench pivot, flanged": ["fits", "facePressure"],
  "Gantry wheel, flanged, as drawn": ["care", "notJudged"],
  "Seed-drum gear wheel, flanged, in a plastic bracket": ["fits", "boreTemperature"],
  "Grow-tower foot bearing": ["fits", "wearLife"],
  "Bench-lift drum shaft": ["fits", "wearLife"],
  "Roller-door shaft": ["fails", "lowestTemperature"],
  "Steam-lance swivel": ["fails", "highestTemperature"],
  "Seed-tray steamer roller": ["fails", "shortPeak"],
  "Lamp-hoist pulley, overhung": ["fails", "edgePressure"],
  "Curtain-winder end bush": ["fails", "tilt"],
  "Compost-gate hinge": ["care", "peakPressure"],
  "Shaking-sieve arm": ["care", "damping"],
  "Pot-press rocker": ["care", "shock"],
  "Leak-test chamber tray spindle": ["care", "vacuum"],
  "Air-damper blade pin": ["care", "lengthOverBore"],
};

test.each(duties.map(({ name }) => name))("%s has the verdict that was read through", (name) => {
  const { word, governing } = chosen(name);
  expect([word, governing.criterion.id]).toEqual(expected[name]);
});

test("each criterion governs a duty, and each word is the verdict of one", () => {
  const found = Object.values(expected);
  expect(criteria.map(({ id }) => id).filter((id) => !found.some(([, governing]) => governing === id))).toEqual([]);
  expect(words.filter((word) => !found.some(([other]) => other === word))).toEqual([]);
});

const use = (name: string, id: string) => chosen(name).checks.find(({ criterion }) => criterion.id === id)!.use!;

test.each([
  // k·p·v·t against the allowance (linear wear law: Archard, J. Appl. Phys. 24 (1953), memory)
  ["Seed-drum spindle", "wearLife", (300 * 3600 * 2e-6 * (180 / (15 * 20)) * ((Math.PI * 15 * 120) / 60000)) / 0.2],
  // three steps of 5, 2 and 60 minutes, the last at rest: p·v weighed with their times
  [
    "Grow-tower foot bearing",
    "wearLife",
    (12000 * 3600 * 1.5e-6 * Math.PI * 25 * (900 * 10 * 5 + 2400 * 4 * 2)) / (25 * 30 * 60000 * 67) / 0.3,
  ],
  // the heavier end of "640 to 960", running two minutes out of twelve
  [
    "Bench-lift drum shaft",
    "wearLife",
    ((2500 * 3600 * 1.5e-6 * (960 / 625) * ((Math.PI * 25 * 18) / 60000)) / 0.25) * (2 / 12),
  ],
  // F·K/(d·L) over the curve's 70 − 42·(60 − 23)/(90 − 23) MPa at 60 °C
  ["Roof-vent stop pin in a storm", "staticPressure", (12500 * 1.4) / 625 / (70 - (42 * 37) / 67)],
  // a ring of 30 to 52 mm under 1.5 times its load, the limit halved; the curve at 50 °C
  [
    "Crane-mast collar at rest",
    "facePressure",
    (14000 * 1.5) / ((Math.PI / 4) * (52 ** 2 - 30 ** 2)) / ((70 - (42 * 27) / 67) / 2),
  ],
  // the curve between 23 °C: 0.08 and 45 °C: 0.04 MPa·m/s, at 42 °C
  [
    "Shade-screen winding drum",
    "pv",
    ((2600 / (30 * 35)) * ((Math.PI * 30 * 12) / 60000)) / (0.08 - (0.04 * 19) / 22),
  ],
  // no curve, and not above 23 °C: the limit as it is stated
  ["Nutrient-mixer shaft", "pv", ((100 / 400) * ((Math.PI * 16 * 150) / 60000)) / 0.14],
])("%s: the use of %s is what a sum by hand gives", (name, id, byHand) => {
  expect(use(name, id) / byHand).toBeCloseTo(1, 12);
});

test("PV curves of the demo lie on or below what the heat balance leaves and end at 0 where it is hottest; both curves are done without somewhere", () => {
  for (const { name, values } of demo) {
    const { pvLimit, pvCurve, pressureCurve, highestTemperature: most } = values;
    for (const { at, value } of pvCurve ?? [])
      expect([name, at, value <= (pvLimit! * (most! - at)) / (most! - 23) + 1e-12]).toEqual([name, at, true]);
    if (pvCurve) expect([name, pvCurve.at(-1)]).toEqual([name, { at: most, value: 0 }]);
    if (pressureCurve) expect([name, pressureCurve[pressureCurve.length - 1]!.at]).toEqual([name, most]);
  }
  for (const curve of ["pvCurve", "pressureCurve"] as const)
    expect(demo.filter(({ values }) => values[curve] === undefined)).toHaveLength(1);
});

test("demo grades lack nothing that any duty asks", () => {
  for (const { duty, verdicts } of judged)
    for (const { grade, word } of verdicts) expect([duty.name, grade.name, word]).not.toContain("no data");
});

test("every duty has a demo grade that holds, every demo grade fails a duty and fits another, none wins everywhere", () => {
  const holding = judged.map(({ duty, verdicts }) => ({
    name: duty.name,
    best: verdicts
      .filter(({ word }) => word === "fits" || word === "care")
      .sort((a, b) => Number(b.word === "fits") - Number(a.word === "fits") || a.use! - b.use!)[0]?.grade.name,
  }));
  expect(holding.filter(({ best }) => best === undefined)).toEqual([]);
  expect(new Set(holding.map(({ best }) => best)).size).toBeGreaterThanOrEqual(3);
  for (const grade of demo) {
    const found = judged.map(({ verdicts }) => verdicts.find((v) => v.grade === grade)!.word);
    expect([grade.name, found.includes("fits"), found.includes("fails")]).toEqual([grade.name, true, true]);
  }
});

/** Where no generic family can fit, since care is the duty's own and no figure of a grade lifts it. */
const withoutFamily: Readonly<Record<string, readonly [Word, why: string]>> = {
  "Gantry wheel, flanged, as drawn": ["care", "its friction is not judged"],
  "Leak-test chamber tray spindle": ["care", "PV limits rely on air"],
  "Air-damper blade pin": ["care", "the bush is too short for its bore"],
};

test.each(duties)("$name: a generic family fits, or it is known why none does", (duty) => {
  const found = families.map((grade) => on(grade, duty).word);
  const best = words.reduce((a, b) => (found.includes(b) ? b : a));
  expect(best).toBe(withoutFamily[duty.name]?.[0] ?? "fits");
});

test.each([
  // polyvinylidene fluoride bears the sun, acetal does not (Margolis: Engineering Plastics Handbook, polyacetals; the first from memory)
  ["Vent-arm joint on the outside", ["PVDF"]],
  // PTFE with fillers excellent in acids (Neale: The Tribology Handbook, 2nd ed. 1995, A5, p. A5.2), glass excepted
  ["Acid-dosing pump washer", ["PTFE + carbon"]],
  // the same: water and acids
  ["Nutrient-mixer thrust collar", ["PTFE + carbon"]],
  // polyetheretherketone, PTFE and its carbon compound bear steam, polyimides do not (general handbooks of plastics, memory)
  ["Steam-lance swivel", ["PTFE", "PTFE + carbon", "PEEK"]],
  ["Seed-tray steamer roller", ["PEEK bearing compound"]],
  // polyethylene of ultra-high molar mass bears abrasion best (memory)
  ["Compost-auger tail washer", ["UHMWPE"]],
  // stiffer, and growing a little less, it keeps its grip
  ["Belt idler in its lever", ["PEEK bearing compound"]],
])("%s leaves the families that are known for it", (name, known) => {
  const duty = duties.find((d) => d.name === name)!;
  expect(families.filter((grade) => on(grade, duty).word === "fits").map((grade) => grade.name)).toEqual(known);
});
