import { OfficeMockObject } from "office-addin-mock";
import { excelPort } from "../../src/taskpane/host/excel";
import { isDark } from "../../src/taskpane/host/excelHost";

interface MockRange {
  formulas: unknown[][];
  numberFormat: unknown[][];
  format: { columnWidth: number; font: { bold: boolean } };
}

/** A sheet of 20 rows in use; every range that is asked for is the one range below. */
function mockExcel() {
  const asked: number[][] = [];
  const handlers: string[] = [];
  const range = {
    address: "Duties!B3:C4",
    rowIndex: 2,
    columnIndex: 1,
    rowCount: 2,
    columnCount: 2,
    isNullObject: false,
    values: [
      ["load", 800],
      ["#VALUE!", ""],
    ],
    text: [
      ["load", "800.0"],
      ["#VALUE!", ""],
    ],
    formulas: [
      ["load", "=BUSH.PRESSURE(1,2,3)"],
      ["=BUSH.PVVALUE(B1,1)", ""],
    ],
    valueTypes: [
      ["String", "Double"],
      ["Error", "Empty"],
    ],
    left: 48,
    top: 30,
    worksheet: { name: "Duties" },
    numberFormat: [["General"]],
    format: { columnWidth: 48, font: { bold: false }, autofitColumns: () => undefined },
    getCell() {
      return this;
    },
    select: () => undefined,
    getSpillingToRangeOrNullObject() {
      return this;
    },
  };
  const event = (name: string) => ({ add: () => handlers.push(name) });
  const sheet = {
    name: "Duties",
    range,
    used: { isNullObject: false, rowIndex: 0, rowCount: 20 },
    tables: {
      made: { name: "Table1" },
      add(address: string, hasHeadings: boolean) {
        asked.push([address === "A1:B3" ? 1 : 0, hasHeadings ? 1 : 0]);
        return this.made;
      },
    },
    shapes: {
      png: "",
      made: {
        ...{ left: 0, top: 0, width: 0, height: 0, lockAspectRatio: true, placement: "TwoCell" },
        ...{ name: "Picture 1", altTextDescription: "" },
      },
      addImage(png: string) {
        this.png = png;
        return this.made;
      },
    },
    getUsedRangeOrNullObject() {
      return this.used;
    },
    getRangeByIndexes(...place: number[]) {
      asked.push(place);
      return this.range;
    },
    activate: () => undefined,
  };
  const context = {
    workbook: {
      range,
      tables: {
        items: [{ name: "OwnGrades" }],
        table: {
          range,
          getRange() {
            return this.range;
          },
        },
        getItem() {
          return this.table;
        },
      },
      names: { items: [] },
      worksheets: {
        items: [{ name: "Duties" }, { name: "own grades" }],
        sheet,
        getItem() {
          return this.sheet;
        },
        add(name: string) {
          asked.push([name.length]);
          return this.sheet;
        },
        onChanged: event("changed"),
        onCalculated: event("calculated"),
      },
      onSelectionChanged: event("selection"),
      getSelectedRange() {
        return this.range;
      },
    },
  };
  const mock = new OfficeMockObject({
    context,
    run: async (work: (c: unknown) => unknown) => work(mock.context),
  }) as unknown as {
    context: {
      workbook: {
        worksheets: {
          sheet: {
            range: MockRange;
            tables: { made: { name: string } };
            shapes: { png: string; made: Record<string, unknown> };
          };
        };
      };
    };
  };
  Object.assign(globalThis, { Excel: mock });
  return { asked, handlers, mock };
}

const at = { sheet: "Duties", row: 2, col: 1 };

test("the selection is its place on its sheet", async () => {
  mockExcel();
  expect(await excelPort().selection()).toEqual({ ...at, rows: 2, cols: 2 });
});

test("a read tells numbers, formulas, errors and blanks apart", async () => {
  mockExcel();
  const cells = await excelPort().read({ ...at, rows: 2, cols: 2 });
  expect(cells).toEqual([
    [
      { value: "load", text: "load" },
      { value: 800, text: "800.0", formula: "=BUSH.PRESSURE(1,2,3)" },
    ],
    [
      { value: "#VALUE!", text: "#VALUE!", formula: "=BUSH.PVVALUE(B1,1)", error: { code: "#VALUE!" } },
      { value: null, text: "" },
    ],
  ]);
});

test("whole columns are read as far as the sheet is used", async () => {
  const { asked } = mockExcel();
  await excelPort().read({ ...at, rows: 1048576, cols: 2 });
  expect(asked).toEqual([[2, 1, 18, 2]]);
});

