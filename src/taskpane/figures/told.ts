import type { NamedDuty, Ranked } from "../../core/duties";
import type { Library } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import type { PieceOrder } from "../insert/blocks";

/** What a picture is of: the duty as it is judged, and one grade. */
export interface Subject {
  readonly duty: NamedDuty;
  readonly one: Ranked;
  readonly library: Library;
  readonly system: System;
}

/** Numbers behind a picture, as a table. */
export interface Numbers {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A picture in words and numbers, and what puts them into the sheet. */
export interface Told {
  readonly summary: string;
  readonly numbers: Numbers;
  readonly piece: PieceOrder;
}

/** Why there is no picture. */
export interface Untold {
  readonly why: string;
}
export const isUntold = (one: object): one is Untold => "why" in one;

/** One line of bars: what it is called and where it reaches. */
export interface Bar {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** A further part that may be. */
  readonly faint?: readonly [number, number] | undefined;
}

/** A line over the values of x. */
export interface Line {
  readonly name: string;
  /** One for each value of x; nothing leaves a gap. */
  readonly values: readonly (number | undefined)[];
}

/** Round numbers from the first to the last, both included. */
export const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => Number((from + ((to - from) * i) / (count - 1)).toPrecision(4)));
