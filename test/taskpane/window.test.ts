import { readGrades, standardLibrary } from "../../src/core/grade";
import type { Duty } from "../../src/core/grade";
import { firstFit, fitRows, keepFitUnits } from "../../src/taskpane/window/fit";
import { boundsOf, edgeOf, frameOf } from "../../src/taskpane/window/outline";

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

test("limits are those of the checks: at the duty's temperature, with its design factor", () => {
  const { grades } = readGrades(
    [
      ["grade", "running pressure limit", "PV limit", "PV at temperature", "highest temperature"],
      ["Own", 12, 1, "20: 1; 80: 0.4", 90],
    ],
    "metric",
    "grades",
  );
  const duty: Duty = { pressure: 1, speed: 1, temperature: { low: 20, high: 50 }, motion: "turning", designFactor: 2 };
  expect(boundsOf(grades[0]!, duty)).toEqual({ pressure: 6, speed: undefined, pv: 0.35 });
});

describe("clearance", () => {
  const question = { ...firstFit, outside: "26", grade: "Demo Sorrel", bore: 20, cold: -20, hot: 60 };

  test("four states, least below greatest, in the sheet's unit", () => {
    const rows = fitRows(question, standardLibrary(), "metric");
    if (typeof rows === "string") throw new Error(rows);
    expect(rows.map(({ state }) => state)).toEqual(["cold", "assembly", "hot", "hot and wet"]);
    for (const { clearance } of rows) if (clearance) expect(clearance[0]).toBeLessThan(clearance[1]);
    // bore 20 E10 (+40/+124 µm) after pressing, shaft 20 h8 (0/−33 µm): ISO 286-1:2010, Tables 1, 2 and 4 (memory)
    const [, assembly] = rows;
    expect(assembly!.clearance![0]).toBeCloseTo(0.04, 9);
    expect(assembly!.clearance![1]).toBeCloseTo(0.124 + 0.033, 9);
    const inch = fitRows({ ...question, outside: "26 mm" }, standardLibrary(), "inch");
    if (typeof inch === "string") throw new Error(inch);
    expect(inch[1]!.clearance![1]).toBeCloseTo(0.157 / 25.4, 9);
    expect(inch[1]!.temperature).toBeCloseTo(68, 9);
  });

  test("changing the unit system keeps the fit", () => {
    const plain = { ...question, outsidezone: "+0.05/+0.10" };
    const kept = { ...plain, ...keepFitUnits(plain, "metric") };
    expect(kept).toMatchObject({ outside: "26 mm", outsidezone: "+0.05/+0.10 mm", borezone: "E10" });
    const [metric, inch] = [fitRows(plain, standardLibrary(), "metric"), fitRows(kept, standardLibrary(), "inch")];
    if (typeof metric === "string" || typeof inch === "string") throw new Error(`${metric} ${inch}`);
    metric.forEach((row, i) => expect(inch[i]!.verdict).toBe(row.verdict));
  });

  test("faults come as their sentence", () => {
    expect(fitRows({ ...question, borezone: "Q99" }, standardLibrary(), "metric")).toMatch(/borezone/);
    expect(fitRows({ ...question, outside: "18" }, standardLibrary(), "metric")).toMatch(/outside/);
  });
});
