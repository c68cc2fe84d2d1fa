import { addressOf, areaText } from "../../port/address";
import { quotedName } from "../../port/references";
import type { Place } from "../../port/sheet";
import type { BookCell, BookSheet } from "../book";
import { cautionLines, titled } from "../greenhouse/parts";

/** What became of a formula of the add-in. */
export interface Entry {
  readonly place: Place;
  readonly formula: string;
  readonly became: "native" | "value";
  readonly note: string;
}

const headings = ["sheet", "cells", "formula as it was", "became", "now", "note"];
const top = 6;

/** Which formula became what, and whether it answers now. */
export function listSheet(name: string, entries: readonly Entry[]): BookSheet {
  const count = (became: Entry["became"]): number => entries.filter((one) => one.became === became).length;
  const last = top + entries.length;
  const cautions = cautionLines(last + 2, "F");
  const rows = entries.map(({ place, formula, became, note }): BookCell[] => [
    { value: place.sheet },
    { value: areaText(place) },
    { value: formula.slice(1), look: "formula" },
    { value: became === "native" ? "native formula" : "value", look: "answer" },
    { value: "answers", formula: nowFormula(place), look: "answer" },
    { value: note, look: "text" },
  ]);
  return {
    name,
    widths: [16, 12, 60, 15, 12, 60],
    frozen: { rows: top, columns: 0 },
    cells: {
      ...titled(
        "Handed over without the add-in",
        `${count("native")} formulas calculate in the sheet's own formulas, worked on the sheet of workings; ${count("value")} are values as they were.`,
      ),
      A3: {
        value:
          "A value, and a formula that holds for some figure alone, goes to #N/A once a cell that it came from changes: then the add-in is needed again.",
        look: "quiet",
      },
      A4: { value: "Anything in a cell without an entry here is as it was typed.", look: "quiet" },
      ...Object.fromEntries(headings.map((value, c) => [addressOf(top - 1, c), { value, look: "heading" } as const])),
      ...Object.fromEntries(rows.flatMap((line, r) => line.map((cell, c) => [addressOf(top + r, c), cell] as const))),
      ...cautions.cells,
    },
    merged: cautions.merged,
    marks: [{ range: `E${top + 1}:E${last}`, when: `=E${top + 1}<>"answers"`, as: "unknown" }],
  };
}

const nowFormula = (place: Place): string => {
  const cells = `${quotedName(place.sheet)}!${areaText(place)}`;
  return place.rows * place.cols === 1
    ? `=IF(ISERROR(${cells}),"#N/A","answers")`
    : `=IF(SUMPRODUCT(--ISERROR(${cells}))=0,"answers","some #N/A")`;
};

export const workingsSheet = (name: string, cells: BookSheet["cells"]): BookSheet => ({
  name,
  widths: [44, 10, 18, 18, 14, 60],
  frozen: { rows: 1, columns: 0 },
  cells,
});

/** What was typed when the workbook was handed over: the workings compare with it. */
export const valuesSheet = (name: string, cells: BookSheet["cells"]): BookSheet => ({
  name,
  widths: [24, 14],
  cells: {
    ...titled("What was typed when this was handed over", "Beside each place: whether it still holds the same."),
    ...cells,
  },
});
