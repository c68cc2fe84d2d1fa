import { unzipSync } from "fflate";
import type { Workbook } from "hucre/xlsx";

const mostBytes = 20e6;
const mostUnpacked = 200e6;
const mostParts = 5000;
const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`;

/** Which kind of file it is, or a sentence why it is not opened at all; nothing of it is unpacked for that. */
export function checkFile(name: string, data: Uint8Array): "text" | "workbook" {
  const starts = (...bytes: readonly number[]): boolean => bytes.every((byte, i) => data[i] === byte);
  // a workbook may bear the name of a list
  const isText = /\.(csv|tsv|txt)$/i.test(name) && !starts(0x50, 0x4b, 0x03, 0x04);
  if (data.length > mostBytes)
    throw new Error(`${name} has ${megabytes(data.length)}: files of up to ${megabytes(mostBytes)} can be opened`);
  if (isText) return "text";
  if (starts(0xd0, 0xcf, 0x11, 0xe0))
    throw new Error(`${name} is encrypted, or an old .xls file: save it as .xlsx without a password first`);
  if (!starts(0x50, 0x4b)) throw new Error(`${name} is no .xlsx file`);
  const parts = partsOf(name, data);
  const unpacked = parts.reduce((sum, part) => sum + part.size, 0);
  if (unpacked > mostUnpacked || parts.length > mostParts)
    throw new Error(`${name} unpacks to ${megabytes(unpacked)} in ${parts.length} parts: that is too much to open`);
  if (parts.some((part) => /vbaProject\.bin$/i.test(part.name)))
    throw new Error(`${name} holds macros: save it as .xlsx without them first`);
  if (!parts.some((part) => part.name === "xl/workbook.xml")) throw new Error(`${name} is no .xlsx file`);
  return "workbook";
}

function partsOf(name: string, data: Uint8Array): { name: string; size: number }[] {
  const found: { name: string; size: number }[] = [];
  try {
    unzipSync(data, {
      filter: (part) => {
        found.push({ name: part.name, size: part.originalSize });
        return false;
      },
    });
  } catch {
    throw new Error(`${name} is damaged: it cannot be unpacked`);
  }
  return found;
}

/** What of a file the sheet cannot hold, in words, counted. */
export function leftOut(data: Uint8Array, book: Workbook, pictures: number): string[] {
  const parts = partsOf("", data);
  const count = (pattern: RegExp): number => parts.filter(({ name }) => pattern.test(name)).length;
  const cells = book.sheets.flatMap(({ cells: own }) => [...(own?.values() ?? [])]);
  const counts: readonly (readonly [number, string])[] = [
    [cells.filter(({ comment }) => comment).length, "comments"],
    [pictures, "pictures of another kind, in headers or grounds, or beyond what can be kept"],
    [count(/^xl\/charts\/chart\d+\.xml$/), "charts"],
    [count(/^xl\/pivotTables\/[^/]+\.xml$/), "pivot tables"],
    [count(/^xl\/externalLinks\/[^/]+\.xml$/), "links to other files"],
    [cells.filter(({ richText }) => richText).length, "cells with several fonts, which keep their text"],
    [cells.filter(({ hyperlink }) => hyperlink).length, "links, which keep their text"],
    [
      book.sheets.reduce((sum, { tables }) => sum + (tables?.length ?? 0), 0),
      "tables: formulas that name their columns show #NAME?",
    ],
    [book.sheets.filter(({ autoFilter }) => autoFilter).length, "filters, whose rows are all there"],
    [
      book.sheets.flatMap(({ conditionalRules = [] }) => conditionalRules).filter(({ type }) => type !== "expression")
        .length,
      "conditional formats that are not by formula",
    ],
    [
      book.sheets.flatMap(({ dataValidations = [] }) => dataValidations).filter(({ type }) => type !== "list").length,
      "checks of typed values that are not lists",
    ],
    [
      cells.filter(({ formula }) => formula && /ANCHORARRAY/i.test(formula)).length,
      "formulas that name a whole spill (A1#) and show #NAME?",
    ],
  ];
  return counts.flatMap(([found, what]) => (found > 0 ? [`${found} ${what}`] : []));
}
