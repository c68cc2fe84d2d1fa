import { addressOf, areaOf } from "../../src/port/address";
import type { Place } from "../../src/port/sheet";
import { isError } from "./cells";
import type { CellValue } from "./cells";
import type { Shape, Sheet, Table, Workbook } from "./workbook";

/** An object of Excel's interface: what can be loaded, the objects that it leads to, what can be called and set. */
export interface HostObject {
  readonly kind: string;
  readonly values?: Readonly<Record<string, () => unknown>>;
  readonly items?: () => HostObject[];
  readonly paths?: Members;
  readonly methods?: Members;
  readonly set?: Members;
}
// oxlint-disable-next-line typescript/no-explicit-any -- arguments as they come over the wire
type Members = Readonly<Record<string, (...given: any[]) => unknown>>;

/** An error by Excel's own code. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

const limits = { rows: 1048576, cols: 16384 };

const missing = (name: string) => new HostError("ItemNotFound", `${name} is not there`);

export const workbookObject = (book: Workbook): HostObject => ({
  kind: "Workbook",
  paths: {
    Worksheets: () => worksheets(book),
    Tables: () => tables(book, () => book.tables),
    Names: () => ({ kind: "Names", items: () => [] }),
  },
  methods: { GetSelectedRange: () => range(book, book.selection) },
});

const worksheets = (book: Workbook): HostObject => ({
  kind: "Worksheets",
  items: () => book.sheets.map((sheet) => worksheet(book, sheet)),
  methods: {
    GetItem(name: string) {
      const found = book.find(name);
      if (!found) throw missing(name);
      return worksheet(book, found);
    },
    Add(name: string) {
      if (book.find(name)) throw new HostError("ItemAlreadyExists", name);
      return worksheet(book, book.addSheet(name));
    },
  },
});

function worksheet(book: Workbook, sheet: Sheet): HostObject {
  const { name } = sheet;
  return {
    kind: "Worksheet",
    values: { Name: () => name, Id: () => name },
    paths: {
      Tables: () => tables(book, () => book.tables.filter((table) => table.place.sheet === name), name),
      Shapes: () => shapes(sheet),
    },
    methods: {
      GetRangeByIndexes: (row: number, col: number, rows: number, cols: number) =>
        range(book, { sheet: name, row, col, rows, cols }),
      GetUsedRangeOrNullObject() {
        const used = sheet.used();
        return used && range(book, { sheet: name, ...used });
      },
      Activate: () => void (book.active = name),
    },
  };
}

const tables = (book: Workbook, list: () => Table[], sheet?: string): HostObject => ({
  kind: "Tables",
  items: () => list().map((one) => table(book, one)),
  methods: {
    GetItem(name: string) {
      const found = list().find((one) => one.name === name);
      if (!found) throw missing(name);
      return table(book, found);
    },
    Add(address: string, hasHeadings: boolean) {
      if (!sheet || !hasHeadings) throw new HostError("NotImplemented", "a table without sheet or headings");
      const added = { name: `Table${book.tables.length + 1}`, place: { sheet, ...areaOf(address) } };
      book.tables.push(added);
      return table(book, added);
    },
  },
});

const table = (book: Workbook, own: Table): HostObject => ({
  kind: "Table",
  values: { Name: () => own.name, Id: () => own.name },
  methods: { GetRange: () => range(book, own.place) },
  set: { Name: (name: string) => void (own.name = name) },
});

const shapes = (sheet: Sheet): HostObject => ({
  kind: "Shapes",
  methods: {
    AddImage(png: string) {
      const added: Shape = { png, set: {} };
      sheet.shapes.push(added);
      const names = ["Left", "Top", "Width", "Height", "LockAspectRatio", "Placement", "Name", "AltTextDescription"];
      const keep = (name: string) => (value: unknown) => void (added.set[name] = value);
      return { kind: "Shape", set: Object.fromEntries(names.map((name) => [name, keep(name)])) };
    },
  },
});

/** Points of a cell that nobody has widened. */
const cell = { width: 48, height: 15 };

