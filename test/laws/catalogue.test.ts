import { catalogue } from "../../src/core";
import { isNumberArg, isSpill, isWhole } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { excludesZero } from "../../src/core/domain";
import { kinds } from "../../src/core/kinds";
import { fromWorking } from "../../src/core/units/scale";
import { asInch, call, CellError, inInch } from "../support";

/** Laws that hold for every function, driven by the catalogue: a new one is covered on arrival. */
const byId = catalogue.map((f) => [f.spec.id, f] as const);
const args = (f: Formula): [string, Arg][] => Object.entries<Arg>(f.spec.args);
const example = (f: Formula): unknown[] => [...f.spec.example];
const elementwise = byId.filter(([, f]) => args(f).some(([, arg]) => !isWhole(arg)));

/** The example with each of its numbers scaled a little, so that more than one point is tried. */
const scaled = (f: Formula, by: number): unknown[] =>
  example(f).map((value, i) => {
    const arg = args(f)[i]?.[1];
    const isFree =
      arg && isNumberArg(arg) && arg.kind !== "ratio" && arg.kind !== "temperature" && arg.kind !== "count";
    return typeof value === "number" && isFree ? value * by : value;
  });

const isError = (cell: unknown): cell is CellError => cell instanceof CellError;

const same = (a: unknown, b: unknown, relative = 1e-9): void => {
  if (typeof a === "number" && typeof b === "number")
    expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-12);
  else expect(b).toEqual(a);
};

test.each(byId)("%s answers its own example", (_, f) => {
  const answer = call(f, example(f));
  expect(answer.flat().filter(isError)).toEqual([]);
  expect(answer.flat().length).toBeGreaterThan(0);
});

describe("metric and inch give the same answer", () => {
  const dimensional = byId.filter(([, f]) => f.spec.units);
  test.each(dimensional)("%s", (_, f) => {
    for (const by of [1, 1.0007, 0.93]) {
      const given = scaled(f, by);
      const metric = call(f, given);
      const inch = call(
        f,
        given.map((value, i) => inInch(args(f)[i]![1], value)),
        "inch",
      );
      expect(inch.length).toBe(metric.length);
      compare(f, metric, inch);
    }
  });

  function compare(f: Formula, metric: unknown[][], inch: unknown[][]): void {
    const { result } = f.spec;
    const heading = isSpill(result) && result.shape === "table" ? metric[0]! : [];
    metric.forEach((line, row) =>
      line.forEach((cell, col) => {
        if (row === 0 && heading.length > 0) return;
        const unit = unitOf(f, metric, row, col);
        if (typeof cell === "string") expect(typeof inch[row]![col]).toBe("string");
        else same(unit === undefined ? cell : asInch(cell, unit), inch[row]![col], 1e-7);
      }),
    );
  }

  /** The unit of a number in a metric answer: of its kind, its heading's bracket, or its row's unit column. */
  function unitOf(f: Formula, metric: unknown[][], row: number, col: number): string | undefined {
    const { result } = f.spec;
    if (!isSpill(result))
      return result.kind === "text" || result.kind === "measure" ? measureUnit(f) : kinds[result.kind].metric;
    if (result.columns === "by property") return /\[(.*)\]/.exec(String(metric[0]![col]))?.[1];
    const column = result.columns[col]!;
    if (column.kind !== "text" && column.kind !== "measure") return kinds[column.kind].metric;
    const unitColumn = result.columns.findIndex((c) => c.name === "unit");
    return unitColumn < 0 ? undefined : String(metric[row]![unitColumn]);
  }
  /** GRADE and ALLOWABLE are asked for a PV limit in their examples. */
  const measureUnit = (f: Formula) => (f.spec.example[1] === "PV limit" ? kinds.pv.metric : undefined);
});

describe("text with a unit overrides the sheet's system", () => {
  const dimensional = byId.filter(
    ([, f]) => f.spec.units && !isSpill(f.spec.result) && args(f).some(([, a]) => isNumberArg(a)),
  );
  test.each(dimensional)("%s", (_, f) => {
    const typed = example(f).map((value, i) => {
      const arg = args(f)[i]![1];
      return isNumberArg(arg) && typeof value === "number"
        ? `${fromWorking(arg.kind, value, "inch")} ${kinds[arg.kind].inch}`
        : value;
    });
    same(call(f, example(f))[0]![0], call(f, typed)[0]![0]);
  });
});

