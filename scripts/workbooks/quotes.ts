import given from "../../data/greenhouse/quotes.json";
import duties from "../../data/greenhouse/duties.json";
import { motions } from "../../src/core/grade";
import type { FileBook, FileSheet } from "./book";
import { cautionLines, titled } from "./parts";

const [headings, ...rows] = given.rows as [string[], ...(string | number | null)[][]];
const duty = duties.find(({ id }) => id === given.duty)! as {
  name: string;
  load: number;
  bore: number;
  length: number;
  rpm: number;
  temperature: string;
  motion: string;
};

const quotesSheet: FileSheet = {
  name: "Quotes",
  widths: [14, 14, 15, 12, 12, 12, 12, 9, 10, 9, 11, 10, 10, 8, 10, 12],
  frozen: { rows: 4, columns: 1 },
  heights: { 1: 1.5, 4: 3 },
  tables: [{ name: "Quotes", at: "A4", headings, rows }],
  cells: titled(
    "Quotes as they came",
    "Invented suppliers and prices. Paste others over them or add rows: units in brackets in the heading, or in a cell of its own.",
  ),
};

const labels = [
  ["Load, N", duty.load],
  ["Bore, mm", duty.bore],
  ["Length, mm", duty.length],
  ["Shaft, rpm", duty.rpm],
  ["Temperature, °C", duty.temperature],
  ["Motion", duty.motion],
] as const;

const ranking: FileSheet = {
  name: "Ranking",
  widths: [13, 16, 14, 16, 9, 9, 9, 8, 10, 10, 10, 12, 13, 10, 26, 54],
  frozen: { rows: 14, columns: 1 },
  heights: { 1: 1.5, 14: 2 },
  cells: {
    ...titled(
      "Which quote costs least to run?",
      `For the duty: ${duty.name}. Quotes that fit come first, by cost per 1000 hours; the rest follow with the reason.`,
    ),
    ...Object.fromEntries(
      labels.flatMap(([label, value], i) => [
        [`A${4 + i}`, { value: label, look: "label" } as const],
        [`B${4 + i}`, { value, look: typeof value === "number" ? "input" : "words" } as const],
      ]),
    ),
    A10: { value: "Pressure, MPa", look: "label" },
    B10: { formula: "=BUSH.PRESSURE(B4,B5,B6)", look: "result", format: "0.000" },
    C10: { value: "by Excel alone", look: "answer" },
    D10: { formula: "=B4/(B5*B6)", look: "result", format: "0.000" },
    A11: { value: "Speed, m/s", look: "label" },
    B11: { formula: "=BUSH.SPEED(B5,B7)", look: "result", format: "0.0000" },
    C11: { value: "by Excel alone", look: "answer" },
    D11: { formula: "=PI()*B5*B7/60000", look: "result", format: "0.0000" },
    A12: {
      value: "All amounts are in the currency of the quotes; nothing is converted between currencies.",
      look: "quiet",
    },
    A14: { formula: "=BUSH.QUOTES(Quotes[#All],B10,B11,B8,B9)" },
    ...cautionLines(40, "F").cells,
  },
  merged: cautionLines(40, "F").merged,
  areas: [
    { range: "A14:P14", look: "heading" },
    { range: "A15:D38", look: "answer" },
    { range: "E15:H38", look: "result", format: "0.###" },
    { range: "I15:J38", look: "result", format: "0.000" },
    { range: "K15:K38", look: "answer" },
    { range: "L15:L38", look: "result", format: "0" },
    { range: "M15:M38", look: "result", format: "0.00" },
    { range: "N15:N38", look: "result", format: "0" },
    { range: "O15:P38", look: "answer" },
  ],
  marks: [
    { range: "A15:P38", when: '=AND($O15<>"",LEFT($O15,5)="fails")', as: "fails" },
    { range: "A15:P38", when: '=$A15="not ranked"', as: "unknown" },
  ],
  lists: [{ at: "B9", from: motions }],
};

export const quotes: FileBook = {
  file: "quotes",
  title: "Ranking quotes for polymer bushes by cost per running hour",
  sheets: [ranking, quotesSheet],
};
