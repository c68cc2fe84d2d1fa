import { functions } from "../../../src/core";
import { kindOfFit } from "../../../src/core/fit/fitOf";
import { checkDiameters, closeInOf, heldAtEnds, heldStrain } from "../../../src/core/fit/lame";
import { call, message } from "../../support";

test("limits that touch are a size without a tolerance; a fit of zero is still of its kind", () => {
  const row = functions.CLEARANCE({ boreleast: 20, boregreatest: 20, shaftleast: 19.98, shaftgreatest: 19.98 });
  row.forEach((x) => expect(x).toBeCloseTo(0.02, 12));
  expect(() =>
    functions.CLEARANCE({ boreleast: 20, boregreatest: 20, shaftleast: 19.99, shaftgreatest: 19.98 }),
  ).toThrow("shaftleast");
  expect(
    [
      [0, 1],
      [-1, 0],
      [-1, 1],
    ].map(([least, greatest]) => kindOfFit(least!, greatest!)),
  ).toEqual(["clearance", "interference", "transition"]);
  expect(() => checkDiameters(20, 20, undefined, "housing")).toThrow("bore must be below outside");
  expect(() => checkDiameters(20, 23, 23, "housing")).toThrow("housing must be above");
});

test("held at its ends a ring has the moduli of plane strain: E/(1 − ν²), ν/(1 − ν), and a strain of ε·(1 + ν)", () => {
  const ring = {
    bore: 20,
    outside: 23,
    housing: 40,
    bushModulus: 2500,
    bushPoisson: 0.4,
    housingModulus: 69000,
    housingPoisson: 0.33,
  };
  const held = heldAtEnds(ring);
  expect(held.bushModulus).toBeCloseTo(2500 / 0.84, 9);
  expect(held.bushPoisson).toBeCloseTo(2 / 3, 12);
  expect(heldStrain(0.01, 0, 0.4)).toBeCloseTo(0.014, 12);
});

/** What swelling closes the bore by in a rigid housing: κ·D·ε − d·ε. */
function boreCloseIn(bore: number, outside: number, bushPoisson: number, strain: number): number {
  const rigid = { housing: Infinity, housingModulus: Infinity, housingPoisson: 0, bushModulus: 1 };
  return (closeInOf({ ...rigid, bore, outside, bushPoisson }) * outside - bore) * strain;
}

// by hand with E cancelled: κ·D·ε − d·ε, κ = 2·D·d/((D² + d²) − ν·(D² − d²)), ν and ε of plane stress or of plane strain
test("a bush held at its ends closes in more than one that may lengthen", () => {
  expect(boreCloseIn(20, 23, 0.4, 0.02)).toBeCloseTo((920 / (929 - 0.4 * 129)) * 23 * 0.02 - 0.4, 12);
  expect(boreCloseIn(20, 23, 0.4, 0.02)).toBeCloseTo(0.082, 3);
  expect(boreCloseIn(20, 23, 0.4 / 0.6, heldStrain(0.02, 0, 0.4))).toBeCloseTo(0.143, 3);
});

test("the text of the free tilt does not call it the onset of edge loading", () => {
  expect(functions.FREETILT.spec.text).toMatch(/both ends .* no onset of edge loading/);
});

describe("ISO 286 at its edges", () => {
  test("500 mm is the greatest size, in inches too, and a hair beyond is none", () => {
    expect(call(functions.LIMITS, [500, "H7"])[0]).toEqual([500, 500.063]);
    expect(call(functions.DEVIATION, [500 / 25.4, "H7"], "inch")[0]![0]).toBeCloseTo(0.063 / 25.4, 12);
    expect(message(call(functions.LIMITS, [500.001, "H7"]))).toContain("at most 500 mm");
    expect(message(call(functions.FITOF, [501, "H7/f7"]))).toContain("at most 500 mm");
  });
  test("a size in front of a zone must be the size, to a rounding error", () => {
    expect(call(functions.LIMITS, [25, "25 H7"])[0]).toEqual([25, 25.021]);
    expect(call(functions.LIMITS, [25.4, "1 in H7"])[0]![0]).toBe(25.4);
    for (const size of [24.9, 25.1])
      expect(message(call(functions.LIMITS, [size, "25 H7"]))).toContain("zone is for 25 mm");
  });
  test("k is of zero below grade 4 and above grade 7", () => {
    const lower = (zone: string) => call(functions.DEVIATION, [40, zone, "lower"])[0]![0];
    expect([3, 4, 5, 6, 7, 8].map((grade) => lower(`k${grade}`))).toEqual([0, 0.002, 0.002, 0.002, 0.002, 0]);
  });
  test("M6 from 250 to 315 mm is the exception −9 and no other", () => {
    const upper = (size: number) => call(functions.DEVIATION, [size, "M6", "upper"])[0]![0];
    expect([250, 251, 280, 281, 315, 316].map(upper)).toEqual([-0.008, -0.009, -0.009, -0.009, -0.009, -0.01]);
  });
  test("K above grade 8 is only up to 3 mm, N above grade 8 is zero above it", () => {
    expect(call(functions.DEVIATION, [3, "K9", "upper"])[0]![0]).toBe(0);
    expect(message(call(functions.DEVIATION, [10, "K9", "upper"]))).toContain("is not held here");
    expect(call(functions.DEVIATION, [10, "N9"])[0]).toEqual([0, -0.036]);
  });
  test("two deviations stand in either order, a unit behind the first or the second counts for both", () => {
    for (const zone of [
      "+0.05/+0.10",
      "+0.10/+0.05",
      "+50 µm/+100 µm",
      "0.05/0.10 mm",
      "0.05 mm/0.10",
      "+0.05 to +0.10",
    ])
      call(functions.DEVIATION, [20, zone])[0]!.forEach((x, i) => expect(x).toBeCloseTo([0.1, 0.05][i]!, 12));
    expect(message(call(functions.DEVIATION, [20, "0.05"]))).toContain("two deviations");
    expect(message(call(functions.DEVIATION, [20, "0.05/0.1/0.2"]))).toContain("two deviations");
  });
});