describe("ranges", () => {
  test.each(elementwise)("%s: a value and a 1×1 range are the same", (_, f) => {
    const wrapped = example(f).map((value) => (Array.isArray(value) || value === null ? value : [[value]]));
    const rest = args(f).some(([, arg]) => arg.kind === "rest");
    expect(call(f, rest ? example(f) : wrapped)).toEqual(call(f, example(f)));
  });

  const tallies = elementwise.filter(([, f]) => !args(f).some(([, arg]) => arg.kind === "rest"));
  test.each(tallies)("%s: a column answers row by row, and rows do not know each other", (_, f) => {
    const at = args(f).findIndex(([, arg]) => !isWhole(arg));
    const one = example(f)[at];
    const column = example(f);
    column[at] = [[one], ["no such thing"], [one]];
    const single = call(f, example(f));
    const answer = call(f, column);
    const { result } = f.spec;
    if (isSpill(result) && result.shape === "table") {
      const [heading, ...lines] = answer;
      expect(heading![0]).toBe("row");
      expect(lines.filter((line) => line[0] === 1).map((line) => line.slice(1))).toEqual(single.slice(1));
      expect(lines.filter((line) => line[0] === 3).map((line) => line.slice(1))).toEqual(single.slice(1));
    } else {
      expect(answer).toHaveLength(3);
      expect(answer[0]).toEqual(single[0]);
      expect(answer[2]).toEqual(single[0]);
    }
  });

  test.each(tallies)("%s: shapes that cannot combine are named", (_, f) => {
    const places = args(f).flatMap(([, arg], i) => (isWhole(arg) || i >= f.spec.example.length ? [] : [i]));
    if (places.length < 2) return;
    const given = example(f);
    given[places[0]!] = [[1], [2], [3]];
    given[places[1]!] = [[1], [2]];
    const [[cell]] = call(f, given) as [[CellError]];
    expect(cell.code).toBe("#VALUE!");
    expect(cell.message).toContain("cannot combine");
    expect(cell.message).toContain(args(f)[places[0]!]![0]);
    expect(cell.message).toContain(args(f)[places[1]!]![0]);
  });
});

describe("blanks and errors", () => {
  const required = (f: Formula) => args(f).flatMap(([, arg], i) => (!arg.optional && !isWhole(arg) ? [i] : []));
  const blankable = elementwise.filter(
    ([, f]) => required(f).length > 0 && !args(f).some(([, arg]) => arg.kind === "rest"),
  );

  test.each(blankable)("%s: a blank row stays blank, however the host hands a blank over", (_, f) => {
    const canBeZeroAll = required(f).every((i) => {
      const arg = args(f)[i]![1];
      return isNumberArg(arg) && !excludesZero(arg);
    });
    const zeroLike = required(f).every((i) => isNumberArg(args(f)[i]![1])) && !canBeZeroAll;
    for (const blank of [null, "", "  ", undefined, ...(zeroLike ? [0] : [])]) {
      const given = example(f);
      for (const i of required(f)) given[i] = [[blank]];
      expect(call(f, given)).toEqual([[""]]);
    }
  });

  test.each(blankable)("%s: one missing input among others is named", (_, f) => {
    if (required(f).length < 2) return;
    for (const i of required(f)) {
      const given = example(f);
      given[i] = [[null]];
      const [[cell]] = call(f, given) as [[CellError]];
      expect(cell.code).toBe("#VALUE!");
      expect(cell.message).toBe(`${args(f)[i]![0]} is missing`);
    }
  });

  test.each(blankable)("%s: a cell error passes through", (_, f) => {
    for (const error of ["#DIV/0!", { type: "Error", basicValue: "#DIV/0!" }, { code: "#DIV/0!" }]) {
      const given = example(f);
      given[required(f)[0]!] = [[error]];
      expect((call(f, given) as [[CellError]])[0][0].code).toBe("#DIV/0!");
    }
  });

  test.each(blankable)("%s: TRUE is not 1, and the argument is named", (_, f) => {
    for (const i of required(f)) {
      const [name, arg] = args(f)[i]!;
      if (!isNumberArg(arg)) continue;
      const given = example(f);
      given[i] = true;
      const [[cell]] = call(f, given) as [[CellError]];
      expect(cell.message).toBe(`${name} must be a number, got TRUE`);
    }
  });

  test.each(blankable)("%s: out of its domain, a number is named with what is accepted", (_, f) => {
    for (const i of required(f)) {
      const [name, arg] = args(f)[i]!;
      if (!isNumberArg(arg) || (arg.above === undefined && arg.from === undefined)) continue;
      const given = example(f);
      given[i] = (arg.above ?? arg.from!) - 5;
      const [[cell]] = call(f, given) as [[CellError]];
      expect(cell.code).toBe("#VALUE!");
      expect(cell.message).toMatch(new RegExp(`^${name} must be .+, got -?[\\d.]+$`));
      expect(cell.message!.length).toBeLessThanOrEqual(120);
    }
  });
});
