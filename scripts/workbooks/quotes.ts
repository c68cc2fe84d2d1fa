import { titled } from "../../src/book/greenhouse/parts";
import { decisionFile, quoteHeadings, quoteRows } from "../../src/book/greenhouse/quotes";
import type { FileBook, FileSheet } from "./book";

/** On a sheet of their own, where a table can grow. */
const quotesSheet: FileSheet = {
  name: "Quotes",
  widths: [14, 14, 15, 12, 12, 12, 12, 9, 10, 9, 11, 10, 10, 8, 10, 12],
  frozen: { rows: 4, columns: 1 },
  heights: { 1: 1.5, 4: 3 },
  tables: [{ name: "Quotes", at: "A4", headings: quoteHeadings, rows: quoteRows }],
  cells: titled(
    "Quotes as they came",
    "Invented suppliers and prices. Paste others over them or add rows: units in brackets in the heading, or in a cell of its own.",
  ),
};

const decisionSheet: FileSheet = { name: "Decision", ...decisionFile("Quotes[#All]") };

export const quotes: FileBook = {
  file: "quotes",
  title: "Offers for polymer bushes: which to buy, and why",
  sheets: [decisionSheet, quotesSheet],
};
