import { writeXlsx } from "hucre/xlsx";
import { guessColumns, importRows, mappingFault, unitFault, unitIn } from "../../src/taskpane/own/mapping";
import { readFile, readText, readWorkbook } from "../../src/taskpane/own/readList";
import { parseGrades } from "../../src/core/grades/model";

describe("lists", () => {
  test("comma, semicolon and tab, quotes, a byte order mark and blank lines", () => {
    const wanted = [
      ["grade", "PV limit"],
      ["A 1", "7,250"],
    ];
    expect(readText('\uFEFFgrade,"PV limit"\n\nA 1,"7,250"\n')).toEqual(wanted);
    expect(readText("grade;PV limit\r\nA 1;7,250\r\n")).toEqual(wanted);
    expect(readText("grade\tPV limit\nA 1\t7,250")).toEqual(wanted);
  });

  test("short rows are filled, cells trimmed, blanks are blanks", () => {
    expect(readText("a,b,c\n x , \n")).toEqual([
      ["a", "b", "c"],
      ["x", null, null],
    ]);
  });

  test("a workbook's first filled sheet", async () => {
    const data = await writeXlsx({
      sheets: [
        { name: "empty", rows: [] },
        {
          name: "grades",
          rows: [
            ["grade", "PV limit"],
            ["=A", 0.25],
          ],
        },
      ],
    });
    expect(await readWorkbook(new Uint8Array(data).buffer)).toEqual([
      ["grade", "PV limit"],
      ["=A", 0.25],
    ]);
  });

  test("other kinds of file are refused by what they hold", async () => {
    await expect(readFile(new File(["%PDF-1.7"], "list.csv"))).rejects.toThrow("It is a PDF");
    await expect(readFile(new File(["PK\u0003\u0004"], "list.csv"))).rejects.toThrow("The workbook is broken");
    expect(() => readText('grade,PV limit\n"A,1\nB,2')).toThrow("opens a cell in line 2 is never closed");
    expect(() => readText("grade,PV limit\nA,1,800")).toThrow("Line 2 has 3 cells under 2 headings");
    expect(await readFile(new File(["a;b\n1;2"], "list.CSV"))).toHaveLength(2);
  });
});

describe("columns", () => {
  test("the project's own headings and a supplier's words are guessed with their units", () => {
    const guesses = guessColumns([
      "Material",
      "Max PV [psi-fpm]",
      "max. pressure, psi",
      "CTE (1/°F)",
      "Colour",
      "PV limit",
    ]);
    expect(guesses.map(({ key, unit }) => [key, unit])).toEqual([
      ["grade", ""],
      ["pvLimit", "psi*fpm"],
      ["runningPressure", "psi"],
      ["expansion", "1/°F"],
      ["", ""],
      ["", ""],
    ]);
  });

  test("a unit must suit its property", () => {
    expect(unitFault({ heading: "", key: "pvLimit", unit: "psi*fpm" })).toBeUndefined();
    expect(unitFault({ heading: "", key: "pvLimit", unit: "psi" })).toMatch(/PV limit must be in a unit like/);
    expect(unitFault({ heading: "", key: "pvCurve", unit: "°F: psi*fpm" })).toBeUndefined();
    expect(unitFault({ heading: "", key: "family", unit: "mm" })).toMatch(/takes no unit/);
  });

  test("a percentage's column says whether it is in % or a ratio", () => {
    const [grade, bare, per] = guessColumns(["Material", "Water absorption", "swelling saturated, %"]);
    expect([grade!.key, bare!.key, per!.key]).toEqual(["grade", "waterSaturated", "swellingSaturated"]);
    expect(unitFault(bare!)).toBe("water uptake saturated: say whether it is in % or a ratio");
    for (const unit of ["%", "ratio"]) expect(unitFault({ ...bare!, unit })).toBeUndefined();
    expect([per!.unit, unitFault(per!)]).toEqual(["%", undefined]);
    const rows = [
      ["Material", "swelling saturated, %"],
      ["A", 2],
    ];
    expect(importRows(rows, [grade!, per!], "metric").headings).toEqual(["grade", "swelling saturated [%]"]);
  });

  test("the grade's name is needed, and no property twice", () => {
    const column = (key: "grade" | "pvLimit") => ({ heading: key, key, unit: "" });
    expect(mappingFault([column("pvLimit")])).toMatch(/Set one column to grade/);
    expect(mappingFault([column("grade"), column("pvLimit"), column("pvLimit")])).toMatch(/PV limit: choose one/);
    expect(mappingFault([column("grade"), column("pvLimit")])).toBeUndefined();
  });
});

