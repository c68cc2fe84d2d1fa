import duties from "../../data/greenhouse/duties.json";
import quotes from "../../data/greenhouse/quotes.json";
import { CellError, evaluate } from "../../scripts/workbooks/evaluate";
import { catalogue } from "../../src/core";
import type { Arg, Cell } from "../../src/core/formula";
import { parseGrades } from "../../src/core/grade/table";
import { labelOf } from "../../src/core/teach/worksheet";
import { answer } from "../../src/edge/sheet";
import { addressOf, areaOf } from "../../src/port/address";
import type { Scalar } from "../../src/workbench/book";
import { greenhouse } from "../../src/workbench/greenhouse/book";
import { lessons } from "../../src/workbench/greenhouse/lessons";
import { markStyles, looks, palette } from "../../src/workbench/looks";
import { pressedBush } from "../support";

const sheetNamed = (name: string) => greenhouse.sheets.find((sheet) => sheet.name === name)!;
const formulasOf = (name: string): [string, string][] =>
  Object.entries(sheetNamed(name).cells).flatMap(([at, { formula }]) => (formula ? [[at, formula]] : []));

test("every formula calls functions that there are, with as many arguments as they take at most", () => {
  const most = ({ spec }: (typeof catalogue)[number]) =>
    Object.values(spec.args).some((arg) => (arg as Arg).kind === "rest")
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

test("every duty stands on its sheet once, its pressure computed by its group's one call", () => {
  const cells = Object.entries(sheetNamed("Duties").cells);
  const calls = formulasOf("Duties").filter(([, formula]) => /PRESSURE\(/.test(formula));
  for (const { name, part } of duties) {
    const rows = cells.flatMap(([at, { value }]) => (value === name ? [areaOf(at).row] : []));
    expect([name, rows.length]).toEqual([name, 1]);
    const serving = calls.filter(([, formula]) => {
      const { row, rows: count } = areaOf(/[A-Z]+\d+:[A-Z]+\d+/.exec(formula)![0]);
      return rows[0]! >= row && rows[0]! < row + count;
    });
    expect(serving).toHaveLength(1);
    expect(serving[0]![1]).toContain(part === "washer" ? "BUSH.WASHERPRESSURE(" : "BUSH.PRESSURE(");
  }
});

test("PV, use and verdict are one call each for all rows", () => {
  for (const name of ["PVVALUE", "USE", "VERDICT"])
    expect(formulasOf("Duties").filter(([, formula]) => formula.startsWith(`=BUSH.${name}(`))).toHaveLength(1);
});

test("the own grades are a table that the core reads without a fault or an unknown column", () => {
  const table = greenhouse.tables.find(({ name }) => name === "OwnGrades")!;
  const { row, col, rows, cols } = areaOf(table.range);
  const held = new Map(
    Object.entries(sheetNamed(table.sheet).cells).map(([at, { value }]) => {
      const place = areaOf(at);
      return [`${place.row} ${place.col}`, value];
    }),
  );
  const cells = Array.from({ length: rows }, (_, r) =>
    Array.from({ length: cols }, (_, c): Cell => held.get(`${row + r} ${col + c}`) ?? null),
  );
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

/** A sheet's answers as the core computes them, some of its cells typed over; the own grades stand beside it. */
function answersOf(name: string, typed: Readonly<Record<string, Scalar>> = {}) {
  const sheet = sheetNamed(name);
  const over = Object.entries(typed).map(([at, value]) => [at, { ...sheet.cells[at], value }]);
  const cells = { ...sheet.cells, ...Object.fromEntries(over) };
  const answers = evaluate({ file: "test", title: "test", sheets: [sheetNamed("Grades"), { ...sheet, cells }] });
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
const host = { error: (code: string, message?: string) => `${code} ${message ?? ""}` };
const bush = (id: string, ...given: unknown[]) =>
  answer(
    catalogue.find((f) => f.spec.id === id)!,
    given,
    host,
  );
const steps = (id: string, inputs: readonly Scalar[]) => bush("STEPS", id, [...inputs]);

test.each(["Fit", "Quotes", "Worked example"])("%s opens without an error in any cell", (name) => {
  expect(answersOf(name).errors).toEqual([]);
});

describe("Fit", () => {
  const hot = beside("Fit", "Highest temperature, °C", 3);
  const zone = beside("Fit", "Zone of the bore", 1);
  const direct = (boreZone: string, highest: number) =>
    bush(
      "FITTABLE",
      ...[...pressedBush(boreZone), "Demo Sorrel", "aluminium alloy", "carbon steel", -20, highest],
      ...["dry", "pressed", 40],
    );

  test("hands every input to FITTABLE's own argument", () => {
    const found = answersOf("Fit").of("=BUSH.FITTABLE(");
    expect(found).toEqual(direct("E10", 80));
    expect(found.map(([state]) => state)).toEqual(["state", "cold", "assembly", "hot", "hot and wet"]);
    expect(answersOf("Fit", { [hot]: 60, [zone]: "H7" }).of("=BUSH.FITTABLE(")).toEqual(direct("H7", 60));
  });

  test.each(["E10", "H7"])("its bars for a bore %s are the clearances by the scale beside them", (boreZone) => {
    const { at, of } = answersOf("Fit", { [zone]: boreZone });
    const one = at(beside("Fit", "one mark, mm:", 1)) as number;
    const top = areaOf(beside("Fit", "state", 0)).row;
    const drawn = (text: string, mark: string, length: number) =>
      expect(Math.abs(text.split(mark).length - 1 - length / one)).toBeLessThanOrEqual(0.5 + 1e-9);
    of("=BUSH.FITTABLE(")
      .slice(1)
      .forEach((row, i) => {
        const [least, greatest] = [row[2] as number, row[3] as number];
        const [left, right] = [1, 4].map((col) => String(at(addressOf(top + 1 + i, col)))) as [string, string];
        expect(right[0]).toBe("│");
        drawn(left, "▒", Math.min(0, greatest) - Math.min(0, least));
        drawn(left, "·", -Math.min(0, greatest));
        drawn(right, "█", Math.max(0, greatest) - Math.max(0, least));
        drawn(right, "·", Math.max(0, least));
      });
  });

  test("its press fit starts from the limits of both parts, and is none where the bush is loose", () => {
    // by hand: bush 23.050 to 23.100; housing 23 H7 = 23.000 to 23.021 (IT7 of 18 to 30 mm is 21 µm: ISO 286-1, Table 1, memory)
    const least = beside("Fit", "Least", 1);
    const greatest = beside("Fit", "Greatest", 1);
    const { at } = answersOf("Fit");
    expect(at(least)).toBeCloseTo(0.029, 12);
    expect(at(greatest)).toBeCloseTo(0.1, 12);
    const press = bush("PRESSFIT", 20, 23, 40, at(greatest), 2500, 0.4, 69000, 0.33);
    expect(at(beside("Fit", "Greatest", 2))).toBe(press[0]![0]);
    const loose = answersOf("Fit", { [beside("Fit", "Zone of the outside", 1)]: "-0.05/-0.02" });
    expect([loose.at(least), loose.errors]).toEqual([0, []]);
  });
});

test("Quotes ranks or explains every quote of the data, with the own grades at hand", () => {
  const parts = answersOf("Quotes")
    .of("=BUSH.QUOTES(")
    .map(([, part]) => part);
  for (const [part] of quotes.rows.slice(1)) expect(parts.filter((found) => found === part)).toEqual([part]);
  expect(formulasOf("Quotes").find(([, formula]) => formula.includes("BUSH.QUOTES("))![1]).toContain("Grades!");
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
