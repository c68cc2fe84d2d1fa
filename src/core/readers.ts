import type { Cell, NotationArg, TableArg } from "./args";
import { quotesArg } from "./cost/quoteTable";
import { ratesArg } from "./cost/rates";
import { dutiesArg } from "./duties/model/readDuties";
import { zoneArg } from "./fit/zones/zone";
import { isMissing } from "./errors";
import { readGiven } from "./given";
import { gradesArg } from "./grades/model/table";

const tableReader =
  <T>(name: string, arg: TableArg<T>) =>
  (rows: readonly (readonly Cell[])[]): T =>
    readWanted(name, arg, rows);
const notationReader =
  <T>(name: string, arg: NotationArg<T>) =>
  (text: string): T =>
    readWanted(name, arg, text);

/** What a function may do without, a reader is asked for. */
function readWanted<T>(name: string, arg: TableArg<T> | NotationArg<T>, given: unknown): T {
  if (given === undefined || given === null) throw isMissing(name);
  return readGiven(name, arg, given) as T;
}

/**
 * Tables and notations read once, to be given to several functions in place of their rows or text; metric, units in the headings'
 * brackets. What cannot be read is an error that names it; a faulty row of duties is kept as its own error.
 */
export const readers = {
  /** "H7", "+0.05/+0.10" */
  zone: notationReader("zone", zoneArg("Tolerance zone")),
  /** A heading row and one row per duty or step, or a card. */
  duties: tableReader("duties", dutiesArg),
  /** A heading row and one row per grade of one's own. */
  grades: tableReader("grades", gradesArg),
  /** A heading row and one row per offer. */
  quotes: tableReader("quotes", quotesArg),
  /** A heading row (currency, rate, date) and one row per currency. */
  rates: tableReader("rates", ratesArg),
};
