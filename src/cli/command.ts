import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import Papa from "papaparse";
import { BushError } from "../core/errors";
import { libraryOf, parseGrades, standardLibrary, standingCautions } from "../core/grade";
import type { Library } from "../core/grade";
import { systems } from "../core/kinds";
import type { System } from "../core/kinds";
import { check } from "./check";
import { rowsOf } from "./duties";
import { asCsv, asTable } from "./print";

const usage = `Usage: bushcell check duties.csv [--grades own.csv] [--units metric|inch] [--table]

Checks each duty of a file against its grade. Exit code 0: every row fits; 1: a row fails, lacks data or cannot be
read; 2: the command or a file is wrong. docs/command-line.md names the columns.`;

/** Something that ends the command before any row is checked. */
class Refusal extends Error {}

/** Where the command writes: what it found, and everything else. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
}

/** Runs the command line; the answer is its exit code. */
export function command(args: string[], streams: Streams): number {
  try {
    return run(args, streams);
  } catch (error) {
    const { code } = error as { code?: string };
    const isOurs = error instanceof Refusal || error instanceof BushError || code?.startsWith("ERR_PARSE_ARGS");
    if (!isOurs) throw error;
    streams.err(`${(error as Error).message}\n`);
    return 2;
  }
}

function run(args: string[], { out, err }: Streams): number {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      grades: { type: "string" },
      units: { type: "string", default: "metric" },
      table: { type: "boolean", default: false },
      help: { type: "boolean", short: "h", default: false },
    },
  });
  if (values.help) {
    out(`${usage}\n`);
    return 0;
  }
  const [command, file, ...more] = positionals;
  if (command !== "check" || !file || more.length > 0) throw new Refusal(usage);
  const system = systemOf(values.units);

  const { library, isSound } = values.grades
    ? ownLibrary(values.grades, system, err)
    : { library: standardLibrary(), isSound: true };
  const duties = rowsOf(cellsOf(file));
  if (duties.rows.length === 0) throw new Refusal(`${file} holds no row below its headings`);
  for (const heading of duties.unknownColumns) err(`${file}: column "${heading}" is not used\n`);
  const checked = check(duties, library, system);
  out(values.table ? asTable(checked) : asCsv(checked));
  err(`\n${standingCautions.join("\n")}\n`);
  return checked.holds && isSound ? 0 : 1;
}

function systemOf(word: string): System {
  const system = systems.find((candidate) => candidate === word.toLowerCase());
  if (!system) throw new Refusal(`--units must be metric or inch, got ${word}`);
  return system;
}

/** A user's grades in front of the built-in ones; a row that cannot be read is named and left out. */
function ownLibrary(file: string, system: System, err: Streams["err"]): { library: Library; isSound: boolean } {
  const cells = cellsOf(file).map((row) => row.map((text) => (text.trim() === "" ? null : text.trim())));
  const { grades, unknownColumns, faults } = parseGrades(cells, system, "grades");
  for (const fault of faults) err(`${file}: ${fault.message}\n`);
  for (const heading of unknownColumns) err(`${file}: column "${heading}" is no known property and is not used\n`);
  return { library: libraryOf(grades, unknownColumns), isSound: faults.length === 0 };
}

function cellsOf(file: string): string[][] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    throw new Refusal(`${file} cannot be opened: ${(error as Error).message}`);
  }
  const { data, errors } = Papa.parse<string[]>(text);
  const fault = errors.find((e) => e.type !== "Delimiter");
  if (fault) throw new Refusal(`${file} line ${(fault.row ?? 0) + 1}: ${fault.message}`);
  return data;
}
