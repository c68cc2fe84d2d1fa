import { functions } from "../../../src/core";
import { BushError } from "../../../src/core/errors";
import type { Cell } from "../../../src/core/formula";
import { parseGrades, readGrades } from "../../../src/core/grades/model";
import { call, one } from "../host";

const heading = ["grade", "PV limit [psi*ft/min]", "highest temperature [°F]", "running pressure limit [psi]"];
const read = (cells: Cell[][], system: "metric" | "inch" = "metric") => readGrades(cells, system, "grades");
const first = (cells: Cell[][], system: "metric" | "inch" = "metric") => read(cells, system).grades[0]!;

// exact factors: SI Brochure, 9th ed.; NIST SP 811 (2008), app. B (memory)
const psi = 0.006894757293168361;
const psiFtMin = 3.502536704929527e-5;

test("units of the heading, whatever the sheet's system", () => {
  for (const system of ["metric", "inch"] as const) {
    const { values, kind, name } = first([heading, ["Row A", 3000, 194, "1,000"]], system);
    expect([name, kind]).toEqual(["Row A", "own"]);
    expect(values.pvLimit).toBeCloseTo(3000 * psiFtMin, 12);
    expect(values.highestTemperature).toBeCloseTo(90, 12);
    expect(values.runningPressure).toBeCloseTo(1000 * psi, 12);
  }
});

test("without a unit in the heading the sheet's system counts, and a cell's own unit counts first", () => {
  const cells: Cell[][] = [
    ["Grade", "PV limit", "density"],
    ["Row A", 3000, "1.41 g/cm³"],
  ];
  expect(() => first(cells)).toThrow("grades row 2: PV limit must be above 0 MPa·m/s and at most 50 MPa·m/s, got 3000");
  expect(first(cells, "inch").values.pvLimit).toBeCloseTo(3000 * psiFtMin, 12);
  expect(first(cells, "inch").values.density).toBeCloseTo(1.41, 12);
});

test.each([
  ["1e-6/K", 90e-6],
  ["10^-6/K", 90e-6],
  ["10⁻⁶/K", 90e-6],
  ["×10⁻⁶ 1/K", 90e-6],
  ["µm/(m·K)", 90e-6],
  ["1e-6/°F", 162e-6],
])("expansion in %s", (unit, wanted) => {
  expect(
    first([
      ["grade", `expansion [${unit}]`],
      ["A", 90],
    ]).values.expansion,
  ).toBeCloseTo(wanted, 15);
  expect(
    first([
      ["grade", `expansion [${unit}]`],
      ["A", "90"],
    ]).values.expansion,
  ).toBeCloseTo(wanted, 15);
  expect(
    first([
      ["grade", `expansion [${unit}]`],
      ["A", "90 µm/(m·K)"],
    ]).values.expansion,
  ).toBeCloseTo(90e-6, 15);
});

test.each(["mm³/Nm", "mm3/(N*m)", "10^-3 µm³/(nN·m)"])("wear rate in %s", (unit) => {
  const value = first([
    ["grade", `wear rate high [${unit}]`],
    ["A", 2e-6],
  ]).values.wearHigh!;
  expect(value / (unit.startsWith("10") ? 2e-9 : 2e-6)).toBeCloseTo(1, 12);
});

test("blank rows are skipped, blank cells are no data, and the table may start below its range's first row", () => {
  const { grades, faults } = parseGrades(
    [
      [null, null],
      ["grade", "PV limit"],
      [null, null],
      ["A", null],
      [null, null],
      ["B", "no data"],
      ["C", "–"],
    ],
    "metric",
    "grades",
  );
  expect(grades.map((g) => [g.name, g.values.pvLimit])).toEqual([
    ["A", undefined],
    ["B", undefined],
    ["C", undefined],
  ]);
  expect(faults).toEqual([]);
});

test("unknown columns are kept and reported", () => {
  const { unknownColumns, grades } = read([
    ["grade", "colour", null],
    ["A", "grey", "loose"],
  ]);
  expect(unknownColumns).toEqual(["colour", "column 3"]);
  expect(grades[0]!.extra).toEqual([
    ["colour", "grey"],
    ["column 3", "loose"],
  ]);
  const table = call(
    functions.GRADES,
    null,
    [
      ["grade", "colour"],
      ["A", "grey"],
    ],
    null,
  );
  expect(table[0]!.at(-1)).toBe("colour");
  expect(table[1]!.at(-1)).toBe("grey");
  expect(table[2]!.at(-1)).toBe("");
});

test("a column without a heading is told where any row holds something, and kept out where none does", () => {
  const unknown = (...cells: (string | null)[]) =>
    read([["grade", null], ...cells.map((cell, i) => [`G${i}`, cell])]).unknownColumns;
  expect([unknown(null, "x"), unknown("x", null), unknown(null, null)]).toEqual([["column 2"], ["column 2"], []]);
  expect(read([["grade", null], ["A"]]).unknownColumns).toEqual([]);
});

