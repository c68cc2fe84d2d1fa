import { functions } from "../../src/core";
import { found, judge, verdictOf } from "../../src/core/duties";
import { findGrade, readGrades, standardLibrary } from "../../src/core/grades/model";
import { emptyForm } from "../../src/taskpane/state/form";
import type { Texts } from "../../src/taskpane/state/form";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { zoneFits, turnText } from "../../src/taskpane/find/turns";
import { boreFigure } from "../../src/taskpane/figures/bore";
import { edgeFigure } from "../../src/taskpane/figures/edge";
import { fitFigure } from "../../src/taskpane/figures/fit";
import { roomFigure } from "../../src/taskpane/figures/room";
import { sweepFigure } from "../../src/taskpane/figures/sweep";
import { isUntold } from "../../src/taskpane/figures/told";
import type { Subject, Told, Untold } from "../../src/taskpane/figures/told";
import { wearFigure } from "../../src/taskpane/figures/wear";
import { blockOf } from "../../src/taskpane/insert/blocks";
import { Sheet } from "./evaluate";
import { boundsOf, edgeOf, frameOf, hardest, pointsOf } from "../../src/taskpane/figures/outline";
import { call, pressedBush } from "../support";

const frame = { speed: [0.001, 10], pressure: [0.01, 100] } as const;

test("pressure limit, PV line and speed limit meet where p·v is the PV limit", () => {
  expect(edgeOf({ pressure: 10, speed: 2, pv: 1 }, frame)).toEqual([
    { speed: 0.001, pressure: 10 },
    { speed: 0.1, pressure: 10 },
    { speed: 2, pressure: 0.5 },
    { speed: 2, pressure: 0.01 },
  ]);
});

test("a PV line beyond both limits leaves a corner", () => {
  expect(edgeOf({ pressure: 10, speed: 2, pv: 100 }, frame)).toEqual([
    { speed: 0.001, pressure: 10 },
    { speed: 2, pressure: 10 },
    { speed: 2, pressure: 0.01 },
  ]);
});

test("what is not known stays open", () => {
  expect(edgeOf({}, frame)).toEqual([]);
  expect(edgeOf({ pressure: 10 }, frame)).toEqual([
    { speed: 0.001, pressure: 10 },
    { speed: 10, pressure: 10 },
  ]);
  expect(edgeOf({ pv: 1 }, frame)).toEqual([
    { speed: 0.01, pressure: 100 },
    { speed: 10, pressure: 0.1 },
  ]);
  expect(edgeOf({ pressure: 10, pv: 1 }, frame).at(-1)).toEqual({ speed: 10, pressure: 0.1 });
});

test("the frame holds every point, limit and corner, and at least a decade", () => {
  const { speed, pressure } = frameOf([{ speed: 0.05, pressure: 3 }], [{ pressure: 10, speed: 2, pv: 1 }]);
  expect(speed[0]).toBeLessThan(0.05);
  expect(speed[1]).toBeGreaterThan(2);
  expect(pressure[0]).toBeLessThan(0.5);
  expect(pressure[1]).toBeGreaterThan(10);
  const small = frameOf([{ speed: 0.05, pressure: 3 }], []);
  expect(small.speed[1] / small.speed[0]).toBeGreaterThanOrEqual(10);
  expect(frameOf([{ speed: 0, pressure: 0 }], []).speed.every((end) => end > 0)).toBe(true);
});

test("where nothing is borne there is no edge, and the frame stays finite", () => {
  expect(edgeOf({ pressure: 10, speed: 2, pv: 0 }, frame)).toEqual([]);
  expect(edgeOf({ pressure: 0, speed: 2, pv: 1 }, frame)).toEqual([]);
  const { speed, pressure } = frameOf([{ speed: 0.05, pressure: 3 }], [{ pressure: 0, speed: 0, pv: 1 }]);
  for (const end of [...speed, ...pressure]) expect(Number.isFinite(end) && end > 0).toBe(true);
});

