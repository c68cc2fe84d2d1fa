import { functions } from "../../../src/core";
import { call } from "../../support";

const { DECISION, QUOTES } = functions;

/** A duty of 0.6 MPa at π·15·120/60 000 = 0.0942 m/s, with what its changes cost. */
export const duty = {
  ...{ duty: "Drum", load: 180, bore: 15, length: 20, rpm: 120, temperature: "5 to 45" },
  ...{ hours: 100, "wear allowance": 0.2, "pieces a year": 60, labour: 18, downtime: 40 },
};
/** A grade of which little is known. */
export const bare = [
  ["grade", "PV limit"],
  ["Bare", 0.2],
];
export const speed = (Math.PI * 15 * 120) / 60_000;
type Fields = Readonly<Record<string, unknown>>;
export const card = (fields: Fields): unknown[][] => Object.entries(fields);

const plain = { part: "a", supplier: "Supplier A", grade: "Demo Sorrel", bore: 15, length: 20, price: 2 };
/** Rows with all headings that any of them has; each begins as a plain offer, from which `undefined` takes a column. */
export function table(...offers: readonly Fields[]): unknown[][] {
  const all: Fields[] = offers.map((offer) => ({ ...plain, ...offer }));
  const filled = (offer: Fields) => Object.keys(offer).filter((heading) => offer[heading] !== undefined);
  const headings = [...new Set(all.flatMap(filled))];
  return [headings, ...all.map((offer) => headings.map((heading) => offer[heading] ?? null))];
}

export interface Ranking {
  readonly heading: readonly string[];
  /** Rows under their headings without units. */
  readonly rows: readonly Readonly<Record<string, unknown>>[];
  readonly notes: readonly string[];
}
/** QUOTES on a table of offers. */
export function rank(offers: unknown, fields: Fields | unknown[][] = duty, ...more: unknown[]): Ranking {
  const [heading, ...lines] = call(QUOTES, [offers, Array.isArray(fields) ? fields : card(fields), null, ...more]) as [
    string[],
    ...unknown[][],
  ];
  const names = heading.map((text) => String(text).replace(/ \[.*\]$/, ""));
  const all = lines.map((line) => Object.fromEntries(names.map((name, i) => [name, line[i]])));
  const reason = "reason or question";
  return {
    heading,
    rows: all.filter((row) => row.rank !== "note"),
    notes: all.filter((row) => row.rank === "note").map((row) => row[reason] as string),
  };
}
/** The one row of one offer. */
export const one = (offer: Fields, fields?: Fields, ...more: unknown[]) => rank(table(offer), fields, ...more).rows[0]!;
export const told = (offer: Fields, fields?: Fields, ...more: unknown[]): string =>
  String(one(offer, fields, ...more)["reason or question"]);

/** DECISION's lines by what they are. */
export function decide(offers: unknown, fields: Fields = duty, ...more: unknown[]): Map<string, string[]> {
  const lines = new Map<string, string[]>();
  for (const [what, answer] of call(DECISION, [offers, card(fields), null, ...more]).slice(1) as [string, string][])
    lines.set(what, [...(lines.get(what) ?? []), answer]);
  return lines;
}
