import { gathered } from "../../src/edge/gathered";
import type { Arg, Formula } from "../../src/core/formula";
import { isWhole } from "../../src/core/formula";
import { parametersOf } from "../../src/core/describe";
import { answer } from "../../src/edge/sheet";
import { isError, onTheWire, rich } from "./cells";
import type { CellValue } from "./cells";
import { given } from "./excelHost";
import type { Call } from "./excelHost";

/** One function called in one way, and what its calculation answers to the same cells without Excel. */
export interface Case {
  readonly way: string;
  readonly call: Call;
  readonly expected: unknown[][];
}

type Cells = readonly (readonly CellValue[])[];

const range = (typed: unknown): Cells => (Array.isArray(typed) ? (typed as Cells) : [[typed as CellValue]]);

/** An answer with its numbers to ten digits: Chromium's and Node's engines may differ in the last ones. */
export const rounded = (rows: readonly (readonly unknown[])[]): unknown[][] =>
  rows.map((row) => row.map((cell) => (typeof cell === "number" ? Number(cell.toPrecision(10)) : cell)));

/** Every way in which Excel hands arguments over, on the function's own example. */
export function waysToCall(f: Formula): Case[] {
  const { id, args } = f.spec;
  const example = f.spec.example.map(range);
  const all = Object.values<Arg>(args);
  const rest = all.findIndex(({ kind }) => kind === "rest");
  const length = parametersOf(f.spec).length;
  const on = (cells: readonly Cells[], each: (cell: CellValue) => unknown, padded: boolean): unknown[] => {
    const wired = cells.map((one) => one.map((line) => line.map(each)));
    const shaped: unknown[] = rest < 0 ? wired : [...wired.slice(0, rest), wired.slice(rest)];
    return padded ? [...shaped, ...Array<null>(Math.max(0, length - shaped.length)).fill(null)] : shaped;
  };
  const expected = (cells: readonly Cells[]) => {
    const plain = (cell: CellValue) => (isError(cell) ? { type: "Error", basicValue: cell.error } : cell);
    const handed = gathered(
      f,
      cells.map((one) => one.map((line) => line.map(plain))),
    );
    return answer(
      f,
      parametersOf(f.spec).map((_, i) => handed[i] ?? null),
      host,
    );
  };
  const of = (
    way: string,
    each: (cell: CellValue) => unknown,
    { cells = example, padded = false, flags = Number(given.errorsAndTypes) } = {},
  ): Case => ({ way, call: { name: id, args: on(cells, each, padded), flags }, expected: expected(cells) });
  const same = (cell: CellValue) => cell;
  const cases = [
    of("each argument, null for what is left out", same, { padded: true }),
    of("nothing for what is left out at the end", same),
    of("numbers with a format", (cell) => wrapped(cell, "FormattedNumber", "basicValue")),
    of("numbers with a format, older form", (cell) => wrapped(cell, "FormattedNumber", "primitive")),
    of("entities with a value", (cell) => wrapped(cell, "Entity", "basicValue")),
    of("no data types", same, { flags: given.errorsAlone }),
  ];
  // a column with a blank, text, an error cell: in the first argument that combines cell by cell
  const at = all.findIndex((arg) => !isWhole(arg));
  if (at < 0 || example[at] === undefined) return cases;
  const [[first]] = example[at] as [[CellValue]];
  const column: Cells = [[first], [""], ["fair words"], [{ error: "#DIV/0!" }], [{ error: "#NAME?" }], [first]];
  const cells = example.map((one, i) => (i === at ? column : one));
  cases.push(of("a column with a blank, text and errors", onTheWire, { cells }));
  const asOlder = (cell: CellValue) => (isError(cell) ? { type: "CustomFunctionError", code: cell.error } : cell);
  cases.push(of("such a column without data types", asOlder, { cells, flags: given.errorsAlone }));
  cases.push(of("such a column with null for the blank", (c) => (c === "" ? null : onTheWire(c)), { cells }));
  return cases;
}

function wrapped(cell: CellValue, type: string, name: "basicValue" | "primitive"): unknown {
  return typeof cell === "number" ? rich({ type, [name]: cell, basicType: "Double", text: String(cell) }) : cell;
}

/** As `office` of the edge, which answers with the class that Excel supplies. */
const officeCodes = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"];
const host = {
  error: (code: string, message?: string): CellValue => {
    const own = officeCodes.includes(code)
      ? { error: code, message }
      : { error: "#N/A", message: message ?? `a cell that this needs holds ${code}` };
    return own.message === undefined ? { error: own.error } : own;
  },
};
