import type { Label } from "./labels";

/** Where a published value comes from. */
export interface Origin {
  /** A key of data/sources.json. */
  readonly source: string;
  /** The place in it; none where a value was recalled without a page, or is common practice. */
  readonly at?: string;
  readonly label: Exclude<Label, "own" | "invented">;
  readonly condition?: string;
  /** The value as the source prints it, with its unit and the band whose safe end it is. */
  readonly printed: string;
}
