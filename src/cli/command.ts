import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import Papa from "papaparse";
import { BushError } from "../core/errors";
import type { Cell } from "../core/formula";
import { parseGrades } from "../core/grades/model";
import { systems } from "../core/kinds";
import type { System } from "../core/kinds";
import { standingCautions } from "../core/grades/cautionsOf";
import { check } from "./check";
import { asCsv, asTable } from "./print";

const usage = `Usage: bushcell check duties.csv [--grades own.csv] [--units metric|inch] [--table] [--allow-care]

Judges each duty of a file by every criterion, with its own grade or with the best. Exit code 0: every duty fits, or
with --allow-care fits or asks for care; 1: a duty fails, asks for care, lacks data or cannot be read; 2: the command or
a file is wrong. docs/command-line.md names the columns.`;

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
      "allow-care": { type: "boolean", default: false },
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

  const own = values.grades ? ownGrades(values.grades, system, err) : { isSound: true };
  const checked = check(cellsOf(file), own.grades, system);
  for (const heading of checked.unknownColumns) err(`${file}: column "${heading}" is not used\n`);
  out(values.table ? asTable(checked) : asCsv(checked));
  err(`\n${standingCautions.join("\n")}\n`);
  const accepted = values["allow-care"] ? /^(fits|care), / : /^fits, /;
  return own.isSound && checked.verdicts.every((verdict) => accepted.test(verdict)) ? 0 : 1;
}

function systemOf(word: string): System {
  const system = systems.find((candidate) => candidate === word.toLowerCase());
  if (!system) throw new Refusal(`--units must be metric or inch, got ${word}`);
  return system;
}

/** The cells of a user's grades; a row that cannot be read is named and left out. */
function ownGrades(file: string, system: System, err: Streams["err"]): { grades?: Cell[][]; isSound: boolean } {
  const cells = cellsOf(file);
  const { unknownColumns, faults } = parseGrades(cells, system, "grades");
  for (const fault of faults) err(`${file}: ${fault.message}\n`);
  for (const heading of unknownColumns) err(`${file}: column "${heading}" is no known property and is not used\n`);
  const faulty = new Set(faults.map(({ row }) => row));
  return { grades: cells.filter((_, i) => !faulty.has(i + 1)), isSound: faults.length === 0 };
}

/** A file's cells as a sheet would hand them over: text, a blank where there is none. */
function cellsOf(file: string): Cell[][] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    throw new Refusal(`${file} cannot be opened: ${(error as Error).message}`);
  }
  const { data, errors } = Papa.parse<string[]>(text);
  const fault = errors.find((e) => e.type !== "Delimiter");
  if (fault) throw new Refusal(`${file} line ${(fault.row ?? 0) + 1}: ${fault.message}`);
  return data.map((row) => row.map((text) => (text.trim() === "" ? null : text.trim())));
}
