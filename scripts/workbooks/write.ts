/** The one module that knows the library that writes .xlsx files. */
import { strToU8 } from "fflate";
import { writeXlsx } from "hucre/xlsx";
import type { Cell, CellStyle, CellValue, ConditionalRule, WriteSheet } from "hucre/xlsx";
import { areaOf, addressOf } from "../../src/port/address";
import { changePart, finishFile } from "../../src/book/fileParts";
import type { Parts } from "../../src/book/fileParts";
import { stored } from "../../src/book/storedFormula";
import { looks, markStyles } from "../../src/book/looks";
import type { LookStyle } from "../../src/book/looks";
import { devDependencies, version } from "../../package.json";
import type { FileBook, FileSheet } from "./book";
import { CellError } from "../../src/edge/host";
import type { Value } from "../../src/book/formula/values";
import { evaluate } from "./evaluate";
import type { Answered } from "./evaluate";

export interface WriteSettings {
  /**
   * For programs that have neither the add-in nor spilled formulas: they compute arrays and texts anew and would show
   * #NAME?, so the file keeps formulas with one number or the first number of a column, and values elsewhere.
   */
  readonly plain?: boolean;
  /** Adds the parts by which Excel offers the add-in on opening. */
  readonly offerAddIn?: boolean;
  /** Leaves the native formulas without values, so that another program has to compute them. */
  readonly nativeUncomputed?: boolean;
}

/** Always the same, so that the same workbook gives the same file. */
const written = new Date("2026-01-01T00:00:00Z");
const font = { name: "Calibri", size: 11 };

export async function writeBook(book: FileBook, settings: WriteSettings = {}): Promise<Uint8Array> {
  const answers = evaluate(book);
  const plain = await writeXlsx({
    sheets: book.sheets.map((sheet) =>
      sheetOf(
        sheet,
        answers.filter((a) => a.sheet === sheet.name),
        settings,
      ),
    ),
    defaultFont: font,
    properties: { title: book.title, creator: "Bushcell", created: written, modified: written },
  });
  return finishFile(
    plain,
    `Bushcell ${version} with hucre ${devDependencies.hucre}`,
    written,
    settings.offerAddIn ? addOffer : undefined,
  );
}

export const isNative = (formula: string): boolean => !/BUSH\.|#/.test(formula);

function sheetOf(sheet: FileSheet, answers: readonly Answered[], settings: WriteSettings): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  const put: Put = (row, col, part) => {
    const key = `${row},${col}`;
    cells.set(key, { ...cells.get(key), ...part });
  };
  putTyped(sheet, put);
  for (const one of answers) putAnswer(one, settings, put);
  const widths = sheet.widths.map((width) => ({ width: width + 2 }));
  const last = Object.entries(sheet.heights ?? {}).map(
    ([row, lines]) => [Number(row) - 1, { height: lines * 16 }] as const,
  );
  return {
    name: sheet.name,
    columns: widths,
    cells,
    tables: tablesOf(sheet),
    merges: (sheet.merged ?? []).map((range) => {
      const { row, col, rows, cols } = areaOf(range);
      return { startRow: row, startCol: col, endRow: row + rows - 1, endCol: col + cols - 1 };
    }),
    ...(sheet.frozen ? { freezePane: sheet.frozen } : {}),
    rowDefs: new Map(last),
    conditionalRules: (sheet.marks ?? []).map(({ range, when, as }, i): ConditionalRule => ({
      type: "expression",
      priority: i + 1,
      range,
      formula: when.slice(1),
      style: ruleStyle(markStyles[as]),
    })),
    dataValidations: (sheet.picks ?? []).map(({ at, from }) => ({
      type: "list",
      range: at,
      ...(typeof from === "string" ? { formula1: from } : { values: [...from] }),
      allowBlank: true,
      showErrorMessage: true,
      errorTitle: "Not in the list",
      errorMessage: "Choose one of the values that the list offers.",
    })),
    view: { showGridLines: !sheet.plain },
    pageSetup: {
      paperSize: "a4",
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      margins: { left: 0.5, right: 0.5, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.3 },
      ...(sheet.frozen ? { printTitlesRow: `$${sheet.frozen.rows}:$${sheet.frozen.rows}` } : {}),
    },
    headerFooter: {
      oddHeader: "&L&A&R&F",
      oddFooter: "&LPreliminary sizing: test in the application, follow local codes.&RPage &P of &N",
    },
  };
}

type Put = (row: number, col: number, part: Partial<Cell>) => void;

/** What stands in a sheet before anything is computed: looks of areas, cells, tables. */
function putTyped(sheet: FileSheet, put: Put): void {
  for (const { range, look, format } of sheet.areas ?? []) {
    const { row, col, rows, cols } = areaOf(range);
    for (let r = 0; r < rows; r++)
      for (let c = 0; c < cols; c++) put(row + r, col + c, { style: styleOf(looks[look], format) });
  }
  for (const [at, { value, formula, look, format }] of Object.entries(sheet.cells)) {
    const { row, col } = areaOf(at);
    put(row, col, {
      ...(value === undefined || formula !== undefined ? {} : { value }),
      ...(look || format ? { style: styleOf(looks[look ?? "text"], format) } : {}),
    });
  }
  putTables(sheet, put);
}

function putTables(sheet: FileSheet, put: Put): void {
  for (const { at, headings, rows } of sheet.tables ?? []) {
    const { row, col } = areaOf(at);
    headings.forEach((value, c) => put(row, col + c, { value, style: styleOf(looks.heading) }));
    rows.forEach((line, r) =>
      line.forEach((value, c) =>
        put(row + r + 1, col + c, { value, style: styleOf(looks[typeof value === "string" ? "words" : "input"]) }),
      ),
    );
  }
}

