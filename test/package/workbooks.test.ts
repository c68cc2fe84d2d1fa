import { writeFileSync } from "node:fs";
import path from "node:path";
import readSheets from "read-excel-file/node";
import { catalogue } from "../../src/core";
import { answer } from "../../src/edge/sheet";
import { addressOf, areaOf } from "../../src/port/address";
import { convert, officePath } from "../../scripts/lib/office";
import type { FileBook } from "../../scripts/workbooks/book";
import { books } from "../../scripts/workbooks/books";
import { evaluate } from "../../scripts/workbooks/evaluate";
import { CellError } from "../../src/edge/host";
import { writeBook } from "../../scripts/workbooks/write";
import { run, temporaryFolder } from "./run";
import { cellsOf, elements, partsOf } from "./xlsx";
import type { FileCell, Parts } from "./xlsx";

const folder = temporaryFolder();
const offered = temporaryFolder();
const uncomputed = temporaryFolder();
const fileOf = (book: FileBook, where = folder) => path.join(where, `${book.file}.xlsx`);
const isNative = (formula: string) => !/BUSH|#|ANCHORARRAY/.test(formula);
const each = books.map((book) => [book.file, book] as const);

beforeAll(async () => {
  const done = run("npm", ["run", "--silent", "workbooks", "--", `--out=${offered}`, "--offer-add-in"]);
  expect([done.code, done.err]).toEqual([0, ""]);
  for (const book of books) {
    writeFileSync(fileOf(book), await writeBook(book));
    writeFileSync(fileOf(book, uncomputed), await writeBook(book, { plain: true, nativeUncomputed: true }));
  }
}, 300_000);

test("there is a workbook for the designer, the fit, the buyer and the trainer", () => {
  expect(books.map((book) => book.file)).toEqual(["sizing", "fit", "quotes", "worked-examples"]);
});

describe.each(each)("%s.xlsx", (_, book) => {
  let parts: Parts;
  let cells: Map<string, Map<string, FileCell>>;
  beforeAll(() => {
    parts = partsOf(fileOf(book));
    cells = cellsOf(parts);
  });

  test("every part is well formed, has a type, and every relation leads to a part", () => checkPackage(parts));

  test("its tables have the headings of their columns in the cells, each once, and text in each", () => {
    const tables = book.sheets.flatMap((sheet) => sheet.tables ?? []);
    const files = parts.names.filter((name) => name.startsWith("xl/tables/"));
    expect(files.length).toBe(tables.length);
    for (const name of files) {
      const table = elements(parts.xml(name), "table")[0]!;
      const names = elements(table, "tableColumn").map((column) => column.getAttribute("name"));
      const own = tables.find((candidate) => candidate.name === table.getAttribute("displayName"))!;
      const sheet = book.sheets.find((candidate) => candidate.tables?.includes(own))!;
      const { row, col, cols, rows } = areaOf(table.getAttribute("ref")!);
      expect(names).toEqual(
        Array.from({ length: cols }, (__, c) => cells.get(sheet.name)!.get(addressOf(row, col + c))?.value),
      );
      expect(new Set(names).size).toBe(cols);
      expect(rows).toBe(own.rows.length + 1);
    }
  });

  test("formulas are stored as Excel stores them, spill with metadata, and hold the core's values", () => {
    for (const { sheet, at, formula, grid } of evaluate(book)) {
      const cell = cells.get(sheet)!.get(at)!;
      expect(cell.formula).toBe(
        formula
          .slice(1)
          .replaceAll("BUSH.", "_xldudf_BUSH_")
          .replace(/([\w!]*\$?[A-Z]+\$?\d+)#/g, "_xlfn.ANCHORARRAY($1)"),
      );
      const { row, col } = areaOf(at);
      if (!isNative(formula)) {
        expect(cell.isDynamic).toBe(true);
        expect(cell.spill).toBe(`${at}:${addressOf(row + grid.length - 1, col + grid[0]!.length - 1)}`);
      }
      grid.forEach((line, r) =>
        line.forEach((value, c) => {
          const found = cells.get(sheet)!.get(addressOf(row + r, col + c));
          const wanted = value instanceof CellError ? value.code : value;
          expect([sheet, at, r, c, found?.value ?? "", found?.isError ?? false]).toEqual([
            sheet,
            at,
            r,
            c,
            wanted,
            value instanceof CellError,
          ]);
        }),
      );
    }
    if ([...cells.values()].some((sheet) => [...sheet.values()].some((cell) => cell.isDynamic)))
      expect(parts.text("xl/metadata.xml")).toMatch(/XLDAPR[^]*fDynamic="1"/);
  });

  test("says who wrote it, keeps its values on opening, prints on a page's width with its headings", () => {
    expect(parts.text("docProps/app.xml")).toMatch(/<Application>Bushcell \d+\.\d+\.\d+ with hucre 1\.0\.0</);
    expect(parts.text("xl/workbook.xml")).not.toContain("fullCalcOnLoad");
    const sheets = parts.names
      .filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name))
      .map((name) => parts.text(name));
    for (const sheet of sheets)
      expect(sheet).toMatch(/fitToPage="(1|true)"[^]*<pageSetup [^>]*orientation="landscape"/);
    expect(sheets.filter((sheet) => sheet.includes("<pane ")).length).toBe(
      book.sheets.filter((sheet) => sheet.frozen).length,
    );
    expect(sheets.join("").match(/<cfRule /g)?.length ?? 0).toBe(
      book.sheets.flatMap((sheet) => sheet.marks ?? []).length,
    );
    expect(sheets.join("").match(/<dataValidation /g)?.length ?? 0).toBe(
      book.sheets.flatMap((sheet) => sheet.picks ?? []).length,
    );
  });

  test("its cautions are in it", () => {
    expect(parts.text("xl/sharedStrings.xml")).toContain(
      "Where failure can hurt someone, have a licensed engineer decide.",
    );
  });

  test("offers the add-in only where asked to", () => {
    expect(parts.names.filter((name) => name.includes("webextension"))).toEqual([]);
    const withOffer = partsOf(fileOf(book, offered));
    expect(withOffer.names).toContain("xl/webextensions/webextension1.xml");
    checkPackage(withOffer);
    // shown with the document, and by the name that the manifest's pane has (Microsoft's guide to opening a pane with a document, memory)
    expect(withOffer.text("xl/webextensions/taskpanes.xml")).toContain('visibility="1"');
    const opening = '<we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/>';
    expect(withOffer.text("xl/webextensions/webextension1.xml")).toContain(opening);
  });
});

