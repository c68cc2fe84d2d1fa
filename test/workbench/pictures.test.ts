import { readXlsx, writeXlsx } from "hucre/xlsx";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { IWorkbookData } from "@univerjs/core";
import { inOrder } from "../../src/workbench/grid/pictures/keptPictures";
import type { KeptPicture } from "../../src/workbench/grid/pictures/keptPictures";
import { beginningsIn } from "../../src/workbench/xlsx/anchors";
import { anchorPictures, filePicture, isChanged, picturesFrom, picturesLeft } from "../../src/workbench/xlsx/pictures";

/** One grey pixel. */
const png = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==";

const picture: KeptPicture = {
  ...{ unitId: "bushcell", subUnitId: "a", drawingId: "one", drawingType: 0, imageSourceType: "BASE64" },
  source: `data:image/png;base64,${png}`,
  sheetTransform: {
    from: { row: 3, rowOffset: 4, column: 2, columnOffset: 0 },
    to: { row: 9, rowOffset: 0, column: 5, columnOffset: 0 },
  },
  transform: { width: 320, height: 150 },
  ...{ name: "Pressure and speed", words: "The duty <runs> at 2.5 MPa." },
};
/** A file of one sheet with these pictures, other parts in the place of some. */
async function saved(pictures: readonly KeptPicture[], others: Readonly<Record<string, Uint8Array>> = {}) {
  const images = await Promise.all(pictures.map(filePicture));
  const parts = unzipSync(await writeXlsx({ sheets: [{ name: "Mine", rows: [["a"]], images }] }));
  anchorPictures(parts, pictures);
  return zipSync({ ...parts, ...others });
}

/** The grid's record of that sheet, as far as places of pictures depend on it: one wide column and one hidden row. */
const record = {
  sheetOrder: ["sheet1"],
  sheets: { sheet1: { columnData: { 3: { w: 200 } }, rowData: { 4: { hd: 1 } } } },
} as unknown as IWorkbookData;
async function opened(file: Uint8Array) {
  const kept = picturesFrom(file, await readXlsx(file), record);
  return { pictures: kept.sheet1 ? inOrder(kept.sheet1) : [], left: picturesLeft(file, kept) };
}

test("a picture is saved where it lies, in its own size, and opens there again with its words", async () => {
  const file = await saved([picture, { ...picture, drawingId: "two", transform: { width: 40, height: 30 } }]);
  const drawing = strFromU8(unzipSync(file)["xl/drawings/drawing1.xml"]!);
  // 914400 EMU to the inch (ECMA-376, part 1, 20.1.2.1, memory) of 96 pixels
  expect(drawing.match(/<xdr:ext [^>]*>/g)).toEqual([
    '<xdr:ext cx="3048000" cy="1428750"/>',
    '<xdr:ext cx="381000" cy="285750"/>',
  ]);
  expect(drawing).toContain("<xdr:row>3</xdr:row><xdr:rowOff>38100</xdr:rowOff>");
  expect(drawing).not.toContain("twoCellAnchor");

  const { pictures, left } = await opened(file);
  expect(left).toBe(0);
  const [first, second] = pictures;
  const { from, to } = first!.sheetTransform;
  expect(from).toEqual({ row: 3, rowOffset: 4, column: 2, columnOffset: 0 });
  // 320 pixels across columns of 88, 200 and 32 of the next; 4 + 150 down rows of 24, the second of them hidden
  expect(to).toEqual({ row: 10, rowOffset: 4 + 150 - 6 * 24, column: 4, columnOffset: 32 });
  const { source, transform, name, words } = picture;
  expect(first).toMatchObject({ subUnitId: "sheet1", source, transform, name, words });
  expect(second!.transform).toEqual({ width: 40, height: 30 });
  expect(second!.drawingId).not.toBe(first!.drawingId);
});

test("pictures that begin in one cell keep how far into it, on each sheet", async () => {
  const into = (rowOffset: number, columnOffset: number): KeptPicture => ({
    ...picture,
    sheetTransform: { ...picture.sheetTransform, from: { row: 3, rowOffset, column: 2, columnOffset } },
  });
  const bySheet = [[into(4, 0), into(11, 30)], [], [into(0, 7)]];
  const sheets = await Promise.all(
    bySheet.map(async (pictures, i) => ({
      name: `S${i}`,
      rows: [["a"]],
      ...(pictures.length > 0 && { images: await Promise.all(pictures.map(filePicture)) }),
    })),
  );
  const parts = unzipSync(await writeXlsx({ sheets }));
  anchorPictures(parts, bySheet.flat());
  const file = zipSync(parts);
  const three = { sheetOrder: ["a", "b", "c"], sheets: { a: {}, b: {}, c: {} } } as unknown as IWorkbookData;
  const kept = picturesFrom(file, await readXlsx(file), three);
  const begins = (id: string) =>
    inOrder(kept[id]!).map(({ sheetTransform: { from } }) => [from.rowOffset, from.columnOffset]);
  expect([begins("a"), kept.b, begins("c")]).toEqual([
    [
      [4, 0],
      [11, 30],
    ],
    undefined,
    [[0, 7]],
  ]);
});

test("parts of a hostile file whose elements never end do not keep the page from opening it", async () => {
  const endless = (start: string) => strToU8(start.repeat(300_000));
  const file = await saved([picture], { "xl/drawings/drawing1.xml": endless("<xdr:from>") });
  expect(beginningsIn(file)).toEqual([[]]);
  expect(beginningsIn(zipSync({ "xl/workbook.xml": endless("<sheet ") }))).toEqual([]);
  expect(beginningsIn(zipSync({ "xl/_rels/workbook.xml.rels": endless("<Relationship ") }))).toEqual([]);
});

test("what a file does not tell of a picture is known", () => {
  expect(isChanged(picture)).toBe(false);
  expect(isChanged({ ...picture, transform: { ...picture.transform, angle: 30 } })).toBe(true);
  expect(isChanged({ ...picture, transform: { ...picture.transform, flipX: true } })).toBe(true);
  expect(isChanged({ ...picture, srcRect: { left: 5 } })).toBe(true);
});

test("a picture that no browser draws, or of too many bytes, is left out and counted", async () => {
  // an enhanced metafile by another name
  const metafile = await opened(await saved([picture], { "xl/media/image1.png": strToU8("\u0001\0\0\0 EMF") }));
  expect([metafile.pictures.length, metafile.left]).toEqual([0, 1]);
  const large = new Uint8Array(5_000_001);
  large.set([0x89, 0x50, 0x4e, 0x47]);
  const heavy = await opened(await saved([picture], { "xl/media/image1.png": large }));
  expect([heavy.pictures.length, heavy.left]).toEqual([0, 1]);
  const header = await opened(await saved([picture], { "xl/media/image2.emf": strToU8("EMF") }));
  expect([header.pictures.length, header.left]).toEqual([1, 1]);
});