test("a formula is written as one, text never becomes one, and null clears", async () => {
  const { mock } = mockExcel();
  await excelPort().write(at, [
    [{ formula: "=BUSH.SPEED(20,120)" }, "=1+1", "+4", "-5 °C", "@SUM(A1)", "'quoted"],
    [null, "1/2", "TRUE", "2026-11-02", "load [N]", 12.5],
  ]);
  expect(mock.context.workbook.worksheets.sheet.range.formulas).toEqual([
    ["=BUSH.SPEED(20,120)", "'=1+1", "'+4", "'-5 °C", "'@SUM(A1)", "''quoted"],
    ["", "'1/2", "'TRUE", "'2026-11-02", "load [N]", 12.5],
  ]);
});

test("headings are bold, formats go to their cells alone, and columns only widen", async () => {
  const { mock } = mockExcel();
  const { range } = mock.context.workbook.worksheets.sheet;
  await excelPort().write(at, [[{ value: "load [N]", heading: true }], [{ formula: "=A1", format: "0.0##" }], [null]]);
  expect(range.formulas).toEqual([["load [N]"], ["=A1"], [""]]);
  expect(range.numberFormat).toEqual([[null], ["0.0##"], [null]]);
  expect(range.format.font.bold).toBe(true);
  await excelPort().widen(at, [2]);
  expect(range.format.columnWidth).toBe(48);
  await excelPort().widen(at, [20]);
  expect(range.format.columnWidth).toBeGreaterThan(100);
});

test("a new table stands on a new sheet, and names in use get a number", async () => {
  const { asked, mock } = mockExcel();
  const table = await excelPort().addTable("Own grades", [
    ["grade", "PV limit"],
    ["a", 1],
    ["=b", 2],
  ]);
  expect(table).toEqual({
    name: "Owngrades2",
    place: { sheet: "Own grades2", row: 0, col: 0, rows: 3, cols: 2 },
    reference: "Owngrades2[#All]",
  });
  expect(asked).toEqual([["Own grades2".length], [0, 0, 3, 2], [1, 1]]);
  expect(mock.context.workbook.worksheets.sheet.tables.made.name).toBe("Owngrades2");
});

test("a picture lies at the cell with its own size in points, named and told, and goes with the cell", async () => {
  const { mock } = mockExcel();
  const drawn: unknown[] = [];
  const pen = { drawImage: (image: { src: string }, ...place: number[]) => drawn.push([image.src, ...place]) };
  const canvas = { width: 0, height: 0, getContext: () => pen, toDataURL: () => "data:image/png;base64,UE5H" };
  class Image {
    src = "";
    decode = async () => undefined;
  }
  Object.assign(globalThis, { Image, document: { createElement: () => canvas } });
  const words = "The duty runs at 2.5 MPa.";
  await excelPort().addPicture(at, { svg: "<svg/>", width: 320, height: 341, name: "Pressure and speed", words });
  // three of the PNG's pixels for each of the picture's
  expect(drawn).toEqual([["data:image/svg+xml;charset=utf-8,%3Csvg%2F%3E", 0, 0, 960, 1023]]);
  const { png, made } = mock.context.workbook.worksheets.sheet.shapes;
  expect(png).toBe("UE5H");
  // a pixel is 1/96 inch, a point 1/72
  const { left, top, width, height, placement, name, altTextDescription } = made;
  expect([left, top, width, height]).toEqual([48, 30, (320 * 72) / 96, (341 * 72) / 96]);
  expect([placement, name, altTextDescription]).toEqual(["OneCell", "Pressure and speed", words]);
});

test("tables of the workbook come with the name that formulas use", async () => {
  mockExcel();
  expect(await excelPort().tables()).toEqual([
    { name: "OwnGrades", place: { ...at, rows: 2, cols: 2 }, reference: "OwnGrades[#All]" },
  ]);
});

test("a spill is found from its first cell", async () => {
  mockExcel();
  expect(await excelPort().spillOf(at)).toEqual({ ...at, rows: 2, cols: 2 });
});

test("selection, edits and recalculation are watched", async () => {
  const { handlers } = mockExcel();
  excelPort().watch(() => undefined);
  await new Promise((done) => setTimeout(done));
  expect(handlers).toEqual(["selection", "changed", "calculated"]);
});

test("a dark ground of the host is told from a light one", () => {
  expect([isDark("#292929"), isDark("#ffffff"), isDark("#0078d4"), isDark("#fff8dc")]).toEqual([
    true,
    false,
    true,
    false,
  ]);
});
