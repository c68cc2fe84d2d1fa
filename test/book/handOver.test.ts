import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import { convert, officePath } from "../../scripts/lib/office";
import type { FileBook } from "../../scripts/workbooks/book";
import { evaluate } from "../../scripts/workbooks/evaluate";
import { handedOver } from "../../scripts/workbooks/handedOver";
import { writeBook } from "../../scripts/workbooks/write";
import type { Book, BookCell, BookSheet, Scalar } from "../../src/book/book";
import { greenhouse } from "../../src/book/greenhouse/book";
import { handOver } from "../../src/book/native/handOver";
import { catalogue } from "../../src/core";
import { isNumberArg } from "../../src/core/formula";
import type { Arg } from "../../src/core/formula";
import { addressOf, areaOf } from "../../src/port/address";

/**
 * LibreOffice calculates the handed-over workbook from what is typed, without a stored value and without the add-in; the
 * functions are asked for the same. It is the oracle for the translation, not for the formulas themselves.
 */
const office = officePath() ? test : test.skip;
if (!officePath()) console.log("LibreOffice is not installed: handed-over workbooks are not calculated.");

type Sheets = ReadonlyMap<string, readonly (readonly unknown[])[]>;

async function calculated(books: readonly FileBook[]): Promise<Sheets[]> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-handed-"));
  const files = await Promise.all(
    books.map(async (book) => {
      const file = path.join(folder, `${book.file}.xlsx`);
      writeFileSync(file, await writeBook(book, { nativeUncomputed: true }));
      return file;
    }),
  );
  const read = async (file: string): Promise<Sheets> => {
    const { sheets } = await readXlsx(new Uint8Array(readFileSync(file)));
    return new Map(sheets.map(({ name, rows: lines }) => [name, lines]));
  };
  return Promise.all(convert(files, "xlsx:Calc MS Excel 2007 XML", path.join(folder, "out")).map(read));
}

const withCells = <B extends { readonly sheets: readonly BookSheet[] }>(
  book: B,
  sheet: string,
  cells: BookSheet["cells"],
): B => ({
  ...book,
  sheets: book.sheets.map((one) => (one.name === sheet ? { ...one, cells: { ...one.cells, ...cells } } : one)),
});

/** One call a row, its arguments in cells; each row is changed in its own way after it was handed over. */
interface Row {
  readonly id: string;
  readonly inputs: readonly (Scalar | null)[];
  readonly changed: readonly (Scalar | null)[];
  readonly units: "metric" | "inch";
}
const answerColumn = 20;

/** All numbers by a little; each alone by more; and one to what is none, or none that is allowed. */
function changes(
  { spec }: (typeof catalogue)[number],
  inputs: readonly Scalar[],
  units: Row["units"],
): (Scalar | null)[][] {
  const args = Object.values<Arg>(spec.args);
  const numbers = inputs.flatMap((value, i) => (typeof value === "number" && isNumberArg(args[i]!) ? [i] : []));
  const changed = (which: readonly number[], to: (value: number) => Scalar | null) =>
    inputs.map((value, i) => (which.includes(i) ? to(value as number) : value));
  const all = changed(numbers, (value) => value * 1.01);
  const each = numbers.map((i) => changed([i], (value) => value * 0.83));
  // a figure that is looked up holds for what it was looked up for alone
  if (spec.lookups) return each.slice(0, 1);
  if (units === "inch") return [all];
  const none = changed([numbers[spec.id.length % numbers.length]!], () => [0, -1, "abc", null][numbers.length % 4]!);
  return [all, none, ...each];
}

const rows: readonly Row[] = catalogue.flatMap((f) => {
  const { spec } = f;
  if (!spec.working || spec.example.some((one) => Array.isArray(one))) return [];
  const inputs = spec.example as readonly Scalar[];
  return (spec.units ? (["metric", "inch"] as const) : (["metric"] as const)).flatMap((units) =>
    changes(f, inputs, units).map((changed) => ({ id: spec.id, inputs, changed, units })),
  );
});

const inputCells = (line: readonly (Scalar | null)[], row: number): [string, BookCell][] =>
  line.flatMap((value, col) => (value === null ? [] : [[addressOf(row, col), { value }] as [string, BookCell]]));
