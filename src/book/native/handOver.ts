import { isSpill } from "../../core/formula";
import type { Formula } from "../../core/formula";
import { formulaNamed } from "../../core/families";
import { present } from "../../core/present";
import { addressOf } from "../../port/address";
import { freeName } from "../../port/names";
import { qualified, quotedName, referencesIn } from "../../port/references";
import type { NamedTable, Place, ReadCell } from "../../port/sheet";
import type { BookSheet } from "../book";
import { callsIn, withCalls } from "./calls";
import type { CallText } from "./calls";
import { answerArea, Cells } from "./cells";
import type { HandedSheet } from "./cells";
import { isOneRange } from "./given";
import type { Given } from "./given";
import { listSheet, valuesSheet, workingsSheet } from "./sheets";
import type { Entry } from "./sheets";
import { Watched } from "./watched";
import { Workings } from "./workings";

export interface HandedOver {
  /** The sheets without a function of the add-in. */
  readonly sheets: readonly HandedSheet[];
  /** The list of what became of each formula, the workings, and what was typed when it was handed over. */
  readonly added: readonly BookSheet[];
  readonly entries: readonly Entry[];
}

/** More calls than this below each other stay values. */
const mostElements = 200;

/** Why a formula stays a value, in words. */
class Stays extends Error {}

/**
 * A workbook that calculates without the add-in: each of its formulas that has a plain working becomes that, in a spreadsheet's
 * own formulas on a sheet of workings; of the others the values stay, and go to #N/A where a cell that they came from changes.
 */
export function handOver(sheets: readonly HandedSheet[], tables: readonly NamedTable[]): HandedOver {
  const isTaken = (name: string): boolean => sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  const [list, workings, values] = ["Handed over", "Workings", "As handed over"].map((name) =>
    freeName(name, isTaken),
  ) as [string, string, string];
  const maker = new Maker(new Cells(sheets, tables), new Workings(workings), values);
  const changed = sheets.map((sheet) => maker.sheet(sheet));
  const added =
    maker.entries.length === 0
      ? []
      : [
          listSheet(list, maker.entries),
          workingsSheet(workings, maker.workings.cells()),
          valuesSheet(values, maker.watched.cells),
        ];
  return { sheets: changed, added, entries: maker.entries };
}

class Maker {
  readonly entries: Entry[] = [];
  readonly watched: Watched;

  constructor(
    private readonly cells: Cells,
    readonly workings: Workings,
    values: string,
  ) {
    this.watched = new Watched(cells, values);
  }

  sheet({ name, cells }: HandedSheet): HandedSheet {
    const out = cells.map((line) => [...line]);
    cells.forEach((line, row) =>
      line.forEach((cell, col) => {
        if (cell.formula === undefined || callsIn(cell.formula).length === 0) return;
        if (cell.value === null)
          throw new Error(
            `${addressOf(row, col)} on ${name} is not computed yet: hand over once it shows its answer. Nothing was written.`,
          );
        const area = answerArea(cells, row, col);
        const place = { sheet: name, row, col, ...area };
        const values = this.cells.read(place);
        this.formula(place, cell.formula, values).forEach((texts, r) =>
          texts.forEach((text, c) => (present(out[row + r])[col + c] = handedCell(present(values[r]?.[c]), text))),
        );
      }),
    );
    return { name, cells: out };
  }

  /** The native formula of each cell of an answer; none where the cell is empty. */
  private formula(place: Place, formula: string, values: readonly (readonly ReadCell[])[]): (string | undefined)[][] {
    const begun = this.workings.length;
    try {
      const { texts, fixed } = this.native(place, formula, values);
      this.entries.push({
        place,
        formula,
        became: "native",
        note: fixed.length > 0 ? `while these stay: ${fixed.join(", ")}` : "",
      });
      return texts;
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      this.workings.cutTo(begun);
      return this.values(place, formula, values, error.message);
    }
  }

  private native(place: Place, formula: string, values: readonly (readonly ReadCell[])[]) {
    const calls = callsIn(formula);
    const [call] = calls;
    const isWhole = call !== undefined && calls.length === 1 && call.start === 1 && call.end === formula.length;
    if (isWhole) return this.whole(place, call, values);
    if (place.rows * place.cols > 1) throw new Stays("a formula of several calls that spills");
    const fixed: string[] = [];
    const text = withCalls(formula, calls, (one) => this.call(place.sheet, one, fixed));
    return { texts: [[text]], fixed };
  }

