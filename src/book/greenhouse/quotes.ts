import given from "../../../data/greenhouse/quotes.json";
import { fieldHeading } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { columnName } from "../../port/address";
import type { BookCell, BookSheet, Scalar } from "../book";
import { marksBy } from "./duties";
import { dutyRows } from "./dutyRows";
import { ownGrades } from "./ownGrades";
import { across, cautionLines, titled } from "./parts";
import { present } from "../../core/present";

const [first, ...others] = given.rows as readonly (readonly (Scalar | null)[])[];

/** The invented quotes as they came: sizes in two systems, prices per piece and per hundred, one without a price. */
export const quoteHeadings = first as readonly string[];
export const quoteRows = others;

const duty = { ...present(dutyRows.find(({ id }) => id === given.duty)), ...given.running };
// in the order in which their headings suit the columns of the offers below
const asked = [
  ...(["duty", "shaft", "temperature", "load", "bore", "length", "motion", "rpm", "hours", "dirt"] as const),
  ...(["allowance", "piecesAYear", "labour", "downtime"] as const),
] satisfies readonly FieldKey[];
const lastDuty = columnName(asked.length - 1);

/** The duty of every offer, headings in row `top`; with the sheet's name for formulas elsewhere. */
const dutyBlock = (top: number) => ({
  cells: {
    ...across(
      asked.map((_, i) => columnName(i)),
      top,
      asked.map((key) => fieldHeading(key, "metric")),
      "heading",
    ),
    ...Object.fromEntries(
      asked.flatMap((key, i): [string, BookCell][] => {
        const value = duty[key];
        return value === undefined
          ? []
          : [[`${columnName(i)}${top + 1}`, { value, look: typeof value === "number" ? "input" : "phrase" }]];
      }),
    ),
  } satisfies BookSheet["cells"],
  range: `$A$${top}:$${lastDuty}$${top + 1}`,
});

export const story = `For the duty: ${String(duty.duty)}. Each offer is judged with its own sizes and costed with labour and downtime of its changes.`;

const quotesTop = 12;
const room = 200;
const quotesLast = quotesTop + quoteRows.length + room;
const lastQuote = columnName(quoteHeadings.length - 1);
const offered = `$A$${quotesTop}:$${lastQuote}$${quotesLast}`;
const ofDuty = dutyBlock(4);

const arguments_ = (offers: string, duties: string, grades = ""): string =>
  `${offers},${duties},""${grades === "" ? "" : `,${grades}`}`;
const onSheet = arguments_(offered, ofDuty.range, ownGrades);
/** The first lines of DECISION: what to buy, why, at what price. */
const answerLines = 3;
const answerTop = 7;

export const quotes: BookSheet = {
  name: "Quotes",
  // all of them stand beside the pane at 1440 px
  widths: [8.2, 8.5, 12.5, 7, 7, 7, 8.4, 5, 8, 6, 9.7, 7.8, 6.8, 9.9, 4.4, 9.7],
  frozen: { rows: 1, columns: 0 },
  heights: { 1: 1.6, 4: 3, 5: 3, [quotesTop]: 3 },
  growing: [`B${answerTop}:B${answerTop + answerLines - 1}`],
  cells: {
    ...titled("Which offer to buy?", story),
    A3: { value: "The duty: type over it. All amounts count in the currency of the offers.", look: "quiet" },
    ...ofDuty.cells,
    ...Object.fromEntries(
      Array.from({ length: answerLines }, (_, i): [string, BookCell][] => [
        [`A${answerTop + i}`, { formula: `=INDEX(BUSH.DECISION(${onSheet}),${i + 2},1)`, look: "label" }],
        [`B${answerTop + i}`, { formula: `=INDEX(BUSH.DECISION(${onSheet}),${i + 2},2)`, look: "text" }],
      ]).flat(),
    ),
    [`A${quotesTop - 1}`]: {
      value: `Offers as they came, invented: type or paste over them, or add up to ${room} below. The sheet Decision says the rest.`,
      look: "quiet",
    },
    ...across(
      quoteHeadings.map((_, i) => columnName(i)),
      quotesTop,
      quoteHeadings,
      "heading",
    ),
    ...Object.fromEntries(
      quoteRows.flatMap((row, r) =>
        row.flatMap((value, c): [string, BookCell][] =>
          value === null ? [] : [[`${columnName(c)}${quotesTop + 1 + r}`, { value }]],
        ),
      ),
    ),
  },
  merged: Array.from({ length: answerLines }, (_, i) => `B${answerTop + i}:P${answerTop + i}`),
  areas: [
    { range: `A${quotesTop + 1}:C${quotesLast}`, look: "words" },
    { range: `D${quotesTop + 1}:${lastQuote}${quotesLast}`, look: "input" },
  ],
};