/** A formula with the answer that a file keeps of it, over all the cells that it fills. */
function putAnswer({ at, formula, grid }: Answered, settings: WriteSettings, put: Put): void {
  const { row, col } = areaOf(at);
  const first = grid[0]![0]!;
  const isSpill = !isNative(formula) || grid.length * grid[0]!.length > 1;
  if (settings.plain && isSpill && typeof first !== "number") {
    grid.forEach((line, r) => line.forEach((cell, c) => put(row + r, col + c, { value: cached(cell) })));
    return;
  }
  const ref = `${at}:${addressOf(row + grid.length - 1, col + grid[0]!.length - 1)}`;
  const spill =
    isSpill && !settings.plain ? ({ formulaType: "array", formulaRef: ref, formulaDynamic: true } as const) : {};
  if (settings.nativeUncomputed && isNative(formula)) {
    put(row, col, { formula: stored(formula), ...spill });
    return;
  }
  grid.forEach((line, r) => line.forEach((cell, c) => r + c > 0 && put(row + r, col + c, { value: cached(cell) })));
  put(row, col, { formula: stored(formula), formulaResult: cached(first), ...spill });
}

function tablesOf(sheet: FileSheet) {
  return (sheet.tables ?? []).map(({ name, at, headings, rows }) => {
    const { row, col } = areaOf(at);
    return {
      name,
      displayName: name,
      range: `${at}:${addressOf(row + rows.length, col + headings.length - 1)}`,
      columns: headings.map((heading) => ({ name: heading })),
      style: "TableStyleLight1",
      showRowStripes: false,
      showAutoFilter: false,
    };
  });
}

const cached = (cell: Value): CellValue => (cell instanceof CellError ? cell.code : cell);

const rgb = (colour: string) => ({ rgb: colour.slice(1).toUpperCase() });

function styleOf(look: LookStyle, format?: string): CellStyle {
  return {
    font: {
      name: look.mono ? "Consolas" : font.name,
      size: look.size ?? font.size,
      ...(look.bold ? { bold: true } : {}),
      ...(look.italic ? { italic: true } : {}),
      ...(look.ink ? { color: rgb(look.ink) } : {}),
    },
    ...(look.fill ? { fill: { type: "pattern", pattern: "solid", fgColor: rgb(look.fill) } } : {}),
    ...(look.line ? { border: { bottom: { style: "thin", color: rgb(look.line) } } } : {}),
    alignment: {
      vertical: "top",
      ...(look.align ? { horizontal: look.align } : {}),
      // a text beside a right-aligned number would touch it
      ...(look.align === "left" ? { indent: 1 } : {}),
      ...(look.wrap ? { wrapText: true } : {}),
    },
    ...(format ? { numFmt: format } : {}),
  };
}

/** A rule's fill stands in the background colour of its pattern. */
const ruleStyle = (look: LookStyle): CellStyle => ({
  font: {
    ...(look.bold ? { bold: true } : {}),
    ...(look.italic ? { italic: true } : {}),
    ...(look.underline ? { underline: true } : {}),
    ...(look.ink ? { color: rgb(look.ink) } : {}),
  },
  ...(look.fill
    ? { fill: { type: "pattern", pattern: "solid", bgColor: rgb(look.fill), fgColor: rgb(look.fill) } }
    : {}),
});

const addInId = "5f5dbb9c-3e71-4ef3-ba5f-0d4b67f44677";

/**
 * The pane as an open web extension, for an add-in that an organisation has deployed: visible, and with the property by
 * which Excel opens it with the document once the manifest's pane has the TaskpaneId of that name. The parts' form is
 * from memory of [MS-OWEXML].
 */
function addOffer(parts: Parts): void {
  const xml = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  const office = "http://schemas.microsoft.com/office";
  parts["xl/webextensions/webextension1.xml"] = strToU8(
    `${xml}<we:webextension xmlns:we="${office}/webextensions/webextension/2010/11" id="{${addInId.toUpperCase()}}"><we:reference id="${addInId}" version="${version}.0" store="EXCatalog" storeType="EXCatalog"/><we:alternateReferences/><we:properties><we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/></we:properties><we:bindings/><we:snapshot xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"/></we:webextension>`,
  );
  parts["xl/webextensions/taskpanes.xml"] = strToU8(
    `${xml}<wetp:taskpanes xmlns:wetp="${office}/webextensions/taskpanes/2010/11"><wetp:taskpane dockstate="right" visibility="1" width="350" row="1"><wetp:webextensionref xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`,
  );
  parts["xl/webextensions/_rels/taskpanes.xml.rels"] = strToU8(
    `${xml}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/2011/relationships/webextension" Target="webextension1.xml"/></Relationships>`,
  );
  changePart(parts, "_rels/.rels", (text) =>
    text.replace(
      "</Relationships>",
      `<Relationship Id="rIdTaskpanes" Type="${office}/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/></Relationships>`,
    ),
  );
  changePart(parts, "[Content_Types].xml", (text) =>
    text.replace(
      "</Types>",
      '<Override PartName="/xl/webextensions/webextension1.xml" ContentType="application/vnd.ms-office.webextension+xml"/><Override PartName="/xl/webextensions/taskpanes.xml" ContentType="application/vnd.ms-office.webextensiontaskpanes+xml"/></Types>',
    ),
  );
}
