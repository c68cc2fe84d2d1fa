import { unzipSync } from "fflate";
import type { Sheet, Workbook } from "hucre/xlsx";
import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import { changePart } from "../../book/fileParts";
import type { Parts } from "../../book/fileParts";
import { present } from "../../core/present";
import { bytesOf, drawPng } from "../../port/png";
import type { CellPoint, KeptPicture, KeptPictures } from "../grid/pictures/keptPictures";
import { beginningsIn, emu } from "./anchors";

/** What a record can hold and still be kept after each change; bytes. */
const most = 5e6;

type SheetImage = NonNullable<Sheet["images"]>[number];
type FileKind = SheetImage["type"];
/** How the bytes of a picture begin that both a browser draws and a file holds. */
const beginnings: Readonly<Partial<Record<FileKind, string>>> = {
  png: "\u0089PNG",
  jpeg: "\u00ff\u00d8\u00ff",
  gif: "GIF8",
};

/** A picture for a file; what a file cannot hold as it is becomes a PNG. */
export async function filePicture(picture: KeptPicture): Promise<SheetImage> {
  const { source, sheetTransform, transform, name, words } = picture;
  const { row, column: col } = sheetTransform.from;
  const width = Math.round(transform?.width ?? 0);
  const height = Math.round(transform?.height ?? 0);
  const [, kind, base64] = /^data:image\/(png|jpeg|gif);base64,(.*)$/.exec(source) ?? [];
  const data = bytesOf(base64 ?? (await drawPng(source, width, height)));
  return {
    data,
    type: (kind as FileKind | undefined) ?? "png",
    anchor: { from: { row, col } },
    width,
    height,
    ...(name && { title: name }),
    ...(words && { altText: words }),
  };
}

/** What no file is told of a picture: it is upright and whole there. */
export const isChanged = ({ transform = {}, srcRect }: KeptPicture): boolean =>
  Boolean(transform.angle ?? 0) || Boolean(transform.flipX) || Boolean(transform.flipY) || Boolean(srcRect);

/**
 * The file's writer stretches pictures between two cells. Here each gets the point where it begins and its own size; in the
 * order in which they were handed over.
 */
export function anchorPictures(parts: Parts, pictures: readonly KeptPicture[]): void {
  let count = 0;
  const drawings = Object.keys(parts).filter((name) => /^xl\/drawings\/drawing\d+\.xml$/.test(name));
  const numberIn = (name: string): number => Number(/\d+/.exec(name)?.[0]);
  for (const name of drawings.sort((a, b) => numberIn(a) - numberIn(b)))
    changePart(parts, name, (text) =>
      text.replace(
        /<xdr:twoCellAnchor>.*?<\/xdr:from><xdr:to>.*?<\/xdr:to>(.*?)<\/xdr:twoCellAnchor>/gs,
        (_, rest: string) => {
          const { row, rowOffset, column, columnOffset } = present(pictures[count++]).sheetTransform.from;
          const from = `<xdr:col>${column}</xdr:col><xdr:colOff>${Math.round(columnOffset * emu)}</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>${Math.round(rowOffset * emu)}</xdr:rowOff>`;
          const size = /<a:ext (cx="\d+" cy="\d+")\/>/.exec(rest)?.[1];
          return `<xdr:oneCellAnchor><xdr:from>${from}</xdr:from><xdr:ext ${size}/>${rest}</xdr:oneCellAnchor>`;
        },
      ),
    );
}

/** The pictures of a file that are drawn here, as the grid keeps them. */
export function picturesFrom(file: Uint8Array, book: Workbook, { sheetOrder, sheets }: IWorkbookData): KeptPictures {
  const anchors = beginningsIn(file);
  let room = most;
  const fits = ({ data }: SheetImage): boolean => data.length <= room && (room -= data.length) >= 0;
  return Object.fromEntries(
    sheetOrder.flatMap((id, i) => {
      const drawn = (book.sheets[i]?.images ?? []).filter((image) => addressOf(image.data) && fits(image));
      const points = [...(anchors[i] ?? [])];
      const kept = drawn.map((image, k) =>
        keptPicture(image, takePoint(points, image), sheets[id] ?? {}, `${id}-${k + 1}`, id),
      );
      const data = Object.fromEntries(kept.map((one) => [one.drawingId, one]));
      return kept.length > 0 ? [[id, { data, order: Object.keys(data) }]] : [];
    }),
  );
}

