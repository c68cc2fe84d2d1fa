import type { Arg, Args, Cell, ListArg, NumberArg, RestArg, Span, TableArg } from "./args";
import type { BushError } from "./errors";
import { readGiven } from "./given";
import type { Kind, Quantity, System } from "./kinds";

export type * from "./args";

/** What stands behind a rest argument: reads it as the arguments of the formula it is asked for, and asks that for its answer. */
export interface ArgumentReader {
  read(f: Formula): {
    readonly values: Readonly<Record<string, unknown>>;
    readonly system: System;
    /** What the formula answers, in the sheet's units, a spilled row cell by cell; an error of the whole is thrown. */
    readonly answers: readonly (number | string | BushError)[];
  };
}

type Given<A> = A extends { kind: "choice"; choices: readonly (infer C)[] }
  ? C
  : A extends { kind: "text" }
    ? string
    : A extends { kind: "span" }
      ? Span
      : A extends { kind: "rest" }
        ? ArgumentReader
        : A extends { kind: "list"; of: infer O }
          ? (O extends Kind ? Quantity<O> | undefined : string | undefined)[]
          : A extends { kind: "table" | "notation"; read(...args: never[]): infer T }
            ? T
            : A extends { kind: infer K extends Kind }
              ? Quantity<K>
              : Cell;
type MayLack<A> = A extends { optional: true } ? (A extends { default: unknown } ? false : true) : false;
export type Values<A extends Args> = {
  [N in keyof A]: MayLack<A[N]> extends true ? Given<A[N]> | undefined : Given<A[N]>;
};
/** A direct call may give what a cell or a range would hold, where the argument has a notation for it. */
type Typed<A> =
  | Given<A>
  | (A extends { kind: "span" }
      ? number | string
      : A extends { kind: "notation" }
        ? string
        : A extends { kind: "table" }
          ? readonly (readonly Cell[])[]
          : never);
type Input<A extends Args> = { [N in keyof A as A[N] extends { optional: true } ? never : N]: Typed<A[N]> } & {
  [N in keyof A as A[N] extends { optional: true } ? N : never]?: Typed<A[N]> | undefined;
};

/** A number whose kind is known only when it is computed (a property, a row of a check table). */
export class Measure {
  constructor(
    readonly value: number,
    readonly kind: Kind,
  ) {}
}
/** The name of a kind's unit in the sheet's unit system. */
export class UnitLabel {
  constructor(readonly kind: Kind) {}
}
export type Answer = number | string | Measure | UnitLabel | BushError;

export interface NumberResult {
  readonly kind: Kind;
  readonly symbol: string;
  readonly text?: string;
  /** A shorter name for the line of a working; without it the text, or the function's, up to its first stop. */
  readonly label?: string;
}
export interface TextResult {
  readonly kind: "text" | "measure";
  readonly text: string;
}
export interface Column {
  readonly name: string;
  /** A Kind converts plain numbers of the column; "text" and "measure" leave it to the cell. */
  readonly kind: Kind | "text" | "measure";
  /** Where the working computes this column. */
  readonly symbol?: string;
}
/** "row": one row of values without a heading. "table": a heading and as many rows as there are. */
export interface SpillResult {
  readonly shape: "row" | "table";
  readonly columns: readonly Column[] | "by property";
  readonly text: string;
}
export type Result = NumberResult | TextResult | SpillResult;

export interface Source {
  /** A key of data/sources.json. */
  readonly key: string;
  /** Chapter, table or equation in it. */
  readonly at?: string;
}

/** A symbol that a working defines on its way to the result: its unit in the metric system and what it is. */
export interface Between {
  readonly unit: string;
  readonly text: string;
}
type Betweens = Readonly<Record<string, Between>>;
/** A figure out of data: its value, and what it is and where it comes from. */
export interface Lookup {
  readonly value: Measure;
  readonly text: string;
}

/** Written as a method, so that a description with its own arguments is also one of any arguments. */
type Saying<A extends Args, T> = { of(values: Values<A>): T }["of"];

