import { writeXlsx } from "hucre/xlsx";
import { parseGrades } from "../../src/core/grades/model";
import type { System } from "../../src/core/kinds";
import type { Decimals } from "../../src/core/table/decimals";
import type { ListCell } from "../../src/files/list";
import { assigned, guessColumns, mappingFault, unitFault, unitIn } from "../../src/taskpane/lists/columns";
import type { Mapped } from "../../src/taskpane/lists/columns";
import { grades } from "../../src/taskpane/lists/grades";
import { offers } from "../../src/taskpane/lists/offers";
import { readFile, readText } from "../../src/taskpane/lists/open";
import { readLists } from "../../src/taskpane/lists/readLists";
import type { Sort } from "../../src/taskpane/lists/sort";
import { headingRows, taken } from "../../src/taskpane/lists/taken";

const quiet = { report: () => undefined, signal: new AbortController().signal };
const listOf = (rows: ListCell[][]) => ({ rows, lines: rows.map((_, i) => i + 1), top: 0, remarks: [] });
const tableIn = async (text: string): Promise<ListCell[][]> => {
  const { table } = taken(await readText(text, "grades", quiet), "", grades);
  return [table.headings, ...table.rows].map((row) => [...row]);
};
/** Reads cells, headings first, by what is said of their columns. */
function read(
  rows: ListCell[][],
  {
    columns,
    system = "metric",
    decimals = "ask",
    sort = grades,
  }: {
    columns?: readonly Mapped[];
    system?: System;
    decimals?: Decimals;
    sort?: Sort;
  } = {},
) {
  const list = { ...taken(listOf(rows), "", sort), decimals };
  return readLists([columns ? { ...list, columns } : list], sort, system, quiet);
}

