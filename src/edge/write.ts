import { BushError, clash, orList } from "../core/errors";
import { isNumberArg, isSpill, Measure, UnitLabel } from "../core/formula";
import type { Answer, Arg, Column, Formula, Result } from "../core/formula";
import { kinds } from "../core/kinds";
import type { Kind, System } from "../core/kinds";
import { fromWorking } from "../core/units/scale";

/** What a cell of an answer is: a quantity, text, or a quantity that names its own kind. */
export type CellKind = Kind | "text" | "measure";

/** The kind of an answer's cell at a place in its row. */
export function kindAt(result: Result, at: number): CellKind {
  if (!isSpill(result)) return result.kind;
  return result.columns === "by property" ? "measure" : (result.columns[at]?.kind ?? "measure");
}

/** An answer in the sheet's units; a number that is none is an error. */
export function inSheetUnits(f: Formula, value: Answer, kind: CellKind, system: System): number | string | BushError {
  if (typeof value === "number") return finite(f, value, kind, system);
  if (value instanceof Measure) return finite(f, value.value, value.kind, system);
  return value instanceof UnitLabel ? kinds[value.kind][system] : value;
}

function finite(f: Formula, value: number, kind: CellKind, system: System): number | BushError {
  const converted =
    system === "metric" || kind === "text" || kind === "measure" ? value : fromWorking(kind, value, system);
  // no sheet shows a −0 as 0, and 0 + −0 is 0
  return Number.isFinite(converted) ? converted + 0 : notFinite(f);
}

function notFinite(f: Formula): BushError {
  const all = Object.entries<Arg>(f.spec.args);
  const numbers = all.filter(([, arg]) => isNumberArg(arg) || arg.kind === "list");
  const names = (numbers.length > 0 ? numbers : all).map(([name]) => name);
  return clash(names[0] ?? "argument", `${orList(names)}: out of range, the answer is not a finite number`);
}

/** "bore [mm]"; where each row names its own unit system, the heading names none. */
export function columnHeading({ name, kind }: Column, system: System | undefined): string {
  const unit = system && kind !== "text" && kind !== "measure" ? kinds[kind][system] : "";
  return unit ? `${name} [${unit}]` : name;
}

/** Cells one after another as rows of their columns. */
export function rowsFrom(flat: readonly unknown[], rows: number, cols: number): unknown[][] {
  const out = new Array<unknown[]>(rows);
  for (let row = 0; row < rows; row++) out[row] = cols === 1 ? [flat[row]] : flat.slice(row * cols, (row + 1) * cols);
  return out;
}

/** Lines of any length as rows of one width. */
export function padded(lines: unknown[][]): unknown[][] {
  const width = lines.reduce((most, line) => Math.max(most, line.length), 1);
  return lines.map((line) =>
    line.length === width ? line : [...line, ...Array<string>(width - line.length).fill("")],
  );
}

/** Anything unforeseen still leaves as an error of ours, never as a number or a crash of the host. */
export function asBushError(error: unknown, f: Formula): BushError {
  if (error instanceof BushError) return error;
  const first = Object.keys(f.spec.args)[0] ?? "argument";
  const message = error instanceof Error ? error.message : String(error);
  return new BushError("value", first, `${first}: ${f.spec.id} cannot compute this: ${message}`);
}
