import { columnName } from "../../port/address";
import type { BookCell, BookSheet, BookTable, Scalar } from "../book";

const sheet = "Grades";
const headingRow = 4;
const spareRows = 4;

/** Invented, and read by the functions through their `grades` argument: any known heading may stand in any order. */
const headings: readonly { readonly heading: string; readonly width: number }[] = [
  { heading: "grade", width: 18 },
  { heading: "family", width: 40 },
  { heading: "static pressure limit [MPa]", width: 13 },
  { heading: "running pressure limit [MPa]", width: 13 },
  { heading: "speed limit turning [m/s]", width: 14 },
  { heading: "speed limit swinging [m/s]", width: 15 },
  { heading: "speed limit linear [m/s]", width: 14 },
  { heading: "PV limit [psi*ft/min]", width: 13 },
  { heading: "lowest temperature [°C]", width: 14 },
  { heading: "highest temperature [°C]", width: 14 },
  { heading: "swelling saturated [ratio]", width: 13 },
  { heading: "notes", width: 48 },
];

const rows: readonly (readonly Scalar[])[] = [
  ["Own loft mix", "acetal (POM), oil filled", 60, 30, 1.2, 0.8, 2.5, 4000, -40, 80, 0.003, "invented for the demo"],
  [
    "Own gutter mix",
    "polyethylene (UHMWPE), glass beads",
    28,
    12,
    0.9,
    0.6,
    2,
    2600,
    -100,
    70,
    0.0002,
    "invented for the demo",
  ],
  [
    "Own boiler mix",
    "polyphenylene sulphide, graphite and PTFE",
    85,
    45,
    1.5,
    1,
    2,
    9500,
    -40,
    180,
    0.0002,
    "invented for the demo",
  ],
];

const lastColumn = columnName(headings.length - 1);
const swelling = columnName(headings.findIndex(({ heading }) => heading.startsWith("swelling")));
const lastRow = headingRow + rows.length + spareRows;
const range = (top: number): string => `A${top}:${lastColumn}${lastRow}`;

/** The table with its heading row and room for more grades. */
export const gradeTable: BookTable = { name: "OwnGrades", sheet, range: `$A$${headingRow}:$${lastColumn}$${lastRow}` };
/** As formulas on any sheet write it. */
export const ownGrades = `${sheet}!${gradeTable.range}`;

export const grades: BookSheet = {
  name: sheet,
  widths: headings.map(({ width }) => width),
  frozen: { rows: headingRow, columns: 1 },
  heights: { 1: 1.3, [headingRow]: 3 },
  cells: {
    A1: { value: "Grades of your own", look: "title" },
    A2: {
      value:
        "Invented rows: type over them with a supplier's figures. The formulas on Duties and Shortlist read this table before the built-in library.",
      look: "quiet",
    },
    A3: {
      value:
        "A heading carries its unit in brackets; columns may stand in any order. An empty cell is no data, never a pass.",
      look: "quiet",
    },
    ...Object.fromEntries<BookCell>(
      headings.map(({ heading }, i) => [`${columnName(i)}${headingRow}`, { value: heading, look: "heading" }]),
    ),
    ...Object.fromEntries<BookCell>(
      rows.flatMap((row, r) => row.map((value, c) => [`${columnName(c)}${headingRow + 1 + r}`, { value }])),
    ),
  },
  areas: [
    { range: range(headingRow + 1), look: "input" },
    { range: `${swelling}${headingRow + 1}:${swelling}${lastRow}`, look: "input", format: "0.00 %" },
    { range: `A${headingRow + 1}:B${lastRow}`, look: "words" },
    { range: `${lastColumn}${headingRow + 1}:${lastColumn}${lastRow}`, look: "words" },
  ],
};
