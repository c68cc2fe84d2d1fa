import { strFromU8, unzipSync } from "fflate";
import type { CellPoint } from "../grid/pictures/keptPictures";

/** A file's pixels in its own unit of length. */
export const emu = 9525;

const read = /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|worksheets\/_rels\/.*\.rels|drawings\/[^/]*\.xml)$/;

/** Of an anchor; four numbers and their tags are never as long, and a file without the end is not searched from each start on. */
const beginning = /<(?:\w+:)?from>[^]{0,500}?<\/(?:\w+:)?from>/g;

/** Where the pictures of each sheet begin, in the order of the sheets: the reader of files tells the cell, not how far into it. */
export function beginningsIn(file: Uint8Array): CellPoint[][] {
  const parts = unzipSync(file, { filter: ({ name }) => read.test(name) });
  const text = (name: string): string => (parts[name] ? strFromU8(parts[name]) : "");
  const sheets = targetsIn(text("xl/_rels/workbook.xml.rels"));
  const ids = [...text("xl/workbook.xml").matchAll(/<(?:\w+:)?sheet\s[^<>]*?\br:id="([^"<]*)"/g)];
  return ids.map(([, id = ""]) => {
    const targets = targetsIn(text(`xl/worksheets/_rels/${lastOf(sheets.get(id))}.rels`));
    const drawing = [...targets.values()].find((target) => /\bdrawings\/drawing/.test(target));
    const anchors = text(`xl/drawings/${lastOf(drawing)}`).match(beginning) ?? [];
    return anchors.map(pointOf);
  });
}

const lastOf = (path = ""): string => path.slice(path.lastIndexOf("/") + 1);

/** What a part refers to, by the id that it has for it. */
const targetsIn = (relations: string): Map<string, string> =>
  new Map(
    [...relations.matchAll(/<(?:\w+:)?Relationship\s[^<>]*>/g)].map(([one]) => [
      /\sId="([^"]*)"/.exec(one)?.[1] ?? "",
      /\sTarget="([^"]*)"/.exec(one)?.[1] ?? "",
    ]),
  );

function pointOf(from: string): CellPoint {
  const number = (name: string): number => Number(new RegExp(`\\b${name}>\\s*(\\d+)`).exec(from)?.[1] ?? 0);
  return {
    row: number("row"),
    rowOffset: Math.round(number("rowOff") / emu),
    column: number("col"),
    columnOffset: Math.round(number("colOff") / emu),
  };
}
