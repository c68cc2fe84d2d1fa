import type { Formula } from "../../core/formula";
import { addressOf, areaText } from "../../port/address";
import { quotedName } from "../../port/references";
import type { ReadCell } from "../../port/sheet";
import type { BookCell } from "../book";
import { blockColumns, nativeBlock } from "./block";
import type { NativeBlock } from "./block";
import type { Given } from "./given";

const valueColumn = blockColumns.indexOf("value");

/** Values as they were, and whether what they came from is still the same. */
export interface Frozen {
  /** The cell that says so. */
  readonly check: string;
  /** The upper left of the values. */
  readonly top: number;
}

/** The sheet on which calls are worked in native formulas, block below block. */
export class Workings {
  private rows: (readonly (BookCell | null)[])[] = [blockColumns.map((value) => ({ value, look: "heading" })), []];

  constructor(private readonly sheet: string) {}

  /** As many rows as are there; `cutTo` takes back what was written since. */
  get length(): number {
    return this.rows.length;
  }
  cutTo(length: number): void {
    this.rows = this.rows.slice(0, length);
  }

  native(title: string, f: Formula, given: readonly (Given | undefined)[]): NativeBlock | undefined {
    const block = nativeBlock(f, given, { row: this.length + 1, col: 0 });
    if (!block) return undefined;
    const answer = { ...block.answer, row: block.answer.row + this.length + 1 };
    this.rows.push([{ value: title, look: "group" }], ...block.rows, []);
    return { ...block, answer };
  }

  frozen(title: string, check: string, values: readonly (readonly ReadCell["value"][])[]): Frozen {
    this.rows.push(
      [{ value: title, look: "group" }],
      [
        { value: "Still as handed over?" },
        null,
        null,
        { value: "TRUE", formula: `=${check}`, look: "result" },
        null,
        { value: "The values below hold while this is true.", look: "quiet" },
      ],
    );
    const top = this.length;
    values.forEach((line) => this.rows.push([null, null, null, ...line.map(plainCell)]));
    this.rows.push([]);
    return { check: `${this.at(top - 1, 0, true)}`, top };
  }

  /** A cell of the values' column, or right of it, as other sheets name it. */
  at(row: number, right: number, isFixed = false): string {
    const address = addressOf(row, valueColumn + right);
    return `${quotedName(this.sheet)}!${isFixed ? address.replace(/^([A-Z]+)/, "$$$1$$") : address}`;
  }
  range(row: number, rows: number, cols: number): string {
    return `${quotedName(this.sheet)}!${areaText({ row, col: valueColumn, rows, cols })}`;
  }

  cells(): Record<string, BookCell> {
    return Object.fromEntries(
      this.rows.flatMap((line, r) => line.flatMap((cell, c) => (cell ? [[addressOf(r, c), cell] as const] : []))),
    );
  }
}

const plainCell = (value: ReadCell["value"]): BookCell | null =>
  value === null || value === ""
    ? null
    : { value: typeof value === "boolean" ? String(value).toUpperCase() : value, look: "answer" };