describe("lists", () => {
  test("comma, semicolon and tab, quotes, a byte order mark and blank lines", async () => {
    const wanted = [
      ["grade", "PV limit"],
      ["A 1", "7,250"],
    ];
    expect(await tableIn('\uFEFFgrade,"PV limit"\n\nA 1,"7,250"\n')).toEqual(wanted);
    expect(await tableIn("grade;PV limit\r\nA 1;7,250\r\n")).toEqual(wanted);
    expect(await tableIn("grade\tPV limit\nA 1\t7,250")).toEqual(wanted);
  });

  test("short rows are filled, cells trimmed, blanks are blanks", async () => {
    expect(await tableIn("a,b,c\n x , \n")).toEqual([
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
    expect((await readFile(new File([new Uint8Array(data)], "list.csv"), "grades", quiet)).rows).toEqual([
      ["grade", "PV limit"],
      ["=A", 0.25],
    ]);
  });

  test("other kinds of file are refused by what they hold", async () => {
    const open = (content: string, name: string) => readFile(new File([content], name), "grades", quiet);
    await expect(open("%PDF-1.7", "list.csv")).rejects.toThrow("It is a PDF");
    await expect(open("PK\u0003\u0004", "list.csv")).rejects.toThrow("The workbook is broken");
    await expect(tableIn('grade,PV limit\n"A,1\nB,2')).rejects.toThrow("opens a cell in line 2 is never closed");
    await expect(tableIn("grade,PV limit\nA,1,800")).rejects.toThrow("Line 2 has 3 cells under 2 headings");
    expect((await open("a;b\n1;2", "list.CSV")).rows).toHaveLength(2);
  });
});

describe("columns", () => {
  test("the project's own headings and a supplier's words are guessed with their units", () => {
    const guesses = guessColumns(
      ["Material", "Max PV [psi-fpm]", "max. pressure, psi", "CTE (1/°F)", "Colour", "PV limit"],
      grades,
    );
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
    expect(unitFault({ heading: "", key: "pvLimit", unit: "psi*fpm" }, grades)).toBeUndefined();
    expect(unitFault({ heading: "", key: "pvLimit", unit: "psi" }, grades)).toMatch(/PV limit must be in a unit like/);
    expect(unitFault({ heading: "", key: "pvCurve", unit: "°F: psi*fpm" }, grades)).toBeUndefined();
    expect(unitFault({ heading: "", key: "family", unit: "mm" }, grades)).toMatch(/takes no unit/);
  });

  test("a percentage's column says whether it is in % or a ratio", async () => {
    const [grade, bare, per] = guessColumns(["Material", "Water absorption", "swelling saturated, %"], grades);
    expect([grade!.key, bare!.key, per!.key]).toEqual(["grade", "waterSaturated", "swellingSaturated"]);
    expect(unitFault(bare!, grades)).toBe("water uptake saturated: say whether it is in % or a ratio");
    for (const unit of ["%", "ratio"]) expect(unitFault({ ...bare!, unit }, grades)).toBeUndefined();
    expect([per!.unit, unitFault(per!, grades)]).toEqual(["%", undefined]);
    const rows = [
      ["Material", "swelling saturated, %"],
      ["A", 2],
    ];
    expect((await read(rows, { columns: [grade!, per!] })).headings).toEqual(["grade", "swelling saturated [%]"]);
  });

  test("the grade's name is needed, and no property twice", () => {
    const column = (key: "grade" | "pvLimit") => ({ heading: key, key, unit: "" });
    expect(mappingFault([column("pvLimit")], grades)).toMatch(/Set one column to grade/);
    expect(mappingFault([column("grade"), column("pvLimit"), column("pvLimit")], grades)).toMatch(
      /PV limit: choose one/,
    );
    expect(mappingFault([column("grade"), column("pvLimit")], grades)).toBeUndefined();
  });
});

describe("what a list's cells say", () => {
  test("a column assigned by hand keeps its heading's unit", () => {
    expect(unitIn("sliding velocity, m/min", "speedTurning", grades)).toBe("m/min");
    expect(unitIn("stiffness [GPa]", "compressiveModulus", grades)).toBe("GPa");
    expect([unitIn("stiffness [GPa]", "", grades), unitIn("kind [x]", "family", grades)]).toEqual(["", ""]);
  });
  test("one wear factor and one friction are taken as the high ones", () => {
    const guesses = guessColumns(["wear factor", "friction", "wear rate high"], grades);
    expect(guesses.map(({ key, isGuess = false }) => [key, isGuess])).toEqual([
      ["wearHigh", true],
      ["frictionHigh", true],
      ["", false],
    ]);
  });
  test("names stay text, numbers follow the list's decimals, which are asked for where it does not tell them", async () => {
    const cells = (pv: string) => [
      ["grade", "compressive modulus", "note"],
      ["1E5", pv, "1,234"],
      ["007", "950,5", "2.50"],
    ];
    expect((await read(cells("1.180"))).rows).toEqual([
      ["1E5", 1180, "1,234"],
      ["007", 950.5, "2.50"],
    ]);
    const open = cells("1.180").slice(0, 2);
    await expect(read(open)).rejects.toThrow("could be 1180 or 1.18: decimal comma or point?");
    const first = async (decimals: Decimals) => (await read(open, { decimals })).rows[0]![1];
    expect([await first("comma"), await first("point")]).toEqual([1180, 1.18]);
    await expect(read(cells("1,234.5"))).rejects.toThrow("has a decimal comma");
  });
  test("an empty or tbd figure costs that figure, not the row", async () => {
    const cells = [
      ["grade", "PV limit [MPa*m/s]"],
      ["A", "tbd"],
      ["B", null],
    ];
    expect(await read(cells)).toMatchObject({ count: 2, faults: [] });
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
  const columns = guessColumns(rows[0]!, grades);
  const inInches = () => read(rows, { system: "inch", decimals: "point" });

  test("bad rows are named and left out, the rest stays whole", async () => {
    const { headings, rows: good, count, faults, kept } = await inInches();
    expect(count).toBe(1);
    expect(faults.map(({ line, name }) => [line, name])).toEqual([
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

  test("the written table reads back without the pane, in any unit system", async () => {
    const { headings, rows: good } = await inInches();
    const { grades: found, faults: again } = parseGrades(
      [[...headings], ...good.map((row) => [...row])],
      "metric",
      "grades",
    );
    expect(again).toEqual([]);
    // 1 psi·ft/min = 35.02536704929527 W/m² (NIST SP 811); (212 − 32)·5/9 = 100
    expect(found[0]!.values.pvLimit).toBeCloseTo(7250 * 3.502536704929527e-5, 12);
    expect(found[0]!.values.highestTemperature).toBeCloseTo(100, 9);
  });

  test("a column that is kept does not become a property by its name", async () => {
    const mapped = columns.map((column) => (column.key === "pvLimit" ? assigned(column, "", grades) : column));
    const { headings: other, kept: unused } = await read(rows.slice(0, 2), { columns: mapped, decimals: "point" });
    expect(other[1]).toBe("as listed: PV limit");
    expect(unused).toEqual(["PV limit"]);
  });
});

describe("several lists", () => {
  const from = async (text: string, of: string, sort: Sort) => taken(await readText(text, sort.kind, quiet), of, sort);

  test("grades of several lists, each in its own units and decimals, are one table that says whose each is", async () => {
    const lists = [
      await from("grade;PV limit [MPa*m/s];colour\nA;0,25;red\n", "North", grades),
      await from('Material,Max PV [psi-fpm]\nB,"7,250"\nA,5000.5\n', "West", grades),
    ];
    const { headings, rows, faults, count, understood } = await readLists(lists, grades, "metric", quiet);
    expect(headings).toEqual(["grade", "PV limit", "colour", "list"]);
    expect(rows).toEqual([
      ["A", "0.25 MPa*m/s", "red", "North"],
      ["B", "7250 psi*fpm", null, "West"],
    ]);
    expect(count).toBe(2);
    expect(faults).toEqual([
      {
        of: "West",
        line: 3,
        name: "A",
        message: expect.stringContaining('"A" stands in North line 2 already') as string,
      },
    ]);
    // 7250 psi·ft/min of 35.02536704929527 W/m² each (NIST SP 811)
    expect(understood[1]![1]![0]).toEqual({ text: "7,250", told: "0.253934 MPa·m/s" });
  });

  test("offers as understood: amounts with their currency, times in days, breaks in pieces, a length in its unit", async () => {
    const list = await from(
      "item;compound;ID [in];unit price EUR;qty;price from 500 [EUR];delivery;weight\n" +
        "007;Demo Lovage;25/32;1.180;100-499;0,95;4-6 weeks;3,5\n1E5;Demo Sorrel;tbd;$2;1.000;;someday;\n",
      "North",
      offers,
    );
    const { headings, rows, understood, kept, faults, count } = await readLists([list], offers, "metric", quiet);
    expect(understood[0]!.map((values) => values.map(({ told = "" }) => told))).toEqual([
      ["007", "1E5"],
      ["Demo Lovage", "Demo Sorrel"],
      ["19.8438 mm", "no data"],
      ["1180 EUR", expect.stringContaining("which dollar?") as string],
      ["100 to 499 pieces", "1000 pieces"],
      ["0.95 EUR"],
      ["42 d", expect.stringContaining("not read: lead time must be") as string],
      [""],
    ]);
    expect(kept).toEqual(["weight"]);
    expect([headings[3], headings[5], headings.at(-1)]).toEqual(["price [EUR]", "price from 500 [EUR]", "supplier"]);
    // a row with a fault stays: QUOTES lists it with its reason
    expect([rows.length, count, rows[0]![0]]).toEqual([2, 2, "007"]);
    expect(faults.map(({ line, name }) => [line, name])).toEqual([
      [3, "1E5"],
      [3, "1E5"],
    ]);
  });

  test("title rows are passed over, and another row may be said to hold the headings", async () => {
    const list = await readText(
      "Price list;;\n;;\npart no.;material;unit price [EUR]\n1;Demo Sorrel;0,95\n",
      "offers",
      quiet,
    );
    const found = taken(list, "", offers);
    expect([found.top, found.columns.map(({ key }) => key)]).toEqual([2, ["part", "grade", "price"]]);
    expect(headingRows(list).map(({ text }) => text)).toEqual([
      "line 1: Price list",
      "line 3: part no. · material · unit price [EUR]",
      "line 4: 1 · Demo Sorrel · 0,95",
    ]);
    expect(taken(list, "", offers, 0).columns[0]!.heading).toBe("Price list");
  });

  test("amounts of lists in several currencies carry each its own, and a sign that several share that of its heading", async () => {
    const one = (of: string, unit: string, ...prices: ListCell[]) =>
      taken(
        listOf([["part", "material", `unit price [${unit}]`], ...prices.map((price) => ["P", "PEEK", price])]),
        of,
        offers,
      );
    const lists = [
      one("A", "EUR", 2.15, "1,90 €", "CHF 2"),
      one("B", "USD", "$1.60", "1.70 each", "US$ 1.80", "€ 1.50"),
    ];
    const { headings, rows, faults } = await readLists(lists, offers, "metric", quiet);
    const at = headings.indexOf("price");
    expect(rows.map((row) => row[at])).toEqual([
      "2.15 EUR",
      "1.90 €",
      "CHF 2",
      "1.60 USD",
      "1.70 USD",
      "US$ 1.80",
      "€ 1.50",
    ]);
    expect(faults).toEqual([]);
    // a dollar below EUR stays what it is, and is asked for
    const asked = await readLists([one("A", "EUR", "$2"), one("B", "USD", 1)], offers, "metric", quiet);
    expect(asked.rows[0]![at]).toBe("$2");
    expect(asked.faults.map(({ message }) => message)).toEqual([expect.stringContaining("which dollar?")]);
  });

  test("offers are not taken as grades, nor grades as offers", async () => {
    const sent = "part,supplier,grade,bore,length,unit price,MOQ,lead time\nA,S,Demo Medlar,15,20,1,1,3\n";
    await expect(from(sent, "", grades)).rejects.toThrow("seems to be a list of offers, not of grades");
    const limits = "grade,PV limit,static pressure limit,family\nA,1,2,POM\n";
    await expect(from(limits, "", offers)).rejects.toThrow("seems to be a list of grades, not of offers");
  });
});

describe("long lists", () => {
  const rows = 20_000;
  const text = `grade,PV limit [MPa*m/s],remark\n${Array.from({ length: rows }, (_, i) => `G${i},0.25,${"seen and weighed ".repeat(2)}`).join("\n")}\n`;

  test("are read in parts, and tell how far they are", async () => {
    const shares: number[] = [];
    const progress = { report: (share: number) => void shares.push(share), signal: new AbortController().signal };
    const list = taken(await readText(text, "grades", progress), "", grades);
    expect(shares.length).toBeGreaterThan(1);
    expect((await readLists([list], grades, "metric", progress)).count).toBe(rows);
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
  });

  test("can be stopped while they are divided into cells, and while the cells are read", async () => {
    const controller = new AbortController();
    const stop = { report: () => controller.abort(), signal: controller.signal };
    await expect(readText(text, "grades", stop)).rejects.toThrow("Reading was stopped");
    const list = taken(await readText(text, "grades", quiet), "", grades);
    await expect(readLists([list], grades, "metric", stop)).rejects.toThrow("Reading was stopped");
  });
});
