import { CellError } from "../../edge/host";
import { arithmetic, passing, same, spread } from "./values";
import type { Grid } from "./values";

type Native = (given: readonly Grid[]) => Grid;

/** One of the few of a spreadsheet's own functions that the workbooks use. */
export function native(name: string, given: readonly Grid[]): Grid {
  const calculate = natives.get(name);
  if (!calculate) throw new Error(`${name} is not among the functions that the workbooks use`);
  return calculate(given);
}

const numbersIn = (given: readonly Grid[]): number[] =>
  given.flat(2).filter((cell): cell is number => typeof cell === "number");

/** A function of one number, cell by cell. */
const ofOne =
  (calculate: (x: number) => number): Native =>
  ([grid]) =>
    spread([grid!], ([a]) => passing([a!]) ?? arithmetic(a!, 0, calculate));

function sumProduct(given: readonly Grid[]): Grid {
  const lists = given.map((grid) => grid.flat());
  const terms = (lists[0] ?? []).map((_, i) => lists.reduce((product, list) => product * Number(list[i] ?? 0), 1));
  return [[terms.reduce((sum, term) => sum + term, 0)]];
}

const round: Native = ([numbers, digits]) => {
  const by = 10 ** Number(digits![0]![0]);
  return ofOne((x) => (Math.sign(x) * Math.round(Math.abs(x) * by)) / by)([numbers!]);
};

const either: Native = (given) => {
  const [tests, yes, no = [[false]]] = given as [Grid, Grid, Grid?];
  // one test chooses a whole range, as Excel has it
  if (tests.length === 1 && tests[0]!.length === 1) {
    const error = passing(tests[0]!);
    return error ? [[error]] : tests[0]![0] ? yes : no;
  }
  return spread([tests, yes, no], ([test, a, b]) => passing([test!]) ?? (test ? a! : b!));
};

const match: Native = ([wanted, list]) => {
  const place = list!.flat().findIndex((cell) => same(cell, wanted![0]![0]!));
  return [[place < 0 ? new CellError("#N/A") : place + 1]];
};

const repeat: Native = ([texts, counts]) =>
  spread([texts!, counts!], ([text, times]) => passing([text!, times!]) ?? String(text).repeat(Number(times)));

const natives: ReadonlyMap<string, Native> = new Map<string, Native>([
  ["PI", () => [[Math.PI]]],
  ["MIN", (given) => [[Math.min(...numbersIn(given))]]],
  ["MAX", (given) => [[Math.max(...numbersIn(given))]]],
  ["SUM", (given) => [[numbersIn(given).reduce((a, b) => a + b, 0)]]],
  ["SUMPRODUCT", sumProduct],
  ["SQRT", ofOne(Math.sqrt)],
  ["LN", ofOne(Math.log)],
  ["ABS", ofOne(Math.abs)],
  ["ATAN", ofOne(Math.atan)],
  ["DEGREES", ofOne((x) => (x * 180) / Math.PI)],
  ["ROUND", round],
  ["REPT", repeat],
  ["IFERROR", ([a, b]) => spread([a!, b!], ([value, instead]) => (value instanceof CellError ? instead! : value!))],
  ["ROWS", ([grid]) => [[grid!.length]]],
  ["IF", either],
  ["INDEX", ([grid, row, col]) => index(grid!, Number(row![0]![0]), Number(col?.[0]?.[0] ?? 1))],
  ["MATCH", match],
]);

function index(grid: Grid, row: number, col: number): Grid {
  return [[grid[row - 1]?.[col - 1] ?? null]];
}
