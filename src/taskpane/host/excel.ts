/// <reference types="office-js" />
import { present } from "../../core/present";
import { addressOf } from "../../port/address";
import { freeName, tableNameOf } from "../../port/names";
import { addressOfSvg, drawPng } from "../../port/png";
import { placeOf, richCell } from "../../port/sheet";
import type { Block, Corner, NamedTable, Picture, Place, ReadCell, RichCell, SheetPort } from "../../port/sheet";

/** The port of Excel; the only file that calls Excel.run. */
export const excelPort = (): SheetPort => ({
  selection: () =>
    Excel.run(async (context) => placeIn(context, context.workbook.getSelectedRange())).catch(() => undefined),
  read: (place) => Excel.run((context) => read(context, place)),
  write: (at, block) =>
    Excel.run(async (context) => {
      fill(rangeOf(context, placeOf(at, block)), block);
      await context.sync();
    }),
  widen: (at, characters) => Excel.run((context) => widen(context, at, characters)),
  spillOf: (at) =>
    Excel.run(async (context) => {
      const range = rangeOf(context, { ...at, rows: 1, cols: 1 }).getSpillingToRangeOrNullObject();
      range.load("isNullObject");
      await context.sync();
      return range.isNullObject ? undefined : placeIn(context, range);
    }),
  tables: () => Excel.run(tables),
  addTable: (name, block) => Excel.run((context) => addTable(context, name, block)),
  addPicture: (at, picture) => Excel.run((context) => addPicture(context, at, picture)),
  select: (place) =>
    Excel.run(async (context) => {
      rangeOf(context, place).select();
      await context.sync();
    }),
  watch,
});

const corner = "rowIndex,columnIndex,rowCount,columnCount";

async function placeIn(context: Excel.RequestContext, range: Excel.Range): Promise<Place> {
  range.load(`${corner},worksheet/name`);
  await context.sync();
  const { rowIndex: row, columnIndex: col, rowCount: rows, columnCount: cols } = range;
  return { sheet: range.worksheet.name, row, col, rows, cols };
}

const rangeOf = (context: Excel.RequestContext, { sheet, row, col, rows, cols }: Place): Excel.Range =>
  context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, col, rows, cols);

/** Whole columns are read as far down as the sheet is used. */
async function read(context: Excel.RequestContext, place: Place): Promise<ReadCell[][]> {
  const used = context.workbook.worksheets.getItem(place.sheet).getUsedRangeOrNullObject(true);
  used.load("isNullObject,rowIndex,rowCount");
  await context.sync();
  const rows = used.isNullObject ? 1 : Math.min(place.rows, Math.max(1, used.rowIndex + used.rowCount - place.row));
  const range = rangeOf(context, { ...place, rows });
  range.load("values,text,formulas,valueTypes");
  await context.sync();
  return range.values.map((line, r) => {
    const texts = present(range.text[r]);
    const formulas = present(range.formulas[r]);
    const types = present(range.valueTypes[r]);
    return line.map((value: string | number | boolean, c) =>
      excelCell(value, present(texts[c]), String(formulas[c]), present(types[c])),
    );
  });
}

const excelCell = (
  value: string | number | boolean,
  text: string,
  formula: string,
  type: Excel.RangeValueType | string,
): ReadCell => ({
  value: type === "Empty" || value === "" ? null : value,
  text,
  ...(formula.startsWith("=") && formula !== value && { formula }),
  ...(type === "Error" && { error: { code: String(value) } }),
});

function fill(range: Excel.Range, block: Block): void {
  const cells = block.map((line) => line.map(richCell));
  range.formulas = cells.map((line) => line.map(content));
  // null leaves a cell's format as it is
  if (cells.some((line) => line.some(({ format }) => format)))
    range.numberFormat = cells.map((line) => line.map(({ format }) => format ?? null));
  cells.forEach((line, r) =>
    line.forEach(({ heading }, c) => {
      if (heading) range.getCell(r, c).format.font.bold = true;
    }),
  );
}

/** A character of the usual font, and what a cell keeps free at its sides; points. */
const character = 5.3;
const sides = 6;

