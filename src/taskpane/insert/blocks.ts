import { criteria } from "../../core/duties";
import type { FieldKey, NamedDuty } from "../../core/duties";
import { isSpill } from "../../core/formula";
import { kindText } from "../../core/grades/model";
import type { Library } from "../../core/grades/model";
import { catalogue } from "../../core/index";
import { kinds } from "../../core/kinds";
import type { Kind, System } from "../../core/kinds";
import { pressureSpeed } from "../../core/loading/pvValue";
import { fromWorking } from "../../core/units";
import { standingCautions } from "../../core/grades/cautionsOf";
import { answer } from "../../edge/sheet";
import { addressOf } from "../../port/address";
import type { Block, Corner, RichCell, Written } from "../../port/sheet";
import { richCell } from "../../port/sheet";
import { kindOf } from "../state/fields";
import { dutyTable } from "./dutyTable";
import type { DutyTable } from "./dutyTable";

export const pieces = {
  duty: "The duty's line",
  checks: "Check table",
  shortlist: "Shortlist",
  steps: "Worked steps",
} as const;
export type Piece = keyof typeof pieces;

export interface Order {
  readonly piece: Piece;
  readonly duty: NamedDuty;
  readonly system: System;
  /** Names of the grades to check. */
  readonly grades: readonly string[];
  readonly library: Library;
  /** What a formula writes for the table of own grades. */
  readonly reference?: string | undefined;
}

/** The rows to write from the corner on, cleared cells for what spills included: headings, inputs and live formulas. */
export function blockOf(order: Order, at: Corner): Block {
  const rows = rowsOf(order, at);
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null));
}

function rowsOf(order: Order, at: Corner): Written[][] {
  const { piece, duty, system, grades } = order;
  const table = dutyTable(duty, piece === "checks" ? grades : [], system, at);
  switch (piece) {
    case "duty":
      return loadingOf(order, table, at).rows;
    case "checks":
      return [...table.rows, [], ...checkRows(order, table), ...cautions];
    case "shortlist":
      return [...table.rows, [], ...cautions, [], ...shortlistRows(order, table)];
    case "steps":
      return stepRows(order, table, at);
  }
}

const cautions: Written[][] = standingCautions.map((caution) => [caution]);

const numberFormat = "0.0##";
const percentFormat = "0 %";

/** Room for a formula and all that it spills, its first row the headings; formats follow from the columns. */
function spillRoom(id: string, formula: string, rows: number): Written[][] {
  const { result } = formulaOf(id).spec;
  const columns = isSpill(result) && result.columns !== "by property" ? result.columns : [];
  const formats = columns.map(({ name, kind }) =>
    kind === "text" ? undefined : name === "use" ? percentFormat : numberFormat,
  );
  const headings = formats.map((_, i): RichCell =>
    i === 0 ? { formula, heading: true } : { value: null, heading: true },
  );
  const line = formats.map((format): Written => (format ? { value: null, format } : null));
  return [headings, ...Array.from({ length: rows }, () => line)];
}

const formulaOf = (id: string) => catalogue.find(({ spec }) => spec.id === id)!;

const unitsOf = ({ system }: Order): string | undefined => (system === "metric" ? undefined : `"${system}"`);

/** A call as typed; arguments left out at the end are not written. */
function call(id: string, given: readonly (string | undefined)[]): string {
  const last = given.reduce((most, arg, i) => (arg === undefined ? most : i), -1);
  return `BUSH.${id}(${given
    .slice(0, last + 1)
    .map((arg) => arg ?? "")
    .join(",")})`;
}

/** What DUTIES says of the duty with each grade, then every criterion grade by grade. */
function checkRows(order: Order, { rows, area }: DutyTable): Written[][] {
  const { grades, library, reference } = order;
  const verdicts = spillRoom("DUTIES", `=${call("DUTIES", [area, reference, unitsOf(order)])}`, rows.length - 1);
  const checks = grades.flatMap((name, i) => {
    const kind = library.grades.find((grade) => grade.name === name)?.kind;
    const given = [area, String(i + 1), undefined, reference, unitsOf(order)];
    return [
      [{ value: name, heading: true as const }, kind ? kindText[kind] : null],
      ...spillRoom("DUTYCHECKS", `=${call("DUTYCHECKS", given)}`, criteria.length),
      [],
    ];
  });
  return [...verdicts, [], ...checks];
}

