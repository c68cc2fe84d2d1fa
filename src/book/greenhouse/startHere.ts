import type { BookCell, BookSheet } from "../book";

const tries: readonly { readonly formula: string; readonly text: string; readonly format?: string }[] = [
  {
    formula: "=BUSH.PVVALUE(BUSH.PRESSURE(800,20,15),BUSH.SPEED(20,120))",
    text: "800 N, bush 20 × 15 mm, 120 rpm: MPa·m/s",
    format: "0.000",
  },
  {
    formula: '=BUSH.PRESSURE("180 lbf","0.75 in",15)',
    text: "Text keeps its unit, plain numbers are metric",
    format: "0.00",
  },
  {
    formula: '=BUSH.VERDICT("Demo Tansy",2.67,0.1,"5 to 60")',
    text: "Does the grade hold? MPa, m/s, °C",
  },
];

const cautions: readonly string[] = [
  "Preliminary sizing: figures of grades are typical, not guaranteed. Test in the application.",
  "Follow local codes. Where failure can hurt someone, a licensed engineer decides.",
  "The duties and the grades named Demo or Own are invented. Generic grades carry typical published values with their sources.",
  "Missing data is told as no data, never as a pass.",
];

const firstTry = 8;
const failing = firstTry + tries.length;
const cautionTop = failing + 3;
const sheetsTop = cautionTop + cautions.length + 2;

const sheets: readonly (readonly [string, string])[] = [
  ["Duties", "the bearings of a rooftop greenhouse, each judged by every criterion: verdict, use, life"],
  ["Shortlist", "grades ranked for one of those duties, each with its reason"],
  ["Grades", "a table of grades of your own, which the formulas use beside the built-in library"],
  [
    "Fit",
    "clearance and grip of a pressed bush from assembly through cold, hot and moist and back, with its press fit",
  ],
  ["Quotes", "suppliers' offers for one duty, and which to buy"],
  ["Decision", "why that one, what would turn it round, what to ask, and the ranking of all offers"],
  ["Worked example", "a calculation of your choice step by step, for a class"],
];

const column = (top: number, texts: readonly string[], look: BookCell["look"]): [string, BookCell][] =>
  texts.map((value, i) => [`B${top + i}`, { value, look }]);

export const startHere: BookSheet = {
  name: "Start here",
  widths: [1, 64, 15, 44],
  heights: { 1: 1.6 },
  plain: true,
  cells: {
    B1: { value: "Bushcell: plain bearings in a sheet", look: "title" },
    B3: {
      value:
        "Functions that size bushes, flanged bushes and thrust washers of self-lubricating polymer: pressure, speed, PV,",
    },
    B4: {
      value:
        "limits of a grade, verdicts, shortlists. Type = and BUSH. into any cell, and the sheet proposes them with their arguments.",
    },
    B5: {
      value:
        "Select a cell with a formula: the strip beside the sheet says what its functions do, or why it is an error. F6 goes round the parts.",
      look: "quiet",
    },
    B7: { value: "Formulas to try", look: "heading" },
    C7: { value: "Answer", look: "heading" },
    D7: { value: "What it says", look: "heading" },
    ...Object.fromEntries(
      tries.flatMap(({ formula, text, format }, i): [string, BookCell][] => [
        [`B${firstTry + i}`, { value: formula, look: "formula" }],
        [`C${firstTry + i}`, { formula, look: "words", format }],
        [`D${firstTry + i}`, { value: text, look: "quiet" }],
      ]),
    ),
    [`B${failing}`]: { value: "=BUSH.PRESSURE(800,-20,15)", look: "formula" },
    [`C${failing}`]: { formula: "=BUSH.PRESSURE(800,-20,15)", look: "words" },
    [`D${failing}`]: { value: "A mistake: select it and read beside the sheet", look: "quiet" },
    [`B${cautionTop - 1}`]: { value: "Cautions", look: "heading" },
    ...Object.fromEntries(column(cautionTop, cautions, "caution")),
    [`B${sheetsTop - 1}`]: { value: "The sheets", look: "heading" },
    ...Object.fromEntries(
      column(
        sheetsTop,
        sheets.map(([name, text]) => `${name}: ${text}`),
        undefined,
      ),
    ),
  },
  areas: [
    { range: `B${cautionTop - 1}:D${cautionTop - 1}`, look: "heading" },
    { range: `B${cautionTop}:D${cautionTop + cautions.length - 1}`, look: "caution" },
    { range: `B${sheetsTop - 1}:D${sheetsTop - 1}`, look: "heading" },
  ],
  merged: cautions.map((_, i) => `B${cautionTop + i}:D${cautionTop + i}`),
  marks: [{ range: `C${firstTry}:C${failing}`, when: `=ISERROR(C${firstTry})`, as: "fails" }],
};
