import { kindText, standingCautions } from "../../core/grade";
import type { Library } from "../../core/grade";
import { catalogue } from "../../core/index";
import { isSpill } from "../../core/formula";
import { kinds } from "../../core/kinds";
import type { Kind, System } from "../../core/kinds";
import { fromWorking } from "../../core/units";
import { answer } from "../../edge/sheet";
import { addressOf } from "../../port/address";
import type { Block, Corner, RichCell, Written } from "../../port/sheet";
import { richCell } from "../../port/sheet";
import { activeFields, choiceFields, movementFields, numberFields } from "../duty/fields";
import type { ChoiceField, Field, NumberField, ReadDuty, Texts } from "../duty/fields";

export const pieces = {
  duty: "The duty's line",
  checks: "Check table",
  shortlist: "Shortlist",
  steps: "Worked steps",
} as const;
export type Piece = keyof typeof pieces;

export interface Order {
  readonly piece: Piece;
  readonly texts: Texts;
  readonly read: ReadDuty;
  readonly system: System;
  /** Names of the grades to check. */
  readonly grades: readonly string[];
  readonly library: Library;
  /** What a formula writes for the table of own grades. */
  readonly reference?: string;
}

/** Headings by which the pane also reads a row back. */
const headings: Readonly<Record<Field, string>> = {
  load: "load",
  bore: "bore",
  length: "length",
  rpm: "rpm",
  swing: "swing",
  stroke: "stroke",
  cycles: "cycles",
  lowest: "lowest temperature",
  highest: "highest temperature",
  impactFactor: "impact factor",
  hardness: "shaft hardness",
  designFactor: "design factor",
  motion: "motion",
  wet: "moisture",
  shock: "shock",
  shaft: "shaft",
};

/** The rows to write from the corner on, cleared cells for what spills included: headings, inputs and live formulas. */
export function blockOf(order: Order, at: Corner): Block {
  const line = dutyLine(order, at);
  const below = { ...at, row: at.row + line.rows.length + 1 };
  const rows = [...line.rows, [], ...rowsOf(order, line, below)];
  const trimmed = order.piece === "duty" ? line.rows : rows;
  const width = Math.max(...trimmed.map((row) => row.length));
  return trimmed.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null));
}