test("an error among the headings passes as it came", () => {
  expect(
    one(
      functions.GRADE,
      "A",
      "density",
      [
        ["grade", "#REF!", "density"],
        ["A", 1, 1.4],
      ],
      null,
    ),
  ).toBe("#REF!");
});

test("least and greatest of a property may be one number", () => {
  expect(
    first([
      ["grade", "friction low", "friction high"],
      ["A", 0.2, 0.2],
    ]).values.frictionHigh,
  ).toBe(0.2);
});

test.each<[string, Cell[][], string]>([
  ["no grade column", [["name"], ["A"]], 'grades must have a heading row with a column "grade"'],
  ["a word that is none", [["nonsense"]], 'grades must be a table of grades or the word "demo", got "nonsense"'],
  [
    "two columns of one property",
    [
      ["grade", "PV limit", "pv-limit [W/mm²]"],
      ["A", 1, 1],
    ],
    'grades has two columns for "PV limit" (one is "PV limit")',
  ],
  [
    "a negative limit",
    [
      ["grade", "PV limit"],
      ["A", 1],
      ["B", -1],
    ],
    "grades row 3: PV limit must be above 0 MPa·m/s and at most 50 MPa·m/s, got -1",
  ],
  [
    "lowest above highest",
    [
      ["grade", "lowest temperature", "highest temperature"],
      ["A", 90, 80],
    ],
    "grades row 2: lowest temperature is above highest temperature",
  ],
  [
    "Poisson's ratio",
    [
      ["grade", "Poisson's ratio"],
      ["A", 0.6],
    ],
    "grades row 2: Poisson's ratio must be from 0 to 0.5, got 0.6",
  ],
  [
    "a wrong unit",
    [
      ["grade", "PV limit [MPa]"],
      ["A", 0.1],
    ],
    'grades row 2: PV limit must be in a unit like MPa·m/s or psi·ft/min, got "MPa"',
  ],
  [
    "text for a number",
    [
      ["grade", "PV limit"],
      ["A", "high"],
    ],
    'grades row 2: PV limit must be a number or text like "12.5 MPa·m/s", got "high"',
  ],
  [
    "a truth value",
    [
      ["grade", "PV limit"],
      ["A", true],
    ],
    "grades row 2: PV limit must be a number, got TRUE",
  ],
  [
    "a rating of another word",
    [
      ["grade", "dirt"],
      ["A", "great"],
    ],
    'grades row 2: dirt must be poor, fair or good, got "great"',
  ],
  [
    "a curve that is a number",
    [
      ["grade", "PV at temperature"],
      ["A", 3],
    ],
    'grades row 2: PV at temperature must be points as "23: 40; 80: 25", got 3',
  ],
  [
    "a row without a name",
    [
      ["grade", "density"],
      [null, 1.4],
    ],
    "grades row 2: grade is missing",
  ],
  ["a name twice", [["grade"], ["A 1"], ["B"], ["a1"]], 'grades row 4: grade "a1" stands in row 2 already'],
])("%s is an error that names its place", (_, cells, message) => {
  expect(() => read(cells)).toThrow(new BushError("value", "grades", message));
});

test("every faulty row is reported, the others serve", () => {
  const { grades, faults } = parseGrades(
    [
      ["grade", "density"],
      ["A", 1.4],
      ["B", -1],
      ["C", "x"],
      ["D", 1.2],
    ],
    "metric",
    "grades",
  );
  expect(grades.map((g) => g.name)).toEqual(["A", "D"]);
  expect(faults.map((f) => f.row)).toEqual([3, 4]);
});

test("an error in a cell passes as it came", () => {
  expect(
    one(
      functions.GRADE,
      "A",
      "density",
      [
        ["grade", "density"],
        ["A", "#DIV/0!"],
      ],
      null,
    ),
  ).toBe("#DIV/0!");
});

test("ratings, lists and curves", () => {
  const { values } = first([
    ["grade", "shock", "shafts suited", "pressure at temperature [°F: psi]"],
    ["A", "Good", "chromed; hardened steel", "32: 1000; 212: 500"],
  ]);
  expect(values.shock).toBe("good");
  expect(values.shafts).toEqual(["chromed", "hardened steel"]);
  expect(values.pressureCurve!.map((p) => p.at)).toEqual([0, 100]);
  expect(values.pressureCurve![0].value).toBeCloseTo(1000 * psi, 12);
});

test("own rows are searched before the library, in every function", () => {
  const own = [
    ["grade", "running pressure limit", "speed limit turning", "PV limit", "highest temperature"],
    ["pa66", 20, 2, 0.4, 120],
  ];
  expect(one(functions.VERDICT, "PA66", 2, 0.1, 23, null, own, null)).toBe("fits, PV 50 %");
  expect(one(functions.VERDICT, "PA66", 2, 0.1, 100, null, null, null)).toBe("fails, temperature 100 °C above 90 °C");
});

