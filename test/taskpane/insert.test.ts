import { criteria, dataLabel, judge, verdictText } from "../../src/core/duties";
import type { Ranked } from "../../src/core/duties";
import { findGrade, kindText, libraryOf, readGrades } from "../../src/core/grades/model";
import type { System } from "../../src/core/kinds";
import { fromWorking } from "../../src/core/units/scale";
import { explain, sayCell } from "../../src/taskpane/cell/explain";
import { dutyWords } from "../../src/taskpane/duty/DutyLine";
import { readSelectedRow } from "../../src/taskpane/duty/fromRow";
import { blockOf } from "../../src/taskpane/insert/blocks";
import { writeFree } from "../../src/taskpane/insert/insertion";
import { placedAt } from "../../src/taskpane/insert/placed";
import type { Piece } from "../../src/taskpane/insert/pieces";
import { countFilled, findFormulas, freeze, hasError } from "../../src/taskpane/insert/write";
import { reasonsOf } from "../../src/taskpane/shortlist/words";
import { emptyForm } from "../../src/taskpane/state/form";
import type { Form, Texts } from "../../src/taskpane/state/form";
import { figuresOf } from "../../src/taskpane/state/figures";
import { listOf } from "./listOf";
import { keepUnits } from "../../src/taskpane/state/quantity";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { areaText } from "../../src/port/address";
import { richCell } from "../../src/port/sheet";
import type { Block, Place, ReadCell, SheetPort, Written } from "../../src/port/sheet";
import { Sheet } from "./evaluate";

const at = { sheet: "S", row: 4, col: 1 };
const shaft: Texts = {
  ...emptyForm[0],
  ...{ load: "800", bore: "20", length: "15", rpm: "120", temperature: "5 to 45" },
};
const spectrum: Form = [
  { ...shaft, time: "10" },
  { load: "1600", rpm: "60", time: "1 h" },
  { motion: "static", load: "700", time: "15" },
];
const grades = ["Demo Quince", "PA66"];

interface Given {
  readonly form?: Form;
  readonly system?: System;
  readonly own?: { readonly text: string; readonly value: unknown };
  readonly library?: ReturnType<typeof libraryOf>;
  readonly grades?: readonly string[];
}
function dutyOf({ form = [shaft], system = "metric" }: Given) {
  const { duty, ...rest } = readDuty(form, system);
  if (!duty) throw new Error(JSON.stringify(rest));
  return duty;
}
const order = (piece: Piece, given: Given) => ({
  ...{ piece, duty: dutyOf(given), system: "metric" as const, grades, library: libraryOf() },
  ...given,
});
const ordered = (piece: Piece, given: Given = {}) => blockOf(order(piece, given), at);
const block = (piece: Piece, given: Given = {}) => ordered(piece, given).block;
const formulas = (rows: Block) => rows.flat().flatMap((cell) => richCell(cell).formula ?? []);
const contents = (row: readonly Written[]) => row.map((cell) => richCell(cell).value);

test("the duty's row: headings of the field list, numbers, and what DUTIES says beside it", () => {
  const [headings, values] = block("row");
  expect(contents(headings!).slice(0, 8)).toEqual([
    "duty",
    "part",
    "load [N]",
    "bore [mm]",
    "length [mm]",
    "motion",
    "rpm [1/min]",
    "temperature [°C]",
  ]);
  expect(values!.slice(0, 8)).toEqual(["Duty 1", "sleeve", 800, 20, 15, "turning", 120, "5 to 45"]);
  expect(formulas([headings!])).toEqual(["=BUSH.DUTIES(B5:I6)"]);
});

test("steps are rows of their own: what differs, and at rest the motion says so; what is 0 keeps its unit", () => {
  const rows = block("row", {
    form: [{ ...shaft, temperature: "0", time: "5" }, ...spectrum.slice(1)] as unknown as Form,
  });
  expect(contents(rows[0]!).slice(0, 9)).toEqual([
    "duty",
    "part",
    "load [N]",
    "bore [mm]",
    "length [mm]",
    "motion",
    "rpm [1/min]",
    "time [min]",
    "temperature [°C]",
  ]);
  expect(rows.slice(1).map((row) => row.slice(0, 9))).toEqual([
    ["Duty 1", "sleeve", 800, 20, 15, "turning", 120, 5, "0 °C"],
    [null, null, 1600, null, null, "turning", 60, 60, null],
    [null, null, 700, null, null, "static", null, 15, null],
  ]);
});

