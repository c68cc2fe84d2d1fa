import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { fromWorking, scaleIn } from "../units/scale";
import type { Tree } from "./working";

/** A quantity of a working, in the units that it is worked in. */
export interface Entry {
  readonly text: string;
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
}
export interface Line extends Entry {
  readonly tree: Tree;
  /** Only a change of units, not a line of the formula: the symbol whose value it is. */
  readonly converts?: string;
}
/** A line that turns a quantity into the other system of units, and the figures that it puts in. */
export interface Conversion {
  readonly line: Line;
  readonly figures: readonly Entry[];
}

/** "F = 180 lbf × 4.448 N/lbf = 800.7 N", or back again under a name of its own; no working has names with a space. */
export function conversion(entry: Omit<Entry, "unit">, kind: Kind, to: System): Conversion {
  const { symbol, value: working } = entry;
  const from: System = to === "metric" ? "inch" : "metric";
  const figures: Entry[] = [];
  const figure = (name: string, value: number, unit: string): Tree => {
    figures.push({ text: "", symbol: `${symbol} ${name}`, value, unit });
    return { type: "symbol", name: `${symbol} ${name}` };
  };
  const given: Tree =
    to === "inch" ? { type: "symbol", name: symbol } : figure("typed", inch(kind, working), kinds[kind].inch);
  const [five, nine] = to === "metric" ? [5, 9] : [9, 5];
  const fifths = (tree: Tree): Tree => ({ type: "product", over: [tree, number(five)], under: [number(nine)] });
  const tree = (): Tree => {
    if (kind === "rise") return fifths(given);
    if (kind !== "temperature") {
      const { factor } = scaleIn(kind, "inch");
      const unit = perUnit(kinds[kind][to], kinds[kind][from]);
      return {
        type: "product",
        over: [given, figure("factor", to === "metric" ? factor : 1 / factor, unit)],
        under: [],
      };
    }
    const zero = { isMinus: to === "metric", tree: figure("zero", 32, kinds[kind].inch) };
    return to === "metric"
      ? fifths({ type: "sum", terms: [{ isMinus: false, tree: given }, zero] })
      : { type: "sum", terms: [{ isMinus: false, tree: fifths(given) }, zero] };
  };
  const result =
    to === "metric"
      ? { text: entry.text, symbol, value: working }
      : { text: `${entry.text}, converted`, symbol: `${symbol} in inch units`, value: inch(kind, working) };
  return { line: { ...result, unit: kinds[kind][to], tree: tree(), converts: symbol }, figures };
}

const number = (value: number): Tree => ({ type: "number", value });

/** What was typed in inches comes back from millimetres without a digit of rounding. */
export const inch = (kind: Kind, working: number): number => Number(fromWorking(kind, working, "inch").toPrecision(14));

/** The factor's unit where it reads well: N/lbf, but none for units that are quotients themselves. */
const perUnit = (over: string, under: string): string => (/[·/]/.test(over + under) ? "" : `${over}/${under}`);
