/** LibreOffice computes the quantities of the cases from formulas without stored values; their differences from the core. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { readXlsx, writeXlsx } from "hucre/xlsx";
import type { Cell } from "hucre/xlsx";
import { formulaNamed } from "../../src/core/families";
import { present } from "../../src/core/present";
import { answer } from "../../src/edge/sheet";
import { convert } from "../lib/office";
import type { OracleCase } from "./cases";

export const tolerance = 1e-10;

export interface Difference {
  readonly id: string;
  readonly formula: string;
  readonly computed: number;
  readonly core: number;
  readonly relative: number;
}

export async function compare(cases: readonly OracleCase[], folder: string): Promise<Difference[]> {
  const lines = cases.flatMap((one) => one.formulas.map((formula, column) => ({ one, formula, column })));
  const cells = new Map<string, Partial<Cell>>();
  lines.forEach(({ one, formula }, row) => {
    one.given.forEach((value, i) => cells.set(`${row},${i + 1}`, { value }));
    const placed = formula.replace(/\{(\d+)\}/g, (_, n: string) => `${String.fromCharCode(65 + Number(n))}${row + 1}`);
    cells.set(`${row},0`, { formula: placed.slice(1) });
  });
  const file = path.join(folder, "oracle.xlsx");
  writeFileSync(file, await writeXlsx({ sheets: [{ name: "Oracle", cells }] }));
  const [recalculated] = convert([file], "xlsx:Calc MS Excel 2007 XML", path.join(folder, "out"));
  const { sheets } = await readXlsx(new Uint8Array(readFileSync(recalculated!)));
  return lines.map(({ one, formula, column }, row) => {
    const computed = Number(sheets[0]!.rows[row]?.[0] ?? NaN);
    const core = Number(coreAnswer(one)[column]);
    return { id: one.id, formula, computed, core, relative: Math.abs(computed - core) / Math.abs(core) };
  });
}

function coreAnswer({ id, given, units }: OracleCase): unknown[] {
  const f = present(formulaNamed(id));
  const room = Object.keys(f.spec.args).map((_, i) => given[i] ?? null);
  const host = { error: (code: string, message?: string) => new Error(`${id}: ${code} ${message}`) };
  return answer(f, f.spec.units ? [...room, units ?? "metric"] : room, host)[0]!;
}
