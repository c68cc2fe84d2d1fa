import { arithmetic, CellError, passing, same, spread } from "./values";
import type { Grid } from "./values";

/** The few of a spreadsheet's own functions that the workbooks use. */
export function native(name: string, given: readonly Grid[]): Grid {
  const numbers = () => given.flat(2).filter((cell): cell is number => typeof cell === "number");
  const one = (calculate: (x: number) => number): Grid =>
    spread([given[0]!], ([a]) => passing([a!]) ?? arithmetic(a!, 0, calculate));
  switch (name) {
    case "PI":
      return [[Math.PI]];
    case "MIN":
      return [[Math.min(...numbers())]];
    case "MAX":
      return [[Math.max(...numbers())]];
    case "SUMPRODUCT":
      return [
        [
          given[0]!
            .flat()
            .reduce<number>((sum, _, i) => sum + given.reduce((p, g) => p * Number(g.flat()[i] ?? 0), 1), 0),
        ],
      ];
    case "SUM":
      return [[numbers().reduce((a, b) => a + b, 0)]];
    case "SQRT":
      return one(Math.sqrt);
    case "LN":
      return one(Math.log);
    case "ABS":
      return one(Math.abs);
    case "ATAN":
      return one(Math.atan);
    case "DEGREES":
      return one((x) => (x * 180) / Math.PI);
    case "ROUND": {
      const by = 10 ** Number(given[1]![0]![0]);
      return one((x) => (Math.sign(x) * Math.round(Math.abs(x) * by)) / by);
    }
    case "REPT":
      return spread(
        [given[0]!, given[1]!],
        ([text, times]) => passing([text!, times!]) ?? String(text).repeat(Number(times)),
      );
    case "IFERROR":
      return spread([given[0]!, given[1]!], ([a, b]) => (a instanceof CellError ? b! : a!));
    case "ROWS":
      return [[given[0]!.length]];
    case "IF": {
      const [tests, yes, no = [[false]]] = given as [Grid, Grid, Grid?];
      // one test chooses a whole range, as Excel has it
      if (tests.length === 1 && tests[0]!.length === 1) {
        const error = passing(tests[0]!);
        return error ? [[error]] : tests[0]![0] ? yes : no;
      }
      return spread([tests, yes, no], ([test, a, b]) => passing([test!]) ?? (test ? a! : b!));
    }
    case "INDEX":
      return index(given[0]!, Number(given[1]![0]![0]), Number(given[2]?.[0]?.[0] ?? 1));
    case "MATCH": {
      const place = given[1]!.flat().findIndex((cell) => same(cell, given[0]![0]![0]!));
      return [[place < 0 ? new CellError("#N/A") : place + 1]];
    }
    default:
      throw new Error(`${name} is not among the functions that the workbooks use`);
  }
}

function index(grid: Grid, row: number, col: number): Grid {
  return [[grid[row - 1]?.[col - 1] ?? null]];
}