describe("limits", () => {
  const { grades } = readGrades(
    [
      [
        "grade",
        "running pressure limit",
        "PV limit",
        "PV at temperature",
        "highest temperature",
        "pressure at temperature",
      ],
      ["Own", 12, 1, "20: 1; 80: 0.4", 90, null],
      ["Plain", 12, 1, null, 90, null],
      ["Curved", 12, 1, null, 90, "0: 12; 60: 12; 90: 6"],
    ],
    "metric",
    "grades",
  );
  const bounds = (name: string, duty: ReturnType<typeof dutyOf>) =>
    boundsOf(grades.find((grade) => grade.name === name)!.values, duty.corners[0]!);
  // 1 MPa at 0.1 m/s
  const dutyOf = (more: Texts = {}, ...later: Texts[]) => {
    const shaft = {
      load: "300",
      bore: "20",
      length: "15",
      rpm: String(6000 / (20 * Math.PI)),
      temperature: "20 to 50",
    };
    return readDuty([{ ...emptyForm[0], ...shaft, ...more }, ...later], "metric").duty!;
  };

  test("are those of the checks: in the duty's surroundings, with its design factor", () => {
    const halved = dutyOf({ designFactor: "2" });
    // the curve has 0.7 at 50 °C
    expect(bounds("Own", halved)).toEqual({ pressure: 6, speed: undefined, pv: 0.35 });
    // without a curve (90 − 50)/(90 − 23) of the limit is left
    expect(bounds("Plain", halved).pv).toBeCloseTo(40 / 67 / 2, 12);
    for (const name of ["Own", "Plain", "Curved"]) {
      const checks = judge(
        grades.find((grade) => grade.name === name)!,
        halved,
      );
      expect(bounds(name, halved).pressure).toBe(found(checks, "runningPressure")!.limit);
      expect(bounds(name, halved).pv).toBe(found(checks, "pv")!.limit);
    }
    // the bore is 50 + 67·0.1 = 56.7 °C in motion, and warmer with more PV
    expect(bounds("Curved", dutyOf()).pressure).toBe(12);
    // 50 + 67·0.3 = 70.1 °C, where the curve has 12 − 6·10.1/30
    expect(bounds("Curved", dutyOf({ load: "900" })).pressure).toBeCloseTo(12 - (6 * 10.1) / 30, 9);
  });

  test("no heat to shed, or a bore beyond the curve, leaves nothing: no data is another thing", () => {
    expect(bounds("Plain", dutyOf({ temperature: "20 to 90" })).pv).toBe(0);
    expect(bounds("Own", dutyOf({ temperature: "20 to 85" })).pv).toBe(0);
    // 50 + 67·0.8 = 103.6 °C
    expect(bounds("Curved", dutyOf({ load: "2400" })).pressure).toBe(0);
  });

  test("marks stand at the pressure without the impact factor, one for each step, at the harder corner of a band", () => {
    const points = (duty: ReturnType<typeof dutyOf>) => pointsOf(hardest(duty));
    expect(points(dutyOf({ impactFactor: "2" }))).toEqual(points(dutyOf()));
    expect(
      points(dutyOf({ time: "1" }, { load: "600", rpm: "20", time: "1" })).map(({ pressure, mark }) => [
        pressure,
        mark,
      ]),
    ).toEqual([
      [1, "1"],
      [2, "2"],
    ]);
    expect(points(dutyOf({ load: "300 to 900" }))[0]!.pressure).toBe(3);
    // a bore leaves p·v as it is: of equal PV the harder pressure, and the factors of the verdict count
    expect(points(dutyOf({ bore: "18 to 22" }))[0]!.pressure).toBe(
      Math.max(...dutyOf({ bore: "18 to 22" }).corners.map(({ steps }) => steps[0].bore!.pressure)),
    );
    expect(hardest(dutyOf({ designFactor: "1 to 2" })).designFactor).toBe(2);
    expect(hardest(dutyOf({ impactFactor: "1 to 1.5" })).impactFactor).toBe(1.5);
  });
});

/** A pressed bush on a tilted shaft, its hours and allowance stated: what every picture can be drawn of. */
const whole: Texts = {
  ...{ load: "600", bore: "20", length: "20", rpm: "30", temperature: "-20 to 40", shaft: "soft steel" },
  ...{ outside: "26", outsideZone: "+0.15/+0.20", boreZone: "E10", housingZone: "H7", shaftZone: "h8" },
  ...{ housing: "aluminium alloy", assemblyMoisture: "dry", keptGrip: "90", slope: "0.05" },
  ...{ hours: "500", allowance: "0.2" },
};
const library = standardLibrary();
function subjectOf(more: Texts = {}, grade = "Demo Sorrel", system: "metric" | "inch" = "metric"): Subject {
  const { duty, ...rest } = readDuty([{ ...emptyForm[0], ...whole, ...more }], system);
  if (!duty) throw new Error(JSON.stringify(rest));
  const judged = findGrade(grade, library);
  const checks = judge(judged, duty);
  return { duty, library, system, one: { grade: judged, checks, ...verdictOf(checks) } };
}
function drawn<T extends Told>(figure: T | Untold): T {
  if (isUntold(figure)) throw new Error(figure.why);
  return figure;
}
const why = (figure: object): string => (isUntold(figure) ? figure.why : "");

