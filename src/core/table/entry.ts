import type { Band } from "../band";
import type { Bounds } from "../domain";
import type { Span } from "../formula";
import type { Kind, System } from "../kinds";
import { normal } from "../names";
import { present } from "../present";

/** What may stand under one heading. The lists of duty fields, grade properties and quote columns are made of these. */
export interface Entry extends Omit<Bounds, "kind"> {
  readonly heading: string;
  /** Other headings accepted; case, spaces and marks do not count. */
  readonly also?: readonly string[];
  /** A kind that is no quantity and none of the words below is read by the list's own reader. */
  readonly kind: Kind | "text" | "choice" | "list" | "span" | (string & {});
  /** The words of a choice, or of a list; of a text those that are known. */
  readonly words?: readonly string[];
  /** Other ways of writing a word of a choice. */
  readonly spellings?: Readonly<Record<string, string>>;
  /** A number may be a band: "640 to 960", "800 ± 20 %". */
  readonly band?: true;
  /** A plain 0 is a blank that a host handed over as 0; of numbers whose domain excludes 0 that holds anyway. */
  readonly blankZero?: true;
  /** What to type where a plain 0 is refused, since a host may hand a blank cell over as 0. */
  readonly typeZero?: string;
}
export type EntryList = Readonly<Record<string, Entry>>;

/** The entry that a column of a list was read by. */
export const entryOf = (list: EntryList, key: string): Entry => present(list[key]);

/** What a cell under an entry reads as; kinds of a list's own readers are named in `S`. */
export type ReadAs<E extends Entry, S = object> = E extends { kind: "choice"; words: readonly (infer W)[] }
  ? W
  : E extends { kind: "list"; words: readonly (infer W)[] }
    ? readonly W[]
    : E extends { kind: "list" }
      ? readonly string[]
      : E extends { kind: "text" }
        ? string
        : E extends { kind: "span" }
          ? Span
          : E extends { kind: infer K extends keyof S }
            ? S[K]
            : E extends { kind: Kind; band: true }
              ? number | Band
              : E extends { kind: Kind }
                ? number
                : never;
export type ValuesOf<L extends EntryList, S = object> = { readonly [K in keyof L]?: ReadAs<L[K], S> };

/** Reads a cell of a kind that the table itself does not know. */
export type OwnReader = (entry: Entry, cell: number | string, unit: string | undefined, system: System) => unknown;

/** The entries of a list by every heading that names one. */
export class Headings<K extends string> {
  private readonly byName = new Map<string, K>();

  constructor(list: Readonly<Record<K, Entry>>) {
    for (const key of Object.keys(list) as K[])
      for (const word of [list[key].heading, key, ...(list[key].also ?? [])])
        if (!this.byName.has(normal(word))) this.byName.set(normal(word), key);
  }
  /** The key that a heading without its bracket names. */
  find(name: string): K | undefined {
    return this.byName.get(normal(name));
  }
}