describe("what a list's cells say", () => {
  const read = (cells: string[][], decimals?: "comma" | "point") =>
    importRows(cells, guessColumns(cells[0]!), "metric", decimals).rows;
  test("a column assigned by hand keeps its heading's unit", () => {
    expect(unitIn("sliding velocity, m/min", "speedTurning")).toBe("m/min");
    expect(unitIn("stiffness [GPa]", "compressiveModulus")).toBe("GPa");
    expect([unitIn("stiffness [GPa]", ""), unitIn("kind [x]", "family")]).toEqual(["", ""]);
  });
  test("one wear factor and one friction are taken as the high ones", () => {
    expect(guessColumns(["wear factor", "friction"]).map(({ key }) => key)).toEqual(["wearHigh", "frictionHigh"]);
  });
  test("names stay text, numbers follow the list's decimals, which are asked for where it does not tell them", () => {
    const cells = (pv: string) => [
      ["grade", "compressive modulus", "note"],
      ["1E5", pv, "1,234"],
      ["007", "950,5", "2.50"],
    ];
    expect(read(cells("1.180"))).toEqual([
      ["1E5", 1180, "1,234"],
      ["007", 950.5, "2.50"],
    ]);
    const open = cells("1.180").slice(0, 2);
    expect(() => read(open)).toThrow("could be 1180 or 1.18: decimal comma or point?");
    expect([read(open, "comma")[0]![1], read(open, "point")[0]![1]]).toEqual([1180, 1.18]);
    expect(() => read([...cells("1,234.5")])).toThrow("has a decimal comma");
  });
  test("an empty or tbd figure costs that figure, not the row", () => {
    const cells = [
      ["grade", "PV limit [MPa*m/s]"],
      ["A", "tbd"],
      ["B", ""],
    ].map((row) => row.map((c) => c || null));
    expect(importRows(cells, guessColumns(cells[0]!), "metric")).toMatchObject({ count: 2, faults: [] });
  });
});

describe("rows", () => {
  const rows = [
    ["Material", "PV limit", "Max temp (°F)", "Note"],
    ["A", "7,250", 212, "=cmd|x"],
    ["B", "a lot", 200, null],
    ["C", 5000, "-600", "+1"],
    ["A", 5000, 200, null],
    [null, 1, 2, null],
  ];
  const columns = guessColumns(rows[0]!);
  const { headings, rows: good, count, faults, kept } = importRows(rows, columns, "inch", "point");

  test("bad rows are named and left out, the rest stays whole", () => {
    expect(count).toBe(1);
    expect(faults.map(({ row, name }) => [row, name])).toEqual([
      [3, "B"],
      [4, "C"],
      [5, "A"],
      [6, "without a name"],
    ]);
    expect(faults[0]!.message).toMatch(/^PV limit must be a number/);
    expect(headings).toEqual(["grade", "PV limit [psi·ft/min]", "highest temperature [°F]", "notes"]);
    expect(good).toEqual([["A", 7250, 212, "=cmd|x"]]);
    expect(kept).toEqual([]);
  });

  test("the written table reads back without the pane, in any unit system", () => {
    const { grades, faults: again } = parseGrades([[...headings], ...good], "metric", "grades");
    expect(again).toEqual([]);
    // 1 psi·ft/min = 35.02536704929527 W/m² (NIST SP 811); (212 − 32)·5/9 = 100
    expect(grades[0]!.values.pvLimit).toBeCloseTo(7250 * 3.502536704929527e-5, 12);
    expect(grades[0]!.values.highestTemperature).toBeCloseTo(100, 9);
  });

  test("a column that is kept does not become a property by its name", () => {
    const mapped = columns.map((column) => (column.key === "pvLimit" ? { ...column, key: "" as const } : column));
    const { headings: other, kept: unused } = importRows(rows.slice(0, 2), mapped, "metric");
    expect(other[1]).toBe("as listed: PV limit");
    expect(unused).toEqual(["as listed: PV limit"]);
  });
});
