import tolerances from "../../../data/iso286/tolerances.json";
import deviations from "../../../data/iso286/deviations.json";
import { functions } from "../../../src/core";
import { isoDeviations } from "../../../src/core/fit/zones/iso286";
import { readFit, readZone, ToleranceClass } from "../../../src/core/fit/zones/zone";
import { answer } from "../../../src/edge/sheet";
import { host, message } from "../../support";

const zone = (letter: string, grade: number, size: number) => isoDeviations(new ToleranceClass(letter, grade), size);

/** Geometric mean of a range's ends, the D of the standard's formulas; the first range counts from 1 mm. */
const meanOf = (i: number) => Math.sqrt((i === 0 ? 1 : deviations.upTo[i - 1]!) * deviations.upTo[i]!);
const it7 = (i: number) => zone("h", 7, deviations.upTo[i]!)!.lower * -1000;

describe("the tables", () => {
  test("have the standard's ranges and as many values in every column", () => {
    expect(tolerances.upTo).toHaveLength(13);
    expect(deviations.upTo).toHaveLength(25);
    expect(Object.keys(tolerances.grades)).toHaveLength(20);
    for (const column of Object.values(tolerances.grades)) expect(column).toHaveLength(13);
    for (const group of ["upper", "lower", "j", "J", "delta"] as const)
      for (const column of Object.values(deviations[group])) expect(column).toHaveLength(25);
  });

  test("grow with size and grade", () => {
    const held = tolerances.grades as Record<string, number[]>;
    const grades = ["01", "0", ...Array.from({ length: 18 }, (_, i) => String(i + 1))].map((grade) => held[grade]!);
    for (const [g, column] of grades.entries())
      for (let i = 0; i < 13; i++) {
        if (i > 0) expect(column[i]!).toBeGreaterThanOrEqual(column[i - 1]!);
        if (g > 0) expect(column[i]!).toBeGreaterThan(grades[g - 1]![i]!);
      }
    for (const column of [...Object.values(deviations.upper), ...Object.values(deviations.lower)])
      for (let i = 1; i < 25; i++)
        if (column[i] !== null && column[i - 1] !== null)
          expect(Math.abs(column[i]!)).toBeGreaterThanOrEqual(Math.abs(column[i - 1]!));
  });

  test("order the letters from a to zc at every size", () => {
    const upper = Object.values(deviations.upper);
    const lower = Object.values(deviations.lower);
    for (let i = 0; i < 25; i++) {
      const values = [...upper, ...lower].map((column) => column[i]).filter((v) => v !== null && v !== undefined);
      for (let k = 1; k < values.length; k++) expect(values[k]!).toBeGreaterThanOrEqual(values[k - 1]!);
    }
  });

  // Machine Drawing (Narayana, Kannaiah, Reddy), section 15.3: delta is the step from the next finer grade
  test("delta is the step between neighbouring grades, above 3 mm", () => {
    const grades = tolerances.grades as Record<string, number[]>;
    for (const [grade, column] of Object.entries(deviations.delta))
      for (let i = 1; i < 25; i++) {
        const row = tolerances.upTo.findIndex((end) => deviations.upTo[i]! <= end);
        expect(column[i]).toBe(grades[grade]![row]! - grades[Number(grade) - 1]![row]!);
      }
  });

  // Machine Drawing, Table 15.4, the standard's formulas. The tables are rounded to preferred numbers, and leave them up to 18 mm
  test.each([
    ["t", 0.63],
    ["u", 1],
    ["v", 1.25],
    ["x", 1.6],
    ["y", 2],
    ["z", 2.5],
  ])("%s follows IT7 + %d·D", (letter, factor) => {
    const column = (deviations.lower as Record<string, (number | null)[]>)[letter]!;
    column.forEach((value, i) => {
      if (value === null || deviations.upTo[i]! <= 18) return;
      const formula = it7(i) + factor * meanOf(i);
      expect(Math.abs(value - formula)).toBeLessThanOrEqual(Math.max(3.2, 0.025 * formula));
    });
  });
  test.each([
    ["d", 16, 0.44],
    ["e", 11, 0.41],
    ["f", 5.5, 0.41],
    ["g", 2.5, 0.34],
  ])("%s follows %d·D^%d", (letter, factor, power) => {
    const column = (deviations.upper as Record<string, number[]>)[letter]!;
    column.forEach((value, i) => {
      // these letters have one value for each of the 13 main ranges
      const row = tolerances.upTo.findIndex((end) => deviations.upTo[i]! <= end);
      const mean = Math.sqrt((row === 0 ? 1 : tolerances.upTo[row - 1]!) * tolerances.upTo[row]!);
      expect(Math.abs(-value - factor * mean ** power)).toBeLessThanOrEqual(Math.max(1.1, 0.025 * -value));
    });
  });
});