function checkPackage(parts: Parts): void {
  const types = parts.xml("[Content_Types].xml");
  const overrides = elements(types, "Override").map((o) => o.getAttribute("PartName")!.slice(1));
  const defaults = elements(types, "Default").map((d) => d.getAttribute("Extension")!);
  for (const name of overrides) expect(parts.names).toContain(name);
  for (const name of parts.names.filter((part) => !part.endsWith("/"))) {
    if (/\.(xml|rels)$/.test(name)) parts.xml(name);
    expect([
      name,
      name === "[Content_Types].xml" || overrides.includes(name) || defaults.includes(name.split(".").at(-1)!),
    ]).toEqual([name, true]);
  }
  for (const rels of parts.names.filter((name) => name.endsWith(".rels"))) {
    const from = path.posix.dirname(path.posix.dirname(rels));
    for (const relation of elements(parts.xml(rels), "Relationship")) {
      const target = relation.getAttribute("Target")!;
      const place = target.startsWith("/") ? target.slice(1) : path.posix.normalize(path.posix.join(from, target));
      if (relation.getAttribute("TargetMode") !== "External") expect(parts.names).toContain(place);
    }
  }
}

test("the duties' pressures, speeds and verdicts in the file are those of the functions, row by row", () => {
  const cells = cellsOf(partsOf(fileOf(books[0]!))).get("Duties")!;
  const host = { error: (code: string) => code };
  const bush = (id: string, ...given: unknown[]) =>
    answer(
      catalogue.find((f) => f.spec.id === id)!,
      given,
      host,
    );
  const top = 5;
  const { rows, headings } = books[0]!.sheets.find(({ name }) => name === "Duties")!.tables![0]!;
  const table = [headings, ...rows];
  const answered = bush("DUTIES", table);
  answered.forEach((line, r) =>
    line.forEach((wanted, c) =>
      expect([r, c, cells.get(addressOf(top - 1 + r, c))?.value ?? ""]).toEqual([r, c, wanted]),
    ),
  );
  // what the elementary functions say of a row that is one bush in one motion
  const at = (row: number, heading: string) => rows[row]![headings.indexOf(heading)] ?? null;
  const column = (name: string) => answered[0]!.indexOf(name);
  let compared = 0;
  rows.forEach((_, row) => {
    const isPlain = at(row, "part") === "sleeve" && at(row, "rpm [1/min]") !== null && at(row, "time [min]") === null;
    if (!isPlain || at(row, "running time [min]") !== null) return;
    const [pressure, speed] = [
      bush("PRESSURE", at(row, "load [N]"), at(row, "bore [mm]"), at(row, "length [mm]"))[0]![0],
      bush("SPEED", at(row, "bore [mm]"), at(row, "rpm [1/min]"))[0]![0],
    ];
    const line = answered[row + 1]!;
    expect([row, line[column("pressure [MPa]")], line[column("speed [m/s]")]]).toEqual([row, pressure, speed]);
    compared++;
  });
  expect(compared).toBeGreaterThan(8);
});