/** How many pictures of a file are not among those that are kept. An SVG is there once more as what stands in for it. */
export function picturesLeft(file: Uint8Array, kept: KeptPictures): number {
  const media = unzipSync(file, { filter: ({ name }) => /^xl\/media\//.test(name) && !name.endsWith(".svg") });
  const sources = new Set(Object.values(kept).flatMap(({ data }) => Object.values(data).map(({ source }) => source)));
  return Object.values(media).filter((data) => {
    const address = addressOf(data);
    return !address || !sources.has(address);
  }).length;
}

/** Where a picture begins; several that begin in one cell come in the file's order. */
function takePoint(points: CellPoint[], { anchor }: SheetImage): CellPoint {
  const { row, col: column } = anchor.from;
  const i = points.findIndex((point) => point.row === row && point.column === column);
  const [point] = i < 0 ? [] : points.splice(i, 1);
  return point ?? { row, rowOffset: 0, column, columnOffset: 0 };
}

function keptPicture(
  image: SheetImage,
  from: CellPoint,
  sheet: Partial<IWorksheetData>,
  drawingId: string,
  subUnitId: string,
): KeptPicture {
  const { row, column } = from;
  const { width, height, anchor, title, altText } = image;
  const end = anchor.to ?? { row: row + 1, col: column + 1 };
  const across = width ?? distance(column, end.col, (i) => columnWidth(sheet, i));
  const down = height ?? distance(row, end.row, (i) => rowHeight(sheet, i));
  const [toColumn, columnOffset] = reached(column, from.columnOffset + across, (i) => columnWidth(sheet, i));
  const [toRow, rowOffset] = reached(row, from.rowOffset + down, (i) => rowHeight(sheet, i));
  return {
    unitId: "bushcell",
    subUnitId,
    drawingId,
    drawingType: 0,
    imageSourceType: "BASE64",
    source: present(addressOf(image.data)),
    sheetTransform: { from, to: { row: toRow, rowOffset, column: toColumn, columnOffset } },
    transform: { width: across, height: down },
    ...(title && { name: title }),
    ...(altText && { words: altText }),
  };
}

/** The address that carries a picture; undefined where it is of a kind that not every browser draws, whatever its name says. */
function addressOf(data: Uint8Array): string | undefined {
  const text = Array.from(data.subarray(0, 4), (byte) => String.fromCharCode(byte)).join("");
  const [kind] = Object.entries(beginnings).find(([, beginning]) => text.startsWith(beginning)) ?? [];
  return kind && `data:image/${kind};base64,${base64Of(data)}`;
}

function base64Of(data: Uint8Array): string {
  let text = "";
  for (const byte of data) text += String.fromCharCode(byte);
  return btoa(text);
}

const usual = { column: 88, row: 24 };
type Sizes = Readonly<Record<number, { w?: number; h?: number; hd?: number } | undefined>>;
const columnWidth = ({ columnData }: Partial<IWorksheetData>, i: number): number =>
  sizeOf((columnData as Sizes | undefined)?.[i], "w") ?? usual.column;
const rowHeight = ({ rowData }: Partial<IWorksheetData>, i: number): number =>
  sizeOf((rowData as Sizes | undefined)?.[i], "h") ?? usual.row;
const sizeOf = (one: Sizes[number], key: "w" | "h"): number | undefined => (one?.hd ? 0 : one?.[key]);

const distance = (from: number, to: number, sizeAt: (i: number) => number): number =>
  Array.from({ length: Math.max(0, to - from) }, (_, i) => sizeAt(from + i)).reduce((sum, size) => sum + size, 0);

/** The row or column in which so many pixels end that begin with another one, and how far into it. */
function reached(from: number, pixels: number, sizeAt: (i: number) => number): [at: number, offset: number] {
  let at = from;
  let left = pixels;
  // far beyond what a picture covers: every row in between may be hidden
  while (left > sizeAt(at) && at - from < 10_000) left -= sizeAt(at++);
  return [at, left];
}
