import { libraryOf } from "../../src/core/grade";
import { explain, sayCell } from "../../src/taskpane/cell/explain";
import { emptyTexts, readDuty } from "../../src/taskpane/duty/fields";
import type { Texts } from "../../src/taskpane/duty/fields";
import { textsOf } from "../../src/taskpane/duty/fromRow";
import { blockOf, widthsOf } from "../../src/taskpane/insert/blocks";
import type { Piece } from "../../src/taskpane/insert/blocks";
import { areaText, countFilled, findFormulas, freeze, hasError } from "../../src/taskpane/insert/write";
import { richCell } from "../../src/port/sheet";
import type { Place, ReadCell, SheetPort, Written } from "../../src/port/sheet";

const at = { sheet: "S", row: 4, col: 1 };
const shaft: Texts = { ...emptyTexts, load: "800", bore: "20", length: "15", rpm: "120", lowest: "5", highest: "45" };

const block = (piece: Piece, texts = shaft, more: object = {}) => {
  const system = "metric";
  return blockOf(
    {
      piece,
      texts,
      read: readDuty(texts, system),
      system,
      grades: ["Demo Quince", "PA66"],
      library: libraryOf(),
      ...more,
    },
    at,
  );
};
const formulas = (rows: readonly (readonly Written[])[]) => rows.flat().flatMap((cell) => richCell(cell).formula ?? []);
const contents = (row: readonly Written[]) => row.map((cell) => richCell(cell).value);

test("the duty's line: headings with units, numbers, live formulas on their own cells", () => {
  const [headings, values] = block("duty");
  expect(contents(headings!)).toEqual([
    "motion",
    "moisture",
    "shock",
    "load [N]",
    "bore [mm]",
    "length [mm]",
    "rpm [1/min]",
    "lowest temperature [°C]",
    "highest temperature [°C]",
    "design factor",
    "pressure [MPa]",
    "speed [m/s]",
    "PV [MPa·m/s]",
    "pressure times design factor [MPa]",
  ]);
  expect(values!.slice(0, 10)).toEqual(["turning", "dry", "steady", 800, 20, 15, 120, 5, 45, 1]);
  expect(formulas([values!])).toEqual([
    "=BUSH.PRESSURE(E6,F6,G6)",
    "=BUSH.SPEED(F6,H6)",
    "=BUSH.PVVALUE(L6,M6)",
    "=L6*K6",
  ]);
});

test("the pane reads its own line back", () => {
  const given = {
    ...shaft,
    motion: "swinging",
    swing: "90",
    cycles: "12",
    shaft: "soft steel",
    hardness: "150",
    shock: "shock",
    impactFactor: "2",
  };
  const [headings, values] = block("duty", given);
  const cells = (row: readonly Written[]): ReadCell[] =>
    contents(row).map((value) => ({ value: value ?? null, text: "" }));
  const back = { ...emptyTexts, ...textsOf(cells(headings!), cells(values!)) };
  expect(readDuty(back, "inch").duty).toEqual({ ...readDuty(given, "metric").duty, designFactor: 1 });
  expect(formulas([values!])[0]).toMatch(/^=BUSH\.PRESSURE\(\w+,\w+,\w+\)\*\w+$/);
});

test("checks, shortlist and steps refer to the line, name own grades and say inch where it is inch", () => {
  expect(formulas(block("checks").slice(2))).toEqual([
    '=BUSH.VERDICT(B8,O6,M6,I6&" to "&J6,B6)',
    '=BUSH.CHECKS(B8,O6,M6,I6&" to "&J6,B6)',
    '=BUSH.VERDICT(B16,O6,M6,I6&" to "&J6,B6)',
    '=BUSH.CHECKS(B16,O6,M6,I6&" to "&J6,B6)',
  ]);
  const own = formulas(block("checks", shaft, { reference: "OwnGrades[#All]", system: "inch" }));
  expect(own.at(-1)).toBe('=BUSH.CHECKS(B16,O6,M6,I6&" to "&J6,B6,OwnGrades[#All],"inch")');
  expect(formulas(block("checks", shaft, { system: "inch" })).at(-1)).toBe(
    '=BUSH.CHECKS(B16,O6,M6,I6&" to "&J6,B6,,"inch")',
  );
  expect(formulas(block("shortlist").slice(2))).toEqual(['=BUSH.SHORTLIST(O6,M6,I6&" to "&J6,B6,C6)']);
  expect(formulas(block("steps").slice(2))).toEqual([
    '=BUSH.STEPS("PRESSURE",E6,F6,G6)',
    '=BUSH.STEPS("SPEED",F6,H6)',
    '=BUSH.STEPS("PVVALUE",L6,M6)',
  ]);
});