// ISO 286-2, tables of holes (memory): above 18 up to 30 mm delta is 8 µm in IT7 and 12 µm in IT8
describe("the upper deviation of holes K to ZC, in µm", () => {
  test.each([
    ["K", 8, 25, 10],
    ["M", 8, 25, 4],
    ["N", 8, 25, -3],
    ["P", 7, 25, -14],
    ["P", 8, 25, -22],
    ["R", 8, 25, -28],
    ["M", 9, 25, -8],
    ["N", 9, 25, 0],
    ["K", 8, 3, 0],
    ["N", 8, 3, -4],
    ["N", 9, 3, -4],
    ["M", 9, 3, -2],
    ["P", 7, 3, -6],
  ])(
    "of %s%d at %d mm is %d: raised by delta in K, M, N up to IT8, in P to ZC up to IT7, and not up to 3 mm",
    (...given) => {
      const [letter, grade, size, upper] = given;
      expect(zone(letter, grade, size)!.upper * 1000).toBeCloseTo(upper, 9);
    },
  );
  test("K has none above IT8 beyond 3 mm", () => {
    expect(zone("K", 9, 25)).toBeUndefined();
    expect(zone("K", 9, 3)!.upper).toBeCloseTo(0, 12);
  });
});

// ISO 286-2, the notes under its tables (memory)
test("up to 1 mm, and no farther, there are no a, b, A, B, no N above IT8, no grade above 13", () => {
  for (const [letter, grade] of [
    ["a", 11],
    ["b", 9],
    ["A", 11],
    ["B", 9],
    ["N", 9],
    ["H", 14],
    ["h", 14],
  ] as const) {
    expect([letter, zone(letter, grade, 1)]).toEqual([letter, undefined]);
    expect([letter, zone(letter, grade, 1.1)]).not.toEqual([letter, undefined]);
  }
  for (const [letter, grade] of [
    ["c", 11],
    ["N", 8],
    ["H", 13],
    ["n", 9],
  ] as const)
    expect([letter, zone(letter, grade, 1)]).not.toEqual([letter, undefined]);
});

describe("the finest grades", () => {
  // ISO 286-1, the formulas of IT01, IT0 and IT1 up to 500 mm (memory): 0.3 + 0.008·D, 0.5 + 0.012·D, 0.8 + 0.02·D, in µm
  test.each([
    ["01", 0.3, 0.008],
    ["0", 0.5, 0.012],
    ["1", 0.8, 0.02],
  ])("IT%s follows %d + %d·D to a step of the rounding", (grade, base, factor) => {
    const column = (tolerances.grades as Record<string, number[]>)[grade]!;
    column.forEach((value, i) => {
      const mean = Math.sqrt((i === 0 ? 1 : tolerances.upTo[i - 1]!) * tolerances.upTo[i]!);
      expect(Math.abs(value - base - factor * mean)).toBeLessThanOrEqual(0.1 + 0.25 * value);
    });
  });
  // IT01 0.6 µm and IT0 1 µm above 18 up to 30 mm: ISO 286-1, annex (memory)
  test("H01, H0 and js01 have IT01 and IT0, not IT1 or IT10", () => {
    expect(answer(functions.DEVIATION, [25, "H01"], host)).toEqual([[0.0006, 0]]);
    expect(answer(functions.DEVIATION, [25, "H0"], host)).toEqual([[0.001, 0]]);
    expect(answer(functions.DEVIATION, [25, "H1"], host)).toEqual([[0.0015, 0]]);
    expect(answer(functions.DEVIATION, [25, "js01"], host)).toEqual([[0.0003, -0.0003]]);
    expect(answer(functions.DEVIATION, [25, "JS0"], host)).toEqual([[0.0005, -0.0005]]);
    expect(answer(functions.FITOF, [25, "H01/h01"], host)).toEqual([[0, 0.0012, "clearance"]]);
    expect(String(readZone("25 h01", "metric", "zone"))).toBe("h01");
  });
  test.each(["H07", "js06", "h00", "H02"])("%s has a 0 too many", (text) => {
    expect(() => readZone(text, "metric", "zone")).toThrow(
      `zone must be a class whose grade has no 0 in front, as "H7" or "H01", got "${text}"`,
    );
    expect(message(answer(functions.FITOF, [25, `H7/${text.toLowerCase()}`], host))).toMatch(
      /^fit must be a class whose grade/,
    );
  });
});

