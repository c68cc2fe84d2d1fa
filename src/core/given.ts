import { checkDomain } from "./domain";
import { BushError, isMissing, mustBe, orList } from "./errors";
import type { Arg, Cell, ChoiceArg, ListArg, NotationArg, Span, TableArg } from "./args";
import { readSpan } from "./span";

/**
 * One argument of a direct call as the calculation takes it, in working units; as sharp as a sheet's edge, which reads
 * cells instead. Text in an argument's own notation is read, and so are the rows of a table.
 */
export function readGiven(name: string, arg: Arg, given: unknown): unknown {
  if (given === undefined || given === null) return leftOut(name, arg);
  switch (arg.kind) {
    case "choice":
      return readChoice(name, arg, given);
    case "text":
      return textIn(name, given);
    case "span":
      return spanIn(name, given);
    case "notation":
      return notationIn(name, arg, given);
    case "table":
      return tableIn(name, arg, given);
    case "list":
      return listIn(name, arg, given);
    case "any":
      return cellIn(name, given);
    case "rest":
      return readerIn(name, given);
    default:
      return numberIn(name, arg, given);
  }
}

/** What an argument that is left out counts as. */
function leftOut(name: string, arg: Arg): unknown {
  if (!arg.optional) throw isMissing(name);
  return "default" in arg ? arg.default : undefined;
}

function textIn(name: string, given: unknown): string {
  if (typeof given !== "string") throw mustBe(name, "text", given);
  if (given.trim() === "") throw isMissing(name);
  return given;
}

function notationIn(name: string, arg: NotationArg, given: unknown): unknown {
  if (isObject(given)) return readBefore(name, arg, given, arg.what);
  return noted(arg, arg.read(given as Plain, "metric", name));
}

function tableIn(name: string, arg: TableArg, given: unknown): unknown {
  if (isObject(given) && isRows(given)) return noted(arg, arg.read(given, "metric", name));
  return readBefore(name, arg, given, `rows of cells: ${arg.what}`);
}

function cellIn(name: string, given: unknown): Cell {
  if (isCell(given)) return given;
  throw mustBe(name, "a number or text", given);
}

function readerIn(name: string, given: unknown): object {
  if (isObject(given) && "read" in given) return given;
  throw mustBe(name, "a reader of arguments", given);
}

/** What arguments' own readers made, by what each wants: nothing else may stand in place of rows or text. */
const readings = new WeakMap<object, string>();

function noted({ what }: { readonly what: string }, read: unknown): unknown {
  if (isObject(read)) readings.set(read, what);
  return read;
}

function readBefore(name: string, { what }: { readonly what: string }, given: unknown, wanted: string): unknown {
  if (isObject(given) && readings.get(given) === what) return given;
  throw mustBe(name, wanted, given);
}

type Plain = number | string | boolean;
const isObject = (given: unknown): given is object => typeof given === "object" && given !== null;
const isPlain = (given: unknown): given is Plain => ["number", "string", "boolean"].includes(typeof given);
/** Cells as a sheet has them, blanks and errors among them. */
const isRow = (row: unknown): row is Cell[] =>
  Array.isArray(row) &&
  row.every((cell) => cell === null || cell === undefined || isPlain(cell) || cell instanceof BushError);
const isRows = (given: object): given is Cell[][] => Array.isArray(given) && given.every(isRow);
const isCell = (given: unknown): given is Cell =>
  given instanceof BushError || typeof given === "string" || (typeof given === "number" && Number.isFinite(given));

/** One of the words, in the list's own writing; case does not count. */
export function readChoice(name: string, arg: ChoiceArg, given: unknown): string {
  const choice = arg.choices.find((c) => c.toLowerCase() === String(given).trim().toLowerCase());
  if (choice === undefined || isObject(given)) throw mustBe(name, orList(arg.choices.map((c) => `"${c}"`)), given);
  return choice;
}

function numberIn(name: string, bounds: Parameters<typeof checkDomain>[1], given: unknown): number {
  if (typeof given !== "number") throw mustBe(name, "a number", given);
  checkDomain(name, bounds, given, "metric", given);
  return given;
}

function spanIn(name: string, given: unknown): Span {
  if (isPlain(given)) return readSpan(name, given, "metric");
  const { low, high } = given as Partial<Record<keyof Span, unknown>>;
  if (typeof low !== "number" || typeof high !== "number") throw mustBe(name, "two temperatures { low, high }", given);
  for (const end of [low, high]) checkDomain(name, { kind: "temperature" }, end, "metric", end);
  if (low > high) throw mustBe(name, "lowest temperature first", `${low} to ${high}`);
  return { low, high };
}

function listIn(name: string, arg: ListArg, given: unknown): unknown[] {
  if (!Array.isArray(given)) throw mustBe(name, "a list", given);
  return given.map((one: unknown, i) => {
    if (one === undefined || one === null) return undefined;
    const place = `${name} ${i + 1}`;
    if (arg.of !== "text") return numberIn(place, { ...arg, kind: arg.of }, one);
    if (typeof one !== "string") throw mustBe(place, "text", one);
    return one;
  });
}