test("columns are wide enough for their headings and for what spills", () => {
  const widths = widthsOf("checks", block("checks"));
  expect(widths[0]).toBeGreaterThanOrEqual("lowest temperature".length);
  expect(widths[8]).toBeGreaterThan("highest temperature [°C]".length);
  expect(Math.max(...widths)).toBeLessThan(45);
});

test("at rest there is no speed: 0 stands in its place", () => {
  expect(formulas(block("checks", { ...shaft, motion: "static" })).at(-1)).toMatch(/^=BUSH\.CHECKS\(\w+,\w+,0,/);
});

test("what is written covers the room that spills need", () => {
  const shortlist = block("shortlist");
  const anchor = shortlist.findIndex((row) => formulas([row])[0]?.includes("SHORTLIST"));
  expect(shortlist.length - anchor).toBe(1 + libraryOf().grades.length);
  const steps = block("steps");
  const rows = steps.flatMap((row, i) => (formulas([row])[0]?.includes("STEPS") ? [i] : []));
  // heading, inputs, the line worked and at least one source
  expect(rows[1]! - rows[0]!).toBeGreaterThanOrEqual(1 + 3 + 1 + 1);
});

function fakePort(cells: ReadCell[][]) {
  const written: [Place, readonly (readonly Written[])[]][] = [];
  const port = {
    read: ({ row, col, rows, cols }: Place) => cells.slice(row, row + rows).map((line) => line.slice(col, col + cols)),
    spillOf: ({ row, col }: Place) => (row === 0 && col === 0 ? { sheet: "S", row, col, rows: 2, cols: 1 } : undefined),
    write: (place: Place, block: readonly (readonly Written[])[]) => void written.push([place, block]),
  } as unknown as SheetPort;
  return { port, written };
}
const place = { sheet: "S", row: 0, col: 0, rows: 2, cols: 2 };

test("freezing takes the whole spill, wherever it is touched, and only this add-in's formulas", async () => {
  const { port, written } = fakePort([
    [
      { value: 1, text: "1", formula: "=BUSH.LIMITS(20,A9)" },
      { value: 7, text: "7", formula: "=SUM(A9:B9)" },
    ],
    [
      { value: 2, text: "2", spilledFrom: { row: 0, col: 0, formula: "=BUSH.LIMITS(20,A9)" } },
      { value: null, text: "" },
    ],
  ]);
  const found = await findFormulas(port, { ...place, row: 1, rows: 1 });
  expect(found).toHaveLength(1);
  expect(hasError(found[0]!)).toBe(false);
  await freeze(port, found);
  expect(written).toEqual([[{ sheet: "S", row: 0, col: 0, rows: 2, cols: 1 }, [[1], [2]]]]);
  expect(await countFilled(port, place)).toBe(3);
  expect([areaText(place), areaText({ ...place, rows: 1, cols: 1 })]).toEqual(["A1:B2", "A1"]);
});

test("the selected cell is explained by the functions that it calls", () => {
  const cell = { value: 1, text: "1", formula: '=BUSH.PVVALUE(BUSH.PRESSURE(A1,A2,A3),1)&"BUSH.SPEED("' };
  expect(explain(cell).map(({ signature }) => signature.split("(")[0])).toEqual(["BUSH.PVVALUE", "BUSH.PRESSURE"]);
  expect(explain(cell)[1]).toMatchObject({ working: ["p = F / (d·L)"] });
  expect(explain({ value: 1, text: "1", formula: "=SUM(A1)" })).toEqual([]);
  expect(sayCell({ value: "#N/A", text: "#N/A", error: { code: "#N/A", message: "grade is unknown" } })).toBe(
    "#N/A: grade is unknown",
  );
  expect(sayCell({ value: "#SPILL!", text: "#SPILL!", error: { code: "#SPILL!" } })).toMatch(
    /^#SPILL!\. The answer needs empty cells/,
  );
});
