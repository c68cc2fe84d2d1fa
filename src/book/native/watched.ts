import { addressOf, areaText } from "../../port/address";
import { quotedName, referencesIn } from "../../port/references";
import type { Place } from "../../port/sheet";
import type { BookCell } from "../book";
import type { Cells } from "./cells";

/** More cells than a file can hold twice. */
const most = 20_000;

/**
 * What was typed into the cells that frozen values came from, kept beside a formula that says whether they still hold the
 * same. Computed cells among them are followed to what was typed.
 */
export class Watched {
  readonly cells: Record<string, BookCell> = {};
  private readonly checks = new Map<string, string>();
  private row = 2;

  constructor(
    private readonly read: Cells,
    private readonly sheet: string,
  ) {}

  /** An expression that is true while nothing that a formula uses has changed; undefined where that cannot be followed. */
  check(formula: string, sheet: string): string | undefined {
    const places: Place[] = [];
    if (!this.follow(formula, sheet, places, new Set())) return undefined;
    const checks = [...new Set(places.map((place) => this.checkOf(place)))];
    return checks.length === 0 ? "TRUE" : `AND(${checks.join(",")})`;
  }

  private follow(formula: string, sheet: string, places: Place[], seen: Set<string>): boolean {
    if (isElsewhere(formula)) return false;
    return [...referencesIn(formula, sheet), ...this.read.named(formula)].every((place) =>
      this.typed(place, places, seen),
    );
  }

  /** The typed cells of a place, and those behind its computed ones. */
  private typed(place: Place, places: Place[], seen: Set<string>): boolean {
    if (place.rows * place.cols > most) return false;
    const cells = this.read.read(place);
    if (cells.every((line) => line.every((cell) => cell.formula === undefined && !cell.spilledFrom))) {
      places.push(place);
      return true;
    }
    return cells.every((line, r) =>
      line.every((cell, c) => {
        const from = cell.spilledFrom ?? { row: place.row + r, col: place.col + c, formula: cell.formula };
        if (from.formula === undefined) {
          places.push({ ...place, row: from.row, col: from.col, rows: 1, cols: 1 });
          return true;
        }
        const key = `${place.sheet}!${from.row},${from.col}`;
        if (seen.has(key)) return true;
        seen.add(key);
        return this.follow(from.formula, place.sheet, places, seen);
      }),
    );
  }

  /** The cell that compares a place with what it held. */
  private checkOf(place: Place): string {
    const text = `${quotedName(place.sheet)}!${areaText(place)}`;
    const known = this.checks.get(text);
    if (known) return known;
    const [top, { rows, cols }] = [this.row + 1, place];
    this.read.read(place).forEach((line, r) =>
      line.forEach(({ value }, c) => {
        if (value !== null)
          this.cells[addressOf(top + r, c)] = { value: typeof value === "boolean" ? Number(value) : value };
      }),
    );
    const copy = areaText({ row: top, col: 0, rows, cols });
    this.cells[addressOf(this.row, 0)] = { value: `${place.sheet}, ${areaText(place)}`, look: "group" };
    this.cells[addressOf(this.row, 1)] = {
      value: "TRUE",
      formula: `=SUMPRODUCT(--(${text}<>${copy}))=0`,
      look: "answer",
    };
    const check = `${quotedName(this.sheet)}!$B$${this.row + 1}`;
    this.checks.set(text, check);
    this.row += rows + 2;
    return check;
  }
}

/** Whole columns and rows, spills by name, and addresses that are computed. */
const isElsewhere = (formula: string): boolean =>
  /#|\[|\b(?:INDIRECT|OFFSET)\(|\$?\b[A-Z]{1,3}:\$?[A-Z]{1,3}\b|\$?\b\d+:\$?\d+\b/i.test(
    formula.replaceAll(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, ""),
  );
