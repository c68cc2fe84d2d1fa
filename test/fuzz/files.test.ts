import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { readAsTyped } from "../../src/files/asTyped";
import { knows } from "../../src/files/kinds";
import { Unreadable } from "../../src/files/list";
import { readFile } from "../../src/files/readFile";

/** Files that are none, half of one, or one with bytes gone bad: rows of cells come out, or a sentence that says why not. */
const cells = fc.oneof(
  fc.constantFrom(
    "",
    " ".repeat(3000),
    '"',
    '"a;b"',
    "1,5",
    "-0",
    "Infinity",
    "1e999",
    "=1+1",
    "\u0000",
    "part",
    "price",
  ),
  fc.string({ unit: "binary", maxLength: 12 }),
);
const text = fc
  .tuple(
    fc.constantFrom(";", ",", "\t", "|"),
    fc.constantFrom("\n", "\r\n", "\r"),
    fc.array(fc.array(cells, { maxLength: 5 }), { maxLength: 6 }),
  )
  .map(([mark, end, rows]) => rows.map((row) => row.join(mark)).join(end));
const bytes = fc.oneof(
  fc.uint8Array({ maxLength: 200 }),
  text.map((written) => strToU8(written)),
  text.map((written) => new Uint8Array([0xff, 0xfe, ...Buffer.from(written, "utf16le")])),
);

const sheet = `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
<row r="1"><c r="A1" t="inlineStr"><is><t>part</t></is></c><c r="B1" t="inlineStr"><is><t>price</t></is></c></row>
<row r="2"><c r="A2" t="inlineStr"><is><t>A-1</t></is></c><c r="B2"><v>1.25</v></c></row></sheetData></worksheet>`;
const relations = (type: string, target: string) =>
  `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${type}" Target="${target}"/></Relationships>`;
const whole = zipSync({
  "[Content_Types].xml": strToU8(
    '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>',
  ),
  "_rels/.rels": strToU8(relations("officeDocument", "xl/workbook.xml")),
  "xl/_rels/workbook.xml.rels": strToU8(relations("worksheet", "worksheets/sheet1.xml")),
  "xl/workbook.xml": strToU8(
    '<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Offers" sheetId="1" r:id="rId1"/></sheets></workbook>',
  ),
  "xl/worksheets/sheet1.xml": strToU8(sheet),
});
const damaged = fc
  .tuple(fc.nat(whole.length - 1), fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 4 }))
  .map(([cut, spots]) => {
    const copy = Uint8Array.from(whole);
    for (const [at, byte] of spots) copy[at] = byte;
    return cut % 3 === 0 ? copy.slice(0, cut) : copy;
  });

const isCell = (cell: unknown): boolean =>
  cell === null || typeof cell === "string" || (typeof cell === "number" && Number.isFinite(cell));

/** What is wrong with a reading; nothing where it is cells in rows, or a refusal in a sentence. */
function faultOf(rows: unknown, error: unknown): string | undefined {
  if (error !== undefined)
    return error instanceof Unreadable && /^[A-Z"]/.test(error.message) ? undefined : String(error);
  return (rows as unknown[][]).every((row) => row.every(isCell)) ? undefined : "a cell that is none";
}

const run = { seed: 20261126, numRuns: 600 };
const read = (data: Uint8Array) =>
  readFile(new Blob([Uint8Array.from(data)]), knows.offers, { report: () => {}, signal: new AbortController().signal });

test("the whole workbook is read", async () => {
  expect((await read(whole)).rows).toEqual([
    ["part", "price"],
    ["A-1", 1.25],
  ]);
});

test("a text, as the command line reads it", () => {
  fc.assert(
    fc.property(bytes, (data) => {
      let outcome: [unknown, unknown];
      try {
        outcome = [readAsTyped(data).rows, undefined];
      } catch (error) {
        outcome = [undefined, error];
      }
      expect(faultOf(...outcome)).toBeUndefined();
    }),
    run,
  );
});

test.each([
  ["a text", bytes, run.numRuns],
  ["a workbook", damaged, 150],
])("%s, as the pane reads it", async (_, files, numRuns) => {
  await fc.assert(
    fc.asyncProperty(files, async (data) => {
      const outcome = await read(data).then(
        ({ rows }): [unknown, unknown] => [rows, undefined],
        (error: unknown): [unknown, unknown] => [undefined, error],
      );
      expect(faultOf(...outcome)).toBeUndefined();
    }),
    { ...run, numRuns },
  );
});