/** The one description of a calculation: validation, units, hints, docs, labels and worked steps all come from it. */
export interface Spec<A extends Args = Args> {
  readonly id: string;
  /** One sentence without a full stop. */
  readonly text: string;
  readonly args: A;
  /** Adds the last argument `units`. */
  readonly units: boolean;
  readonly result: Result;
  /**
   * The formula line by line, in the arguments' symbols; each line defines the symbol on its left, the last one the result.
   * A function of the values where a choice or a left-out argument decides which lines hold.
   */
  readonly working?: readonly string[] | Saying<A, readonly string[]>;
  /**
   * What must hold between the symbols for the function to answer and for these lines to be the right ones: "Di < Do". The
   * ranges of single arguments stand with them.
   */
  readonly requires?: readonly string[] | Saying<A, readonly string[]>;
  /** Fixed numbers of the working that do not just turn units, as written there: what each is. */
  readonly factors?: Readonly<Record<string, string>>;
  /** Symbols that only the working has; a function of the values where their units depend on them. */
  readonly between?: Betweens | Saying<A, Betweens>;
  /** Symbols of the working that come from data, not from an argument: a grade's limit, say. */
  readonly lookups?: Saying<A, Readonly<Record<string, Lookup>>>;
  readonly source: Source | readonly Source[];
  /** Arguments as typed in a sheet, metric, without `units`; a range is an array of rows. */
  readonly example: readonly (number | string | readonly (readonly (number | string)[])[])[];
  /** Ids closely related, for docs. */
  readonly see?: readonly string[];
}

/** A calculation beside its description, whatever its arguments: what the catalogue lists, and what faces walk. */
export interface Formula {
  readonly spec: Spec;
  /** The bare calculation: arguments already validated, defaults already filled in. Only wording needs the unit system. */
  calc(values: Readonly<Record<string, unknown>>, system?: System): unknown;
}

/** One with its own arguments and answer, which code calls directly, in working units. */
export interface FormulaOf<A extends Args, R> extends Formula {
  (values: Input<A>): R;
  readonly spec: Spec<A>;
  calc(values: Values<A>, system?: System): R;
}

/** Puts a calculation beside its description. Called directly, it reads every argument, in working units, and fills defaults in. */
export function formula<const A extends Args, R>(
  spec: Spec<A>,
  calc: (values: Values<A>, system?: System) => R,
): FormulaOf<A, R> {
  const args = Object.entries<Arg>(spec.args);
  const call = (values: Input<A>): R => {
    const read: Record<string, unknown> = {};
    for (const [name, arg] of args) read[name] = readGiven(name, arg, (values as Record<string, unknown>)[name]);
    return calc(read as Values<A>);
  };
  return Object.assign(call, { spec, calc });
}

/** The lines of a formula's working that hold for these values; none where the spec has no working. */
export const workingOf = (f: Formula, values: Readonly<Record<string, unknown>>): readonly string[] =>
  typeof f.spec.working === "function" ? f.spec.working(values) : (f.spec.working ?? []);

/** What must hold between the symbols while the working for these values is the right one. */
export const requiresOf = (
  { spec: { requires = [] } }: Formula,
  values: Readonly<Record<string, unknown>>,
): readonly string[] => (typeof requires === "function" ? requires(values) : requires);

/** The symbols that only the working has for these values. */
export const betweenOf = ({ spec: { between = {} } }: Formula, values: Readonly<Record<string, unknown>>): Betweens =>
  typeof between === "function" ? between(values) : between;

/** A number that a working ends in: its place in the answer, and its name where it has one. */
export interface WorkedResult {
  readonly symbol: string;
  readonly kind: Kind;
  readonly at: number;
  readonly name: string | undefined;
}

/** What a working has to end in: the result's symbol, or the symbols of a spilled answer's columns in order. */
export function resultSymbols(result: Result): WorkedResult[] {
  if (!isSpill(result)) return "symbol" in result ? [{ ...result, at: 0, name: result.label ?? result.text }] : [];
  const columns = result.columns === "by property" ? [] : result.columns;
  return columns.flatMap(({ symbol, kind, name }, at) =>
    symbol === undefined || kind === "text" || kind === "measure" ? [] : [{ symbol, kind, at, name }],
  );
}

const wordKinds: ReadonlySet<string> = new Set(["choice", "text", "span", "list", "table", "notation", "any", "rest"]);
export const isNumberArg = (arg: Arg): arg is NumberArg => !wordKinds.has(arg.kind);
/** List, table and rest arguments are read whole; every other one combines element by element. */
export const isWhole = (arg: Arg): arg is ListArg | TableArg | RestArg => wholeKinds.has(arg.kind);
const wholeKinds: ReadonlySet<string> = new Set(["list", "table", "rest"]);
export const isSpill = (result: Result): result is SpillResult => "shape" in result;