async function widen(context: Excel.RequestContext, at: Corner, characters: readonly number[]): Promise<void> {
  const formats = characters.map((_, i) => rangeOf(context, { ...at, col: at.col + i, rows: 1, cols: 1 }).format);
  formats.forEach((format) => format.load("columnWidth"));
  await context.sync();
  formats.forEach((format, i) => {
    const width = present(characters[i]) * character + sides;
    if (format.columnWidth < width) format.columnWidth = width;
  });
  await context.sync();
}

/** Excel reads typed text: the apostrophe keeps it text, and is not part of the value. */
function content({ value = null, formula }: RichCell): string | number {
  if (formula) return formula;
  if (value === null) return "";
  return typeof value === "number" || isPlainWord(value) ? value : `'${value}`;
}

/** Words that Excel cannot take for a formula, number, date or truth value. */
const isPlainWord = (text: string): boolean =>
  text === "" || (/^\p{L}[^\d]*$/u.test(text) && !/^(true|false)$/i.test(text));

async function tables(context: Excel.RequestContext): Promise<NamedTable[]> {
  const all = context.workbook.tables;
  all.load("items");
  await context.sync();
  const found: NamedTable[] = [];
  for (const { name } of all.items) found.push(await namedTable(context, name));
  return found;
}

const namedTable = async (context: Excel.RequestContext, name: string): Promise<NamedTable> => ({
  name,
  place: await placeIn(context, context.workbook.tables.getItem(name).getRange()),
  reference: `${name}[#All]`,
});

async function addTable(context: Excel.RequestContext, name: string, block: Block): Promise<NamedTable> {
  const { tables: known, names, worksheets } = context.workbook;
  known.load("items");
  names.load("items");
  worksheets.load("items");
  await context.sync();
  const sheetName = freeName(name, among(worksheets.items));
  const tableName = freeName(tableNameOf(name), among([...known.items, ...names.items]));
  const sheet = worksheets.add(sheetName);
  const range = sheet.getRangeByIndexes(0, 0, block.length, block[0]?.length ?? 0);
  fill(range, block);
  const table = sheet.tables.add(`A1:${addressOf(block.length - 1, (block[0]?.length ?? 1) - 1)}`, true);
  table.name = tableName;
  range.format.autofitColumns();
  sheet.activate();
  await context.sync();
  return {
    name: tableName,
    place: placeOf({ sheet: sheetName, row: 0, col: 0 }, block),
    reference: `${tableName}[#All]`,
  };
}

/** Of a picture's pixel, as of a row's or a column's. */
const points = 0.75;

async function addPicture(context: Excel.RequestContext, at: Corner, picture: Picture): Promise<void> {
  const { svg, width, height } = picture;
  const png = await drawPng(addressOfSvg(svg), width, height);
  const cell = rangeOf(context, { ...at, rows: 1, cols: 1 });
  cell.load("left,top");
  await context.sync();
  const shape = context.workbook.worksheets.getItem(at.sheet).shapes.addImage(png);
  // else the height would follow from the width that is set first
  shape.lockAspectRatio = false;
  shape.left = cell.left;
  shape.top = cell.top;
  shape.width = width * points;
  shape.height = height * points;
  shape.lockAspectRatio = true;
  shape.placement = "OneCell";
  shape.name = picture.name;
  shape.altTextDescription = picture.words;
  await context.sync();
}

/** Excel's names do not differ by case alone. */
function among(items: readonly { readonly name: string }[]): (name: string) => boolean {
  const taken = new Set(items.map(({ name }) => name.toUpperCase()));
  return (name) => taken.has(name.toUpperCase());
}

function watch(changed: () => void): () => void {
  const call = async () => changed();
  const adding = Excel.run(async (context) => {
    const { workbook } = context;
    const ends = [
      workbook.onSelectionChanged.add(call),
      workbook.worksheets.onChanged.add(call),
      workbook.worksheets.onCalculated.add(call),
    ] as const;
    await context.sync();
    return ends;
  });
  return () => {
    void adding.then((ends) =>
      Excel.run(ends[0].context, async (context) => {
        ends.forEach((end) => end.remove());
        await context.sync();
      }),
    );
  };
}
