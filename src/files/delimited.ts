import Papa from "papaparse";
import { present } from "../core/present";
import { checkSize, headingRow, knownIn, Unreadable } from "./list";
import type { Knows, List, ListCell } from "./list";

const delimiters = ["\t", ";", "|", ","] as const;
/** So much of a file tells how its cells are divided. */
const sample = { characters: 64_000, rows: 40 };

/** Long reads stop now and then to show how far they are, and may be broken off. */
export interface Progress {
  /** Share read so far, 0 to 1. */
  report(share: number): void;
  readonly signal: AbortSignal;
}

/** Comma, semicolon, tab or bar between cells, quotes around some: rows with the lines at which they begin. */
export function readDelimited(given: string, knows: Knows, remarks: readonly string[] = []): List {
  const text = tidied(given);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: delimiterOf(text, knows), newline: "\n" });
  return listOf(data, errors, knows, remarks);
}

/** The same with a pause after each part, so that a page stays alive. */
export async function readDelimitedInParts(
  given: string,
  knows: Knows,
  { report, signal }: Progress,
  remarks: readonly string[] = [],
): Promise<List> {
  const text = tidied(given);
  const data: string[][] = [];
  const errors: Papa.ParseError[] = [];
  await new Promise<void>((resolve) => {
    Papa.parse<string[]>(text, {
      delimiter: delimiterOf(text, knows),
      newline: "\n",
      chunkSize: 512 * 1024,
      chunk: ({ data: part, errors: found, meta }: Papa.ParseResult<string[]>, parser: Papa.Parser) => {
        for (const error of found) errors.push({ ...error, row: (error.row ?? 0) + data.length });
        for (const row of part) data.push(row);
        report(Math.min(1, meta.cursor / text.length));
        parser.pause();
        setTimeout(() => (signal.aborted ? parser.abort() : parser.resume()));
      },
      complete: () => resolve(),
    });
  });
  if (signal.aborted) throw new Unreadable("Reading was stopped.");
  return listOf(data, errors, knows, remarks);
}

/** No byte order mark, one way to end lines, and none of the control characters that a terminal would obey. */
const tidied = (text: string): string =>
  text
    .replace(/^\uFEFF/, "")
    .replace(/\r\n?/g, "\n")
    // oxlint-disable-next-line no-control-regex -- all but tab and line feed
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, "");

function listOf(data: string[][], errors: readonly Papa.ParseError[], knows: Knows, remarks: readonly string[]): List {
  let line = 1;
  const lines = data.map((row) => {
    const begins = line;
    line += 1 + row.reduce((sum, cell) => sum + (cell.includes("\n") ? cell.split("\n").length - 1 : 0), 0);
    return begins;
  });
  const fault = errors.find(({ type }) => type === "Quotes");
  if (fault) {
    const at = lines[fault.row ?? 0] ?? line;
    throw new Unreadable(
      fault.code === "MissingQuotes"
        ? `A quotation mark that opens a cell in line ${at} is never closed.`
        : `Line ${at}: a quotation mark stands inside a quoted cell; write it twice.`,
    );
  }
  const rows = data.map((row) => row.map((cell): ListCell => (cell.trim() === "" ? null : cell.trim())));
  while (rows.at(-1)?.every((cell) => cell === null)) rows.pop();
  const list = { rows, lines: lines.slice(0, rows.length), top: headingRow(rows, knows), remarks };
  checkSize(list);
  return list;
}

/** The mark that makes the most known headings; without any, the first that the heading row holds, the comma last. */
function delimiterOf(text: string, knows: Knows): string {
  const head = text.slice(0, sample.characters);
  const tried = delimiters.map((delimiter) => {
    const { data } = Papa.parse<string[]>(head, { delimiter, newline: "\n", preview: sample.rows });
    const rows = data.map((row) => row.map((cell) => (cell.trim() === "" ? null : cell.trim())));
    const top = rows[headingRow(rows, knows)] ?? [];
    return { delimiter, known: knownIn(top, knows), cells: top.length };
  });
  const best = Math.max(...tried.map(({ known }) => known));
  const likely = tried.filter(({ known }) => known === best);
  return (likely.find(({ cells }) => cells > 1) ?? present(likely.at(-1))).delimiter;
}
