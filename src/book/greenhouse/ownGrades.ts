import { columnName } from "../../port/address";
import type { BookCell, BookSheet, BookTable, Scalar } from "../book";

const sheet = "Grades";
const headingRow = 4;
const spareRows = 4;

/** Invented, and read by the functions through their `grades` argument: any known heading may stand in any order. */
const headings: readonly { readonly heading: string; readonly width: number; readonly format?: string }[] = [
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
  { heading: "wear rate high [mm³/(N·m)]", width: 13, format: "0.0E+0" },
  { heading: "wear rate from", width: 11 },
  { heading: "notes", width: 48 },
];

export const gradeRows: readonly (readonly Scalar[])[] = [
  [
    "Own loft mix",
    "acetal (POM), oil filled",
    60,
    30,
    1.2,
    0.8,
    2.5,
    4000,
    -40,
    80,
    0.003,
    2.5e-6,
    "bush",
    "invented for the demo",
  ],
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
    1.2e-6,
    "bush",
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
    5e-6,
    "flat",
    "invented for the demo",
  ],
];

export const gradeHeadings = headings.map(({ heading }) => heading);
export const gradeWidths = headings.map(({ width }) => width);
const lastColumn = columnName(headings.length - 1);
const lastRow = headingRow + gradeRows.length + spareRows;
const column = (i: number): string => `${columnName(i)}${headingRow + 1}:${columnName(i)}${lastRow}`;
const isWords = (i: number): boolean => typeof gradeRows[0]?.[i] === "string";

/** The table with its heading row and room for more grades. */
export const gradeTable: BookTable = { name: "OwnGrades", sheet, range: `$A$${headingRow}:$${lastColumn}$${lastRow}` };
/** As formulas on any sheet write it. */
export const ownGrades = `${sheet}!${gradeTable.range}`;

export const grades: BookSheet = {
  name: sheet,
  widths: gradeWidths,
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
        "A heading carries its unit in brackets; columns may stand in any order. An empty cell is no data, never a pass; a wear rate of a flat test tells a bush's life only with its clearance.",
      look: "quiet",
    },
    ...Object.fromEntries<BookCell>(
      gradeHeadings.map((value, i) => [`${columnName(i)}${headingRow}`, { value, look: "heading" }]),
    ),
    ...Object.fromEntries<BookCell>(
      gradeRows.flatMap((row, r) => row.map((value, c) => [`${columnName(c)}${headingRow + 1 + r}`, { value }])),
    ),
  },
  areas: headings.map(({ format }, i) => ({ range: column(i), look: isWords(i) ? "words" : "input", format })),
};
