import { isSpill } from "../../core/formula";
import type { Formula } from "../../core/formula";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { gathered } from "../../edge/gathered";
import { CellError, plainHost } from "../../edge/host";
import { answer } from "../../edge/sheet";
import { valueOf } from "../../port/sheet";
import type { RichCell, Written } from "../../port/sheet";

/** An argument as it is typed into the formula, and what it stands for now. */
export interface Given {
  readonly text: string;
  readonly value: unknown;
}

/** Cells to write with, for each column, the longest text that will stand in it. */
export interface Piled {
  readonly rows: readonly (readonly Written[])[];
  readonly widths: readonly number[];
}

/** A call as typed; arguments left out at the end are not written. */
export function call(f: Formula, given: readonly (Given | undefined)[]): string {
  const last = given.map((arg) => arg !== undefined).lastIndexOf(true);
  const typed = given.slice(0, last + 1).map((arg) => arg?.text ?? "");
  return `BUSH.${f.spec.id}(${typed.join(",")})`;
}

/** The units argument; metric goes without saying. */
export const unitsOf = (system: System): Given | undefined => (system === "metric" ? undefined : text(system));

export const text = (value: string): Given => ({ text: `"${value.replace(/"/g, '""')}"`, value });

const numberFormat = "0.0##";
const percentFormat = "0 %";

/**
 * A formula with the room that its answer takes now, its first row the headings; throws what is wrong where it has no
 * answer, since an error is no result to file.
 */
export function spilled(f: Formula, given: readonly (Given | undefined)[], hasHeadings = true): Piled {
  const values = given.map((arg) => arg?.value);
  const answered = answer(f, gathered(f, values), plainHost);
  const top = present(answered[0]);
  const failed = answered.length === 1 && top.length === 1 ? top[0] : undefined;
  if (failed instanceof CellError) throw new Error(`${failed.message ?? failed.code}. Nothing was written.`);
  const formats = formatsOf(f, top.length);
  const formula = `=${call(f, given)}`;
  const rows = answered.map((line, r) =>
    line.map((_, c): Written => {
      const heading = r === 0 && hasHeadings ? ({ heading: true } as const) : {};
      const format = formats[c] === undefined || (r === 0 && hasHeadings) ? {} : { format: formats[c] };
      const cell: RichCell = r === 0 && c === 0 ? { formula, ...heading } : { value: null, ...heading, ...format };
      return (cell.formula ?? cell.heading ?? cell.format) ? cell : null;
    }),
  );
  return { rows, widths: top.map((_, c) => Math.max(...answered.map((line) => lengthOf(line[c])))) };
}

function formatsOf({ spec: { result } }: Formula, count: number): (string | undefined)[] {
  const columns = isSpill(result) && result.columns !== "by property" ? result.columns : [];
  return Array.from({ length: count }, (_, i) => {
    const { kind = "text", name = "" } = columns[i] ?? {};
    if (kind === "text") return undefined;
    return name === "use" || kind === "percent" ? percentFormat : numberFormat;
  });
}

/** A number is shown with few digits, an error as its code. */
function lengthOf(value: unknown): number {
  if (typeof value === "number") return 9;
  return String((value instanceof CellError ? value.code : value) ?? "").length;
}

/** Pieces below each other with a free line between them. */
export function below(...piles: readonly Piled[]): Piled {
  const count = Math.max(...piles.map(({ widths }) => widths.length));
  return {
    rows: piles.flatMap(({ rows }, i) => (i === 0 ? rows : [[], ...rows])),
    widths: Array.from({ length: count }, (_, c) => Math.max(...piles.map(({ widths }) => widths[c] ?? 0))),
  };
}

/** Pieces beside each other, as tall as the taller. */
export function beside(left: Piled, right: Piled): Piled {
  const width = left.widths.length;
  const height = Math.max(left.rows.length, right.rows.length);
  const rows = Array.from({ length: height }, (_, r) => {
    const line = left.rows[r] ?? [];
    return [...line, ...Array<null>(width - line.length).fill(null), ...(right.rows[r] ?? [])];
  });
  return { rows, widths: [...left.widths, ...right.widths] };
}

/** Cells as they are; a text alone in its row may run over its neighbours. */
export function plain(rows: readonly (readonly Written[])[]): Piled {
  const count = Math.max(1, ...rows.map((row) => row.length));
  const width = (c: number) =>
    Math.max(0, ...rows.filter((row) => row.length > 1).map((row) => lengthOf(valueOf(row[c] ?? null))));
  return { rows, widths: Array.from({ length: count }, (_, c) => width(c)) };
}