const callOf = ({ id, inputs, units }: Row, row: number): string => {
  const args = Object.keys(catalogue.find((f) => f.spec.id === id)!.spec.args).map((_, i) =>
    i < inputs.length ? addressOf(row, i) : "",
  );
  return `=BUSH.${id}(${[...args, ...(units === "inch" ? ['"inch"'] : [])].join(",").replace(/,+$/, "")})`;
};
const bookOf = (inputsOf: (row: Row) => readonly (Scalar | null)[]): Book => ({
  name: "Calls",
  tables: [],
  sheets: [
    {
      name: "Calls",
      widths: [],
      cells: Object.fromEntries(
        rows.flatMap((row, r): [string, BookCell][] => [
          ...inputCells(inputsOf(row), r),
          [addressOf(r, answerColumn), { formula: callOf(row, r) }],
        ]),
      ),
    },
  ],
});

/** Both workbooks with what is changed in them, calculated in one go. */
const calls = handedOver(
  bookOf(({ inputs }) => inputs),
  "calls",
);
const changedCalls = Object.fromEntries(
  rows.flatMap((row, r) =>
    row.changed.map((value, col) => [addressOf(r, col), value === null ? {} : { value }] as const),
  ),
);
const handed = handedOver(greenhouse, "greenhouse");
const dutyLoad = loadCell();
/** Where the first duty has its load. */
function loadCell(): string {
  const { cells } = greenhouse.sheets.find(({ name }) => name === "Duties")!;
  const [at] = Object.entries(cells).find(([, { value }]) => value === "load [N]")!;
  return at.replace(/\d+$/, (row) => String(Number(row) + 1));
}
const besideOn = (sheet: string, label: string): string => {
  const { cells } = greenhouse.sheets.find(({ name }) => name === sheet)!;
  const [at] = Object.entries(cells).find(([, { value }]) => value === label)!;
  const { row, col } = areaOf(at);
  return addressOf(row, col + 1);
};
const housing = besideOn("Fit", "housing outside [mm]");
const changedGreenhouse = <B extends { readonly sheets: readonly BookSheet[] }>(book: B): B =>
  withCells(withCells(book, "Duties", { [dutyLoad]: { value: 1234 } }), "Fit", { [housing]: { value: 44 } });

let found: Sheets;
let foundGreenhouse: Sheets;
beforeAll(async () => {
  if (!officePath()) return;
  [found, foundGreenhouse] = (await calculated([
    withCells(calls.book, "Calls", changedCalls),
    changedGreenhouse(handed.book),
  ])) as [Sheets, Sheets];
}, 180_000);

/** A LANDED without tooling has other lines than one with it. */
const otherLines = ({ id, changed }: Row): boolean => id === "LANDED" && changed[2] === 0;

office(
  "every working agrees with its function to 1e-12 when its inputs change, and refuses what the function refuses",
  () => {
    const expected = new Map(
      evaluate({ file: "", title: "", ...bookOf((row) => row.changed) }).map(({ at, grid }) => [
        areaOf(at).row,
        grid[0]!,
      ]),
    );
    const agreed = new Map<string, number>();
    const wrong: unknown[] = [];
    for (const { place, became, note } of calls.entries) {
      if (became !== "native") continue;
      const row = rows[place.row]!;
      if (!agreed.has(row.id)) agreed.set(row.id, 0);
      for (let col = 0; col < place.cols; col++) {
        const mine = found.get("Calls")![place.row]?.[answerColumn + col];
        const core = expected.get(place.row)![col]!;
        const isRefused = typeof mine !== "number";
        // what holds for some figure alone may refuse more
        const isRight = isRefused
          ? typeof core !== "number" || note !== "" || otherLines(row)
          : typeof core === "number" && Math.abs(mine - core) <= 1e-12 * Math.abs(core);
        if (!isRight) wrong.push([row, col, mine, core]);
        if (isRight && !isRefused) agreed.set(row.id, agreed.get(row.id)! + 1);
      }
    }
    expect(wrong).toEqual([]);
    // the functions that need no look-up and no iteration
    expect(agreed.size).toBeGreaterThanOrEqual(29);
    for (const [id, times] of agreed) expect([id, times >= 1]).toEqual([id, true]);
  },
);

const errorsIn = (
  sheets: Sheets,
  place: { sheet: string; row: number; col: number; rows: number; cols: number },
): number =>
  Array.from(
    { length: place.rows },
    (_, r) => sheets.get(place.sheet)![place.row + r]?.slice(place.col, place.col + place.cols) ?? [],
  )
    .flat()
    .filter((cell) => String(cell) === "#N/A").length;