const swinging: Texts = {
  ...emptyForm[0],
  motion: "swinging",
  load: "640 to 960",
  bore: "20",
  length: "14 ± 1",
  swing: "90",
  cycles: "12",
  temperature: "0",
  moisture: "humid",
  media: "water, fuels",
  dirt: "some",
  shaft: "soft steel",
  hardness: "150",
  impactFactor: "2",
  designFactor: "1.5",
  staticLoad: "0 N",
  wall: "3",
  housing: "aluminium alloy",
  boreZone: "E10",
  outsideZone: "+0.15/+0.20",
  housingZone: "H7",
  shaftZone: "h8",
  keptGrip: "50 to 70 %",
  hours: "2000",
  allowance: "0.3",
};
const atRestFirst: Form = [
  { ...swinging, load: "800", time: "5" },
  { motion: "static", time: "6" },
  { motion: "swinging", load: "100", swing: "90", cycles: "3", time: "2", temperature: "-5" },
];
const washer: Texts = {
  ...emptyForm[0],
  part: "washer",
  load: "900",
  inner: "18",
  outer: "36",
  rpm: "30",
  temperature: "20",
};
const flanged: Texts = {
  ...shaft,
  part: "flanged",
  axialLoad: "300",
  flangeOutside: "40",
  flangeThickness: "3",
  wall: "3",
};

const asRead = (rows: Block): ReadCell[][] =>
  rows.map((row) => contents(row).map((value) => ({ value: value ?? null, text: "" })));
const portOf = (cells: ReadCell[][], selected: number) =>
  ({
    selection: () => ({ sheet: "S", row: selected, col: 0, rows: 1, cols: 1 }),
    read: ({ row, col, rows, cols }: Place) => cells.slice(row, row + rows).map((line) => line.slice(col, col + cols)),
  }) as unknown as SheetPort;

const forms: [string, Form][] = [
  ["one step", [shaft]],
  ["a spectrum", spectrum],
  ["bands, words, zones, shares, and a temperature of 0", [swinging]],
  ["a swinging spectrum with a rest, one step colder", atRestFirst],
  ["a rod that stands still", [{ ...shaft, motion: "linear", stroke: "40", cycles: "0" }]],
  ["a washer", [washer]],
  ["a flanged bush", [flanged]],
];
test.each(forms)("the pane reads its own rows back: %s", async (_, form) => {
  const cells = asRead(block("row", { form }));
  const { origin, unread } = await readSelectedRow(portOf(cells, 1), "inch");
  expect(unread).toEqual([]);
  const back = readDuty(origin.form, "inch").duty!;
  expect(back.corners.map(({ given, ...rest }) => rest)).toEqual(
    dutyOf({ form }).corners.map(({ given, ...rest }) => rest),
  );
  const said = (duty: typeof back) => verdictText(judge(findGrade("Demo Sorrel"), duty), "metric");
  expect(said(back)).toBe(said(dutyOf({ form })));
});

test.each(forms.filter(([, form]) => form.length === 1))("and its own card: %s", async (_, form) => {
  const { block: rows, table } = ordered("card", { form });
  expect(table).toEqual({ ...at, rows: rows.length, cols: 2 });
  const { origin, unread } = await readSelectedRow(portOf(asRead(rows), 1), "metric");
  expect(unread).toEqual([]);
  expect(readDuty(origin.form, "metric").duty!.corners.map(({ pv }) => pv)).toEqual(
    dutyOf({ form }).corners.map(({ pv }) => pv),
  );
});

test("a card holds no steps", () => {
  expect(() => block("card", { form: spectrum })).toThrow(/^A card holds one step/);
});