const ifOffice = officePath() ? describe : describe.skip;
if (!officePath()) console.log("LibreOffice is not installed: what it reads from the workbooks is not checked.");

ifOffice("LibreOffice", () => {
  const made = temporaryFolder();
  const openAll = (from: string) =>
    convert(
      books.map((book) => fileOf(book, from)),
      "xlsx:Calc MS Excel 2007 XML",
      temporaryFolder(),
    ).map((file) => cellsOf(partsOf(file)));

  test("opens each plain workbook and keeps every number and text", () => {
    openAll(path.join(offered, "plain")).forEach((read, i) => {
      for (const [sheet, cells] of cellsOf(partsOf(fileOf(books[i]!, path.join(offered, "plain")))))
        for (const [at, { value }] of cells) {
          const found = read.get(sheet)!.get(at)?.value;
          if (typeof value === "number")
            expect([sheet, at, near(Number(found), value, 1e-13)]).toEqual([sheet, at, true]);
          else if (value !== undefined && value !== "") expect([sheet, at, found]).toEqual([sheet, at, value]);
        }
    });
  });

  test("computes the native formulas, left without values, to those of the add-in's side", () => {
    let compared = 0;
    openAll(uncomputed).forEach((read, i) => {
      for (const { sheet, at, formula, grid } of evaluate(books[i]!)) {
        if (!isNative(formula)) continue;
        const before = cellsOf(partsOf(fileOf(books[i]!, uncomputed)))
          .get(sheet)!
          .get(at)!;
        expect([sheet, at, before.value]).toEqual([sheet, at, undefined]);
        const [[wanted]] = grid as [[number | string]];
        const found = read.get(sheet)!.get(at)!.value;
        if (typeof wanted === "number")
          expect([sheet, at, near(Number(found), wanted, 1e-12)]).toEqual([sheet, at, true]);
        else expect([sheet, at, found]).toEqual([sheet, at, wanted]);
        compared++;
      }
    });
    expect(compared).toBeGreaterThan(20);
  });

  test("lays each out for print", () => {
    const files = convert(
      books.map((book) => fileOf(book, path.join(offered, "plain"))),
      "pdf",
      made,
    );
    expect(files.length).toBe(books.length);
  });
});
const near = (a: number, b: number, relative: number) => Math.abs(a - b) <= relative * Math.max(Math.abs(b), 1e-300);

test("read-excel-file reads the same from every cell", async () => {
  let compared = 0;
  for (const book of books) {
    const read = await readSheets(fileOf(book), { trim: false });
    const stored = cellsOf(partsOf(fileOf(book)));
    expect(read.map(({ sheet }) => sheet)).toEqual([...stored.keys()]);
    for (const { sheet, data } of read)
      for (const [at, { value }] of stored.get(sheet)!) {
        const { row, col } = areaOf(at);
        // it reads empty text as nothing
        expect([sheet, at, data[row]?.[col] ?? ""]).toEqual([sheet, at, value ?? ""]);
        compared++;
      }
  }
  expect(compared).toBeGreaterThan(1000);
});

const python = ["python3", "/usr/bin/python3"].find((name) => run(name, ["-c", "import openpyxl"]).code === 0);
if (!python) console.log("openpyxl is not installed: what it reads from the workbooks is not checked.");

(python ? test : test.skip)("openpyxl reads the same value from every cell, the formulas and the tables", () => {
  const script = `
import json, sys, openpyxl
out = {}
for file in sys.argv[1:]:
    formulas, values = (openpyxl.load_workbook(file, data_only=d) for d in (False, True))
    out[file] = {s.title: {"tables": sorted(s.tables), "cells": {c.coordinate: [getattr(c.value, "text", c.value), values[s.title][c.coordinate].value]
      for row in s.iter_rows() for c in row if c.value is not None}} for s in formulas}
print(json.dumps(out, default=str))`;
  const { out, err } = run(python!, ["-c", script, ...books.map((book) => fileOf(book))]);
  const read = JSON.parse(out || `{"error": ${JSON.stringify(err)}}`) as Record<
    string,
    Record<string, { tables: string[]; cells: Record<string, unknown[]> }>
  >;
  for (const book of books) {
    const stored = cellsOf(partsOf(fileOf(book)));
    const sheets = read[fileOf(book)]!;
    for (const sheet of book.sheets)
      expect(sheets[sheet.name]!.tables).toEqual((sheet.tables ?? []).map((table) => table.name));
    for (const [sheet, cells] of stored)
      for (const [at, { value, formula }] of cells) {
        const [typed, found] = sheets[sheet]!.cells[at] ?? [];
        // it reads empty text as nothing
        expect([sheet, at, found ?? ""]).toEqual([sheet, at, value ?? ""]);
        if (formula !== undefined) expect([sheet, at, typed]).toEqual([sheet, at, `=${formula}`]);
      }
  }
});
