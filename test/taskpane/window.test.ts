import { functions } from "../../src/core";
import { fitVerdict, found, judge } from "../../src/core/duties";
import { findGrade, readGrades, standardLibrary } from "../../src/core/grades/model";
import { emptyForm } from "../../src/taskpane/state/form";
import type { Texts } from "../../src/taskpane/state/form";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { nameOf, readFit } from "../../src/taskpane/window/fit";
import { boundsOf, edgeOf, frameOf, hardest, pointsOf } from "../../src/taskpane/window/outline";
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
      Math.max(...dutyOf({ bore: "18 to 22" }).corners.map(({ steps }) => steps[0]!.bore!.pressure)),
    );
    expect(hardest(dutyOf({ designFactor: "1 to 2" })).designFactor).toBe(2);
    expect(hardest(dutyOf({ impactFactor: "1 to 1.5" })).impactFactor).toBe(1.5);
  });
});

describe("clearance", () => {
  const fields: Texts = {
    ...{ load: "600", bore: "20", length: "20", rpm: "30", temperature: "-20 to 40", shaft: "soft steel" },
    ...{ outside: "26", outsideZone: "+0.15/+0.20", boreZone: "E10", housingZone: "H7", shaftZone: "h8" },
    ...{ housing: "aluminium alloy", assemblyMoisture: "dry", keptGrip: "90" },
  };
  const sorrel = findGrade("Demo Sorrel", standardLibrary());
  const fitOf = (more: Texts = {}, ...later: Texts[]) => {
    const read = readDuty([{ ...emptyForm[0], ...fields, ...more }, ...later], "metric");
    if (!read.duty) throw new Error(JSON.stringify(read));
    return readFit(read.duty, sorrel);
  };
  const rowsOf = (more: Texts = {}, ...later: Texts[]) => fitOf(more, ...later).rows!;

  test("its rows are those of FITTABLE on a card of the same fields", () => {
    // bore 20 E10 (+40/+124 µm) after pressing, shaft 20 h8 (0/−33 µm): ISO 286-1:2010, Tables 1, 2 and 4 (memory)
    expect(rowsOf()[0]!.clearance.least).toBeCloseTo(0.04, 9);
    expect(rowsOf()[0]!.clearance.greatest).toBeCloseTo(0.124 + 0.033, 9);
    const more = {
      motion: "",
      rpm: 30,
      load: 600,
      temperature: "-20 to 40",
      outside: 26,
      "share of grip kept": "90 %",
    };
    const card = pressedBush({ ...more, "outside zone": "+0.15/+0.20", "shaft zone": "h8" });
    const [, ...table] = call(functions.FITTABLE, [card, "", "Demo Sorrel"]);
    expect(rowsOf().map((row) => [row.name, row.bush, row.clearance.least, fitVerdict(row)])).toEqual(
      table.map((row) => [row[0], row[1], row[6], row.at(-1)]),
    );
  });

  test("what is not told of the fit is looked at both ways", () => {
    expect(rowsOf({ moisture: "wet" }).map(({ name }) => name)).toContain("hot, wet");
    const untold = rowsOf({ assemblyMoisture: "", keptGrip: "" });
    expect(new Set(untold.map(({ assembled }) => assembled))).toEqual(new Set(["dry", "humid"]));
    expect(untold.filter(({ isSupposed }) => isSupposed).map(nameOf)).toEqual(
      Array(2).fill("cold again, no grip kept"),
    );
  });

  test("a bore within a band, and steps, have their clearance too", () => {
    expect(rowsOf({ bore: "19 to 20" }).map(({ name }) => name)).toEqual(rowsOf().map(({ name }) => name));
    expect(rowsOf({ time: "5" }, { load: "300", rpm: "10", time: "5" })).toEqual(rowsOf());
  });

  test("what is missing of the fit is named", () => {
    expect(fitOf({ shaftZone: "" }).fault).toMatch(/^shaft zone is missing/);
    expect(fitOf({ shaft: "" }).fault).toMatch(/^shaft is missing/);
  });
});
