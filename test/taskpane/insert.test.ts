import { criteria, dataLabel, judge, verdictText } from "../../src/core/duties";
import type { Ranked } from "../../src/core/duties";
import { findGrade, kindText, libraryOf, readGrades } from "../../src/core/grades/model";
import type { System } from "../../src/core/kinds";
import { fromWorking } from "../../src/core/units";
import { explain, sayCell } from "../../src/taskpane/cell/explain";
import { emptyTexts } from "../../src/taskpane/state/fields";
import type { Texts } from "../../src/taskpane/state/fields";
import { figuresOf } from "../../src/taskpane/state/figures";
import { readSelectedRow } from "../../src/taskpane/duty/fromRow";
import { keepStepUnits } from "../../src/taskpane/state/spectrum";
import { keepUnits } from "../../src/taskpane/state/quantity";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { blockOf, widthsOf } from "../../src/taskpane/insert/blocks";
import type { Piece } from "../../src/taskpane/insert/blocks";
import { areaText, countFilled, findFormulas, freeze, hasError } from "../../src/taskpane/insert/write";
import { listOf } from "../../src/taskpane/state/list";
import { richCell } from "../../src/port/sheet";
import type { Place, ReadCell, SheetPort, Written } from "../../src/port/sheet";
import { Sheet } from "./evaluate";

const at = { sheet: "S", row: 4, col: 1 };
const shaft: Texts = { ...emptyTexts, load: "800", bore: "20", length: "15", rpm: "120", temperature: "5 to 45" };
const spectrum = "800; 120; 10\n1600; 60; 1 h\n700; 0; 15";
const grades = ["Demo Quince", "PA66"];

interface Given {
  readonly texts?: Texts;
  readonly steps?: string;
  readonly system?: System;
  readonly reference?: string;
  readonly library?: ReturnType<typeof libraryOf>;
  readonly grades?: readonly string[];
}
const dutyOf = ({ texts = shaft, steps = "", system = "metric" }: Given) => readDuty(texts, steps, system).duty!;
const block = (piece: Piece, given: Given = {}) =>
  blockOf({ piece, duty: dutyOf(given), system: "metric", grades, library: libraryOf(), ...given }, at);
const formulas = (rows: readonly (readonly Written[])[]) => rows.flat().flatMap((cell) => richCell(cell).formula ?? []);
const contents = (row: readonly Written[]) => row.map((cell) => richCell(cell).value);

test("the duty's line: headings of the field list, numbers, live formulas on their own cells", () => {
  const [headings, values] = block("duty");
  expect(contents(headings!)).toEqual([
    "duty",
    "motion",
    "load [N]",
    "bore [mm]",
    "length [mm]",
    "rpm [1/min]",
    "temperature [°C]",
    "moisture",
    "pressure [MPa]",
    "speed [m/s]",
    "PV [MPa·m/s]",
  ]);
  expect(values!.slice(0, 8)).toEqual(["Duty", "turning", 800, 20, 15, 120, "5 to 45", "dry"]);
  expect(formulas([values!])).toEqual(["=BUSH.PRESSURE(D6,E6,F6)", "=BUSH.SPEED(E6,G6)", "=BUSH.PVVALUE(J6,K6)"]);
});

test("an impact factor is a column of its own: pressure and PV stay without it", () => {
  const given = { texts: { ...shaft, impactFactor: "2" } };
  const [headings, values] = block("duty", given);
  expect(contents(headings!)).toContain("impact factor");
  expect(formulas([values!])).toEqual(["=BUSH.PRESSURE(D6,E6,F6)", "=BUSH.SPEED(E6,G6)", "=BUSH.PVVALUE(K6,L6)"]);
});

test("what is 0 keeps its unit where tables take no bare 0", () => {
  const texts = { ...shaft, temperature: "0" };
  const [, first, second] = block("duty", { texts, steps: "800; 120; 10\n0; 60; 5" });
  expect(first!.slice(0, 7)).toEqual(["Duty", "turning", 800, 20, 15, 120, "0 °C"]);
  expect(second![2]).toBe("0 N");
});

test("steps are rows of their own; at rest the motion says so", () => {
  const rows = block("duty", { steps: spectrum });
  expect(contents(rows[0]!).slice(0, 9)).toEqual([
    "duty",
    "motion",
    "load [N]",
    "bore [mm]",
    "length [mm]",
    "rpm [1/min]",
    "temperature [°C]",
    "moisture",
    "time [min]",
  ]);
  expect(rows.slice(1).map((row) => row.slice(0, 9))).toEqual([
    ["Duty", "turning", 800, 20, 15, 120, "5 to 45", "dry", 10],
    [null, "turning", 1600, null, null, 60, null, null, 60],
    [null, "static", 700, null, null, null, null, null, 15],
  ]);
  expect(formulas(rows)).toEqual([
    "=BUSH.PRESSURE(D6,E6,F6)",
    "=BUSH.SPEED(E6,G6)",
    "=BUSH.PVVALUE(K6,L6)",
    "=BUSH.PRESSURE(D7,E6,F6)",
    "=BUSH.SPEED(E6,G7)",
    "=BUSH.PVVALUE(K7,L7)",
    "=BUSH.PRESSURE(D8,E6,F6)",
  ]);
});

