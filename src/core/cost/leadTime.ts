import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { clash, mustBe, show } from "../errors";
import { splitNumber } from "../numbers";
import { fromUnit } from "../units/scale";

const stock =
  /^(?:ex[- ]?stock|(?:in|from) stock|stock|immediate(?:ly)?|ab lager|lagernd|sofort|en stock|pronta consegna)$/i;
const around = /^(?:approx(?:imately)?|about|ca|circa|~|max|within|up to)\.?\s*/i;
const after = /\s*(?:aro|after (?:receipt of )?order|from order|nach auftrag)\.?$/i;
const twoEnds = /^([\d.,]+)\s*(?:-|\u2013|\u2014|\/|to|bis|à|a)\s*([\d.,]+)\s*(.*)$/i;
const date = /^(?:\d{4}-\d{1,2}-\d{1,2}|\d{1,2}[./-]\d{1,2}[./-]\d{2,4})\b/;
/** How spreadsheets count the days of the years 2000 to 2099. */
const isSerialDate = (days: number): boolean => days >= 36526 && days < 73051;

/** Days of a word of time; working days are five in seven. */
const words: readonly (readonly [RegExp, number])[] = [
  [/^(?:working|business|work)[ -]?days?$|^(?:arbeits|werk)tage?n?$/i, 7 / 5],
  [/^(?:d|days?|calendar days?|tage?n?|jours?|giorni?o?|d[ií]as?)$/i, 1],
  [/^(?:w|wk|wks|weeks?|wochen?|semaines?|settiman[ae]|semanas?)$/i, 7],
  [/^(?:mo|months?|monate?n?|mois|mes[ei]|meses)$/i, 365 / 12],
];

/** Days from order to delivery: "4-6 weeks" is the longer, "ex stock" none; a date is refused, since its order has none. */
export function readLeadTime(name: string, bounds: Bounds, cell: number | string, unit: string | undefined): number {
  const days = typeof cell === "number" ? inDays(name, cell, unit) : parse(name, cell.trim(), unit);
  if (isSerialDate(days)) throw isDate(name, cell);
  checkDomain(name, bounds, days, "metric", cell);
  return days;
}

const isDate = (name: string, cell: number | string) =>
  clash(name, `${name} ${show(cell)} is a date: type the time from the order, as "3 weeks"`);

const inDays = (name: string, value: number, unit: string | undefined): number =>
  unit === undefined ? value : value * (wordIn(unit) ?? fromUnit(name, "days", 1, unit));

function parse(name: string, cell: string, unit: string | undefined): number {
  if (stock.test(cell)) return 0;
  if (date.test(cell)) throw isDate(name, cell);
  const text = cell.replace(around, "").replace(after, "");
  const { ends, behind } = endsOf(text);
  const word = behind.replace(/\.$/, "").trim();
  const values = ends.map((end) => (end && !end.isFraction ? end.value : NaN));
  const scale = word === "" ? inDays(name, 1, unit) : wordIn(word);
  if (scale === undefined || values.some(Number.isNaN)) throw mustBe(name, 'a time like "3 weeks" or "ex stock"', cell);
  return Math.max(...values) * scale;
}

/** The number of a time, or the two of "4-6 weeks", and the word behind. */
function endsOf(text: string) {
  const [, first, second, behind = ""] = twoEnds.exec(text) ?? [];
  if (first !== undefined && second !== undefined) return { ends: [splitNumber(first), splitNumber(second)], behind };
  const found = splitNumber(text);
  return { ends: [found], behind: found?.rest ?? "" };
}

const wordIn = (word: string): number | undefined => words.find(([pattern]) => pattern.test(word))?.[1];
