import type { System } from "../../core/kinds";
import { currencyOf } from "../../core/units/money";
import { nearest, normal } from "../../core/names";
import { present } from "../../core/present";
import { entryOf } from "../../core/table/entry";
import { splitHeading } from "../../core/table/heading";
import { keyOf } from "../../core/table/readTable";
import type { ListCell } from "../../files/list";
import { faultOf } from "./sort";
import type { Sort } from "./sort";

/** What becomes of a column. */
export interface Mapped {
  /** As it stands in the list; empty where nothing stands in the whole column. */
  readonly heading: string;
  /** Its field. "": kept as it stands, and not used. */
  readonly key: string;
  /** Empty: the unit system of the sheet. */
  readonly unit: string;
  /** Which of several columns of one field: the pieces from which a price holds. */
  readonly at?: number | undefined;
  /** The heading may mean another thing too. */
  readonly isGuess?: boolean;
}

/** A field and unit for every heading: its own where it is known, else a guess. Each field is given once; the user confirms. */
export function guessColumns(headings: readonly ListCell[], sort: Sort): Mapped[] {
  const taken = new Set<string>();
  return headings.map((cell, i): Mapped => {
    const heading = cell === null ? `column ${i + 1}` : String(cell);
    const column = columnOf(heading, sort);
    const place = `${column.key}@${column.at ?? ""}`;
    if (column.key === "" || taken.has(place)) return { heading, key: "", unit: "" };
    taken.add(place);
    return column;
  });
}

function columnOf(heading: string, sort: Sort): Mapped {
  const { takesUnit, keys } = sort;
  const { name, unit = "" } = splitUnit(heading);
  const { key: known, at } = knownIn(heading, name, sort);
  const key = known ?? guessed(name, sort);
  if (key === undefined || !keys.includes(key)) return { heading, key: "", unit: "" };
  const own = takesUnit(key) ? tidyUnit(unit) : "";
  return { heading, key, unit: own, ...(at === undefined ? {} : { at }), ...(known ? {} : { isGuess: true }) };
}

/** The field that the heading names, with or without what may be a unit behind it. */
function knownIn(heading: string, name: string, { reading }: Sort): { key?: string | undefined; at?: number } {
  const { series } = reading;
  const at = series?.at(heading) ?? series?.at(name);
  if (series && at !== undefined) return { key: series.key, at };
  return { key: keyIn(heading, reading) ?? keyIn(name, reading) };
}

const keyIn = (heading: string, { keyOf: own, headings }: Sort["reading"]): string | undefined =>
  own ? own(heading) : keyOf(heading, headings);

/** By the words that lists use, else by the one field of nearly that name; a number in it tells more than a name does. */
function guessed(name: string, { keys, words, reading }: Sort): string | undefined {
  const word = normal(name);
  const byWord = keys.find((key) => words[key]?.some((other) => normal(other) === word));
  if (byWord !== undefined || /\d/.test(name)) return byWord;
  const headings = keys.map((key) => entryOf(reading.list, key).heading);
  const [only, ...more] = nearest(name, headings);
  return only !== undefined && more.length === 0 ? keys[headings.indexOf(only)] : undefined;
}

/** The unit stands in brackets, behind a comma, or is a currency behind the words: "PV limit, psi-fpm", "unit price EUR". */
function splitUnit(heading: string): { name: string; unit?: string } {
  const found = splitHeading(heading);
  if (found.unit) return found;
  const [, name = "", unit = ""] = /^(.*[^\s,])\s*,\s*([^\s,]+)$/.exec(heading) ?? [];
  if (name !== "") return { name: name.trim(), unit };
  const words = heading.trim().split(/\s+/);
  const last = present(words.pop());
  const isCurrency = words.length > 0 && faultOf(() => currencyOf("unit", last)) === undefined;
  return isCurrency ? { name: words.join(" "), unit: last } : found;
}

/** The unit that a heading carries, which a column keeps whatever field it is given by hand. */
export const unitIn = (heading: string, key: string, { takesUnit }: Sort): string =>
  key !== "" && takesUnit(key) ? tidyUnit(splitUnit(heading).unit ?? "") : "";

/** A column given another field by hand. */
export const assigned = ({ heading, at }: Mapped, key: string, sort: Sort): Mapped => ({
  ...{ heading, key, unit: unitIn(heading, key, sort) },
  ...(at !== undefined && key === sort.reading.series?.key ? { at } : {}),
});

/** A hyphen between units is a product in the trade's writing. */
const tidyUnit = (unit: string): string => unit.replace(/([A-Za-z²³2-3])\s?-\s?(?=[A-Za-z])/g, "$1*");

/** Why a unit does not suit the field that a column is given. */
export const unitFault = ({ key, unit }: Mapped, { checkUnit }: Sort): string | undefined =>
  key === "" ? undefined : faultOf(() => checkUnit(key, unit.trim()));

/** Two columns for one field, or none for one that is needed. */
export function mappingFault(columns: readonly Mapped[], { needs, reading }: Sort): string | undefined {
  const used = columns.filter(({ key }) => key !== "");
  const twice = used.find(({ key, at }, i) => used.findIndex((c) => c.key === key && c.at === at) !== i);
  if (twice) return `Two columns are set to ${entryOf(reading.list, twice.key).heading}: choose one.`;
  const lacking = Object.keys(needs).find((key) => used.every((column) => column.key !== key));
  return lacking === undefined ? undefined : needs[lacking];
}

/** A heading that the functions read; one that is kept and not used is told from those. */
export function headingFor({ key, heading, unit, at }: Mapped, sort: Sort, system: System): string | null {
  if (heading === "") return null;
  if (key === "") {
    const isKnown = keyIn(heading, sort.reading) !== undefined || sort.reading.series?.at(heading) !== undefined;
    return isKnown ? `as listed: ${heading}` : heading;
  }
  const own = sort.headingOf(key, unit.trim(), system);
  const name = entryOf(sort.reading.list, key).heading;
  return at === undefined ? own : own.replace(name, `${name} from ${at}`);
}