office(
  "the greenhouse without the add-in: after a load and a housing are changed, what is native follows, what came from them is refused",
  () => {
    const { entries } = handed;
    const expected = new Map(
      evaluate({ file: "", title: "", ...changedGreenhouse(greenhouse) }).map(({ sheet, at, grid }) => [
        `${sheet}!${at}`,
        grid,
      ]),
    );
    const natives = entries.filter(({ became }) => became === "native");
    expect(natives.map(({ place, formula }) => [place.sheet, /BUSH\.([A-Z]+)/.exec(formula)![1]])).toEqual([
      ["Start here", "PVVALUE"],
      ["Start here", "PRESSURE"],
      ["Fit", "PRESSFIT"],
      ["Fit", "PRESSFIT"],
      ["Fit", "CLOSEIN"],
    ]);
    for (const { place } of natives) {
      const grid = expected.get(`${place.sheet}!${addressOf(place.row, place.col)}`)!;
      grid[0]!.forEach((core, c) => {
        const mine = Number(foundGreenhouse.get(place.sheet)![place.row]?.[place.col + c]);
        expect(Math.abs(mine - Number(core))).toBeLessThanOrEqual(1e-12 * Math.abs(Number(core)));
      });
    }
    const refused = entries.filter(({ place }) => errorsIn(foundGreenhouse, place) > 0);
    expect(refused.map(({ place, became }) => [place.sheet, addressOf(place.row, place.col), became])).toEqual([
      // an error from the start on
      ["Start here", "C11", "value"],
      ["Duties", "A4", "value"],
      ["Shortlist", "A8", "value"],
      ["Fit", "A36", "value"],
    ]);
    // what nothing was changed of stands as it was
    const before = new Map(
      evaluate({ file: "", title: "", sheets: greenhouse.sheets }).map(({ sheet, at, grid }) => [
        `${sheet}!${at}`,
        grid,
      ]),
    );
    for (const { place, became } of entries.filter((entry) => entry.became === "value" && !refused.includes(entry))) {
      const grid = before.get(`${place.sheet}!${addressOf(place.row, place.col)}`)!;
      grid.forEach((line, r) =>
        line.forEach((cell, c) => {
          const mine = foundGreenhouse.get(place.sheet)![place.row + r]?.[place.col + c] ?? "";
          // LibreOffice writes fifteen digits
          expect([became, mine]).toEqual([became, typeof cell === "number" ? expect.closeTo(cell, 9) : cell]);
        }),
      );
    }
  },
);

test("no call of the add-in is left, and each that was there is in the list with what became of it", () => {
  const cells = handed.book.sheets.flatMap(({ cells }) => Object.values(cells));
  expect(cells.filter(({ formula }) => formula && /BUSH\./.test(formula))).toEqual([]);
  const was = greenhouse.sheets.flatMap(({ name, cells: own }) =>
    Object.entries(own).flatMap(([at, { formula }]) => (formula && /BUSH\./.test(formula) ? [`${name} ${at}`] : [])),
  );
  expect(handed.entries.map(({ place }) => `${place.sheet} ${addressOf(place.row, place.col)}`).sort()).toEqual(
    was.sort(),
  );
  const list = handed.book.sheets.find(({ name }) => name === "Handed over")!;
  const listed = Object.values(list.cells).map(({ value }) => value);
  for (const { formula } of handed.entries) expect(listed).toContain(formula.slice(1));
});

test("a formula that the sheet has not computed yet is not handed over as an empty cell", () => {
  const cells = [[{ value: null, text: "", formula: "=BUSH.PRESSURE(800,20,15)" }]];
  expect(() => handOver([{ name: "One", cells }], [])).toThrow(/^A1 on One is not computed yet: /);
});

test("a call inside a formula is worked beside it, and a call in a text is none", () => {
  const sheet = (cells: BookSheet["cells"]): Book => ({
    name: "One",
    tables: [],
    sheets: [{ name: "One", widths: [], cells }],
  });
  const { book, entries } = handedOver(
    sheet({
      A1: { value: "Demo Tansy" },
      A2: { formula: '="BUSH.PRESSURE(1,2,3)"' },
      A3: { formula: '=IF(A1="x",0,BUSH.GRADE(A1,"PV limit"))' },
      A4: { formula: "=2*BUSH.PRESSURE(800,20,15)+1" },
    }),
    "one",
  );
  expect(entries.map(({ place, became }) => [addressOf(place.row, place.col), became])).toEqual([
    ["A3", "value"],
    ["A4", "native"],
  ]);
  const { cells } = book.sheets[0]!;
  expect(cells.A2!.formula).toBe('="BUSH.PRESSURE(1,2,3)"');
  expect(cells.A4).toEqual({
    value: (2 * 800) / (20 * 15) + 1,
    formula: expect.stringMatching(/^=2\*'Workings'!D\d+\+1$/),
  });
});
