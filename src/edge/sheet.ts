import { BushError, clash } from "../core/errors";
import { isSpill } from "../core/formula";
import type { Answer, Formula, SpillResult } from "../core/formula";
import type { System } from "../core/kinds";
import { office, toHostError } from "./host";
import type { Host } from "./host";
import { PlainRows } from "./plain";
import { systemAt, valuesAt, wholeValues } from "./read";
import { firstWhere, hasManySystems, isBlankRow, shapeOf } from "./shape";
import type { Shape } from "./shape";
import { asBushError, columnHeading, inSheetUnits, kindAt, padded, rowsFrom } from "./write";
import type { CellKind } from "./write";

/**
 * The one way from a host's arguments to a host's answer: ranges combine, blanks and errors stay in their row,
 * units convert at this edge, and nothing but finite numbers, text and host errors comes out.
 */
export function answer(f: Formula, given: readonly unknown[], host: Host = office): unknown[][] {
  try {
    const shape = shapeOf(f, host.argument ? given.map(host.argument) : given);
    return new Call(f, shape, host).run();
  } catch (error) {
    return [[toHostError(host, asBushError(error, f))]];
  }
}

/** One call: `shape.ts` places its arguments, `read.ts` and `plain.ts` read them, `write.ts` turns answers into cells. */
class Call {
  constructor(
    private readonly f: Formula,
    private readonly shape: Shape,
    private readonly host: Host,
  ) {}

  run(): unknown[][] {
    const { result } = this.f.spec;
    if (!isSpill(result)) return this.scalars(result.kind);
    return result.shape === "row" ? this.rowsOf(result) : this.tablesOf(result);
  }

  /** One number or text for each place of the combined shape. */
  private scalars(kind: CellKind): unknown[][] {
    if (hasManySystems(this.shape)) return this.each((row, col) => this.scalarAt(row, col, kind));
    const system = systemAt(this.shape, 0, 0);
    const plain = new PlainRows(this.f, this.shape.elements, system, () => wholeValues(this.shape, system));
    // all answers first, their rows after: short-lived values then leave no row of the answer to be moved about
    const { rows, cols } = this.shape;
    const flat = new Array<unknown>(rows * cols);
    for (let row = 0, at = 0; row < rows; row++)
      for (let col = 0; col < cols; col++) flat[at++] = this.fastAt(plain, row, col, kind, system);
    return rowsFrom(flat, rows, cols);
  }

  private fastAt(plain: PlainRows, row: number, col: number, kind: CellKind, system: System): unknown {
    try {
      const values = plain.valuesAt(row, col);
      if (!values) return this.scalarAt(row, col, kind);
      return this.cell(this.f.calc(values, system) as Answer, kind, system);
    } catch (error) {
      if (!(error instanceof BushError)) return this.fault(error);
      return this.scalarAt(row, col, kind); // says what is wrong, or that the row is blank
    }
  }

  private scalarAt(row: number, col: number, kind: CellKind): unknown {
    try {
      const system = systemAt(this.shape, row, col);
      const value = this.compute(system, row, col);
      return value === blank ? "" : this.cell(value as Answer, kind, system);
    } catch (error) {
      return this.fault(error);
    }
  }

  private fault(error: unknown): unknown {
    return toHostError(this.host, asBushError(error, this.f));
  }

  private each<T>(at: (row: number, col: number) => T): T[][] {
    const { rows, cols } = this.shape;
    return Array.from({ length: rows }, (_, row) => Array.from({ length: cols }, (__, col) => at(row, col)));
  }

  /** Rows of k values below each other; the arguments form one column. */
  private rowsOf(result: SpillResult): unknown[][] {
    if (this.shape.cols > 1) {
      const wide = firstWhere(this.shape, (e) => e.cols > 1);
      throw clash(wide, `${wide} must be one column here: each row answers several values`);
    }
    const lines = this.each((row) => {
      try {
        const system = systemAt(this.shape, row, 0);
        const value = this.compute(system, row, 0);
        return value === blank ? [""] : this.line(value as Answer[], result, system);
      } catch (error) {
        return [this.fault(error)];
      }
    });
    return padded(lines.flat());
  }

  /** One table; where several rows are asked for, their tables stand below each other, numbered in a first column. */
  private tablesOf(result: SpillResult): unknown[][] {
    const many = this.shape.rows * this.shape.cols > 1;
    const system = hasManySystems(this.shape) ? undefined : systemAt(this.shape, 0, 0);
    const heading = result.columns === "by property" ? [] : [result.columns.map((c) => columnHeading(c, system))];
    const blocks = this.each((row, col) => this.table(row, col, result, many)).flat();
    if (!many) return blocks[0] === undefined ? [[""]] : padded([...heading, ...blocks[0]]);
    const numbered = blocks.flatMap((block, i) => block?.map((line) => [i + 1, ...line]) ?? [["", ""]]);
    return padded([...heading.map((line) => ["row", ...line]), ...numbered]);
  }

  /** The table of one place; nothing for a blank row. */
  private table(row: number, col: number, result: SpillResult, many: boolean): unknown[][] | undefined {
    try {
      const system = systemAt(this.shape, row, col);
      const value = this.compute(system, row, col);
      return value === blank ? undefined : (value as Answer[][]).map((line) => this.line(line, result, system));
    } catch (error) {
      if (!many) throw error;
      return [[this.fault(error)]];
    }
  }

  private line(cells: readonly Answer[], result: SpillResult, system: System): unknown[] {
    return cells.map((cell, i) => this.cell(cell, kindAt(result, i), system));
  }

  private compute(system: System, row: number, col: number): unknown {
    if (isBlankRow(this.shape, row, col)) return blank;
    return this.f.calc(valuesAt(this.shape, system, row, col), system);
  }

  /** A cell of the answer as the host wants it. */
  private cell(value: Answer, kind: CellKind, system: System): unknown {
    const cell = inSheetUnits(this.f, value, kind, system);
    return typeof cell === "object" ? toHostError(this.host, cell) : cell;
  }
}

const blank = Symbol("blank row");
