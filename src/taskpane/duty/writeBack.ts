import { field } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { keysOf } from "../../core/keyed";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { addressOf } from "../../port/address";
import type { Place, ReadCell, SheetPort, Written } from "../../port/sheet";
import { unitOf } from "../state/fields";
import { keysAt } from "../state/form";
import type { Form, Texts } from "../state/form";
import type { Origin } from "../state/origin";
import { withUnit } from "../state/quantity";
import { plainCells } from "../state/useLibrary";
import { readCells } from "./dutyRows";

export interface WrittenBack {
  readonly origin: Origin;
  /** Whether the cells now say all that the form does. */
  readonly isWhole: boolean;
  readonly text: string;
}

interface Change {
  readonly row: number;
  readonly col: number;
  readonly content: string | number | null;
}

/** Puts what was changed in the form into the cells that it was read from; other cells are left alone. */
export async function writeBack(port: SheetPort, from: Origin, form: Form, system: System): Promise<WrittenBack> {
  if (form.length !== from.rows.length)
    throw new Error(`The form has ${form.length} steps and the sheet ${from.rows.length}: insert the duty anew.`);
  const { table } = from;
  const cells = await port.read(table);
  const { columns, isCard } = readCells(plainCells(cells), system);
  const filled = cells.flatMap((line, i) => (line.some(({ value }) => value !== null) ? [i] : []));
  const homeless = new Set<string>();
  const changes = form.flatMap((texts, step): Change[] =>
    changedKeys(present(from.form[step]), texts, keysAt(form, step)).flatMap((key) => {
      const column = columns.find((one) => one.key === key);
      if (!column) {
        homeless.add(field(key).heading);
        return [];
      }
      const at = isCard
        ? { row: present(filled[column.index]), col: 1 }
        : { row: present(from.rows[step]) - table.row, col: column.index };
      return [{ ...at, content: contentOf(key, texts[key] ?? "", column.unit, system) }];
    }),
  );
  await writeAll(port, table, cells, changes);
  const places = changes.map(({ row, col }) => addressOf(table.row + row, table.col + col));
  return {
    origin: { ...from, form },
    isWhole: homeless.size === 0,
    text: [
      places.length > 0
        ? `Written to ${places.join(", ")} on ${table.sheet}. Undo takes it back.`
        : "Nothing was written.",
      ...(homeless.size > 0 ? [`No column there for: ${[...homeless].join(", ")}.`] : []),
    ].join(" "),
  };
}

/** Fields that count and whose text is another than before, and those that count no more. */
function changedKeys(before: Texts, now: Texts, asked: readonly FieldKey[]): FieldKey[] {
  const keys = new Set([...keysOf(before), ...keysOf(now)]);
  // what follows from other cells was not written there
  const derived = (key: FieldKey) => (key === "motion" || key === "part") && before[key] === now[key];
  return [...keys].filter((key) => asked.includes(key) && !derived(key) && (before[key] ?? "") !== (now[key] ?? ""));
}

/** As it is typed under the heading: plain where its unit is the heading's; a cell's own unit counts first. */
function contentOf(key: FieldKey, text: string, unit: string | undefined, system: System): string | number | null {
  const given = text.trim();
  if (given === "") return null;
  const usual = unitOf(key, system);
  const named = withUnit(given, usual);
  const bare = unit !== undefined && named.endsWith(` ${unit}`) ? named.slice(0, -unit.length).trim() : undefined;
  const content = bare ?? (unit === undefined && field(key).kind !== "percent" ? given : named);
  return content !== "" && Number.isFinite(Number(content)) ? Number(content) : content;
}

/** One block from the first changed cell to the last, what lies between as it was: one step to undo. */
async function writeAll(port: SheetPort, table: Place, cells: ReadCell[][], changes: readonly Change[]): Promise<void> {
  const [first] = changes;
  if (!first) return;
  for (const { row, col } of changes) {
    const { formula, spilledFrom } = present(cells[row]?.[col]);
    if (formula ?? spilledFrom)
      throw new Error(`${addressOf(table.row + row, table.col + col)} holds a formula. Nothing was written.`);
  }
  const rows = changes.map(({ row }) => row);
  const cols = changes.map(({ col }) => col);
  const [top, left] = [Math.min(...rows), Math.min(...cols)];
  const block = cells.slice(top, Math.max(...rows) + 1).map((line, r) =>
    line.slice(left, Math.max(...cols) + 1).map((cell, c): Written => {
      const change = changes.find(({ row, col }) => row === top + r && col === left + c);
      return change ? change.content : asItIs(cell, addressOf(table.row + top + r, table.col + left + c));
    }),
  );
  await port.write({ sheet: table.sheet, row: table.row + top, col: table.col + left }, block);
}

function asItIs({ value, formula, spilledFrom }: ReadCell, at: string): Written {
  if (spilledFrom) throw new Error(`${at} lies between and is a formula's answer. Nothing was written.`);
  if (formula !== undefined) return { formula };
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}