const everything: Texts = {
  ...emptyTexts,
  motion: "swinging",
  load: "640 to 960",
  bore: "20",
  length: "14 ± 1",
  swing: "90",
  cycles: "12",
  temperature: "0",
  moisture: "humid",
  shaft: "soft steel",
  hardness: "150",
  impactFactor: "2",
  designFactor: "1.5",
};

test.each([
  ["one step", shaft, ""],
  ["a spectrum", shaft, spectrum],
  ["bands, and a temperature of 0", everything, ""],
  ["a swinging spectrum that begins at rest", everything, "800; 0; 5\n900; 12; 6\n900; 0; 1\n100; 3; 2"],
  ["a rod that stands still", { ...shaft, motion: "linear", stroke: "40", cycles: "0" }, ""],
])("the pane reads its own line back: %s", async (_, texts, steps) => {
  const given = { texts, steps };
  const rows = block("duty", given).map((row) => contents(row).map((value) => ({ value: value ?? null, text: "" })));
  const port = { selection: () => ({ sheet: "S", row: 1, col: 0 }), read: () => rows } as unknown as SheetPort;
  const found = await readSelectedRow(port, "inch");
  expect(found.unread).toEqual([]);
  const back = readDuty(found.texts, found.steps, "inch").duty!;
  expect(back.corners).toEqual(
    dutyOf(given).corners.map((corner) => ({ ...corner, given: expect.anything() as object })),
  );
  const grade = findGrade("Demo Sorrel");
  expect(verdictText(judge(grade, back), "metric")).toBe(verdictText(judge(grade, dutyOf(given)), "metric"));
});

test("checks, shortlist and steps refer to the line, name own grades and say inch where it is inch", () => {
  expect(formulas(block("checks").slice(3))).toEqual([
    "=BUSH.DUTIES(B5:J7)",
    "=BUSH.DUTYCHECKS(B5:J7,1)",
    "=BUSH.DUTYCHECKS(B5:J7,2)",
  ]);
  const own = formulas(block("checks", { reference: "OwnGrades[#All]", system: "inch" }));
  expect(own.at(-1)).toBe('=BUSH.DUTYCHECKS(B5:J7,2,,OwnGrades[#All],"inch")');
  expect(formulas(block("checks", { system: "inch" })).at(-1)).toBe('=BUSH.DUTYCHECKS(B5:J7,2,,,"inch")');
  expect(formulas(block("shortlist").slice(2))).toEqual(["=BUSH.DUTYRANK(B5:I6)"]);
  expect(formulas(block("shortlist", { reference: "OwnGrades[#All]" })).at(-1)).toBe(
    "=BUSH.DUTYRANK(B5:I6,,OwnGrades[#All])",
  );
  expect(formulas(block("steps").slice(2))).toEqual([
    '=BUSH.STEPS("PRESSURE",D6,E6,F6)',
    '=BUSH.STEPS("SPEED",E6,G6)',
    '=BUSH.STEPS("PVVALUE",J6,K6)',
  ]);
  // of a spectrum the step with the greatest PV: 1600·60 is as 800·120, so the one above it
  expect(formulas(block("steps", { steps: "100; 60; 1\n1600; 60; 1" })).at(-1)).toBe('=BUSH.STEPS("PVVALUE",K7,L7)');
});

test("a duty for each grade: the first holds the figures, the others follow it", () => {
  const [headings, first, second] = block("checks");
  expect(contents(headings!).slice(0, 3)).toEqual(["duty", "grade", "motion"]);
  expect(first!.slice(0, 4)).toEqual(["Duty with Demo Quince", "Demo Quince", "turning", 800]);
  expect(second!.slice(0, 4)).toEqual(["Duty with PA66", "PA66", { formula: "=D6" }, { formula: "=E6" }]);
});

const ownRows = [
  [
    "grade",
    "running pressure limit [MPa]",
    "speed limit turning [m/s]",
    "PV limit [MPa*m/s]",
    "lowest temperature",
    "highest temperature",
    "least shaft hardness",
  ],
  ["Own strong", 10, 2, 1, -40, 100, 300],
  ["Own weak", 1, 2, 0.1, -40, 100, null],
];
const ownLibrary = readGrades(ownRows, "metric", "grades");