test("pieces refer to the duty's cells and the grade's name, to own grades, and say inch where it is inch", () => {
  expect(formulas(block("checks"))).toEqual([
    "=BUSH.DUTYCHECKS(B5:I6,,B8)",
    expect.stringMatching(/^=BUSH\.DUTYCHECKS\(B5:I6,,B\d+\)$/),
  ]);
  expect(formulas(block("room"))).toEqual(["=BUSH.DUTYROOM(B5:I6,,B8)"]);
  expect(formulas(block("record", { own, library: ownLibrary, grades: ["Own strong"] }))).toEqual([
    "=BUSH.DUTYSHEET(B5:I6,,B8,OwnGrades[#All])",
  ]);
  expect(formulas(block("rank", { system: "inch", form: keepUnits([shaft], "metric") }))).toEqual([
    '=BUSH.DUTYRANK(B5:I6,,,"inch")',
  ]);
  expect(formulas(block("worked"))).toEqual([
    '=BUSH.STEPS("PRESSURE",D6,E6,F6)',
    '=BUSH.STEPS("SPEED",E6,H6)',
    '=BUSH.STEPS("PVVALUE",BUSH.PRESSURE(D6,E6,F6),BUSH.SPEED(E6,H6))',
  ]);
  expect(formulas(block("worked", { form: [washer] }))[0]).toBe('=BUSH.STEPS("WASHERPRESSURE",D6,E6,F6)');
  // of a spectrum the step with the greatest PV
  const second: Form = [
    { ...shaft, load: "100", time: "1" },
    { load: "1600", rpm: "60", time: "1" },
  ];
  expect(formulas(block("worked", { form: second }))[1]).toBe('=BUSH.STEPS("SPEED",E6,H7)');
});

test("native formulas stand on the duty's cells and hold the numbers that the functions answer", () => {
  const rows = block("native");
  const all = formulas(rows);
  expect(all.filter((formula) => formula.includes("BUSH"))).toEqual([]);
  for (const cell of ["D6", "E6", "F6", "H6"]) expect(all).toContain(`=IF(ISBLANK(${cell}),"",${cell})`);
  const answers = rows.flatMap(([what, , , answer]) =>
    richCell(what!).value === "Answer" ? [richCell(answer!).value] : [],
  );
  const { bore } = dutyOf({ form: [shaft] }).corners[0]!.steps[0];
  // p = F/(d·L) and v = π·d·n/60 000, the definitions; the duty holds the same
  expect(answers).toEqual(
    [bore!.pressure, bore!.speed, bore!.pressure * bore!.speed].map((x) => expect.closeTo(x, 12)),
  );
});