test.each(["metric", "inch"])("the library as GRADES spills it in %s units can itself serve as grades", (units) => {
  const spilled = call(functions.GRADES, null, null, units);
  const again = call(functions.GRADES, null, spilled, units);
  expect(again.length).toBe(spilled.length);
  spilled.forEach((row, i) =>
    row.forEach((cell, j) => {
      if (j === 1 && i > 0) expect(again[i]![j]).toBe("own");
      else if (typeof cell === "number")
        expect(again[i]![j]).toBeCloseTo(cell, 9 - Math.ceil(Math.log10(Math.abs(cell) + 1)));
      else expect(again[i]![j]).toBe(cell);
    }),
  );
});

describe("percentages", () => {
  const swelling = (heading: string, cell: Cell) =>
    parseGrades(
      [
        ["grade", heading],
        ["A", cell],
      ],
      "metric",
      "grades",
    );
  const value = (heading: string, cell: Cell) => swelling(heading, cell).grades[0]?.values.swellingSaturated;
  test("under a heading in % plain numbers are per cent", () => {
    for (const heading of ["swelling saturated [%]", "swelling saturated %", "Swelling saturated (%)"])
      for (const cell of [2, "2", "2 %"]) expect(value(heading, cell)).toBeCloseTo(0.02, 15);
    expect(value("swelling at 50 % RH", "2 %")).toBeUndefined();
    expect(
      parseGrades(
        [
          ["grade", "swelling at 50 % RH [%]"],
          ["A", 2],
        ],
        "metric",
        "grades",
      ).grades[0]!.values,
    ).toEqual({
      swelling50: 0.02,
    });
  });
  test("under a heading as a ratio they are ratios", () => {
    for (const heading of ["swelling saturated [ratio]", "swelling saturated (1)", "swelling saturated [ 1 ]"])
      for (const cell of [0.02, "0.02", "2 %"]) expect(value(heading, cell)).toBeCloseTo(0.02, 15);
  });
  test("under a heading that does not say, a plain number is refused: it could be either; 0 is the same in both", () => {
    for (const cell of [2, 0.02, "2"])
      expect(swelling("swelling saturated", cell).faults[0]!.message).toBe(
        `grades row 2: swelling saturated ${JSON.stringify(cell)} could be % or a ratio: put [%] or [ratio] in the heading`,
      );
    expect(value("swelling saturated", "2 %")).toBeCloseTo(0.02, 15);
    expect(value("swelling saturated", 0)).toBe(0);
  });
  test("what is not possible is refused, with what to type", () => {
    expect(swelling("swelling saturated [ratio]", 2).faults[0]!.message).toBe(
      "grades row 2: swelling saturated must be from 0 % to 10 %, got 2: type 2 %",
    );
    expect(swelling("swelling saturated [%]", 20).faults[0]!.message).toBe(
      "grades row 2: swelling saturated must be from 0 % to 10 %, got 20",
    );
    expect(swelling("swelling saturated [mm]", 2).faults[0]!.message).toBe(
      'grades row 2: swelling saturated must be in % or as a ratio, got "mm"',
    );
    expect(swelling("swelling saturated", "much").faults[0]!.message).toBe(
      'grades row 2: swelling saturated must be a number or text like "4 %", got "much"',
    );
  });
  test("a plain number under 0.3 in a column of % is read, and noted with its row", () => {
    const { grades, faults, remarks } = parseGrades(
      [
        ["grade", "swelling saturated [%]", "water uptake saturated [ratio]"],
        ["A", 0.02, 0.1],
        ["B", "0.02 %", null],
        ["C", 0.3, null],
        ["D", "0.1", null],
        ["E", 0, null],
      ],
      "metric",
      "grades",
    );
    expect([grades.length, faults]).toEqual([5, []]);
    expect(remarks).toEqual([
      "grades row 2: swelling saturated is 0.02 %: 2 % is written as 2",
      "grades row 5: swelling saturated is 0.1 %: 10 % is written as 10",
    ]);
    expect(grades[0]!.values.swellingSaturated).toBeCloseTo(0.0002, 15);
  });
  test("GRADE and GRADES answer ratios, and the heading says so", () => {
    expect(one(functions.GRADE, "Demo Sorrel", "swelling saturated")).toBe(0.02);
    expect(one(functions.GRADE, "POM copolymer", "water uptake saturated", null, "inch")).toBeCloseTo(0.009, 15);
    for (const units of ["metric", "inch"]) {
      const [heading] = call(functions.GRADES, [["swelling saturated", "water uptake at 50 % RH"]], null, units);
      expect(heading!.slice(2)).toEqual(["swelling saturated [ratio]", "water uptake at 50 % RH [ratio]"]);
    }
  });
});
