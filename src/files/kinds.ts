import { quoteFieldOf, quoteReading, ratesReading } from "../core/cost";
import { dutyReading, fieldHeadings } from "../core/duties";
import { gradeReading, propertyNamed } from "../core/grades/model";
import { keyOf } from "../core/table/readTable";
import type { Knows, ListCell } from "./list";

/** What a list may be. */
export const listKinds = ["grades", "offers", "duties", "rates"] as const;
export type ListKind = (typeof listKinds)[number];

export const readings = {
  grades: gradeReading,
  offers: quoteReading,
  duties: dutyReading,
  rates: ratesReading,
} as const;

const keys: Readonly<Record<ListKind, (heading: string) => string | undefined>> = {
  grades: (heading) => propertyNamed(heading)?.key,
  offers: (heading) => (quoteReading.series.at(heading) === undefined ? quoteFieldOf(heading) : "price"),
  duties: (heading) => keyOf(heading, fieldHeadings),
  rates: (heading) => keyOf(heading, ratesReading.headings),
};
export const knows: Readonly<Record<ListKind, Knows>> = {
  grades: (heading) => keys.grades(heading) !== undefined,
  offers: (heading) => keys.offers(heading) !== undefined,
  duties: (heading) => keys.duties(heading) !== undefined,
  rates: (heading) => keys.rates(heading) !== undefined,
};

/** What a row of headings seems to be, where that is another kind than the wanted one and plainly so. */
export function seemsToBe(headings: readonly ListCell[], wanted: ListKind): ListKind | undefined {
  const count = (kind: ListKind) =>
    new Set(headings.flatMap((cell) => (typeof cell === "string" ? [keys[kind](cell)] : []))).size;
  const own = count(wanted);
  return listKinds.find((kind) => kind !== wanted && count(kind) >= own + 2);
}