/** Of QUOTES' columns, in characters. */
const rankingWidths = [10, 12, 12, 14, 18, 8, 8, 7, 9, 9, 9, 9, 9, 9, 9, 10, 9, 30, 7, 8, 60];
const decisionWidths = [15, 96];
/** An empty column stands between the two answers; above it the file has a figure of the duty. */
const between = 13;
const rankingColumn = decisionWidths.length + 1;

/** DECISION, and QUOTES to its right, from a row on: both may grow downwards. */
export function decisionLooks(top: number, offers: string, duties: string, grades = "") {
  const last = top + room + 40;
  const letter = (i: number): string => columnName(rankingColumn + i);
  const column = (from: number, to = from): string => `${letter(from)}${top + 1}:${letter(to)}${last}`;
  const verdict = 17;
  const reason = rankingWidths.length - 1;
  const typed = arguments_(offers, duties, grades);
  return {
    widths: [...decisionWidths, between, ...rankingWidths],
    growing: [`B${top + 1}:B${last}`, column(verdict), column(reason)],
    cells: {
      [`A${top}`]: { formula: `=BUSH.DECISION(${typed})` },
      [`${letter(0)}${top}`]: { formula: `=BUSH.QUOTES(${typed})` },
    } satisfies BookSheet["cells"],
    areas: [
      { range: `A${top}:B${top}`, look: "heading" },
      { range: `A${top + 1}:A${last}`, look: "answer" },
      { range: `B${top + 1}:B${last}`, look: "text" },
      { range: `${letter(0)}${top}:${letter(reason)}${top}`, look: "heading" },
      { range: column(0, 4), look: "answer" },
      { range: column(5, 7), look: "result", format: "0.00" },
      { range: column(8), look: "result", format: "0" },
      { range: column(9, 10), look: "result", format: "0.000" },
      { range: column(11), look: "answer" },
      { range: column(12, 13), look: "result", format: "0.00" },
      { range: column(14), look: "result", format: "0" },
      { range: column(15, 16), look: "result", format: "0.00" },
      { range: column(verdict), look: "text" },
      { range: column(18), look: "result", format: "0 %" },
      { range: column(19), look: "result", format: "0" },
      { range: column(reason), look: "text" },
    ],
    // the verdicts alone: the grid works a mark out anew for every cell of its range, and here that is hundreds of rows
    marks: marksBy(column(verdict), letter(verdict)),
  } as const satisfies Partial<BookSheet>;
}

const decisionTop = 4;
const onDecision = decisionLooks(decisionTop, `Quotes!${offered}`, `Quotes!${ofDuty.range}`, ownGrades);

export const decision: BookSheet = {
  name: "Decision",
  ...onDecision,
  frozen: { rows: decisionTop, columns: 1 },
  heights: { 1: 1.6, [decisionTop]: 2 },
  cells: {
    ...titled("The decision, and the ranking behind it", story),
    ...onDecision.cells,
  },
};

/** The duty and the decision of the workbook file, whose offers are a table of their own. */
export function decisionFile(offers: string) {
  const block = dutyBlock(4);
  const top = 8;
  const looks = decisionLooks(top, offers, block.range);
  const cautions = cautionLines(top + room + 42, "B");
  return {
    ...looks,
    frozen: { rows: top, columns: 1 },
    heights: { 1: 1.6, 4: 3, 5: 2, [top]: 2 },
    cells: { ...titled("Which offer to buy?", story), ...block.cells, ...looks.cells, ...cautions.cells },
    merged: cautions.merged,
  } satisfies Partial<BookSheet>;
}