describe("letters between letters, up to 10 mm", () => {
  // ISO 286-1, fundamental deviations of cd, ef and fg up to 10 mm, µm (memory)
  test.each<[string, number, number]>([
    ["cd", 3, -34],
    ["cd", 5, -46],
    ["cd", 10, -56],
    ["ef", 3, -10],
    ["ef", 5, -14],
    ["ef", 10, -18],
    ["fg", 3, -4],
    ["fg", 5, -6],
    ["fg", 10, -8],
  ])("%s at %d mm", (letter, size, es) => {
    expect(zone(letter, 6, size)!.upper).toBeCloseTo(es / 1000, 12);
    expect(zone(letter.toUpperCase(), 7, size)!.lower).toBeCloseTo(-es / 1000, 12);
    // by the standard's rule they are the geometric mean of their neighbours, rounded
    const [before, after] = [...letter].map((one) => zone(one, 6, size)!.upper * -1000) as [number, number];
    expect(Math.abs(-es - Math.sqrt(before * after))).toBeLessThan(1);
  });
  test("above 10 mm none are held", () => {
    for (const letter of ["cd", "ef", "fg", "CD", "EF", "FG"]) expect(zone(letter, 6, 10.1)).toBeUndefined();
    expect(message(answer(functions.DEVIATION, [11, "cd6"], host))).toMatch(/^zone cd6 at 11 mm is not held here/);
  });
});

test("a limit of size below zero is an error", () => {
  const said = (zoneName: string, least: string) =>
    `size 0.01 mm is too small for ${zoneName}: its least limit would be ${least} mm`;
  expect(message(answer(functions.LIMITS, [0.01, "h11"], host))).toBe(said("h11", "-0.05"));
  expect(message(answer(functions.FITOF, [0.01, "H7/h11"], host))).toBe(said("h11", "-0.05"));
  expect(message(answer(functions.LIMITS, [0.01, "-0.02/+0.1"], host))).toBe(said("+0.1/-0.02 mm", "-0.01"));
  expect(answer(functions.LIMITS, [0.06, "h11"], host)).toEqual([[0, 0.06]]);
});

test("two sizes in the place of two deviations are an error", () => {
  const said = (found: string) => `zone must be deviations from 20 mm, as "+0.05/+0.10", not sizes, got "${found} mm"`;
  expect(message(answer(functions.LIMITS, [20, "20/22"], host))).toBe(said("+22/+20"));
  expect(message(answer(functions.LIMITS, [20, "20.065/20.149"], host))).toBe(said("+20.149/+20.065"));
  expect(answer(functions.LIMITS, [20, "+9.9/+10"], host)).toEqual([[29.9, 30]]);
});

