import { strToU8, zipSync } from "fflate";
import { stored, typedFormula } from "../../src/book/storedFormula";
import { checkFile } from "../../src/workbench/xlsx/left";
import { listWords } from "../../src/workbench/xlsx/rules";
import { checkCells, widest } from "../../src/workbench/xlsx/size";
import { tornParts } from "../../src/workbench/xlsx/torn";

const workbook = { "xl/workbook.xml": strToU8("<workbook/>") };
const refusal = (data: Uint8Array): string => {
  try {
    checkFile("a.xlsx", data);
    return "";
  } catch (error) {
    return (error as Error).message;
  }
};

test("a file is opened or refused with its reason", () => {
  expect(refusal(zipSync(workbook))).toBe("");
  expect(refusal(strToU8("grade;price"))).toBe("a.xlsx is no .xlsx file");
  expect(refusal(zipSync({ "a.txt": strToU8("a") }))).toBe("a.xlsx is no .xlsx file");
  expect(refusal(zipSync({ ...workbook, "xl/vbaProject.bin": strToU8("x") }))).toMatch(/holds macros/);
  expect(refusal(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1]))).toMatch(/encrypted/);
  expect(refusal(new Uint8Array(50e6))).toBe("a.xlsx has 50 MB: files of up to 20 MB can be opened");
  expect(refusal(zipSync(workbook).slice(0, 40))).toMatch(/damaged/);
});

test("a file that unpacks to far more than it weighs is refused before it is unpacked", () => {
  const bomb = zipSync({ "xl/worksheets/sheet1.xml": strToU8("x"), ...workbook });
  // the first entry of the central directory says how much it unpacks to (PKWARE APPNOTE 4.3.12, memory)
  const entry = bomb.findIndex((_, i) => [0x50, 0x4b, 0x01, 0x02].every((byte, k) => bomb[i + k] === byte));
  new DataView(bomb.buffer).setUint32(entry + 24, 250e6, true);
  expect(refusal(bomb)).toBe("a.xlsx unpacks to 250 MB in 2 parts: that is too much to open");
});

test("a part that ends before it is closed is named, since a reader would leave out what is missing in silence", () => {
  const torn = (sheet: string, strings: string) =>
    tornParts(zipSync({ "xl/worksheets/sheet1.xml": strToU8(sheet), "xl/sharedStrings.xml": strToU8(strings) }));
  const head = '<?xml version="1.0"?>\n<!-- <a> -->\n<!DOCTYPE x [<!ENTITY b "c">]><worksheet xmlns="m"><sheetData>';
  const cell = "<row><c><v>1</v></c></row>";
  expect(torn(`${head}${cell}</sheetData></worksheet> \n<!-- end -->`, '<x:sst count="0"/>')).toEqual([]);
  expect(torn(`${head}${cell}<c/>`, "<sst><si>")).toEqual(["xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"]);
  expect(torn("", "<sst></sst>")).toEqual(["xl/worksheets/sheet1.xml"]);
});

test("more cells than the sheet bears are refused", () => {
  const lines = Array.from({ length: 100_000 }, () => [1, 2]);
  expect(() => checkCells("a.csv", lines)).not.toThrow();
  expect(() => checkCells("a.csv", [...lines, [3]])).toThrow(
    "a.csv has 200001 cells: at most 200000 can be opened, so split it",
  );
  expect(widest([[1], [1, 2, 3], []])).toBe(3);
});

test("a list is told from a workbook that bears its name", () => {
  expect(checkFile("list.csv", strToU8("a,b"))).toBe("text");
  expect(checkFile("list.csv", zipSync(workbook))).toBe("workbook");
});

test("a formula is stored as Excel stores an add-in's, and comes back as it was typed, in whatever case", () => {
  const formula = '=IF(A1="BUSH.PV(",BUSH.PRESSURE(Duties!B2,20,15),SUM(C1#))';
  const file = 'IF(A1="BUSH.PV(",_xldudf_BUSH_PRESSURE(Duties!B2,20,15),SUM(_xlfn.ANCHORARRAY(C1)))';
  expect(stored(formula)).toBe(file);
  expect(typedFormula(file)).toBe(formula);
  expect(typedFormula("_xldudf_bush_pressure(1,2,3)")).toBe("=BUSH.PRESSURE(1,2,3)");
});

test("the words of a list, as the grid keeps them or as a file does", () => {
  expect(listWords('["sleeve","washer"]')).toEqual(["sleeve", "washer"]);
  expect(listWords("sleeve,washer")).toEqual(["sleeve", "washer"]);
  expect(listWords('["a,b"]')).toBeUndefined();
  expect(listWords("='Other'!A1:A9")).toBeUndefined();
});
