import { readCell } from "../core/table/cell";
import { BushError, clash, isMissing, mustBe } from "../core/errors";
import { isNumberArg } from "../core/formula";
import type { Arg } from "../core/formula";
import { readChoice } from "../core/given";
import { checkOneCurrency } from "../core/units/money";
import type { System } from "../core/kinds";
import { present } from "../core/present";
import { readSpan } from "../core/span";
import { matrixOf, plainCell } from "./cells";

/** An argument that combines element by element; a step of 0 repeats its only row or column. */
export interface Element {
  readonly name: string;
  readonly arg: Arg;
  readonly cells: unknown[][];
  readonly rows: number;
  readonly cols: number;
}

export function element(name: string, arg: Arg, raw: unknown): Element {
  const cells = matrixOf(raw);
  return { name, arg, cells, rows: cells.length, cols: present(cells[0]).length };
}

export const isRange = (e: Element): boolean => e.rows * e.cols > 1;

export const rawCell = (e: Element, row: number, col: number): unknown =>
  present(e.cells[e.rows > 1 ? row : 0])[e.cols > 1 ? col : 0];

/** One shape, one row, one column or one value combine; anything else is an error that names both. */
export function combinedShape(elements: readonly Element[]): [number, number] {
  const tallest = elements.reduce<Element | undefined>((a, b) => (b.rows > (a?.rows ?? 1) ? b : a), undefined);
  const widest = elements.reduce<Element | undefined>((a, b) => (b.cols > (a?.cols ?? 1) ? b : a), undefined);
  const rows = tallest?.rows ?? 1;
  const cols = widest?.cols ?? 1;
  for (const e of elements) {
    const other = e.rows !== 1 && e.rows !== rows ? tallest : e.cols !== 1 && e.cols !== cols ? widest : undefined;
    if (other)
      throw clash(e.name, `${other.name} (${size(other)}) and ${e.name} (${size(e)}) cannot combine: give equal sizes`);
  }
  return [rows, cols];
}
const size = (e: Element): string => `${e.rows}×${e.cols}`;

/** One cell of an argument as the calculation takes it; throws what is wrong with it. */
export function readElement({ name, arg }: Element, raw: unknown, system: System): unknown {
  const cell = plainCell(raw);
  if (cell instanceof BushError) throw cell.argument === "cell" ? mustBe(name, "a number or text", raw) : cell;
  if (cell === null) {
    if (!arg.optional) throw isMissing(name);
    return "default" in arg ? arg.default : undefined;
  }
  if (isNumberArg(arg)) return readCell(name, arg, cell, system);
  switch (arg.kind) {
    case "choice":
      return readChoice(name, arg, cell);
    case "text":
      if (typeof cell === "boolean") throw mustBe(name, "text", cell);
      return String(cell);
    case "span":
      return readSpan(name, cell, system);
    case "notation":
      return arg.read(cell, system, name);
    default:
      return cell;
  }
}

/** Amounts of one call are added up, so they have one currency. */
export function checkCurrencies(elements: readonly Element[], row: number, col: number): void {
  const amounts = elements.filter(({ arg }) => arg.kind === "money");
  const [first] = amounts;
  if (first && amounts.length > 1)
    checkOneCurrency(
      first.name,
      amounts.map((e) => rawCell(e, row, col)),
    );
}