  /** A call alone in its formula, for one row or element after the other. */
  private whole(place: Place, call: CallText, values: readonly (readonly ReadCell[])[]) {
    const f = formulaOf(call.id);
    const isRow = isSpill(f.spec.result);
    const count = isRow ? place.rows : place.rows * place.cols;
    if (count > mostElements) throw new Stays(`more than ${mostElements} rows`);
    const fixed = new Set<string>();
    const texts = values.map((line, r) => {
      const element = (c: number): string[] => {
        const given = call.args.map((text) => this.given(place.sheet, text, r, c, values));
        const block = this.block(
          `${call.id} for ${addressOf(place.row + r, place.col + c)} on ${place.sheet}`,
          call,
          given,
        );
        block.fixed.forEach((one) => fixed.add(one));
        return Array.from({ length: block.answer.cols }, (_, i) => `=${this.workings.at(block.answer.row, i)}`);
      };
      const isBlank = (cell: ReadCell): boolean => cell.value === null || cell.value === "";
      if (isRow) return line.every(isBlank) ? line.map(() => undefined) : element(0);
      return line.map((cell, c) => (isBlank(cell) ? undefined : element(c)[0]));
    });
    return { texts, fixed: [...fixed] };
  }

  /** A call inside a formula: its answer's place on the sheet of workings. */
  private call(sheet: string, call: CallText, fixed: string[]): string {
    const given = call.args.map((text) => this.given(sheet, text, 0, 0, [[undefined]]));
    const block = this.block(`${call.id} within a formula on ${sheet}`, call, given);
    fixed.push(...block.fixed);
    return this.workings.range(block.answer.row, 1, block.answer.cols);
  }

  private block(title: string, call: CallText, given: readonly (Given | undefined)[]) {
    const block = this.workings.native(title, formulaOf(call.id), given);
    if (!block) throw new Stays(`${call.id} is a look-up, or found by iteration, for these numbers`);
    return block;
  }

  /** An argument with its calls worked before it, for an element of a range. */
  private given(
    sheet: string,
    text: string,
    r: number,
    c: number,
    shape: readonly (readonly unknown[])[],
  ): Given | undefined {
    if (text === "") return undefined;
    const value = this.cells.answer(text, sheet);
    const cells = value.flat();
    if (cells.length === 1) {
      const worked = withCalls(text, callsIn(text), (one) => this.call(sheet, one, []));
      return { text: qualified(worked, sheet), value: cells[0] };
    }
    const area = isOneRange(text) ? referencesIn(text, sheet)[0] : undefined;
    if (!area || (area.rows > 1 && area.rows !== shape.length)) throw new Stays("it reads a whole range");
    const [row, col] = [area.rows === 1 ? 0 : r, area.cols === 1 ? 0 : c];
    const address = addressOf(area.row + row, area.col + col);
    return { text: `${quotedName(area.sheet)}!${address}`, value: value[row]?.[col] };
  }

  /** The answers as they are, refused once what they came from has changed. */
  private values(
    place: Place,
    formula: string,
    values: readonly (readonly ReadCell[])[],
    why: string,
  ): (string | undefined)[][] {
    const check = this.watched.check(formula, place.sheet);
    const title = `${formula.slice(1)} in ${addressOf(place.row, place.col)} on ${place.sheet}`;
    const { check: holds, top } = this.workings.frozen(
      title,
      check ?? "TRUE",
      values.map((line) => line.map(({ value }) => value)),
    );
    const note = check === undefined ? `${why}; what it came from cannot be followed` : why;
    this.entries.push({ place, formula, became: "value", note });
    return values.map((line, r) =>
      line.map(({ value, error }, c) => {
        if (value === null || value === "") return undefined;
        return error ? "=NA()" : `=IF(${holds},${this.workings.at(top + r, c)},NA())`;
      }),
    );
  }
}

function formulaOf(id: string): Formula {
  const f = formulaNamed(id);
  if (!f) throw new Stays(`there is no function ${id}`);
  return f;
}

/** A cell of an answer with what it now holds; an error that stays is one of the sheet's own. */
function handedCell({ value, text, error }: ReadCell, formula: string | undefined): ReadCell {
  if (formula === undefined) return { value, text };
  return error ? { value: "#N/A", text: "#N/A", error: { code: "#N/A" }, formula } : { value, text, formula };
}
