import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { decisionPage } from "../book/record/decision";
import { standingCautions } from "../core/grades/cautionsOf";
import { BushError } from "../core/errors";
import type { Cell } from "../core/formula";
import { readDuties } from "../core/duties";
import { parseGrades } from "../core/grades/model";
import { systems } from "../core/kinds";
import type { System } from "../core/kinds";
import type { Decimals } from "../core/table/decimals";
import { check } from "./check";
import { cellsOf, dutyTableOf, inLines, Refusal, refusal, tableOf } from "./files";
import type { FileTable } from "./files";
import { decideOn, offersOf } from "./offers";
import type { Offered } from "./offers";
import { asCsv, asTable, withoutControls } from "./print";
import { record } from "./record";

const usage = `Usage: bushcell check duties.csv [--grades own.csv] [--allow-care]
       bushcell offers offers.csv … --duties duties.csv [--duty name] [--grades own.csv] [--rates rates.csv] [--decision [--out decision.html]] [--allow-care]
       bushcell record duties.csv [--duty name] [--grades own.csv] [--out record.html]
All:   [--units metric|inch] [--decimal comma|point] [--table]

check judges each duty of a file by every criterion, with its own grade or with the best. offers judges and ranks the
offers of one file or more for a duty; --decision says instead which to buy, why, and what to ask. record, and --decision
with --out, write a page that a browser prints on A4 or Letter: the calculation record of one duty, the decision.
Exit code 0: every duty fits, or an offer to buy does; with --allow-care also care. 1: not so. 2: the command, a file or a
row of it cannot be read. 3: a fault of the program. docs/command-line.md names the columns.`;

/** Where the command writes: what it found, and everything else. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
}

/** Runs the command line; the answer is its exit code. */
export function command(args: string[], streams: Streams): number {
  const err = (text: string) => streams.err(withoutControls(text));
  try {
    return run(args, { out: streams.out, err });
  } catch (error) {
    const { code } = error as { code?: string };
    const isOurs = error instanceof Refusal || error instanceof BushError || code?.startsWith("ERR_PARSE_ARGS");
    err(
      isOurs
        ? `${(error as Error).message}\n`
        : `bushcell: a fault of the program, please report it: ${String(error)}\n`,
    );
    return isOurs ? 2 : 3;
  }
}

const options = {
  grades: { type: "string" },
  duties: { type: "string" },
  duty: { type: "string" },
  rates: { type: "string" },
  decimal: { type: "string" },
  units: { type: "string", default: "metric" },
  out: { type: "string" },
  decision: { type: "boolean", default: false },
  table: { type: "boolean", default: false },
  "allow-care": { type: "boolean", default: false },
  help: { type: "boolean", short: "h", default: false },
} as const;

const parsed = (args: string[]) => parseArgs({ args, allowPositionals: true, options });
type Given = ReturnType<typeof parsed>["values"];

interface Setting {
  readonly given: Given;
  readonly system: System;
  readonly decimals: Decimals;
}

function run(args: string[], streams: Streams): number {
  const { values: given, positionals } = parsed(args);
  if (given.help) {
    streams.out(`${usage}\n`);
    return 0;
  }
  const [name, ...files] = positionals;
  const setting = {
    given,
    system: oneOf("units", given.units, systems),
    decimals: given.decimal === undefined ? "ask" : oneOf("decimal", given.decimal, ["comma", "point"] as const),
  } as const;
  return runCommand(name, files, setting, streams);
}

const writesPage = (name: string | undefined, { decision }: Given): boolean =>
  name === "record" || (name === "offers" && decision === true);

function runCommand(name: string | undefined, files: string[], setting: Setting, streams: Streams): number {
  const { given } = setting;
  const [file, second] = files;
  const only = second === undefined ? file : undefined;
  if (name === "check" && only !== undefined) return runCheck(only, setting, streams);
  if (given.out !== undefined && !writesPage(name, given))
    throw new Refusal("--out goes with record and with offers --decision");
  if (name === "offers" && file !== undefined && given.duties !== undefined)
    return runOffers(files, given.duties, setting, streams);
  if (name === "record" && only !== undefined) return runRecord(only, setting, streams);
  throw new Refusal(usage);
}

function oneOf<T extends string>(option: string, word: string, words: readonly T[]): T {
  const found = words.find((candidate) => candidate === word.toLowerCase());
  if (!found) throw new Refusal(`--${option} must be ${words.join(" or ")}, got ${word}`);
  return found;
}

