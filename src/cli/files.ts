import { readFileSync, statSync } from "node:fs";
import type { Cell } from "../core/formula";
import { inDigits } from "../core/table/readTable";
import type { Reading } from "../core/table/readTable";
import type { Decimals } from "../core/table/decimals";
import { OpenDecimals } from "../core/table/decimals";
import type { EntryList } from "../core/table/entry";
import { BushError } from "../core/errors";
import type { System } from "../core/kinds";
import { normal } from "../core/names";
import { splitHeading } from "../core/table/heading";
import { decode } from "../files/decode";
import { readDelimited } from "../files/delimited";
import { knows, readings, seemsToBe } from "../files/kinds";
import type { ListKind } from "../files/kinds";
import { checkBytes, knownIn, tableFrom, Unreadable } from "../files/list";
import type { ListTable } from "../files/list";

/** Something that ends the command before anything is judged. */
export class Refusal extends Error {}

export interface FileTable extends ListTable {
  readonly name: string;
  readonly remarks: readonly string[];
}

/** A text file's table from its headings on; blank rows stay, since they part the steps of duties. */
export function tableOf(file: string, kind: ListKind): FileTable {
  try {
    checkBytes(statSync(file).size);
    const { text, remarks } = decode(readFileSync(file));
    const list = readDelimited(text, knows[kind], remarks);
    const table = tableFrom(list, list.top, kind === "duties");
    const other = seemsToBe(table.headings, kind);
    if (other) throw new Unreadable(`It seems to hold ${other}, not ${kind}.`);
    return { ...table, name: file, remarks: list.remarks };
  } catch (error) {
    if (error instanceof Unreadable) throw new Refusal(`${file}: ${error.message}`);
    if ((error as { code?: string }).code === undefined || error instanceof BushError) throw error;
    throw new Refusal(`${file} cannot be opened: ${(error as Error).message}`);
  }
}

/** What follows from a duty's load, size and motion; a column of it could only contradict them, or be passed over. */
const followed: ReadonlySet<string> = new Set(
  ["pressure", "mean pressure", "p", "speed", "sliding speed", "v", "PV"].map(normal),
);

/** A file of duties whose columns say nothing twice. */
export function dutyTableOf(file: string): FileTable {
  const table = tableOf(file, "duties");
  const twice = table.headings.find(
    (heading) => typeof heading === "string" && followed.has(normal(splitHeading(heading).name)),
  );
  // without any field of a duty it is no such list, which its reader says better
  if (twice === undefined || knownIn(table.headings, knows.duties) === 0) return table;
  throw new Refusal(
    `${file}: line ${table.line}: column "${twice}" has no place in a list of duties: it follows from load, size and motion`,
  );
}

/** Its cells as a sheet would hand them over, numerals in digits and points: the headings are row 1. */
export function cellsOf(table: FileTable, kind: ListKind, decimals: Decimals, system: System): Cell[][] {
  const cells = [table.headings, ...table.rows] as Cell[][];
  const reading = { ...readings[kind], system, name: kind, decimals } as unknown as Reading<EntryList>;
  try {
    return inDigits(cells, reading);
  } catch (error) {
    throw error instanceof BushError ? refusal(error, table, kind) : error;
  }
}

/** An error of the core, told by the file and its line. */
export const refusal = (error: BushError, table: FileTable, kind: ListKind): Refusal =>
  new Refusal(
    `${table.name}: ${inLines(error.message, table, kind)}${error instanceof OpenDecimals ? " (--decimal comma or --decimal point)" : ""}`,
  );

/** "duties row 3" as the line of the file. */
export const inLines = (message: string, { line, lines }: Pick<ListTable, "line" | "lines">, kind: string): string =>
  message.replace(
    new RegExp(`\\b${kind} row (\\d+)`, "g"),
    (_, row: string) => `line ${Number(row) === 1 ? line : (lines[Number(row) - 2] ?? line)}`,
  );