test("clearance: the rows of FITTABLE on a card of the same fields", () => {
  const { numbers, summary } = drawn(fitFigure(subjectOf()));
  const more = {
    ...{ motion: "", rpm: 30, load: 600, temperature: "-20 to 40", outside: 26 },
    ...{ "share of grip kept": "90 %", "outside zone": "+0.15/+0.20", "shaft zone": "h8" },
  };
  const [, ...table] = call(functions.FITTABLE, [pressedBush(more), "", "Demo Sorrel"]);
  const four = (x: unknown) => String(Number(Number(x).toPrecision(4)));
  expect(numbers.rows).toEqual(
    table.map((row) => [row[0], four(row[1]), four(row[6]), four(row[7]), four(row[10]), row.at(-1)]),
  );
  // bore 20 E10 (+40/+124 µm) after pressing, shaft 20 h8 (0/−33 µm): ISO 286-1:2010, Tables 1, 2 and 4 (memory)
  expect(numbers.rows[0]!.slice(2, 4)).toEqual(["0.04", "0.157"]);
  expect(summary).toMatch(/^Demo Sorrel: .*assembly/);
  expect(why(fitFigure(subjectOf({ shaftZone: "" })))).toBe("shaft zone is missing: the states of a fit need it.");
});

test("bore temperature: between its ends, as the criterion has it", () => {
  const subject = subjectOf();
  const check = found(subject.one.checks, "boreTemperature")!;
  const { bars, limit } = drawn(boreFigure(subject));
  expect(bars[1]).toMatchObject({ from: 40, to: check.value });
  expect(limit).toBe(check.limit);
  expect(why(boreFigure(subjectOf({ motion: "static", hours: "", allowance: "" })))).toMatch(/^At rest/);
});

test("edge pressure: at the duty's slope what the criterion found, at none what a level shaft presses", () => {
  const subject = subjectOf({}, "Demo Fennel");
  const figure = drawn(edgeFigure(subject));
  expect(figure.slope).toBeCloseTo(0.05, 12);
  const middle = figure.tilts.indexOf(0.05);
  const check = found(subject.one.checks, "edgePressure")!;
  expect(figure.lines[1]!.values[middle]).toBeCloseTo(check.value!, 9);
  for (const { values } of figure.lines)
    values.forEach((value, i) => expect(value!).toBeGreaterThanOrEqual(values[Math.max(0, i - 1)]!));
  expect(why(edgeFigure(subjectOf({ slope: "" })))).toMatch(/^Edge pressure needs the slope/);
  // with a slope the picture lacks what the verdict lacks
  expect(why(edgeFigure(subjectOf({ boreZone: "" })))).toMatch(/^no data: .*bore zone/);
});

test("wear: after the shortest life the allowance is worn", () => {
  const subject = subjectOf();
  const life = found(subject.one.checks, "wearLife")!.limit!;
  const figure = drawn(wearFigure(subject));
  const high = figure.lines.at(-1)!.values as number[];
  const at = figure.hours.findIndex((hours) => hours >= life);
  // the allowance lies between the depths before and after
  expect(high[at]!).toBeGreaterThanOrEqual(0.2 * (1 - 1e-3));
  expect(high[at - 1]!).toBeLessThan(0.2);
  expect(figure.allowance).toBe(0.2);
});

test("of a band wear and edge are drawn at the corner that was judged", () => {
  const subject = subjectOf({ load: "300 to 900" });
  const life = found(subject.one.checks, "wearLife")!.limit!;
  const { hours, lines } = drawn(wearFigure(subject));
  const at = hours.findIndex((time) => time >= life);
  expect(lines.at(-1)!.values[at]!).toBeGreaterThanOrEqual(0.2 * (1 - 1e-3));
  const tough = subjectOf({ load: "300 to 900" }, "Demo Fennel");
  const edge = drawn(edgeFigure(tough));
  const check = found(tough.one.checks, "edgePressure")!;
  expect(edge.lines[1]!.values[edge.tilts.indexOf(0.05)]).toBeCloseTo(check.value!, 9);
});