function shortlistRows(order: Order, { area }: DutyTable): Written[][] {
  const given = [area, undefined, order.reference, unitsOf(order)];
  return spillRoom("DUTYRANK", `=${call("DUTYRANK", given)}`, order.library.scope.length);
}

const speedCalls = { turning: "SPEED", swinging: "SWINGSPEED", linear: "STROKESPEED" } as const;

interface Loading {
  readonly rows: Written[][];
  /** Of each step, what its pressure, speed and PV are called with, and the cells where they stand. */
  readonly calls: readonly (readonly Call[])[];
}
interface Call {
  readonly kind: "pressure" | "speed" | "pv";
  readonly id: string;
  readonly refs: readonly (string | undefined)[];
}

/** The duty's table with pressure, speed and PV of each step beside it; a band has no single one. */
function loadingOf(order: Order, { rows, refs }: DutyTable, at: Corner): Loading {
  const { duty, system } = order;
  if (duty.bands.length > 0) return { rows, calls: [] };
  const width = rows[0]!.length;
  const calls = duty.corners[0]!.steps.map(({ motion }, row): Call[] => {
    const cell = { ...refs[0], ...refs[row] };
    const result = (i: number) => addressOf(at.row + 1 + row, at.col + width + i);
    const of = (id: string) => Object.keys(formulaOf(id).spec.args).map((name) => cell[name as FieldKey]);
    const pressure: Call = { kind: "pressure", id: "PRESSURE", refs: of("PRESSURE") };
    if (motion === "static") return [pressure];
    const speed = speedCalls[motion];
    return [
      pressure,
      { kind: "speed", id: speed, refs: of(speed) },
      { kind: "pv", id: "PVVALUE", refs: [result(0), result(1)] },
    ];
  });
  const longest = calls.reduce((a, b) => (b.length > a.length ? b : a));
  const headings = longest.map(({ kind }) => ({ value: withUnit(kind, system), heading: true as const }));
  const answers = calls.map((ofStep) =>
    ofStep.map(({ id, refs: given }) => ({
      formula: `=${call(id, [...given, unitsOf(order)])}`,
      format: numberFormat,
    })),
  );
  return { rows: rows.map((row, i) => [...row, ...(i === 0 ? headings : answers[i - 1]!)]), calls };
}

const withUnit = (kind: Kind, system: System): string => `${kinds[kind].name} [${kinds[kind][system]}]`;

/** Pressure, speed and PV of the step with the greatest PV worked line by line; the room that each needs is what its answer takes. */
function stepRows(order: Order, table: DutyTable, at: Corner): Written[][] {
  const { duty, system } = order;
  const { rows, calls } = loadingOf(order, table, at);
  if (calls.length === 0) throw new Error("A band has no one value to work with: type single values, then insert.");
  const { steps } = duty.corners[0]!;
  const work = steps.map(({ bore }) => pressureSpeed(bore!));
  const at0 = work.indexOf(Math.max(...work));
  const { values } = duty.steps[at0]!;
  const { pressure, speed } = steps[at0]!.bore!;
  const shown = (key: FieldKey) => fromWorking(kindOf(key), values[key] as number, system);
  const worked = calls[at0]!.flatMap(({ kind, id, refs }) => {
    const inputs =
      kind === "pv"
        ? [fromWorking("pressure", pressure, system), fromWorking("speed", speed, system)]
        : Object.keys(formulaOf(id).spec.args).map((name) => shown(name as FieldKey));
    const size = answer(formulaOf("STEPS"), [id, [...inputs, system]], plain).length;
    return [[], ...spillRoom("STEPS", `=${call("STEPS", [`"${id}"`, ...refs, unitsOf(order)])}`, size - 1)];
  });
  return [...rows, ...worked];
}

const plain = { error: (code: string) => code };

/** What spilled columns need, in characters. */
const spillWidths: Readonly<Record<Piece, readonly number[]>> = {
  duty: [],
  checks: [26, 22, 12, 14, 14, 17, 20, 10, 10, 32, 14, 32],
  shortlist: [20, 22, 10, 10, 32, 14],
  steps: [24, 22, 44, 12, 8],
};
/** A longer text may run over its neighbours. */
const widest = 32;

/** Characters that each column of a block needs. */
export const widthsOf = (piece: Piece, block: Block): number[] =>
  block[0]!.map((_, i) =>
    Math.max(
      spillWidths[piece][i] ?? 0,
      ...block.map((row) => {
        const { value, heading } = richCell(row[i] ?? null);
        return heading && typeof value === "string" ? Math.min(widest, value.length + 1) : 0;
      }),
    ),
  );