describe("special cases", () => {
  test("M6 above 250 up to 315 mm has ES −9, not −11", () => {
    expect(zone("M", 6, 250)!.upper).toBeCloseTo(-0.008, 12);
    expect(zone("M", 6, 251)!.upper).toBeCloseTo(-0.009, 12);
    expect(zone("M", 6, 315)!.upper).toBeCloseTo(-0.009, 12);
    expect(zone("M", 6, 316)!.upper).toBeCloseTo(-0.01, 12);
  });
  test("N above grade 8 has ES 0 above 3 mm, −4 up to 3 mm and none up to 1 mm", () => {
    expect(zone("N", 9, 25)!.upper).toBe(0);
    expect(zone("N", 9, 3)!.upper).toBeCloseTo(-0.004, 12);
    expect(zone("N", 9, 1)).toBeUndefined();
  });
  test("k has its deviation in grades 4 to 7 only, zero in the others", () => {
    expect(zone("k", 7, 25)!.lower).toBeCloseTo(0.002, 12);
    expect(zone("k", 3, 25)!.lower).toBe(0);
    expect(zone("k", 8, 25)!.lower).toBe(0);
  });
  test("K above grade 8 exists up to 3 mm only", () => {
    expect(zone("K", 9, 3)!.upper).toBe(0);
    expect(zone("K", 9, 3.1)).toBeUndefined();
  });
  test("j and J exist in few grades", () => {
    expect([4, 5, 6, 7, 8].map((grade) => zone("j", grade, 25) !== undefined)).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect([5, 6, 7, 8, 9].map((grade) => zone("J", grade, 25) !== undefined)).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(zone("j", 8, 2)).toMatchObject({ lower: -0.006, upper: 0.008 });
  });
  test("js and JS are half the tolerance to either side, odd values too", () => {
    expect(zone("js", 7, 100)).toMatchObject({ lower: -0.0175, upper: 0.0175 });
    expect(zone("JS", 9, 100)).toMatchObject({ lower: -0.0435, upper: 0.0435 });
  });
  test("up to 1 mm there is no a, b and no grade above 13", () => {
    expect(zone("a", 11, 1)).toBeUndefined();
    expect(zone("B", 11, 1)).toBeUndefined();
    expect(zone("c", 11, 1)).toBeDefined();
    expect(zone("h", 14, 1)).toBeUndefined();
    expect(zone("h", 14, 1.01)).toBeDefined();
  });
  test("t is not defined up to 24 mm, v up to 14, y up to 18", () => {
    expect(zone("t", 6, 24)).toBeUndefined();
    expect(zone("t", 6, 24.1)).toBeDefined();
    expect(zone("v", 6, 14)).toBeUndefined();
    expect(zone("Y", 7, 18)).toBeUndefined();
  });
  test("K to ZC need the delta of their grade, which starts at IT3 above 3 mm", () => {
    for (const letter of ["K", "M", "N", "P", "ZC"]) expect(zone(letter, 2, 5)).toBeUndefined();
    expect(zone("K", 2, 3)).toBeDefined();
    expect(zone("K", 3, 5)).toBeDefined();
  });
});

describe("reading", () => {
  test.each([
    ["H7", "H7", undefined],
    ["25 H7", "H7", 25],
    ["25H7", "H7", 25],
    ["js6", "js6", undefined],
    ["JS7", "JS7", undefined],
    [" zc 10 ", "zc10", undefined],
  ])("%s", (text, name, size) => {
    const read = readZone(text, "metric", "zone");
    expect(String(read)).toBe(name);
    expect((read as ToleranceClass).size).toBe(size);
  });
  test.each([
    ["+0.05/+0.10", 0.05, 0.1],
    ["+0.10/+0.05", 0.05, 0.1],
    ["0/-0.02", -0.02, 0],
    ["-0,02 to 0,01 mm", -0.02, 0.01],
    ["+0.001/+0.002 in", 0.0254, 0.0508],
  ])("%s", (text, lower, upper) => {
    const read = readZone(text, "metric", "zone") as { lower: number; upper: number };
    expect(read.lower).toBeCloseTo(lower, 12);
    expect(read.upper).toBeCloseTo(upper, 12);
  });
  test("deviations without a unit are in the sheet's", () => {
    expect(readZone("+0.001/+0.002", "inch", "zone")).toMatchObject({ lower: 0.0254, upper: 0.0508 });
  });
  test.each(["", "Js7", "H", "7", "H77x", "0.05", "0.05/", 7, true])("refuses %s", (text) => {
    expect(() => readZone(text, "metric", "borezone")).toThrow(/^borezone must be ISO 286 class/);
  });
  test("a fit code shows its classes in STEPS", () => {
    expect(String(readFit("25 H7/f7", "metric", "fit"))).toBe("H7/f7");
  });
  test.each(["f7/H7", "H7", "H7/f7/g6", "H7/H7", 5])("no fit: %s", (text) => {
    expect(() => readFit(text, "metric", "fit")).toThrow(/^fit must be a hole class over a shaft class/);
  });
});

