import { BushError } from "../errors";
import type { System } from "../kinds";
import { present } from "../present";
import type { Entry, Line } from "./conversion";
import { digitsFor } from "./digits";
import { formulaText, numberText, numeric, quantityText, stepsText, unitText, written } from "./notation";
import { numbersOf } from "./working";
import type { Tree } from "./working";
import { worksheetOf } from "./worksheet";
import type { Work } from "./worksheet";

/** What it is, symbol or formula, the numbers put in, result, unit; plain numbers are in the unit shown. */
export type Row = (string | number | BushError)[];

/** What is known, by its symbol, and the lines in rows of a sheet; conversions where it is worked in other units than asked for. */
export function workedRows(work: Work, system: System): { readonly given: Map<string, Row>; readonly lines: Row[] } {
  const { given, lines, figures } = worksheetOf(work, system);
  const entries = new Map<string, Entry>([...figures, ...given, ...lines].map((entry) => [entry.symbol, entry]));
  const worded = [...given, ...lines].filter(isLine);
  const digits = digitsFor(worded, new Map([...entries].map(([symbol, { value }]) => [symbol, value])));
  const quantity = (symbol: string) => ({ ...present(entries.get(symbol)), digits: present(digits.get(symbol)) });
  const style = numeric(quantity);
  const answers = answersOf(work, lines);

  const row = (entry: Entry | Line): Row => {
    const { text, symbol, value, unit } = entry;
    const shown = quantityText(quantity(symbol));
    if (!isLine(entry)) return [text, symbol, shown, value, unitText(unit)];
    const name = entry.converts ?? symbol;
    const answer = answers.get(symbol);
    const isNumber = Number.isFinite(value) && !(answer instanceof BushError);
    return [
      text,
      entry.converts ?? formulaText(symbol, entry.tree),
      isNumber ? `${name} = ${isBare(entry.tree) ? "" : `${written(entry.tree, style)} = `}${shown}` : "",
      answer ?? (isNumber ? value : ""),
      unitText(unit),
    ];
  };
  const told = new Set<string>();
  return {
    given: new Map(given.map((entry) => [entry.symbol, row(entry)])),
    lines: lines.flatMap((line) => [row(line), ...factorRows(work, line.tree, told)]),
  };
}

/** A symbol or a number alone: its value need not be said twice. */
const isBare = ({ type }: Tree): boolean => type === "symbol" || type === "number";

const isLine = (entry: Entry | Line): entry is Line => "tree" in entry;

/** The calculation's own answers for the last line of each result, to the last digit. */
function answersOf({ results }: Work, lines: readonly Line[]): Map<string, number | string | BushError> {
  return new Map(
    results.flatMap(({ symbol, answer }) => {
      const last = lines.filter((line) => (line.converts ?? line.symbol) === symbol).pop();
      return last && answer !== undefined ? [[last.symbol, answer] as const] : [];
    }),
  );
}

/** What a row is called that explains a fixed number. */
export const factorWord = "Fixed factor";

/** What each fixed number of a line is for, told once: it turns units, or the work has a word on it. */
function factorRows({ factors }: Work, tree: Tree, told: Set<string>): Row[] {
  return numbersOf(tree).flatMap(({ value, steps }): Row[] => {
    const meaning = steps ? stepsText(steps) : (factors?.[value] ?? everywhere[value]);
    const number = numberText(value, 12);
    if (meaning === undefined || told.has(number + meaning)) return [];
    told.add(number + meaning);
    return [[factorWord, number, meaning, value, ""]];
  });
}

/** What a fixed number means wherever a working has it. */
const everywhere: Readonly<Record<number, string>> = { 180: "degrees of π radians" };
