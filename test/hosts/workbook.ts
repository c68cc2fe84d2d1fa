import { addressOf } from "../../src/port/address";
import type { Place } from "../../src/port/sheet";
import type { CellValue } from "./cells";
import type { Call } from "./excelHost";
import { callOf } from "./formula";

export interface Table {
  name: string;
  readonly place: Place;
}

/** A picture over the cells; lengths in points. */
export interface Shape {
  readonly png: string;
  readonly set: Record<string, unknown>;
}

interface Formula {
  readonly text: string;
  readonly row: number;
  readonly col: number;
  /** The rows that it answered; undefined until it was computed. */
  answer?: CellValue[][];
}

/** Cells as Excel keeps them: what was typed, and what formulas spill from theirs. */
export class Sheet {
  readonly formats = new Map<string, string>();
  readonly widths = new Map<number, number>();
  readonly bold = new Set<string>();
  readonly formulas = new Map<string, Formula>();
  readonly shapes: Shape[] = [];
  private readonly typed = new Map<string, { row: number; col: number; value: CellValue }>();
  private readonly spilled = new Map<string, { row: number; col: number; value: CellValue }>();

  constructor(readonly name: string) {}

  /** As a person types it: an apostrophe keeps text, digits become a number, TRUE a truth value. */
  type(row: number, col: number, typed: unknown): void {
    const at = addressOf(row, col);
    this.clear(at);
    if (typed === "" || typed === null) return;
    if (typeof typed === "string" && typed.startsWith("=")) this.formulas.set(at, { text: typed, row, col });
    else this.typed.set(at, { row, col, value: typeof typed === "string" ? readTyped(typed) : (typed as CellValue) });
  }

  private clear(at: string): void {
    this.typed.delete(at);
    this.formulas.delete(at);
  }

  valueAt(row: number, col: number): CellValue | undefined {
    const at = addressOf(row, col);
    return this.typed.get(at)?.value ?? this.spilled.get(at)?.value ?? this.formulas.get(at)?.answer?.[0]?.[0];
  }

  formulaAt = (row: number, col: number): string | undefined => this.formulas.get(addressOf(row, col))?.text;

  spillAt(row: number, col: number): { rows: number; cols: number } | undefined {
    const answer = this.formulas.get(addressOf(row, col))?.answer;
    if (!answer || answer.length * answer[0]!.length === 1) return undefined;
    return { rows: answer.length, cols: answer[0]!.length };
  }

  /** Puts the answers in their cells; one that finds a cell filled is #SPILL!. */
  spill(): void {
    this.spilled.clear();
    for (const formula of this.formulas.values()) {
      const { row, col, answer = [] } = formula;
      const cells = answer.flatMap((line, r) => line.map((value, c) => ({ row: row + r, col: col + c, value })));
      const isFilled = cells.slice(1).some((cell) => {
        const at = addressOf(cell.row, cell.col);
        return this.typed.has(at) || this.formulas.has(at) || this.spilled.has(at);
      });
      if (isFilled) formula.answer = [[{ error: "#SPILL!" }]];
      else for (const cell of cells.slice(1)) this.spilled.set(addressOf(cell.row, cell.col), cell);
    }
  }

  used(): { row: number; col: number; rows: number; cols: number } | null {
    const cells = [...this.typed.values(), ...this.spilled.values(), ...this.formulas.values()];
    if (cells.length === 0) return null;
    const [row, col] = [Math.min(...cells.map((c) => c.row)), Math.min(...cells.map((c) => c.col))];
    const last = [Math.max(...cells.map((c) => c.row)), Math.max(...cells.map((c) => c.col))] as const;
    return { row, col, rows: last[0] - row + 1, cols: last[1] - col + 1 };
  }
}

function readTyped(typed: string): CellValue {
  if (typed.startsWith("'")) return typed.slice(1);
  if (/^(true|false)$/i.test(typed)) return typed.toUpperCase() === "TRUE";
  return typed.trim() !== "" && Number.isFinite(Number(typed)) ? Number(typed) : typed;
}

/** A formula that names no function of the add-in is one of the spreadsheet's own. */
const isCall = ({ text }: { readonly text: string }): boolean => text.includes("BUSH.");

export class Workbook {
  readonly sheets: Sheet[] = [];
  readonly tables: Table[] = [];
  /** What the add-in asked for and this workbook does not have. */
  readonly notEmulated: string[] = [];
  selection: Place = { sheet: "Duties", row: 0, col: 0, rows: 1, cols: 1 };
  active = "Duties";
  /** How often cells were written. */
  changes = 0;

  find = (name: string): Sheet | undefined =>
    this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());

  addSheet(name: string, rows: readonly (readonly unknown[])[] = []): Sheet {
    const sheet = new Sheet(name);
    rows.forEach((line, r) => line.forEach((typed, c) => sheet.type(r, c, typed)));
    this.sheets.push(sheet);
    return sheet;
  }

  /** Computes all calls of the add-in until none answers anew; what one spills another may read. Native formulas stay as they are. */
  async compute(callAll: (calls: readonly Call[]) => Promise<CellValue[][][]>): Promise<void> {
    for (let round = 0; round < 5; round++) {
      const all = this.sheets.flatMap((sheet) =>
        [...sheet.formulas.values()].filter(isCall).map((formula) => ({ sheet, formula })),
      );
      const before = JSON.stringify(all.map(({ formula }) => formula.answer));
      const ask = async (call: Call) => (await callAll([call]))[0]!;
      const answers = await callAll(
        await Promise.all(all.map(({ sheet, formula }) => callOf(formula.text, this, sheet, ask))),
      );
      all.forEach(({ formula }, i) => (formula.answer = answers[i]!));
      this.sheets.forEach((sheet) => sheet.spill());
      if (JSON.stringify(all.map(({ formula }) => formula.answer)) === before) return;
    }
    throw new Error("the formulas do not settle");
  }
}
