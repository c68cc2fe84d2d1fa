import { functions } from "../../../src/core";
import { fromWorking } from "../../../src/core/units/scale";
import { answer } from "../../../src/edge/sheet";
import { host } from "../../support";

const own = [
  [
    "grade",
    "running pressure limit [MPa]",
    "speed limit turning [m/s]",
    "PV limit [MPa*m/s]",
    "highest temperature [°C]",
    "wear rate low [mm^3/(N*m)]",
    "wear rate high [mm^3/(N*m)]",
    "wear rate from",
  ],
  ["House blend", 20, 1.5, 0.4, 100, 1e-6, 4e-6, "bush"],
  ["Flat blend", 20, 1.5, 0.4, 100, 1e-6, 4e-6, "flat"],
  ["Half known", 20, 1.5, 0.4, 100, 1e-6, null, "bush"],
];

describe("LIFEBAND", () => {
  test("is LIFE by the high and the low wear rate, then the distance slid in each", () => {
    const duty = { pressure: 2, speed: 0.1, allowance: 0.5 };
    const [, [shortest, longest, near, far]] = answer(
      functions.LIFEBAND,
      ["house blend", 2, 0.1, 0.5, null, own],
      host,
    ) as [unknown, number[]];
    expect(shortest).toBeCloseTo(functions.LIFE({ ...duty, wearrate: 4e-6 }), 9);
    expect(longest).toBeCloseTo(functions.LIFE({ ...duty, wearrate: 1e-6 }), 9);
    expect(near).toBeCloseTo((shortest! * 3600 * 0.1) / 1000, 10);
    expect(far! / near!).toBeCloseTo(4, 10);
  });
  test("rates that may come from flat tests need a clearance", () => {
    expect(answer(functions.LIFEBAND, ["flat blend", 2, 0.1, 0.5, null, own], host)[0]![0]).toEqual({
      code: "#N/A",
      message: 'clearance is missing: the wear rates of "Flat blend" may come from flat tests',
    });
  });
  test("beyond the limits at 23 °C the law does not hold", () => {
    expect(answer(functions.LIFEBAND, ["house blend", 5, 0.1, 0.5, null, own], host)[0]![0]).toMatchObject({
      code: "#N/A",
    });
  });
  test("with a clearance the rates count as those of flat tests", () => {
    const duty = { pressure: 2, speed: 0.1, allowance: 0.5, clearance: 0.08, from: "flat" as const };
    const [, [shortest, longest]] = answer(functions.LIFEBAND, ["flat blend", 2, 0.1, 0.5, 0.08, own], host) as [
      unknown,
      number[],
    ];
    expect(shortest).toBeCloseTo(functions.LIFE({ ...duty, wearrate: 4e-6 }), 9);
    expect(longest).toBeCloseTo(functions.LIFE({ ...duty, wearrate: 1e-6 }), 9);
  });
  test("a rate that the data lack is no data, in its own cells", () => {
    const [, line] = answer(functions.LIFEBAND, ["Half known", 2, 0.1, 0.5, null, own], host);
    const noData = { code: "#N/A", message: 'grade "Half known" has no data on wear rate high' };
    expect(line).toEqual([noData, expect.any(Number), noData, expect.any(Number)]);
  });
  test("a column of duties: one row each, blank rows blank, faults in their row", () => {
    const grades = [["Demo Sorrel"], [null], ["Demo Sorrle"], ["Demo Medlar"]];
    const out = answer(functions.LIFEBAND, [grades, 2, 0.04, 0.5], host).slice(1);
    expect(out).toHaveLength(4);
    expect(out[1]).toEqual(["", "", "", "", ""]);
    expect(out[2]![1]).toEqual({ code: "#N/A", message: 'grade "Demo Sorrle" is unknown; nearest: Demo Sorrel' });
    expect(out[3]![1]).toBeGreaterThan(0);
  });
  test("inch inputs of the same duty: the same hours, the distance in miles", () => {
    const inch = (kind: Parameters<typeof fromWorking>[0], value: number) => fromWorking(kind, value, "inch");
    const given = ["Demo Sorrel", inch("pressure", 2), inch("speed", 0.04), inch("length", 0.5), null, null, "inch"];
    const [, metric] = answer(functions.LIFEBAND, ["Demo Sorrel", 2, 0.04, 0.5], host) as number[][];
    const [, converted] = answer(functions.LIFEBAND, given, host) as number[][];
    expect(converted![0]! / metric![0]!).toBeCloseTo(1, 12);
    expect(converted![3]! * 1.609344).toBeCloseTo(metric![3]!, 8);
  });
  test("without pressure no finite life", () => {
    expect(answer(functions.LIFEBAND, ["Demo Sorrel", 0, 0.1, 0.5], host)[0]![0]).toEqual({
      code: "#VALUE!",
      message: "pressure must be above 0 MPa, got 0",
    });
  });
});