describe.each([
  ["a plain duty", {}],
  [
    "blows, a design factor and a soft shaft",
    { texts: { ...shaft, impactFactor: "2", designFactor: "1.5", hardness: "150" } },
  ],
  ["a spectrum", { steps: spectrum }],
  ["bands", { texts: everything }],
  ["a duty at rest", { texts: { ...shaft, motion: "static" } }],
  ["inch", { texts: keepUnits(shaft, "metric"), steps: keepStepUnits(spectrum, "metric"), system: "inch" }],
  ["own grades", { grades: ["Own weak", "Own strong", "Demo Quince"], library: ownLibrary, reference: "Own" }],
] as [string, Given][])("what is inserted answers what the pane says: %s", (_, given) => {
  const { system = "metric", library = libraryOf(), grades: named = grades } = given;
  const ranked = listOf(dutyOf(given), library);
  const said = (one: Ranked) => verdictText(one.checks, system, one);
  const sheet = (piece: Piece) => new Sheet(block(piece, given), at, { Own: ownRows });

  test("the check table: verdict, data, pressure, speed and PV, and every criterion", () => {
    const checks = sheet("checks");
    const perGrade = named.map((name) => ranked.find(({ grade }) => grade.name === name)!);
    const duties = checks.answers("DUTIES")[0]!.filter((row) => row[0] !== "");
    expect(duties.map(([, grade, , , , , , , , verdict, data]) => [grade, verdict, data])).toEqual(
      perGrade.map((one) => [one.grade.name, said(one), dataLabel(one.grade, one.checks)]),
    );
    const tables = checks.answers("DUTYCHECKS");
    expect(tables).toHaveLength(named.length);
    perGrade.forEach(({ checks: judged }, i) => {
      expect(tables[i]!.slice(0, judged.length).map((row) => [row[0], row[5]])).toEqual(
        judged.map(({ criterion, word }) => [criterion.heading, word]),
      );
      const values = judged.map(({ criterion: { kind }, value }) =>
        value === undefined ? "" : fromWorking(kind, value, system),
      );
      tables[i]!.slice(0, judged.length).forEach((row, k) => {
        const wanted = values[k];
        if (typeof wanted === "number") expect(Number(row[1]) / (wanted || 1)).toBeCloseTo(wanted === 0 ? 0 : 1, 9);
        else expect(row[1]).toBe("");
      });
    });
    // what the line above the pane's parts says
    const { pressure, speed, pv } = figuresOf(dutyOf(given), system);
    const shown = duties.map(([, , ...row]) => row.slice(0, 3).map((x) => Number(Number(x).toPrecision(4))));
    for (const row of shown) expect(row).toEqual([pressure, speed, pv].map((text) => Number(text.split(" ")[0])));
  });

  test("the shortlist: the grades that functions look at, in the pane's order and words", () => {
    const rank = sheet("shortlist").answers("DUTYRANK")[0]!;
    const looked = ranked.filter(({ grade }) => library.scope.includes(grade));
    expect(looked).toEqual(ranked.slice(0, looked.length));
    expect(rank.map(([name, kind, , , verdict, data]) => [name, kind, verdict, data])).toEqual(
      looked.map((one) => [one.grade.name, kindText[one.grade.kind], said(one), dataLabel(one.grade, one.checks)]),
    );
  });
});

test("a band has no worked steps, and is told so", () => {
  expect(() => block("steps", { texts: everything })).toThrow(/^A band has no one value to work with/);
  expect(formulas(block("duty", { texts: everything }))).toEqual([]);
});

test("columns are wide enough for their headings and for what spills", () => {
  const widths = widthsOf("checks", block("checks"));
  expect(widths[0]).toBeGreaterThanOrEqual("lowest temperature".length);
  expect(widths[7]).toBeGreaterThan("temperature [°C]".length - 7);
  expect(Math.max(...widths)).toBeLessThan(45);
});

test("what is written covers the room that spills need", () => {
  const room = (piece: Piece, id: string, given: Given = {}) => {
    const rows = block(piece, given);
    const tops = rows.flatMap((row, i) => (formulas([row])[0]?.includes(`BUSH.${id}(`) ? [i] : []));
    const answers = new Sheet(rows, at, { Own: ownRows }).answers(id);
    expect(answers.length).toBe(tops.length);
    return tops.map((top, i) => {
      // nothing of ours stands within the answer
      const inside = rows.slice(top + 1, top + 1 + answers[i]!.length);
      expect(inside).toHaveLength(answers[i]!.length);
      for (const cell of inside.flat()) expect([null, undefined]).toContain(richCell(cell).value);
      return answers[i]!.length;
    });
  };
  expect(room("shortlist", "DUTYRANK")).toEqual([libraryOf().scope.length]);
  expect(room("shortlist", "DUTYRANK", { library: ownLibrary, reference: "Own" })).toEqual([2]);
  expect(room("checks", "DUTYCHECKS", { steps: spectrum })).toEqual([criteria.length, criteria.length]);
  expect(room("checks", "DUTIES", { steps: spectrum })).toEqual([6]);
  // inputs, the line worked and at least one source
  for (const rows of room("steps", "STEPS")) expect(rows).toBeGreaterThanOrEqual(2 + 1 + 1);
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
