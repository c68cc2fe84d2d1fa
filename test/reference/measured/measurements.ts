import { readFileSync } from "node:fs";

/** What somebody measured, as data/measurements.json has it, in the units printed beside it. */
export interface Measurement {
  readonly model: string;
  /** Material and conditions in words. */
  readonly what: string;
  /** What the prediction starts from: the printed conditions alone. */
  readonly given: Readonly<Record<string, unknown>>;
  readonly measured: number;
  readonly unit: string;
  /** On which side a prediction is unsafe. */
  readonly unsafe: "low" | "high";
  /** Half-width of the measurement's own scatter, in its unit; none where the source tells none. */
  readonly scatter?: number;
  readonly source: string;
  readonly at?: string;
  readonly label: "read" | "memory" | "derived";
  readonly note?: string;
  /** What the same equations predicted, solved apart from this code. */
  readonly simple?: number;
}

/** A finding without a figure to predict. */
export interface Words {
  readonly model: string;
  readonly source: string;
  readonly at: string;
  readonly found: string;
  readonly label: string;
}

interface File {
  readonly sources: Readonly<Record<string, string>>;
  readonly measurements: readonly Measurement[];
  readonly words: readonly Words[];
}

export const { sources, measurements, words } = JSON.parse(readFileSync("data/measurements.json", "utf8")) as File;

/** Title of a source and the place in it. */
export const cited = ({ source, at }: Pick<Measurement, "source" | "at">): string =>
  [sources[source] ?? source, at].filter(Boolean).join("; ");
