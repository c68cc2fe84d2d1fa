import type { BushError } from "./errors";
import type { Kind, System } from "./kinds";

/** The arguments that a calculation may take. */

/** What a cell may hold once the host's own wrappings are off. */
export type Cell = number | string | boolean | null | BushError;

interface Described {
  /** One phrase: what it is. Unit, range and default are added from the fields below. */
  readonly text: string;
  /** A shorter name for a line of a working; without it the text up to its first stop. */
  readonly label?: string;
  readonly optional?: true;
}
/** A number with a kind; bounds are in working units. `above`/`below` exclude the bound, `from`/`to` include it. */
export interface NumberArg extends Described {
  readonly kind: Kind;
  readonly symbol: string;
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  /** Pieces come whole. */
  readonly whole?: true;
  readonly default?: number;
}
/** One word out of a list; matching ignores case and surrounding space. */
export interface ChoiceArg extends Described {
  readonly kind: "choice";
  readonly choices: readonly string[];
  readonly default?: string;
}
export interface TextArg extends Described {
  readonly kind: "text";
}
/** One temperature, or the lowest and highest of a duty as text: "-20 to 60". */
export interface SpanArg extends Described {
  readonly kind: "span";
}
/** A range read as one list, not element by element; a blank stays `undefined` in its place. */
export interface ListArg extends Described {
  readonly kind: "list";
  readonly of: Kind | "text";
  readonly from?: number;
  readonly above?: number;
}
/** A range with meaning as a whole, read by `read`; `what` names its shape in the docs. */
export interface TableArg<T = unknown> extends Described {
  readonly kind: "table";
  readonly what: string;
  read(cells: Cell[][], system: System, name: string): T;
}
/** One cell in a notation of its own, such as a tolerance zone, read by `read`; `what` names the notation in the docs. */
export interface NotationArg<T = unknown> extends Described {
  readonly kind: "notation";
  readonly what: string;
  read(cell: number | string | boolean, system: System, name: string): T;
  /** What was read, in a unit system's words; without it as text. */
  show?(value: T, system: System): string;
}
/** Any cell as it stands, for functions that judge the kind themselves. */
export interface AnyArg extends Described {
  readonly kind: "any";
}
/** Any number of further arguments, as another formula's arguments. */
export interface RestArg extends Described {
  readonly kind: "rest";
}
export type Arg = NumberArg | ChoiceArg | TextArg | SpanArg | ListArg | TableArg | NotationArg | AnyArg | RestArg;
export type Args = Readonly<Record<string, Arg>>;

/** The lowest and highest temperature of a duty, °C. */
export interface Span {
  readonly low: number;
  readonly high: number;
}
