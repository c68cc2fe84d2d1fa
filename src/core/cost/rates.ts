import { clash, mustBe } from "../errors";
import type { Cell, TableArg } from "../formula";
import type { System } from "../kinds";
import { currencyOf } from "../units/money";
import { Headings } from "../table/entry";
import type { Entry, ValuesOf } from "../table/entry";
import { placeOf, readTable } from "../table/readTable";

const fields = {
  currency: { heading: "currency", kind: "text" },
  rate: { heading: "rate", also: ["exchange rate"], kind: "ratio", above: 0 },
  date: { heading: "date", also: ["of", "as of"], kind: "text" },
} as const satisfies Record<string, Entry>;
const headings = new Headings(fields);
/** Which cells are numbers, for whoever reads a file of rates. */
export const ratesReading = { list: fields, headings } as const;

export interface Rate {
  /** What one unit of the currency is worth in the base. */
  readonly rate: number;
  /** As it stands. */
  readonly date?: string;
}
export interface Rates {
  /** The currency in which the rates count, where the table names it. */
  readonly base?: string;
  readonly of: ReadonlyMap<string, Rate>;
}

/** Rates by currency; the heading "rate [EUR]", or a row whose rate is 1, names the currency that they are in. */
function readRates(cells: Cell[][], system: System, name: string): Rates {
  let base: string | undefined;
  const checkUnit = (entry: Entry, unit: string): undefined => {
    if (entry !== fields.rate) throw mustBe(`unit of ${entry.heading}`, "left out", unit);
    base = currencyOf(`unit of ${entry.heading}`, unit);
  };
  const table = readTable(cells, { list: fields, headings, system, name, checkUnit });
  const of = new Map<string, Rate>();
  for (const { number, values, faults } of table.rows) {
    const place = placeOf(name, number, table);
    for (const fault of faults.values()) throw clash(name, `${place}: ${fault.message}`);
    const [code, rate] = rateOf(values, name, place);
    if (of.has(code)) throw clash(name, `${name} gives two rates for ${code}`);
    of.set(code, rate);
  }
  if (of.size === 0) throw clash(name, `${name} holds no rate: currency, rate, date`);
  base ??= [...of].find(([, { rate }]) => rate === 1)?.[0];
  const ofBase = base === undefined ? undefined : of.get(base);
  if (ofBase && ofBase.rate !== 1) throw clash(name, `${name}: the rate of ${base} in ${base} must be 1`);
  return base === undefined ? { of } : { base, of };
}

function rateOf({ currency, rate, date }: ValuesOf<typeof fields>, name: string, place: string): [string, Rate] {
  if (currency === undefined || rate === undefined) throw clash(name, `${place}: a currency and its rate are wanted`);
  return [currencyOf(place, currency), { rate, ...(date === undefined ? {} : { date: dateText(date) }) }];
}

/** What one unit is worth in another currency; nothing where a rate is missing. */
export function rateBetween(from: string, to: string, rates: Rates | undefined): number | undefined {
  if (from === to) return 1;
  const worth = (code: string): number | undefined =>
    rates?.of.get(code)?.rate ?? (code === (rates?.base ?? to) ? 1 : undefined);
  const [one, other] = [worth(from), worth(to)];
  return one === undefined || other === undefined ? undefined : one / other;
}

/** Sheets hand a date over as the days since the end of 1899. */
function dateText(date: string): string {
  const days = Number(date);
  if (!(days >= 36526 && days < 73051)) return date;
  // the civil date of a day number, counted in eras of 400 years from 1 March (memory)
  const shifted = Math.floor(days) - 25569 + 719468;
  const era = Math.floor(shifted / 146097);
  const day = shifted - era * 146097;
  const year = Math.floor((day - Math.floor(day / 1460) + Math.floor(day / 36524) - Math.floor(day / 146096)) / 365);
  const ofYear = day - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const month = Math.floor((5 * ofYear + 2) / 153);
  const two = (n: number) => String(n).padStart(2, "0");
  const civil = month < 10 ? month + 3 : month - 9;
  return `${year + era * 400 + (civil <= 2 ? 1 : 0)}-${two(civil)}-${two(ofYear - Math.floor((153 * month + 2) / 5) + 1)}`;
}

export const ratesArg = {
  kind: "table",
  optional: true,
  what: 'a heading row (currency, rate, date) and one row per currency; "rate [EUR]" says what the rates are in',
  text: "Exchange rates: what one unit of each currency is worth. Without them amounts in another currency are not ranked",
  read: readRates,
} as const satisfies TableArg<Rates>;
