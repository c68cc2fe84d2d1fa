import { CellError } from "../../edge/host";
import { arithmetic, passing, same, spread } from "./values";
import type { Grid, Value } from "./values";

/** Takes what stands in the formula; one that gets too little throws. */
type Native = (...given: readonly Grid[]) => Grid;

/** One of the few of a spreadsheet's own functions that the workbooks use. */
export function native(name: string, given: readonly Grid[]): Grid {
  const calculate = natives.get(name);
  if (!calculate) throw new Error(`${name} is not among the functions that the workbooks use`);
  return calculate(...given);
}

const numbersIn = (given: readonly Grid[]): number[] =>
  given.flat(2).filter((cell): cell is number => typeof cell === "number");

/** A function of one number, cell by cell. */
const ofOne =
  (calculate: (x: number) => number): Native =>
  (grid) =>
    spread([grid], (a) => passing([a]) ?? arithmetic(a, 0, calculate));

/** The one cell of an argument that is no range. */
const cellOf = (grid: Grid): Value => {
  const [[cell] = []] = grid;
  if (cell === undefined) throw new Error("an argument is empty");
  return cell;
};

function sumProduct(...given: readonly Grid[]): Grid {
  const lists = given.map((grid) => grid.flat());
  const terms = (lists[0] ?? []).map((_, i) => lists.reduce((product, list) => product * Number(list[i] ?? 0), 1));
  return [[terms.reduce((sum, term) => sum + term, 0)]];
}

function round(numbers: Grid, digits: Grid): Grid {
  const by = 10 ** Number(cellOf(digits));
  return ofOne((x) => (Math.sign(x) * Math.round(Math.abs(x) * by)) / by)(numbers);
}

function either(tests: Grid, yes: Grid, no: Grid = [[false]]): Grid {
  const [first = [], ...others] = tests;
  // one test chooses a whole range, as Excel has it
  if (others.length === 0 && first.length === 1) {
    const error = passing(first);
    return error ? [[error]] : first[0] ? yes : no;
  }
  return spread([tests, yes, no], (test, a, b) => passing([test]) ?? (test ? a : b));
}

function match(wanted: Grid, list: Grid): Grid {
  const sought = cellOf(wanted);
  const place = list.flat().findIndex((cell) => same(cell, sought));
  return [[place < 0 ? new CellError("#N/A") : place + 1]];
}

const repeat: Native = (texts, counts) =>
  spread([texts, counts], (text, times) => passing([text, times]) ?? String(text).repeat(Number(times)));

const natives: ReadonlyMap<string, Native> = new Map<string, Native>([
  ["PI", () => [[Math.PI]]],
  ["MIN", (...given) => [[Math.min(...numbersIn(given))]]],
  ["MAX", (...given) => [[Math.max(...numbersIn(given))]]],
  ["SUM", (...given) => [[numbersIn(given).reduce((a, b) => a + b, 0)]]],
  ["SUMPRODUCT", sumProduct],
  ["SQRT", ofOne(Math.sqrt)],
  ["LN", ofOne(Math.log)],
  ["ABS", ofOne(Math.abs)],
  ["ATAN", ofOne(Math.atan)],
  ["DEGREES", ofOne((x) => (x * 180) / Math.PI)],
  ["ROUND", round],
  ["REPT", repeat],
  ["IFERROR", ifError],
  ["ROWS", (grid) => [[grid.length]]],
  ["IF", either],
  ["INDEX", index],
  ["MATCH", match],
]);

function ifError(values: Grid, others: Grid): Grid {
  return spread([values, others], (value, instead) => (value instanceof CellError ? instead : value));
}

function index(grid: Grid, row: Grid, col?: Grid): Grid {
  return [[grid[Number(cellOf(row)) - 1]?.[Number(col?.[0]?.[0] ?? 1) - 1] ?? null]];
}