describe("in a sheet", () => {
  test("both deviations, one, and a column of sizes", () => {
    expect(answer(functions.DEVIATION, [25, "H7"], host)).toEqual([[0.021, 0]]);
    expect(answer(functions.DEVIATION, [25, "f7", "lower"], host)).toEqual([[-0.041]]);
    expect(answer(functions.DEVIATION, [[[10], [50], [null], [501]], "H7", "upper"], host)).toEqual([
      [0.015],
      [0.025],
      [""],
      [{ code: "#VALUE!", message: 'size must be above 0 mm and at most 500 mm for an ISO 286 class, got "501 mm"' }],
    ]);
  });
  test("limits of size and kinds of fit", () => {
    expect(answer(functions.LIMITS, [25, "f7"], host)).toEqual([[24.959, 24.98]]);
    expect(answer(functions.FITOF, [25, "25 H7/f7"], host)[0]!.at(-1)).toBe("clearance");
    expect(answer(functions.FITOF, [25, "H7/k6"], host)[0]!.at(-1)).toBe("transition");
    expect(answer(functions.FITOF, [25, "H7/h6"], host)[0]!.at(-1)).toBe("clearance");
    const [least, greatest, kind] = answer(functions.FITOF, [25, "H7/s6"], host)[0] as [number, number, string];
    expect([least, greatest].map((v) => v.toFixed(3))).toEqual(["-0.048", "-0.014"]);
    expect(kind).toBe("interference");
  });
  test("an inch size looks up the same class as its millimetres", () => {
    for (const mm of [3, 10, 18, 50, 120.5, 500]) {
      const inch = answer(functions.LIMITS, [mm / 25.4, "H7", "inch"], host)[0] as number[];
      const metric = answer(functions.LIMITS, [mm, "H7"], host)[0] as number[];
      inch.forEach((value, i) => expect(value * 25.4).toBeCloseTo(metric[i]!, 10));
    }
    expect(answer(functions.FITOF, ["1 in", "1 in H7/f7", "inch"], host)).toEqual(
      answer(functions.FITOF, [1, "H7/f7", "inch"], host),
    );
  });
  test("deviations as text stand for a class, at any size", () => {
    const limits = answer(functions.LIMITS, [600, "+0.05/+0.10"], host)[0] as number[];
    expect(limits).toEqual([600.05, 600.1]);
  });
  test("errors name the argument, the value and what is accepted", () => {
    expect(message(answer(functions.DEVIATION, [20, "t6"], host))).toBe(
      "zone t6 at 20 mm is not held here: the ISO 286-1 tables of this add-in lack it",
    );
    expect(message(answer(functions.DEVIATION, [20, "Q7"], host))).toBe(
      "zone Q7 at 20 mm is not held here: the ISO 286-1 tables of this add-in lack it",
    );
    expect(message(answer(functions.DEVIATION, [20, "H19"], host))).toBe(
      "zone H19 at 20 mm is not held here: the ISO 286-1 tables of this add-in lack it",
    );
    expect(message(answer(functions.DEVIATION, [30, "25 H7"], host))).toBe("zone is for 25 mm, but size is 30 mm");
    expect(message(answer(functions.DEVIATION, [20, "x"], host))).toMatch(
      /^zone must be ISO 286 class "H7", or two deviations/,
    );
    expect(message(answer(functions.DEVIATION, [0.5, "a11"], host))).toMatch(/not held here/);
    expect(message(answer(functions.FITOF, [20, "f7/H7"], host))).toMatch(
      /^fit must be a hole class over a shaft class/,
    );
    expect((answer(functions.DEVIATION, [20, "t6"], host)[0]![0] as { code: string }).code).toBe("#N/A");
  });
});
