import texts from "../../data/grades/families.json";
import generic from "../../data/grades/generic.json";
import notes from "../../data/grades/mediaNotes.json";
import demo from "../../data/grades/demo.json";
import { judge, readDuties, verdictOf } from "../../src/core/duties";
import type { NamedDuty, Word } from "../../src/core/duties";
import { findGrade, mediaClasses, standardLibrary } from "../../src/core/grades/model";
import type { Grade, PropertyKey } from "../../src/core/grades/model";

/** What the figures of one grade, and of a family beside another, owe each other. */

const all = standardLibrary().grades;
const families = all.filter((grade) => grade.kind === "generic");
const of = (name: string, key: PropertyKey) => findGrade(name).values[key as keyof Grade["values"]] as number;
const rounding = 1e-9;

test("there are 23 families, each with every limit, wear rate and rating; what is left out is known", () => {
  expect(generic.grades).toHaveLength(23);
  // only PTFE grows in a step
  const wanted = Object.keys(demo.grades[0]!.values).filter((key) => !/Curve$|^(expansionStep|source|notes)$/.test(key));
  const lacking = families.flatMap(({ name, values }) =>
    wanted.filter((key) => values[key as keyof Grade["values"]] === undefined).map((key) => `${name}: ${key}`),
  );
  // thermosets and imides do not melt; resin and fibre decide how far the epoxy swells
  expect(lacking).toEqual([
    "PAI bearing compound: meltingPoint",
    "PI + graphite: meltingPoint",
    "phenolic fabric: meltingPoint",
    "epoxy + PTFE: meltingPoint",
    "epoxy + PTFE: swelling50",
    "epoxy + PTFE: swellingSaturated",
  ]);
});

/** The end of the band that is safe; what is not here is neither. */
const highIsSafe: ReadonlySet<string> = new Set([
  ...["lowestTemperature", "frictionHigh", "wearHigh", "poisson", "expansion"],
  ...["water50", "waterSaturated", "swelling50", "swellingSaturated"],
]);
test("a value is the safe end of its band", () => {
  const wrong = generic.grades.flatMap(({ grade, values }) =>
    Object.entries(values as Record<string, { value: number | string; band?: number[] }>).flatMap(
      ([key, { value, band }]) => {
        if (!band || typeof value !== "number") return [];
        const [low, high] = band as [number, number];
        const isSafe = key === "density" ? low <= value && value <= high : value === (highIsSafe.has(key) ? high : low);
        return low < high && isSafe ? [] : [`${grade}: ${key}`];
      },
    ),
  );
  expect(wrong).toEqual([]);
});

describe.each(all.map((grade) => [grade.name, grade.values] as const))("%s", (_, v) => {
  test("its limits agree with each other", () => {
    expect(v.runningPressure!).toBeLessThanOrEqual(v.staticPressure! + rounding);
    expect(v.staticPressure!).toBeLessThanOrEqual(v.compressiveStrength! + rounding);
    expect(v.pvLimit!).toBeLessThanOrEqual(v.runningPressure! * v.speedTurning!);
    expect(v.lowestTemperature!).toBeLessThan(v.highestTemperature!);
    expect(v.highestTemperature!).toBeLessThanOrEqual(v.shortTermTemperature!);
    if (v.meltingPoint !== undefined) expect(v.shortTermTemperature!).toBeLessThan(v.meltingPoint);
    expect(v.frictionLow!).toBeLessThan(v.frictionHigh!);
    expect(v.wearLow!).toBeLessThan(v.wearHigh!);
  });
  test("moisture: more water, more growth, never more than the water's own volume", () => {
    expect(v.water50!).toBeLessThanOrEqual(v.waterSaturated!);
    if (v.swelling50 === undefined) return;
    expect(v.swelling50).toBeLessThanOrEqual(v.swellingSaturated!);
    // volumes added: w·ρ/ρ_w over three lengths; fabric grows through its layers alone
    const share = /fabric/.test(_) ? 1 : 3;
    expect(v.swellingSaturated!).toBeLessThanOrEqual((v.waterSaturated! * v.density!) / share + 1.5e-4);
  });
  test("curves fall and end at the highest temperature or before", () => {
    for (const curve of [v.pressureCurve, v.pvCurve]) {
      if (!curve) continue;
      expect(curve.at(-1)!.at).toBeLessThanOrEqual(v.highestTemperature!);
      curve.slice(1).forEach((point, i) => expect(point.value).toBeLessThanOrEqual(curve[i]!.value));
    }
  });
});

