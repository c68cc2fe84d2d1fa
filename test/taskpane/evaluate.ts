import type { Arg } from "../../src/core/formula";
import { catalogue } from "../../src/core/index";
import { answer } from "../../src/edge/sheet";
import { textHost } from "../support";
import { addressOf } from "../../src/port/address";
import { richCell } from "../../src/port/sheet";
import type { Block, Corner } from "../../src/port/sheet";

/** What the formulas of an inserted block answer, computed as a sheet does: by their text and the block's own cells. */
export class Sheet {
  private readonly cells = new Map<string, ReturnType<typeof richCell>>();

  constructor(
    block: Block,
    at: Corner,
    private readonly named: Readonly<Record<string, unknown[][]>> = {},
  ) {
    block.forEach((row, r) =>
      row.forEach((cell, c) => this.cells.set(addressOf(at.row + r, at.col + c), richCell(cell))),
    );
  }

  /** Every formula that calls the function, in the block's order. */
  formulas(id: string): string[] {
    return [...this.cells.values()].flatMap(({ formula }) => (formula?.startsWith(`=BUSH.${id}(`) ? [formula] : []));
  }
  /** What a function's formulas answer, the headings left out. */
  answers(id: string): unknown[][][] {
    return this.all(id).map((rows) => rows.slice(1));
  }
  /** The same of functions without headings. */
  all(id: string): unknown[][][] {
    return this.formulas(id).map((formula) => this.compute(formula));
  }
  value(address: string): unknown {
    const { formula, value } = this.cells.get(address) ?? {};
    return formula === undefined ? (value ?? null) : this.compute(formula)[0]![0];
  }

  private compute(formula: string): unknown[][] {
    const [, id, inside] = /^=BUSH\.([A-Z]+)\(([^*]*)\)$/.exec(formula) ?? [];
    if (id === undefined) return [[this.product(formula.slice(1))]];
    const called = catalogue.find(({ spec }) => spec.id === id)!;
    const given = inside!.split(/,(?![^(]*\))/).map((arg) => this.argument(arg));
    const rest = Object.values<Arg>(called.spec.args).findIndex(({ kind }) => kind === "rest");
    const args = rest < 0 ? given : [...given.slice(0, rest), given.slice(rest)];
    return answer(called, args, textHost);
  }
  /** A cell, or the product of cells, numbers and one function's answer. */
  private product(text: string): unknown {
    const factors = text
      .split(/\*(?![^(]*\))/)
      .map((part) => (/^[\d.]/.test(part) ? Number(part) : this.argument(part)));
    return factors.length === 1 ? factors[0] : factors.reduce<number>((sum, factor) => sum * Number(factor), 1);
  }
  private argument(text: string): unknown {
    if (text === "") return undefined;
    if (text.startsWith('"')) return text.slice(1, -1);
    if (text.startsWith("BUSH.")) return this.compute(`=${text}`)[0]![0];
    if (text in this.named) return this.named[text];
    if (/^\d+$/.test(text)) return Number(text);
    const [first, last] = text.split(":").map(cornerOf) as [number[], number[]?];
    if (!last) return this.value(text);
    return Array.from({ length: last[0]! - first[0]! + 1 }, (_, r) =>
      Array.from({ length: last[1]! - first[1]! + 1 }, (_, c) => this.value(addressOf(first[0]! + r, first[1]! + c))),
    );
  }
}

function cornerOf(address: string): number[] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address)!;
  return [Number(digits) - 1, [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1];
}