test("room and sweep say what DUTYROOM and DUTYSWEEP answer", () => {
  const subject = subjectOf({ hours: "", allowance: "", slope: "" });
  const { rooms, bars } = roomFigure(subject);
  // one without a unit has no gap before the colon
  expect(rooms.some(({ unit }) => unit === "")).toBe(true);
  expect(bars.filter(({ name }) => !/[^ ]: \S+ to \S+$/.test(name))).toEqual([]);
  const load = rooms.find(({ field }) => field === "load")!;
  expect(load.greatest!.at).toBeGreaterThan(600);
  const swept = drawn(sweepFigure(subject, "load", 300, load.greatest!.at * 1.5));
  // no part of the range is left without a word, and a part with a turn in it has the worse
  expect(swept.bands.map(({ from }) => from)).toEqual(swept.values.slice(0, -1));
  expect(swept.bands.map(({ to }) => to)).toEqual(swept.values.slice(1));
  for (const { to, word } of swept.bands) expect(word === subject.one.word).toBe(to <= load.greatest!.at);
  const past = swept.values.filter((value) => value > load.greatest!.at);
  expect(past.length).toBeGreaterThan(0);
  for (const row of swept.numbers.rows)
    expect(row[3]!.startsWith(subject.one.word)).toBe(Number(row[0]) <= load.greatest!.at);
  expect(turnText(load, "greatest", "fits")).toBe(
    `Greatest load: ${load.greatest!.at} N stays "fits"; beyond it ${load.greatest!.word} (${load.greatest!.by}).`,
  );
  expect(why(sweepFigure(subject, "load", 5, 5))).toBe("Give the lower end first.");
});

test("the tightest zones hold through all states, and a tighter pair does not", () => {
  const { duty, one } = subjectOf({ slope: "", hours: "", allowance: "" });
  const fits = zoneFits(duty, one.grade);
  expect(fits.length).toBeGreaterThan(0);
  const [best] = fits;
  for (const [boreZone, outsideZone] of [[best!.boreZone, best!.outsideZone]]) {
    const subject = subjectOf({ boreZone, outsideZone, slope: "", hours: "", allowance: "" });
    const { numbers } = drawn(fitFigure(subject));
    expect(numbers.rows.filter((row) => /^(fails|no data)/.test(row.at(-1)!))).toEqual([]);
    expect(Math.max(...numbers.rows.map((row) => Number(row[3])))).toBeCloseTo(best!.greatest, 3);
  }
  expect(fits.map(({ greatest }) => greatest)).toEqual([...fits.map(({ greatest }) => greatest)].sort((a, b) => a - b));
});

test("a share of grip that is not told leaves zones in care, and the clearance is that of the states that are judged", () => {
  const { duty, one } = subjectOf({ slope: "", hours: "", allowance: "", keptGrip: "" });
  const fits = zoneFits(duty, one.grade);
  expect(fits.length).toBeGreaterThan(0);
  for (const { least, verdict } of fits) {
    expect(least).toBeGreaterThanOrEqual(0);
    expect(verdict).toMatch(/^care, .*share of grip kept not told \(cold again, no grip kept\)$/);
  }
});

test("a figure of the grade that no pair of zones can be judged without is named", () => {
  const { duty, one } = subjectOf({ slope: "", hours: "", allowance: "" });
  const { expansion: _, ...values } = one.grade.values;
  expect(() => zoneFits(duty, { ...one.grade, values })).toThrow(/has no data on expansion/);
});

describe("what a picture puts into the sheet answers what it shows", () => {
  const at = { sheet: "S", row: 0, col: 0 };
  const sheetOf = (figure: Told, { duty, system, one }: Subject) =>
    new Sheet(blockOf({ piece: figure.piece, duty, system, grades: [one.grade.name], library }, at).block, at);

  test.each(["metric", "inch"] as const)("%s", (system) => {
    const subject = subjectOf(
      system === "metric"
        ? {}
        : {
            load: "600 N",
            bore: "20 mm",
            length: "20 mm",
            outside: "26 mm",
            temperature: "-20 to 40 °C",
            outsideZone: "+0.15/+0.20 mm",
            allowance: "0.2 mm",
          },
      "Demo Sorrel",
      system,
    );
    const four = (x: unknown) => Number(Number(x).toPrecision(4));
    const edge = drawn(edgeFigure(subject));
    const [pressures] = sheetOf(edge, subject).all("EDGEPRESSURE");
    expect(pressures!.map((row) => [four(row[0]), four(row[1])])).toEqual(
      edge.numbers.rows.map((row) => [Number(row[1]), Number(row[2])]),
    );
    const wear = drawn(wearFigure(subject));
    const [depths] = sheetOf(wear, subject).all("WEAR");
    expect(depths!.map((row) => four(row[0]))).toEqual(wear.numbers.rows.map((row) => Number(row.at(-1))));
    const sweep = drawn(sweepFigure(subject, "rpm", 15, 60));
    const [uses] = sheetOf(sweep, subject).answers("DUTYSWEEP");
    expect(uses!.map((row) => row[5])).toEqual(sweep.numbers.rows.map((row) => row[3]));
  });
});
