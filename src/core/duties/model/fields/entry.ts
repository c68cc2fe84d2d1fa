import type { Motion } from "../../../grades/model/limits";
import type { Kind } from "../../../kinds";
import type { Entry } from "../../../table/entry";

export const parts = ["sleeve", "flanged", "washer"] as const;
export type Part = (typeof parts)[number];

export const groups = [
  "name",
  "load",
  "size",
  "motion",
  "surroundings",
  "shaft",
  "housing",
  "fit",
  "wanted",
  "cost",
] as const;

/** One entry of the list of what a duty may say; bounds are in working units. */
export interface FieldEntry extends Entry {
  readonly group: (typeof groups)[number];
  /** One phrase: what it is. */
  readonly text: string;
  readonly symbol?: string;
  /** The parts and motions that ask for it; all of them unless given. */
  readonly parts?: readonly Part[];
  readonly motions?: readonly Motion[];
  /** A duty whose part and motion ask for it is refused without it. */
  readonly required?: true;
  /** What an empty cell means. */
  readonly default?: string | number;
}

/** A number that may be a band. */
export const number = <const E extends { readonly kind: Kind }>(entry: E) => ({ ...entry, band: true as const });
/** A number that multiplies a wear rate. */
export const factor = <const H extends string, const S extends string>(heading: H, symbol: S, text: string) =>
  number({ heading, kind: "ratio", symbol, group: "wanted", above: 0, to: 100, default: 1, text });
export const yesNo = {
  kind: "choice",
  words: ["no", "yes"],
  default: "no",
  spellings: { true: "yes", false: "no" },
} as const;

export const sleeves = ["sleeve", "flanged"] as const;
export const inMotion = ["turning", "swinging", "linear"] as const;
