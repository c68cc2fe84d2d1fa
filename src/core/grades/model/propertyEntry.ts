import type { Kind } from "../../kinds";

interface Described {
  readonly heading: string;
  /** Other headings that mean nothing else. */
  readonly also: readonly string[];
  readonly group: "identity" | "limits" | "running" | "mechanical" | "thermal" | "moisture" | "suitability";
  readonly text: string;
  /** The usual test. */
  readonly method?: string;
  /** The side that serves a bush better, all else equal; left out where that depends on the duty. */
  readonly better?: "higher" | "lower";
}
/** Physical bounds in working units, wide enough for any real part, so that a slip shows. */
type Bounded = { readonly to: number } & (
  { readonly from: number; readonly above?: never } | { readonly above: number; readonly from?: never }
);
interface OfNumber {
  readonly kind: Kind;
  /** Least and greatest of the built-in grades: a slipped decimal or a wrong unit falls outside. */
  readonly plausible?: readonly [least: number, greatest: number];
}
interface OfCurve {
  readonly kind: "curve";
  /** Kind of the curve's values. */
  readonly of: Kind;
}
interface OfChoice {
  readonly kind: "choice";
  readonly words: readonly string[];
}
interface OfWords {
  readonly kind: "text" | "rating" | "list" | "media";
}
/** All that is known of a property: what a table, a message, the pane and the docs say of it follows. */
export type PropertyEntry = Described & ((Bounded & (OfNumber | OfCurve)) | OfChoice | OfWords);
