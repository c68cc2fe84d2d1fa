import quotes from "../../data/greenhouse/quotes.json";
import { evaluate } from "../../scripts/workbooks/evaluate";
import { CellError } from "../../src/edge/host";
import { textHost } from "../support";
import { catalogue, functions } from "../../src/core";
import { field, fieldHeadings, readDuties } from "../../src/core/duties";
import { BushError } from "../../src/core/errors";
import type { Arg, Cell, Column, SpillResult } from "../../src/core/formula";
import { parseGrades } from "../../src/core/grades/model/table";
import { splitHeading } from "../../src/core/table/heading";
import { labelOf } from "../../src/core/teach/worksheet";
import { answer } from "../../src/edge/sheet";
import { addressOf, areaOf } from "../../src/port/address";
import type { Area } from "../../src/port/address";
import type { Scalar } from "../../src/book/book";
import { greenhouse } from "../../src/book/greenhouse/book";
import { answers } from "../../src/book/greenhouse/duties";
import { dutyCells, dutyHeadings, dutyRows } from "../../src/book/greenhouse/dutyRows";
import { lessons } from "../../src/book/greenhouse/lessons";
import { markStyles, looks, palette } from "../../src/book/looks";
import { standardLibrary } from "../../src/core/grades/model";
import { gradeRows } from "../../src/book/greenhouse/ownGrades";
import { pressedBush } from "../support";

const sheetNamed = (name: string) => greenhouse.sheets.find((sheet) => sheet.name === name)!;
const formulasOf = (name: string): [string, string][] =>
  Object.entries(sheetNamed(name).cells).flatMap(([at, { formula }]) => (formula ? [[at, formula]] : []));

/** The typed cells of a range, blank where there is none. */
function cellsIn(name: string, { row, col, rows, cols }: Area): Cell[][] {
  const { cells } = sheetNamed(name);
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: cols }, (__, c): Cell => cells[addressOf(row + r, col + c)]?.value ?? null),
  );
}

test("every formula calls functions that there are, with as many arguments as they take at most", () => {
  const most = ({ spec }: (typeof catalogue)[number]) =>
    Object.values(spec.args).some((arg) => arg.kind === "rest")
      ? Infinity
      : Object.keys(spec.args).length + Number(spec.units);
  const known = new Map(catalogue.map((f) => [f.spec.id, most(f)]));
  const called = greenhouse.sheets.flatMap(({ name }) =>
    formulasOf(name).flatMap(([, formula]) => [...formula.matchAll(/BUSH\.([A-Z]+)\(([^()]*)\)/g)]),
  );
  expect(called.length).toBeGreaterThan(10);
  for (const [, id = "", args = ""] of called) {
    expect([...known.keys()]).toContain(id);
    expect(args.split(",").length).toBeLessThanOrEqual(known.get(id)!);
  }
});