function rowsOf(order: Order, line: DutyLine, at: Corner): Written[][] {
  switch (order.piece) {
    case "duty":
      return [];
    case "checks":
      return [...checkRows(order, line, at), ...cautions];
    case "shortlist":
      return [...cautions, [], ...shortlistRows(order, line)];
    case "steps":
      return stepRows(order, line);
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

interface DutyLine {
  readonly rows: Written[][];
  /** Addresses, or constants where a motion has none, that functions take. */
  readonly refs: Readonly<Record<string, string>>;
}

interface Column {
  readonly key: string;
  readonly heading: string;
  readonly value: Written | ((refs: Readonly<Record<string, string>>) => string);
}

function dutyLine(order: Order, at: Corner): DutyLine {
  const columns = [...inputColumns(order), ...resultColumns(order)];
  const refs: Record<string, string> = { speed: "0" };
  columns.forEach(({ key }, i) => (refs[key] = addressOf(at.row + 1, at.col + i)));
  refs.temperature = `${refs.lowest}&" to "&${refs.highest}`;
  const values = columns.map(({ value }): Written =>
    typeof value === "function" ? { formula: value(refs), format: numberFormat } : value,
  );
  return { rows: [columns.map(({ heading }) => ({ value: heading, heading: true })), values], refs };
}

function inputColumns({ texts, read, system }: Order): Column[] {
  const number = (name: NumberField): Column => {
    const { kind } = numberFields[name];
    const value = read.values[name];
    return {
      key: name,
      heading: withUnit(headings[name], kind, system),
      value: value === undefined ? null : tidy(fromWorking(kind, value, system)),
    };
  };
  const choice = (name: ChoiceField): Column => ({ key: name, heading: headings[name], value: texts[name] || null });
  const fields = activeFields(texts).filter((name) => name === "designFactor" || read.values[name] !== undefined);
  const words = (Object.keys(choiceFields) as ChoiceField[]).filter((name) => texts[name] !== "");
  return [
    ...words.map(choice),
    ...fields
      .map(number)
      .map((column) => (column.key === "designFactor" ? { ...column, value: column.value ?? 1 } : column)),
  ];
}

const withUnit = (name: string, kind: Kind, system: System): string =>
  kinds[kind][system] ? `${name} [${kinds[kind][system]}]` : name;

const tidy = (value: number): number => Number(value.toPrecision(12));

const speedCalls = { turning: "SPEED", swinging: "SWINGSPEED", linear: "STROKESPEED" } as const;
const speedCall = ({ motion }: Texts) => speedCalls[motion as keyof typeof speedCalls] as string | undefined;
/** A shaft that turns or swings slides on the bore. */
const speedFields = (texts: Texts): readonly NumberField[] =>
  texts.motion === "linear" ? movementFields(texts.motion) : ["bore", ...movementFields(texts.motion)];

function resultColumns(order: Order): Column[] {
  const { texts, system, read } = order;
  const units = unitsOf(order);
  const id = speedCall(texts);
  const blow = read.values.impactFactor === undefined ? "" : "*";
  return [
    {
      key: "pressure",
      heading: withUnit("pressure", "pressure", system),
      value: (r) => `=${call("PRESSURE", [r.load, r.bore, r.length, units])}${blow && `*${r.impactFactor}`}`,
    },
    ...(id
      ? [
          {
            key: "speed",
            heading: withUnit("speed", "speed", system),
            value: (r: Readonly<Record<string, string>>) =>
              `=${call(id, [...speedFields(texts).map((name) => r[name]), units])}`,
          },
          {
            key: "pv",
            heading: withUnit("PV", "pv", system),
            value: (r: Readonly<Record<string, string>>) => `=${call("PVVALUE", [r.pressure, r.speed, units])}`,
          },
        ]
      : []),
    {
      key: "judged",
      heading: withUnit("pressure times design factor", "pressure", system),
      value: (r) => `=${r.pressure}*${r.designFactor}`,
    },
  ];
}

const unitsOf = ({ system }: Order): string | undefined => (system === "metric" ? undefined : `"${system}"`);

/** A call as typed; arguments left out at the end are not written. */
function call(id: string, given: readonly (string | undefined)[]): string {
  const last = given.reduce((most, arg, i) => (arg === undefined ? most : i), -1);
  return `BUSH.${id}(${given
    .slice(0, last + 1)
    .map((arg) => arg ?? "")
    .join(",")})`;
}

/** Three criteria in motion and two temperatures. */
const mostCriteria = 5;

function checkRows(order: Order, { refs }: DutyLine, at: Corner): Written[][] {
  return order.grades.flatMap((name, i) => {
    const grade = addressOf(at.row + i * (mostCriteria + 3), at.col);
    const given = [grade, refs.judged, refs.speed, refs.temperature, refs.motion, order.reference, unitsOf(order)];
    const kind = order.library.grades.find((g) => g.name === name)?.kind;
    return [
      [
        { value: name, heading: true },
        { formula: `=${call("VERDICT", given)}` },
        null,
        null,
        null,
        kind ? kindText[kind] : null,
      ],
      ...spillRoom("CHECKS", `=${call("CHECKS", given)}`, mostCriteria),
      [],
    ];
  });
}

function shortlistRows(order: Order, { refs }: DutyLine): Written[][] {
  const given = [refs.judged, refs.speed, refs.temperature, refs.motion, refs.wet, order.reference, unitsOf(order)];
  return spillRoom("SHORTLIST", `=${call("SHORTLIST", given)}`, order.library.grades.length);
}

/** Pressure, speed and PV worked line by line; the room that each needs is what its answer takes. */
function stepRows(order: Order, { refs }: DutyLine): Written[][] {
  const { texts, read, system } = order;
  const { duty } = read;
  const units = unitsOf(order);
  const speedId = speedCall(texts);
  const shown = (name: NumberField) => fromWorking(numberFields[name].kind, read.values[name] ?? 0, system);
  const worked: { id: string; refs: (string | undefined)[]; values: number[] }[] = [
    {
      id: "PRESSURE",
      refs: [refs.load, refs.bore, refs.length],
      values: (["load", "bore", "length"] as const).map(shown),
    },
  ];
  if (speedId && duty) {
    const fields = speedFields(texts);
    worked.push({ id: speedId, refs: fields.map((name) => refs[name]), values: fields.map(shown) });
    worked.push({
      id: "PVVALUE",
      refs: [refs.pressure, refs.speed],
      values: [fromWorking("pressure", duty.pressure, system), fromWorking("speed", duty.speed, system)],
    });
  }
  return worked.flatMap(({ id, refs: given, values }) => {
    const size = answer(formulaOf("STEPS"), [id, [...values, system]], plain).length;
    return [...spillRoom("STEPS", `=${call("STEPS", [`"${id}"`, ...given, units])}`, size - 1), []];
  });
}

const plain = { error: (code: string) => code };

/** What spilled columns need, in characters. */
const spillWidths: Readonly<Record<Piece, readonly number[]>> = {
  duty: [],
  checks: [20, 22, 10, 14, 8, 12],
  shortlist: [20, 22, 10, 8, 34],
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
