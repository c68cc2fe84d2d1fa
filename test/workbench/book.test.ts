import duties from "../../data/greenhouse/duties.json";
import { catalogue } from "../../src/core";
import type { Cell } from "../../src/core/formula";
import { parseGrades } from "../../src/core/grade/table";
import { areaOf } from "../../src/port/address";
import { greenhouse } from "../../src/workbench/greenhouse/book";
import { markStyles, looks, palette } from "../../src/workbench/looks";

const sheetNamed = (name: string) => greenhouse.sheets.find((sheet) => sheet.name === name)!;
const formulasOf = (name: string): [string, string][] =>
  Object.entries(sheetNamed(name).cells).flatMap(([at, { formula }]) => (formula ? [[at, formula]] : []));

test("every formula calls functions that there are, with as many arguments as they take at most", () => {
  const known = new Map(catalogue.map(({ spec }) => [spec.id, Object.keys(spec.args).length + Number(spec.units)]));
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
  for (const name of ["PV", "USE", "VERDICT"])
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
