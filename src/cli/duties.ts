import { checkDomain } from "../core/domain";
import { clash, isMissing, mustBe, orList } from "../core/errors";
import type { NumberArg } from "../core/formula";
import { motions, shafts } from "../core/grade";
import type { Duty, Motion } from "../core/grade";
import { dutyArgs } from "../core/grade/duty";
import { splitHeading } from "../core/grade/properties";
import { readIn } from "../core/grade/readIn";
import type { System } from "../core/kinds";
import { normal } from "../core/names";
import { sleevePressure } from "../core/load/pressure";
import { washerPressure } from "../core/load/washerPressure";
import { turningSpeed } from "../core/motion/speed";
import { strokeSpeed } from "../core/motion/strokeSpeed";
import { swingSpeed } from "../core/motion/swingSpeed";
import { washerSpeed } from "../core/motion/washerSpeed";
import { readSpan } from "../core/span";

/** Columns with a number are the arguments of the functions that use them. */
const numbers = {
  load: sleevePressure.spec.args.load,
  bore: sleevePressure.spec.args.bore,
  length: sleevePressure.spec.args.length,
  inner: washerPressure.spec.args.inner,
  outer: washerPressure.spec.args.outer,
  rpm: turningSpeed.spec.args.rpm,
  swing: swingSpeed.spec.args.swing,
  stroke: strokeSpeed.spec.args.stroke,
  cycles: swingSpeed.spec.args.cycles,
  pressure: dutyArgs.pressure,
  speed: dutyArgs.speed,
} as const satisfies Record<string, NumberArg>;
type NumberField = keyof typeof numbers;

const words = ["duty", "grade", "motion", "temperature", "wet", "shock", "shaft"] as const;
type Field = NumberField | (typeof words)[number];
export const fields: readonly Field[] = [...words, ...(Object.keys(numbers) as NumberField[])];
const otherNames: Readonly<Record<string, Field>> = { name: "duty", material: "grade" };

/** A file's row by its headings: the text of a cell and the unit that its heading carries. */
export type Row = ReadonlyMap<Field, { readonly text: string; readonly unit?: string }>;
export interface DutyRows {
  readonly rows: readonly { readonly line: number; readonly row: Row }[];
  readonly unknownColumns: readonly string[];
}

/** Rows of text below a heading row; blank rows are left out, and lines are counted as in the file. */
export function rowsOf(cells: readonly (readonly string[])[]): DutyRows {
  const [headings = [], ...below] = cells;
  const columns = headings.map((heading) => {
    const { name, unit } = splitHeading(heading);
    const word = normal(name);
    return { heading, unit, field: fields.find((field) => normal(field) === word) ?? otherNames[word] };
  });
  const named = columns.flatMap(({ field }) => field ?? []);
  const twice = named.find((field, i) => named.indexOf(field) !== i);
  if (twice) throw clash("headings", `two columns are headed "${twice}"`);
  for (const field of ["grade", "temperature"] as const)
    if (!named.includes(field))
      throw clash("headings", `no column is headed "${field}"; columns are ${fields.join(", ")}`);
  const rows = below.flatMap((line, i) => {
    const filled = columns.flatMap(({ field, unit }, c) => {
      const text = line[c]?.trim() ?? "";
      return field && text !== "" ? [[field, { text, unit }] as const] : [];
    });
    return filled.length > 0 ? [{ line: i + 2, row: new Map(filled) }] : [];
  });
  const unknown = columns.filter(({ field, heading }) => !field && heading.trim() !== "");
  return { rows, unknownColumns: unknown.map(({ heading }) => heading) };
}

/** What a row asks of its grade, in working units; throws what cannot be read or is missing. */
export function dutyOf(row: Row, system: System): Duty {
  const motion = motionOf(row);
  return {
    motion,
    pressure: pressureOf(row, system),
    speed: motion === "static" ? 0 : speedOf(row, motion, system),
    temperature: temperatureOf(row, system),
    wet: answerOf(row, "wet", ["yes", "wet"], ["no", "dry"]),
    shock: answerOf(row, "shock", ["yes", "shock"], ["no", "steady"]),
    ...shaftOf(row),
  };
}

function numberOf(row: Row, field: NumberField, system: System): number {
  const cell = row.get(field);
  if (!cell) throw isMissing(field);
  const arg: NumberArg = numbers[field];
  const value = readIn(field, arg.kind, cell.text, cell.unit, system);
  checkDomain(field, arg, value, system, cell.text);
  return value;
}

/** Stated, or told by the column that only one motion has. */
function motionOf(row: Row): Motion {
  const stated = row.get("motion");
  if (stated) return wordOf("motion", stated.text, motions);
  if (row.has("swing")) return "swinging";
  if (row.has("stroke")) return "linear";
  if (row.has("rpm") || row.has("speed")) return "turning";
  throw isMissing("motion");
}

const isWasher = (row: Row): boolean => row.has("inner") || row.has("outer");

function pressureOf(row: Row, system: System): number {
  if (row.has("pressure")) return numberOf(row, "pressure", system);
  const load = numberOf(row, "load", system);
  if (isWasher(row))
    return washerPressure({ load, inner: numberOf(row, "inner", system), outer: numberOf(row, "outer", system) });
  return sleevePressure({ load, bore: numberOf(row, "bore", system), length: numberOf(row, "length", system) });
}

function speedOf(row: Row, motion: Exclude<Motion, "static">, system: System): number {
  if (row.has("speed")) return numberOf(row, "speed", system);
  const number = (field: NumberField) => numberOf(row, field, system);
  if (motion === "linear") return strokeSpeed({ stroke: number("stroke"), cycles: number("cycles") });
  if (motion === "swinging")
    return swingSpeed({ bore: diameterOf(row, system), swing: number("swing"), cycles: number("cycles") });
  if (isWasher(row)) return washerSpeed({ inner: number("inner"), outer: number("outer"), rpm: number("rpm") });
  return turningSpeed({ bore: number("bore"), rpm: number("rpm") });
}

/** A washer slides at its mean diameter, as WASHERSPEED has it. */
const diameterOf = (row: Row, system: System): number =>
  isWasher(row) ? (numberOf(row, "inner", system) + numberOf(row, "outer", system)) / 2 : numberOf(row, "bore", system);

function temperatureOf(row: Row, system: System): Duty["temperature"] {
  const cell = row.get("temperature");
  if (!cell) throw isMissing("temperature");
  const hasUnit = /[CFK]\s*$/.test(cell.text);
  return readSpan("temperature", cell.unit && !hasUnit ? `${cell.text} ${cell.unit}` : cell.text, system);
}

function answerOf(row: Row, field: "wet" | "shock", yes: readonly string[], no: readonly string[]): boolean {
  const cell = row.get(field);
  return cell !== undefined && yes.includes(wordOf(field, cell.text, [...yes, ...no]));
}

function shaftOf(row: Row): Pick<Duty, "shaft"> {
  const cell = row.get("shaft");
  return cell ? { shaft: wordOf("shaft", cell.text, shafts) } : {};
}

function wordOf<W extends string>(field: Field, text: string, accepted: readonly W[]): W {
  const found = accepted.find((word) => word === text.toLowerCase());
  if (found === undefined) throw mustBe(field, orList(accepted.map((word) => `"${word}"`)), text);
  return found;
}

/** The name of a grade in a row. */
export function gradeOf(row: Row): string {
  const cell = row.get("grade");
  if (!cell) throw isMissing("grade");
  return cell.text;
}