test("every duty and step stands on its sheet once, in the one table that one DUTIES judges", () => {
  const [[at, formula], ...others] = formulasOf("Duties") as [[string, string], ...unknown[]];
  expect(others).toEqual([]);
  expect(formula).toMatch(/^=BUSH\.DUTIES\([A-Z]+\d+:[A-Z]+\d+,Grades!/);
  const range = areaOf(/[A-Z]+\d+:[A-Z]+\d+/.exec(formula)![0]);
  // the answer stands beside it, row by row
  expect([areaOf(at).row, areaOf(at).col + Object.keys(answers).length]).toEqual([range.row, range.col]);
  const table = cellsIn("Duties", range);
  expect(table.slice(0, dutyRows.length + 1)).toEqual([dutyHeadings, ...dutyCells]);
  expect(
    table
      .slice(dutyRows.length + 1)
      .flat()
      .filter((cell) => cell !== null),
  ).toEqual([]);
  expect(table.length).toBeGreaterThan(dutyRows.length + 4);
  const read = readDuties(table, "metric", "duties");
  expect(read.unknownColumns).toEqual([]);
  expect(read.lines.filter(({ duty }) => duty instanceof BushError)).toEqual([]);
});

test("the answer's columns are those of DUTIES, and a column of choices offers the words of its field", () => {
  expect(Object.keys(answers)).toEqual(
    ((functions.DUTIES.spec.result as SpillResult).columns as readonly Column[]).map(({ name }) => name),
  );
  const sheet = sheetNamed("Duties");
  dutyHeadings.forEach((heading) => {
    const [at] = Object.entries(sheet.cells).find(([, { value }]) => value === heading)!;
    const { row, col } = areaOf(at);
    const words = sheet.picks!.find((pick) => areaOf(pick.at).col === col && areaOf(pick.at).row === row + 1)?.from;
    const entry = field(fieldHeadings.find(splitHeading(heading).name)!);
    expect([heading, words]).toEqual([heading, entry.kind === "choice" ? entry.words : undefined]);
  });
});

test("the own grades are a table that the core reads without a fault or an unknown column", () => {
  const table = greenhouse.tables.find(({ name }) => name === "OwnGrades")!;
  const cells = cellsIn(table.sheet, areaOf(table.range));
  const read = parseGrades(cells, "metric", "grades");
  expect(read.faults).toEqual([]);
  expect(read.unknownColumns).toEqual([]);
  expect(read.grades.length).toBeGreaterThan(1);
  // 4000 psi·ft/min × 3.502536704929527e-5 MPa·m/s (from the exact factors of NIST SP 811, 2008, app. B)
  expect(read.grades[0]!.values.pvLimit).toBeCloseTo(0.14010146819718, 12);
});

test("every text stands out from its fill by 4.5 to 1 at least", () => {
  // relative luminance and contrast ratio: WCAG 2.1, definitions (memory)
  const luminance = (hex: string) => {
    const [r, g, b] = [1, 3, 5].map((i) => {
      const c = parseInt(hex.slice(i, i + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };
  for (const { ink = palette.ink, fill = "#ffffff" } of [...Object.values(looks), ...Object.values(markStyles)]) {
    const [light, dark] = [luminance(ink), luminance(fill)].sort((a, b) => b - a);
    expect([ink, fill, (light! + 0.05) / (dark! + 0.05) >= 4.5]).toEqual([ink, fill, true]);
  }
});

/** A sheet's answers as the core computes them, some of its cells typed over; own grades, duties and offers stand beside it. */
function answersOf(name: string, typed: Readonly<Record<string, Scalar>> = {}) {
  const others = ["Grades", "Duties", "Quotes"].filter((other) => other !== name).map(sheetNamed);
  const sheet = sheetNamed(name);
  const over = Object.entries(typed).map(([at, value]) => [at, { ...sheet.cells[at], value }]);
  const cells = { ...sheet.cells, ...Object.fromEntries(over) };
  const answers = evaluate({ file: "test", title: "test", sheets: [...others, { ...sheet, cells }] });
  const own = answers.filter((a) => a.sheet === name);
  return {
    of: (start: string) => own.find(({ formula }) => formula.startsWith(start))!.grid,
    at: (address: string) => own.find((a) => a.at === address)?.grid[0]![0],
    errors: own.filter(({ grid }) => grid.flat().some((cell) => cell instanceof CellError)),
  };
}
/** The cell so many columns to the right of a label. */
function beside(name: string, label: string, right: number): string {
  const [at] = Object.entries(sheetNamed(name).cells).find(([, { value }]) => value === label)!;
  const { row, col } = areaOf(at);
  return addressOf(row, col + right);
}
const bush = (id: string, ...given: unknown[]) =>
  answer(
    catalogue.find((f) => f.spec.id === id)!,
    given,
    textHost,
  );
const steps = (id: string, inputs: readonly Scalar[]) => bush("STEPS", id, [...inputs]);

test.each(["Duties", "Shortlist", "Fit", "Quotes", "Decision", "Worked example"])(
  "%s opens without an error in any cell",
  (name) => {
    expect(answersOf(name).errors).toEqual([]);
  },
);

test("Duties answers each duty on its own row, and leaves steps and spare rows empty", () => {
  const [headings, ...rows] = answersOf("Duties").of("=BUSH.DUTIES(");
  const verdict = headings!.findIndex((heading) => heading === "verdict");
  rows.forEach((row, i) => {
    const name = dutyRows[i]?.duty ?? "";
    expect(row[0]).toBe(name);
    if (name === "") expect(row.every((cell) => cell === "")).toBe(true);
    else expect(row[verdict]).toMatch(/^(fits|care|no data|fails), /);
  });
  const load = addressOf(4 + dutyRows.findIndex(({ id }) => id === "seed-drum"), columnOf("load [N]"));
  const row = 1 + dutyRows.findIndex(({ id }) => id === "seed-drum");
  expect(answersOf("Duties", { [load]: 5000 }).of("=BUSH.DUTIES(")[row]![verdict]).toMatch(/^fails, PV/);
});

/** The column of a heading of the duties' table. */
function columnOf(heading: string): number {
  const [at] = Object.entries(sheetNamed("Duties").cells).find(([, { value }]) => value === heading)!;
  return areaOf(at).col;
}

describe("Shortlist", () => {
  const duty = beside("Shortlist", "Duty", 1);
  const among = beside("Shortlist", "Among", 1);
  const list = (typed: Readonly<Record<string, Scalar>>) => {
    const found = answersOf("Shortlist", typed);
    return {
      names: found
        .of("=IF(")
        .slice(1)
        .map(([name]) => name),
      at: found.at,
      grid: found.of("=IF("),
    };
  };
  const table = [dutyHeadings, ...dutyCells];

  test("ranks the demo grades, the generic families or the own ones for the chosen duty", () => {
    const of = (kind: string) =>
      standardLibrary()
        .grades.filter((grade) => grade.kind === kind)
        .map(({ name }) => name);
    const own = gradeRows.map(([name]) => name);
    for (const [word, names] of [
      ["demo", of("demo")],
      ["generic families", of("generic")],
      ["own grades", own],
    ] as const)
      expect([...list({ [among]: word }).names].sort()).toEqual([...names].sort());
    expect(list({ [duty]: "Steam-lance swivel" }).grid).toEqual(bush("DUTYRANK", table, "Steam-lance swivel", "demo"));
    // a word that is none of the list's is no other choice
    expect(list({ [among]: "nonsense" }).grid[0]![0]).toMatchObject({
      message: 'grades must be a table of grades or the word "demo", got "nonsense"',
    });
  });

  test("shows the duty's own grade and verdict as its sheet does", () => {
    const { at } = list({ [duty]: "Steam-lance swivel" });
    expect([at(beside("Shortlist", "Grade it has", 1)), at(beside("Shortlist", "Its verdict", 1))]).toEqual([
      "Demo Sorrel",
      expect.stringMatching(/^fails, temperature 100 °C above 90 °C/),
    ]);
  });
});

describe("Fit", () => {
  const temperature = beside("Fit", "temperature [°C]", 1);
  const zone = beside("Fit", "bore zone", 1);
  /** The card as it stands, by the function alone. */
  const direct = (more: Readonly<Record<string, unknown>> = {}) =>
    bush(
      "FITTABLE",
      pressedBush({
        ...{ grade: "Demo Sorrel", load: 900, motion: "", swing: 70, cycles: 0.5, moisture: "humid" },
        ...{ shaft: "hardened steel", "housing outside": 40, "outside zone": "+0.15/+0.20" },
        ...{ "share of grip kept": "60 %", "least clearance wanted": 0.01, ...more },
      }),
    );

  test("hands its card to FITTABLE", () => {
    const found = answersOf("Fit").of("=BUSH.FITTABLE(");
    expect(found).toEqual(direct());
    expect(found.map(([state]) => state)).toEqual([
      ...["state", "assembly", "cold", "hot", "running", "running, housing cool"],
      ...["cold, humid", "hot, humid", "running, humid", "running, humid, housing cool", "cold again"],
    ]);
    const typed = { [temperature]: "-20 to 60", [zone]: "H7" };
    expect(answersOf("Fit", typed).of("=BUSH.FITTABLE(")).toEqual(
      direct({ temperature: "-20 to 60", "bore zone": "H7" }),
    );
  });

  test("has rows for as many states as there can be", () => {
    const untold = { "moisture at assembly": "", "share of grip kept": "", moisture: "wet" };
    const [formula] = formulasOf("Fit").find(([, text]) => text.startsWith("=BUSH.FITTABLE("))!;
    const { row, rows } = areaOf(sheetNamed("Fit").growing![0]!);
    // the narrowest and the loosest of a warmer bore may be added, and of service again from either moisture
    expect([row, rows]).toEqual([areaOf(formula).row + 1, direct(untold).length - 1 + 2 + 4]);
  });

  test.each(["E10", "H7"])("its bars for a bore %s are the clearances by the scale beside them", (boreZone) => {
    const { at, of } = answersOf("Fit", { [zone]: boreZone });
    const one = at(beside("Fit", "one mark, mm:", 2)) as number;
    const { row: top, col } = areaOf(beside("Fit", "state", 0));
    const drawn = (text: string, mark: string, length: number) =>
      expect(Math.abs(text.split(mark).length - 1 - length / one)).toBeLessThanOrEqual(0.5 + 1e-9);
    of("=BUSH.FITTABLE(")
      .slice(1)
      .forEach((row, i) => {
        const [least, greatest] = [row[6] as number, row[7] as number];
        const [state, left, right] = [0, 2, 6].map((off) => String(at(addressOf(top + 1 + i, col + off)))) as [
          string,
          string,
          string,
        ];
        expect(state).toBe(row[0]);
        expect(right[0]).toBe("│");
        drawn(left, "▒", Math.min(0, greatest) - Math.min(0, least));
        drawn(left, "·", -Math.min(0, greatest));
        drawn(right, "█", Math.max(0, greatest) - Math.max(0, least));
        drawn(right, "·", Math.max(0, least));
      });
  });

  test("its press fit starts from the limits of both parts, and is none where the bush is loose", () => {
    // by hand: bush 23.150 to 23.200; housing 23 H7 = 23.000 to 23.021 (IT7 of 18 to 30 mm is 21 µm: ISO 286-1, Table 1, memory)
    const least = beside("Fit", "Least", 1);
    const greatest = beside("Fit", "Greatest", 1);
    const { at } = answersOf("Fit");
    expect(at(least)).toBeCloseTo(0.129, 12);
    expect(at(greatest)).toBeCloseTo(0.2, 12);
    const press = bush("PRESSFIT", 20, 23, 40, at(greatest), 2500, 0.4, 69000, 0.33);
    expect(at(beside("Fit", "Greatest", 2))).toBe(press[0]![0]);
    const loose = answersOf("Fit", { [beside("Fit", "outside zone", 1)]: "-0.05/-0.02" });
    expect([loose.at(least), loose.errors]).toEqual([0, []]);
  });
});

test("Decision ranks or explains every offer of the data, with the own grades at hand; Quotes begins with what to buy", () => {
  const parts = answersOf("Decision")
    .of("=BUSH.QUOTES(")
    .map(([, part]) => part);
  for (const [part] of quotes.rows.slice(1)) expect(parts.filter((found) => found === part)).toEqual([part]);
  expect(formulasOf("Decision").find(([, formula]) => formula.includes("BUSH.QUOTES("))![1]).toContain("Grades!");
  const { at } = answersOf("Quotes");
  expect([at("A7"), at("B7")]).toEqual(answersOf("Decision").of("=BUSH.DECISION(")[1]);
});

describe("Worked example", () => {
  const chosen = beside("Worked example", "Calculation", 1);
  const worked = "=BUSH.STEPS(INDEX(";
  const below = "Another calculation: type its name and its arguments over the formula in the shaded cell.";

  test.each(lessons.map((lesson) => [lesson.name, lesson] as const))("%s is worked when chosen", (name, lesson) => {
    const { of, errors } = answersOf("Worked example", { [chosen]: name });
    const { id, args } = lesson.formula.spec;
    expect(errors).toEqual([]);
    expect(of(worked)).toEqual(steps(id, lesson.inputs));
    const result = bush(id, ...lesson.inputs)[0]![0] as number;
    expect(of(worked).some((row) => Math.abs(Number(row[3]) / result - 1) < 1e-12)).toBe(true);
    // each line stands beside the cell that replaces its number
    const lines = Object.values<Arg>(args).slice(0, lesson.inputs.length);
    expect(lines.map((_, i) => of(worked)[i + 1]![0])).toEqual(lines.map(({ text, label }) => label ?? labelOf(text)));
    // the next block begins below the room for them
    const rowOf = (label: string) => areaOf(beside("Worked example", label, 0)).row;
    expect(rowOf("Your number") + of(worked).length).toBeLessThanOrEqual(rowOf(below));
  });

  test("a number of one's own takes the place of the lesson's", () => {
    const { row, col } = areaOf(beside("Worked example", "Your number", 0));
    const typed = { [chosen]: "PRESSURE", [addressOf(row + 1, col)]: 360 };
    expect(answersOf("Worked example", typed).of(worked)).toEqual(steps("PRESSURE", [360, 15, 20]));
  });
});

test("Start here lists every other sheet", () => {
  const texts = Object.values(sheetNamed("Start here").cells).map(({ value }) => String(value));
  for (const { name } of greenhouse.sheets.slice(1))
    expect([name, texts.some((text) => text.startsWith(`${name}: `))]).toEqual([name, true]);
});
