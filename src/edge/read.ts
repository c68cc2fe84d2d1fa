import { readCell } from "../core/table/cell";
import { BushError, clash, isMissing, mustBe, orFault } from "../core/errors";
import type { Answer, ArgumentReader, Cell, Formula, ListArg } from "../core/formula";
import type { System } from "../core/kinds";
import { matrixOf, plainCell } from "./cells";
import { rawCell, checkCurrencies, isRange, readElement } from "./element";
import { firstWhere, shapeOf } from "./shape";
import type { Shape, Whole } from "./shape";
import { inSheetUnits, kindAt } from "./write";

/** The unit system that a row asks for; metric where none is named. */
export const systemAt = ({ units }: Shape, row: number, col: number): System =>
  units ? (readElement(units, rawCell(units, row, col), "metric") as System) : "metric";

/** Every argument of one place by its name, as the calculation takes it; throws what is wrong with the first that is wrong. */
export function valuesAt(shape: Shape, system: System, row: number, col: number): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const e of shape.elements) values[e.name] = readElement(e, rawCell(e, row, col), system);
  checkCurrencies(shape.elements, row, col);
  return Object.assign(values, wholeValues(shape, system));
}

export const wholeValues = ({ wholes }: Shape, system: System): Record<string, unknown> =>
  Object.fromEntries(wholes.map((w) => [w.name, readOnce(w, system)]));

/** Nothing and a fault are kept as well: else a column of calls reads a tall table over for each of them. */
function readOnce(whole: Whole, system: System): unknown {
  if (!(system in whole.read)) whole.read[system] = orFault(() => readWhole(whole, system));
  const read = whole.read[system];
  if (read instanceof BushError) throw read;
  return read;
}

function readWhole({ name, arg, raw }: Whole, system: System): unknown {
  if (arg.kind === "rest")
    return { read: (f) => readSingle(f, Array.isArray(raw) ? raw : []) } satisfies ArgumentReader;
  const cells =
    raw === null || raw === undefined ? [] : matrixOf(raw).map((line) => line.map((cell) => tableCell(name, cell)));
  if (cells.every((line) => line.every((cell) => cell === null))) {
    if (!arg.optional) throw isMissing(name);
    return undefined;
  }
  return arg.kind === "list" ? readList(name, arg, cells, system) : arg.read(cells, system, name);
}

/** The values of a call for one row of inputs, in working units, and its answers; throws the error that it would answer. */
export function readSingle(f: Formula, given: readonly unknown[]): ReturnType<ArgumentReader["read"]> {
  refuseSurplus(f, given);
  const shape = shapeOf(f, given);
  if (shape.rows * shape.cols > 1) {
    const ranged = firstWhere(shape, isRange);
    throw clash(ranged, `${ranged} must be one value here, got a range`);
  }
  const system = systemAt(shape, 0, 0);
  const values = valuesAt(shape, system, 0, 0);
  const cells = [f.calc(values, system) as Answer | Answer[]].flat();
  const answers = cells.map((cell, i) => inSheetUnits(f, cell, kindAt(f.spec.result, i), system));
  return { values, system, answers };
}

/** A host counts the arguments of a call itself, but not those that another function takes for it. */
function refuseSurplus({ spec }: Formula, given: readonly unknown[]): void {
  const most = Object.keys(spec.args).length + (spec.units === false ? 0 : 1);
  given.forEach((raw, i) => {
    if (i < most || raw === null || raw === undefined) return;
    const found = matrixOf(raw)
      .flat()
      .map(plainCell)
      .find((cell) => cell !== null);
    if (found !== undefined) throw mustBe(`argument ${i + 1}`, `empty, as ${spec.id} takes ${most}`, found);
  });
}

/** A table's cell; an object without a plain value is told by the table's name. */
function tableCell(name: string, raw: unknown): Cell {
  const cell = plainCell(raw);
  return cell instanceof BushError && cell.code === "value"
    ? mustBe(`a cell of ${name}`, "a number or text", raw)
    : cell;
}

/** A range as one list, read row by row; blanks keep their place. */
function readList(name: string, arg: ListArg, cells: Cell[][], system: System): unknown[] {
  const { of } = arg;
  return cells.flat().map((cell, i) => {
    if (cell === null) return undefined;
    if (cell instanceof BushError) throw cell;
    return of === "text" ? String(cell) : readCell(`${name} ${i + 1}`, { ...arg, kind: of }, cell, system);
  });
}