/** More of it is better. */
const better: readonly PropertyKey[] = [
  ...(["staticPressure", "runningPressure", "speedTurning", "speedSwinging", "speedLinear"] as const),
  ...(["pvLimit", "highestTemperature", "compressiveModulus"] as const),
];
test.each([
  ["PA66 lubricated", "PA66", []],
  // PTFE particles soften the matrix (common practice)
  ["POM + PTFE", "POM copolymer", ["compressiveModulus"]],
  // fillers raise the friction: the Tribology Handbook, A4, prints up to 0.35 for filled PTFE
  ["PTFE + glass", "PTFE", ["frictionHigh"]],
  ["PTFE + carbon", "PTFE", ["frictionHigh"]],
  ["PTFE + bronze", "PTFE", ["frictionHigh"]],
  ["PEEK bearing compound", "PEEK", []],
] as const)("%s is nowhere below %s, but for what is said", (filled, plain, said) => {
  const below = better.filter((key) => of(filled, key) < of(plain, key));
  const above = (["wearHigh", "frictionHigh"] as const).filter((key) => of(filled, key) > of(plain, key));
  expect([...below, ...above]).toEqual(said);
});

const headings = ["duty", "load [N]", "bore [mm]", "length [mm]", "motion", "rpm", "temperature", "moisture", "media", "dirt"];
const bush = (...[load, rpm, temperature, moisture = null, media = null, dirt = null]: (number | string | null)[]) => {
  const row = ["D", load!, 20, 20, rpm === 0 ? "static" : "turning", rpm === 0 ? null : rpm!, temperature!];
  const { lines } = readDuties([headings, [...row, moisture, media, dirt]], "metric", "duties");
  return lines[0]!.duty as NamedDuty;
};
/** 400 N on 20 × 20 mm is 1 MPa, and 19.1 rpm 0.02 m/s. */
test.each<[string, string, NamedDuty, Word, string]>([
  // Neale: The Tribology Handbook, 2nd ed. 1995, A5, p. A5.1: 10 MPa for unfilled PA, POM and UHMWPE
  ["PA66 at rest under 12 MPa", "PA66", bush(4800, 0, "20 to 23"), "fails", "staticPressure"],
  // the same: 30 to 80 MPa for PI, PAI and PEEK
  ["PEEK at rest under 12 MPa", "PEEK", bush(4800, 0, "20 to 23"), "fits", "staticPressure"],
  // the same, section A4: 1000 lbf/in² × ft/min (0.035 MPa·m/s) for thermoplastics without filler (memory)
  ["POM at 0.05 MPa·m/s", "POM copolymer", bush(400, 47.75, "20 to 23"), "fails", "pv"],
  // the same, section A4: 60 000 lbf/in² for woven PTFE, a highest load; moving tests ran at 62 to 207 MPa for two hours (ASTM STP, 1974)
  ["woven PTFE at rest under 250 MPa", "PTFE fabric", bush(100_000, 0, "20 to 23"), "fits", "staticPressure"],
  ["woven PTFE turning under 250 MPa", "PTFE fabric", bush(100_000, 1, "20 to 23"), "fails", "runningPressure"],
  // Crawford: Plastics Engineering, Table 1.8, p. 31: PA66 to 90 °C, PEEK to 204 °C
  ["PA66 in 110 °C", "PA66", bush(40, 10, "20 to 110"), "fails", "highestTemperature"],
  ["PEEK in 150 °C", "PEEK", bush(400, 5, "20 to 150"), "fits", "pv"],
  // Margolis: Engineering Plastics Handbook, 2006, polyacetals: poor against acids and weather
  ["POM in strong acids", "POM copolymer", bush(400, 10, "20 to 23", "wet", "strong acids"), "fails", "media"],
  ["POM in the open air", "POM homopolymer", bush(400, 10, "20 to 23", "dry", "UV and weather"), "fails", "media"],
  // Neale, A5, p. A5.2: PTFE with fillers excellent in acids, very poor under radiation
  ["PTFE with carbon in weak acids", "PTFE + carbon", bush(400, 10, "20 to 23", "wet", "weak acids"), "fits", "runningPressure"],
  ["PTFE with carbon under radiation", "PTFE + carbon", bush(400, 10, "20 to 23", "dry", "gamma radiation"), "fails", "media"],
])("%s", (_, name, duty, word, governing) => {
  const verdict = verdictOf(judge(findGrade(name), duty));
  expect([verdict.word, verdict.governing.criterion.id]).toEqual([word, governing]);
});

test("each family has its words for the docs and notes on its media, and no other has", () => {
  const names = families.map(({ name }) => name).sort();
  expect(Object.keys(texts).sort()).toEqual(names);
  expect(Object.keys(notes).sort()).toEqual(names);
  const classes: readonly string[] = mediaClasses;
  for (const noted of Object.values(notes))
    expect(Object.keys(noted).filter((name) => !classes.includes(name))).toEqual([]);
});