test("a duty that stands in the sheet is referred to where it stands, units of its headings included", async () => {
  const cells: ReadCell[][] = [
    ["duty", "load [lbf]", "bore [mm]", "length [mm]", "rpm", "temperature [°C]"],
    ["Idler", 100, 20, 15, 120, "5 to 45"],
    ["Vent", 200, 20, 15, 60, 30],
  ].map((line) => line.map((value) => ({ value, text: String(value) })));
  const port = portOf(cells, 2);
  const { origin } = await readSelectedRow(port, "metric");
  const given = { form: origin.form };
  const placed = await placedAt(port, origin, at, "metric");
  const rows = (piece: Piece) => blockOf({ ...order(piece, given), placed }, at).block;
  expect(formulas(rows("rank"))).toEqual(['=BUSH.DUTYRANK(A1:F3,"Vent")']);
  expect(formulas(rows("record"))).toEqual(['=BUSH.DUTYSHEET(A1:F3,"Vent",B5)']);
  expect(formulas(rows("worked"))[0]).toBe('=BUSH.STEPS("PRESSURE",B3&" lbf",C3,D3)');
  const other = await placedAt(port, origin, { ...at, sheet: "Other" }, "metric");
  const elsewhere = blockOf({ ...order("worked", given), placed: other }, at).block;
  expect(formulas(elsewhere)[1]).toBe("=BUSH.STEPS(\"SPEED\",'S'!$C$3,'S'!$E$3)");
  expect(formulas(blockOf({ ...order("rank", given), placed: other }, at).block)).toEqual([
    "=BUSH.DUTYRANK('S'!$A$1:$F$3,\"Vent\")",
  ]);
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
const own = { text: "OwnGrades[#All]", value: ownRows };

describe.each([
  ["a plain duty", {}],
  [
    "blows, a design factor and a soft shaft",
    { form: [{ ...shaft, impactFactor: "2", designFactor: "1.5", hardness: "150" }] },
  ],
  ["a spectrum", { form: spectrum }],
  ["bands", { form: [swinging] }],
  ["a duty at rest", { form: [{ ...shaft, motion: "static" }] }],
  ["a washer", { form: [washer] }],
  ["a flanged bush", { form: [flanged] }],
  ["inch", { form: keepUnits(spectrum, "metric"), system: "inch" }],
  ["own grades", { grades: ["Own weak", "Own strong", "Demo Quince"], library: ownLibrary, own }],
] as [string, Given][])("what is inserted answers what the pane says: %s", (_, given) => {
  const { system = "metric", library = libraryOf(), grades: named = grades } = given;
  const ranked = listOf(dutyOf(given), library);
  const said = (one: Ranked) => verdictText(one.checks, system, one);
  const sheet = (piece: Piece) => new Sheet(block(piece, given), at, { [own.text]: ownRows });

  test("DUTIES beside the row: pressure, speed and PV as the line above the pane's parts has them", () => {
    const [line] = sheet("row").answers("DUTIES")[0]!;
    const { pressure, speed, pv } = figuresOf(dutyOf(given), system);
    expect(line!.slice(2, 5).map((x) => Number(Number(x).toPrecision(4)))).toEqual(
      [pressure, speed, pv].map((text) => Number(text.split(" ")[0])),
    );
  });

  test("every criterion: its verdict and its value", () => {
    const perGrade = named.map((name) => ranked.find(({ grade }) => grade.name === name)!);
    const tables = sheet("checks").answers("DUTYCHECKS");
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
  });

  test("the shortlist: the grades that functions look at, in the pane's order and words", () => {
    const rank = sheet("rank").answers("DUTYRANK")[0]!;
    const looked = ranked.filter(({ grade }) => library.scope.includes(grade));
    expect(looked).toEqual(ranked.slice(0, looked.length));
    expect(rank.map(([name, kind, , , verdict, data]) => [name, kind, verdict, data])).toEqual(
      looked.map((one) => [one.grade.name, kindText[one.grade.kind], said(one), dataLabel(one.grade, one.checks)]),
    );
  });

  test("the record: verdict and data of the first grade", () => {
    const lines = sheet("record").answers("DUTYSHEET")[0]!;
    const one = ranked.find(({ grade }) => grade.name === named[0])!;
    const results = lines.filter(([section]) => section === "verdict").map(([, what, , , result]) => [what, result]);
    expect(results).toEqual(
      expect.arrayContaining([
        ["verdict", said(one)],
        ["data", dataLabel(one.grade, one.checks)],
      ]),
    );
  });
});

test("header, list, grades in full and inserted tables tell blows and design factor with the same figures", () => {
  const steps = [
    { load: "1000 to 1800", time: "30" },
    { load: "900", rpm: "60", time: "10" },
    { motion: "static", load: "2400", time: "5" },
  ];
  const [first, ...later] = steps;
  const form = [{ ...shaft, ...first, impactFactor: "2", designFactor: "1.5" }, ...later] as unknown as Form;
  const duty = dutyOf({ form });
  // on 20·15 = 300 mm²: 2400/300 at rest, 1800/300 at most in motion; a blow doubles both
  const words = dutyWords(duty, "metric");
  expect(words.slice(0, 3)).toEqual(["turning", "3 steps", "8 MPa × 2"]);
  expect(words.at(-1)).toBe("design factor 1.5");
  const grade = "Own weak";
  const given = { form, grades: [grade], library: ownLibrary, own };
  const one = listOf(duty, ownLibrary).find((found) => found.grade.name === grade)!;
  // its running limit of 1 MPa divided by 1.5
  const told = "fails, running pressure 1800 %: 12 MPa against 0.6667 MPa";
  expect([verdictText(one.checks, "metric", one), ...reasonsOf(one, "metric")].join("; ")).toContain(told);
  const sheet = (piece: Piece) => new Sheet(block(piece, given), at, { [own.text]: ownRows });
  const running = (rows: readonly unknown[][], value: number) =>
    rows.filter((row) => row.includes("running pressure")).map((row) => row[value])[0];
  const checks = sheet("checks").answers("DUTYCHECKS")[0]!;
  expect(running(checks, 1)).toBeCloseTo(12, 12);
  expect(running(checks, 2)).toBeCloseTo(1 / 1.5, 12);
  expect(running(checks, 4)).toBeCloseTo(18, 9);
  expect(sheet("row").answers("DUTIES")[0]![0]![2]).toBeCloseTo(8, 12);
  const record = sheet("record").answers("DUTYSHEET")[0]!;
  expect(
    record.filter(([section, what]) => section === "input" && /factor$/.test(String(what))).map((row) => row[4]),
  ).toEqual([2, 1.5]);
});

test("a band has no worked steps, and is told so; a fit that the duty does not state is not inserted as an error", () => {
  expect(() => block("worked", { form: [swinging] })).toThrow(/^A band has no one value to work with/);
  expect(() => block("fit")).toThrow(/bore zone is missing.*Nothing was written/);
});

test("columns are wide enough for their headings and for what spills", () => {
  const { widths, block: rows } = ordered("checks");
  expect(widths).toHaveLength(rows[0]!.length);
  expect(widths[0]).toBeGreaterThan("highest temperature".length);
  expect(widths[7]).toBeGreaterThan("temperature [°C]".length);
  expect(Math.max(...widths)).toBeLessThan(46);
});

test("what is written covers the room that spills need", () => {
  const room = (piece: Piece, id: string, given: Given = {}) => {
    const rows = block(piece, given);
    const tops = rows.flatMap((row, i) => (formulas([row])[0]?.includes(`BUSH.${id}(`) ? [i] : []));
    const answers = new Sheet(rows, at, { [own.text]: ownRows }).answers(id);
    expect(answers.length).toBe(tops.length);
    return tops.map((top, i) => {
      // nothing of ours stands within the answer
      const inside = rows.slice(top + 1, top + 1 + answers[i]!.length);
      expect(inside).toHaveLength(answers[i]!.length);
      for (const cell of inside.flat()) expect([null, undefined]).toContain(richCell(cell).value);
      return answers[i]!.length;
    });
  };
  expect(room("rank", "DUTYRANK")).toEqual([libraryOf().scope.length]);
  expect(room("rank", "DUTYRANK", { library: ownLibrary, own })).toEqual([2]);
  expect(room("checks", "DUTYCHECKS", { form: spectrum })).toEqual([criteria.length, criteria.length]);
  for (const [piece, id] of [
    ["room", "DUTYROOM"],
    ["record", "DUTYSHEET"],
    ["worked", "STEPS"],
  ] as const)
    for (const rows of room(piece, id)) expect(rows).toBeGreaterThanOrEqual(4);
  expect(
    room("fit", "FITTABLE", { form: [{ ...swinging, keptGrip: "60" }], grades: ["Demo Sorrel"] })[0],
  ).toBeGreaterThan(4);
});

test("nothing is overwritten: a filled cell refuses the whole and names the next free place", async () => {
  const cells: ReadCell[][] = Array.from({ length: 7 }, (_, r) =>
    Array.from({ length: 5 }, (_, c) => ({ value: r === 6 && c === 2 ? "mine" : null, text: "" })),
  );
  const written: unknown[] = [];
  const port = { ...portOf(cells, 0), write: (...all: unknown[]) => void written.push(all), widen() {}, select() {} };
  const outcome = await writeFree(port, ordered("card"), at);
  expect(outcome).toEqual({
    is: "refused",
    text: "1 cell in B5:C12 on S hold something. Nothing was written.",
    free: { sheet: "S", row: 8, col: 1 },
  });
  expect(written).toEqual([]);
  const free = await writeFree(port, ordered("card"), { ...at, row: 20 });
  expect(free).toMatchObject({ is: "written", text: "Written to B21:C28 on S. Undo takes it back." });
  expect(written).toHaveLength(1);
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