function range(book: Workbook, place: Place): HostObject {
  const { sheet, row, col, rows, cols } = place;
  const own = book.find(sheet);
  if (!own) throw missing(sheet);
  if (rows < 1 || cols < 1 || row < 0 || col < 0 || row + rows > limits.rows || col + cols > limits.cols)
    throw new HostError("InvalidArgument", `${sheet} has no such range`);
  const each = <T>(of: (value: CellValue | undefined, r: number, c: number) => T): T[][] =>
    Array.from({ length: rows }, (_, r) =>
      Array.from({ length: cols }, (__, c) => of(own.valueAt(row + r, col + c), row + r, col + c)),
    );
  const sized = <T>(cells: T[][]): T[][] => {
    if (cells.length !== rows || cells.some((line) => line.length !== cols))
      throw new HostError("InvalidArgument", "the array has another size than the range");
    return cells;
  };
  const plain = (value: CellValue | undefined) => (isError(value) ? value.error : (value ?? ""));
  return {
    kind: "Range",
    values: {
      Address: () => `${sheet}!${addressOf(row, col)}`,
      RowIndex: () => row,
      ColumnIndex: () => col,
      Left: () => col * cell.width,
      Top: () => row * cell.height,
      RowCount: () => rows,
      ColumnCount: () => cols,
      Values: () => each(plain),
      Text: () => each((value) => String(plain(value))),
      Formulas: () => each((value, r, c) => own.formulaAt(r, c) ?? plain(value)),
      ValueTypes: () => each(typeName),
    },
    paths: { Worksheet: () => worksheet(book, own), Format: () => format(own, place) },
    methods: {
      GetCell: (r: number, c: number) => range(book, { sheet, row: row + r, col: col + c, rows: 1, cols: 1 }),
      GetRow: (r: number) => range(book, { sheet, row: row + r, col, rows: 1, cols }),
      GetBoundingRect(other: HostObject) {
        const to = placeOf(other);
        const [top, left] = [Math.min(row, to.row), Math.min(col, to.col)];
        const [bottom, right] = [Math.max(row + rows, to.row + to.rows), Math.max(col + cols, to.col + to.cols)];
        return range(book, { sheet, row: top, col: left, rows: bottom - top, cols: right - left });
      },
      Select: () => void (book.selection = place),
      GetSpillingToRangeOrNullObject() {
        const spill = own.spillAt(row, col);
        return spill ? range(book, { sheet, row, col, ...spill }) : null;
      },
    },
    set: {
      Formulas(cells: unknown[][]) {
        sized(cells).forEach((line, r) => line.forEach((typed, c) => own.type(row + r, col + c, typed)));
        book.changes++;
      },
      NumberFormat(formats: (string | null)[][]) {
        sized(formats).forEach((line, r) =>
          line.forEach((code, c) => code !== null && own.formats.set(addressOf(row + r, col + c), code)),
        );
      },
    },
  };
}

/** Where a range stands, by what can be loaded of it. */
function placeOf({ values = {} }: HostObject): Omit<Place, "sheet"> {
  const [row, col, rows, cols] = ["RowIndex", "ColumnIndex", "RowCount", "ColumnCount"].map(
    (name) => values[name]!() as number,
  ) as [number, number, number, number];
  return { row, col, rows, cols };
}

const format = (sheet: Sheet, { row, col }: Place): HostObject => ({
  kind: "RangeFormat",
  values: { ColumnWidth: () => sheet.widths.get(col) ?? cell.width },
  paths: {
    Font: () => ({ kind: "Font", set: { Bold: (on: boolean) => void (on && sheet.bold.add(addressOf(row, col))) } }),
  },
  methods: { AutofitColumns: () => undefined },
  set: { ColumnWidth: (points: number) => void sheet.widths.set(col, points) },
});

function typeName(value: CellValue | undefined): string {
  if (value === undefined || value === "") return "Empty";
  if (isError(value)) return "Error";
  return typeof value === "number" ? "Double" : typeof value === "string" ? "String" : "Boolean";
}