function runRecord(file: string, setting: Setting, { out, err }: Streams): number {
  const { given, system, decimals } = setting;
  const grades = ownGrades(setting, err);
  const table = dutyTableOf(file);
  say(table, err);
  const cells = cellsOf(table, "duties", decimals, system);
  const page = refusingIn(table, () => {
    if (given.duty === undefined) checkOneDuty(file, cells, system);
    return record(cells, given.duty, grades, system);
  });
  if (given.out === undefined) out(page);
  else writePage(given.out, page);
  return 0;
}

/** Names of a longer list would hide what the message says. */
const mostTold = 20;

function checkOneDuty(file: string, cells: Cell[][], system: System): void {
  const { lines } = readDuties(cells, system, "duties");
  if (lines.length === 1) return;
  const names = lines.slice(0, mostTold).map(({ name }, i) => (name === "" ? `number ${i + 1}` : `"${name}"`));
  if (lines.length > mostTold) names.push("…");
  throw new Refusal(`--duty is missing: ${file} holds ${lines.length} duties, ${names.join(", ")}`);
}

function writePage(file: string, page: string): void {
  try {
    writeFileSync(file, page);
  } catch (error) {
    throw new Refusal(`${file} cannot be written: ${(error as Error).message}`);
  }
}

function runCheck(file: string, setting: Setting, { out, err }: Streams): number {
  const { given, system, decimals } = setting;
  const grades = ownGrades(setting, err);
  const table = dutyTableOf(file);
  say(table, err);
  const cells = cellsOf(table, "duties", decimals, system);
  const checked = refusingIn(table, () => check(cells, table, grades, system));
  for (const heading of checked.unknownColumns) err(`${file}: column "${heading}" is not used\n`);
  out(given.table ? asTable(checked) : asCsv(checked));
  err(`\n${standingCautions.join("\n")}\n`);
  if (checked.hasUnread) return 2;
  const accepted = given["allow-care"] ? /^(fits|care), / : /^fits, /;
  return checked.verdicts.every((verdict) => accepted.test(verdict)) ? 0 : 1;
}

const asLines = ({ heading, lines }: Offered) => [heading, ...lines];

function runOffers(files: readonly string[], dutiesFile: string, setting: Setting, { out, err }: Streams): number {
  const { given, system, decimals } = setting;
  const grades = ownGrades(setting, err);
  const dutyFile = dutyTableOf(dutiesFile);
  const duties = cellsOf(dutyFile, "duties", decimals, system);
  const rates =
    given.rates === undefined ? undefined : cellsOf(tableOf(given.rates, "rates"), "rates", decimals, system);
  const tables = files.map((file) => tableOf(file, "offers"));
  for (const table of [dutyFile, ...tables]) say(table, err);
  const offers = offersOf(tables, decimals, system);
  const { ranking, decision } = decideOn(offers, { duties, duty: given.duty, grades, rates, system });
  const shown = given.decision ? decision : ranking;
  if (given.out === undefined) out(given.table ? asTable(shown) : asCsv(shown));
  else writePage(given.out, decisionPage(asLines(decision), asLines(ranking)));
  err(`\n${standingCautions.join("\n")}\n`);
  if (ranking.hasUnread) return 2;
  const [first] = ranking.lines;
  const verdict = String(first?.[ranking.heading.indexOf("verdict")]);
  return first?.[0] === 1 && (given["allow-care"] ? /^(fits|care), / : /^fits, /).test(verdict) ? 0 : 1;
}

const say = ({ name, remarks }: FileTable, err: Streams["err"]): void => {
  for (const remark of remarks) err(`${name}: ${remark}\n`);
};

function refusingIn<T>(table: FileTable, read: () => T): T {
  try {
    return read();
  } catch (error) {
    throw error instanceof BushError ? refusal(error, table, "duties") : error;
  }
}

/** The cells of a user's grades. A row that cannot be read ends the command: its duties would fall back to another grade of that name. */
function ownGrades({ given, system, decimals }: Setting, err: Streams["err"]): Cell[][] | undefined {
  if (given.grades === undefined) return undefined;
  const table = tableOf(given.grades, "grades");
  say(table, err);
  const cells = cellsOf(table, "grades", decimals, system);
  const { unknownColumns, faults } = parseGrades(cells, system, "grades");
  for (const heading of unknownColumns)
    err(`${table.name}: column "${heading}" is no known property and is not used\n`);
  if (faults.length === 0) return cells;
  throw new Refusal(faults.map(({ message }) => `${table.name}: ${inLines(message, table, "grades")}`).join("\n"));
}
