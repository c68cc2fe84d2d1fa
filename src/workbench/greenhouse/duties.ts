import list from "../../../data/greenhouse/duties.json";
import { columnName } from "../../port/address";
import type { BookCell, BookSheet, Mark, Scalar } from "../book";
import { ownGrades } from "./ownGrades";

/** One bearing duty of the greenhouse; a size is millimetres, or text with its own unit. */
export interface Duty {
  readonly id: string;
  readonly name: string;
  readonly part: string;
  readonly motion: string;
  readonly load: Scalar;
  readonly temperature: Scalar;
  readonly wet?: boolean;
  readonly shock?: boolean;
  readonly shaft?: string;
  readonly grade: string;
  readonly note?: string;
  readonly bore?: Scalar;
  readonly length?: Scalar;
  readonly inner?: Scalar;
  readonly outer?: Scalar;
  readonly rpm?: Scalar;
  readonly swing?: Scalar;
  readonly cycles?: Scalar;
  readonly stroke?: Scalar;
}
type Field = "load" | "bore" | "length" | "inner" | "outer" | "rpm" | "swing" | "cycles" | "stroke";

/** Duties of one kind of part and motion: they share the function of pressure and of speed, so one call serves them all. */
export interface Group {
  readonly part: string;
  readonly motion: string;
  readonly title: string;
  readonly sizes: readonly [Field, Field];
  readonly drive: readonly Field[];
  readonly pressure: string;
  /** The speed as a formula over ranges; without one it is 0. */
  readonly speed?: (range: (field: Field) => string) => string;
}

const sleeve = { part: "sleeve", sizes: ["bore", "length"], pressure: "BUSH.PRESSURE" } as const;
const washer = { part: "washer", sizes: ["inner", "outer"], pressure: "BUSH.WASHERPRESSURE" } as const;

export const groups: readonly Group[] = [
  {
    ...sleeve,
    motion: "turning",
    title: "Bushes, shaft turning",
    drive: ["rpm"],
    speed: (range) => `BUSH.SPEED(${range("bore")},${range("rpm")})`,
  },
  {
    ...sleeve,
    motion: "swinging",
    title: "Bushes, shaft swinging",
    drive: ["swing", "cycles"],
    speed: (range) => `BUSH.SWINGSPEED(${range("bore")},${range("swing")},${range("cycles")})`,
  },
  {
    ...sleeve,
    motion: "linear",
    title: "Bushes, rod sliding",
    drive: ["stroke", "cycles"],
    speed: (range) => `BUSH.STROKESPEED(${range("stroke")},${range("cycles")})`,
  },
  { ...sleeve, motion: "static", title: "Bushes at rest", drive: [] },
  {
    ...washer,
    motion: "turning",
    title: "Thrust washers, shaft turning",
    drive: ["rpm"],
    speed: (range) => `BUSH.WASHERSPEED(${range("inner")},${range("outer")},${range("rpm")})`,
  },
  { ...washer, motion: "static", title: "Thrust washers at rest", drive: [] },
];

const captions: Readonly<Record<Field, string>> = {
  load: "load",
  bore: "bore",
  length: "length",
  inner: "inner Ø",
  outer: "outer Ø",
  rpm: "rpm",
  swing: "swing °",
  cycles: "cycles/min",
  stroke: "stroke mm",
};

interface Column {
  readonly heading: string;
  readonly width: number;
}
const columns = {
  number: { heading: "No.", width: 4 },
  name: { heading: "Duty", width: 28 },
  verdict: { heading: "Verdict", width: 41 },
  use: { heading: "Use", width: 7 },
  grade: { heading: "Grade", width: 15 },
  load: { heading: "Load [N]", width: 8 },
  size1: { heading: "Size [mm]", width: 8 },
  size2: { heading: "Size [mm]", width: 8 },
  drive1: { heading: "Motion", width: 10 },
  drive2: { heading: "Motion", width: 11 },
  temperature: { heading: "Temperature [°C]", width: 13 },
  pressure: { heading: "Pressure [MPa]", width: 9 },
  speed: { heading: "Speed [m/s]", width: 9 },
  pv: { heading: "PV [MPa·m/s]", width: 11 },
  motion: { heading: "Kind of motion", width: 10 },
  wet: { heading: "Wet", width: 6 },
  shock: { heading: "Shock", width: 6 },
  shaft: { heading: "Shaft", width: 18 },
  note: { heading: "Note", width: 60 },
} satisfies Record<string, Column>;
export type ColumnKey = keyof typeof columns;

const keys = Object.keys(columns) as ColumnKey[];
const letter = (key: ColumnKey): string => columnName(keys.indexOf(key));

const headingRow = 4;
const firstRow = headingRow + 1;

export interface Block {
  readonly group: Group;
  readonly duties: readonly Duty[];
  /** Sheet row of the group's own heading; its duties follow. */
  readonly top: number;
  /** The number of its first duty. */
  readonly firstNumber: number;
}

/** The duties by group, each with its place in the sheet. */
export function blocksOf(duties: readonly Duty[]): readonly Block[] {
  let row = firstRow;
  let number = 1;
  const blocks = groups.flatMap((group) => {
    const own = duties.filter((d) => d.part === group.part && d.motion === group.motion);
    if (own.length === 0) return [];
    const block = { group, duties: own, top: row, firstNumber: number };
    row += own.length + 1;
    number += own.length;
    return [block];
  });
  if (number !== duties.length + 1) throw new Error("a duty has a part or motion that no group holds");
  return blocks;
}

const blocks = blocksOf(list as readonly Duty[]);
const last = blocks[blocks.length - 1];
const lastRow = last ? last.top + last.duties.length : firstRow;

/** The cells of a column over all groups, for formulas on any sheet. */
export const columnRange = (key: ColumnKey): string => `${letter(key)}${firstRow}:${letter(key)}${lastRow}`;

export const dutySheet = "Duties";
export const firstDuty = blocks[0]?.duties[0]?.name ?? "";

const judged = (name: string): string =>
  `=${name}(${(["grade", "pressure", "speed", "temperature", "motion"] as const).map(columnRange).join(",")},${ownGrades})`;

function titleCells(): Record<string, BookCell> {
  return {
    A1: { value: "Duties of the rooftop greenhouse", look: "title" },
    A2: {
      value:
        "An invented example. Type over a load, a size, a temperature or a grade; each column of results spills from one formula.",
      look: "quiet",
    },
    A3: {
      value:
        "Plain numbers are metric; text such as 55 lbf keeps its own unit. Use is the governing value over its limit.",
      look: "quiet",
    },
    ...Object.fromEntries(
      keys.map((key) => [`${letter(key)}${headingRow}`, { value: columns[key].heading, look: "heading" } as const]),
    ),
    [`${letter("pv")}${firstRow}`]: {
      formula: `=BUSH.PVVALUE(${columnRange("pressure")},${columnRange("speed")})`,
    },
    [`${letter("use")}${firstRow}`]: { formula: judged("BUSH.USE") },
    [`${letter("verdict")}${firstRow}`]: { formula: judged("BUSH.VERDICT") },
  };
}

function blockCells({ group, duties, top, firstNumber }: Block): Record<string, BookCell> {
  const first = top + 1;
  const end = top + duties.length;
  const place: Partial<Record<Field, ColumnKey>> = {
    load: "load",
    [group.sizes[0]]: "size1",
    [group.sizes[1]]: "size2",
  };
  group.drive.forEach((field, i) => (place[field] = i === 0 ? "drive1" : "drive2"));
  const range = (field: Field): string => {
    const key = place[field];
    if (!key) throw new Error(`${group.title}: no column for ${field}`);
    return `${letter(key)}${first}:${letter(key)}${end}`;
  };
  const cells: Record<string, BookCell> = { [`A${top}`]: { value: group.title, look: "group" } };
  for (const [field, key] of Object.entries(place) as [Field, ColumnKey][])
    if (field !== "load") cells[`${letter(key)}${top}`] = { value: captions[field], look: "caption" };

  const pressed = (["load", ...group.sizes] as const).map(range).join(",");
  cells[`${letter("pressure")}${first}`] = { formula: `=${group.pressure}(${pressed})` };
  if (group.speed) cells[`${letter("speed")}${first}`] = { formula: `=${group.speed(range)}` };

  duties.forEach((duty, i) => {
    const at = (key: ColumnKey): string => `${letter(key)}${first + i}`;
    const put = (key: ColumnKey, value: Scalar | undefined): void => {
      if (value !== undefined) cells[at(key)] = { value };
    };
    put("number", firstNumber + i);
    put("name", duty.name);
    put("grade", duty.grade);
    for (const [field, key] of Object.entries(place) as [Field, ColumnKey][]) put(key, duty[field]);
    put("temperature", duty.temperature);
    put("motion", duty.motion);
    put("wet", duty.wet ? "wet" : "dry");
    put("shock", duty.shock ? "yes" : "no");
    put("shaft", duty.shaft);
    put("note", duty.note);
    if (!group.speed) put("speed", 0);
  });
  return cells;
}

/** A slow swing has a speed far below a millimetre a second, which fixed decimals would show as zero. */
export const smallFormat = "[=0]0;[<0.001]0.0E+0;0.0000";

const numberInputs: readonly ColumnKey[] = ["load", "size1", "size2", "drive1", "drive2", "temperature"];
const wordInputs: readonly ColumnKey[] = ["grade", "motion", "wet", "shock", "shaft"];

function areas(): NonNullable<BookSheet["areas"]> {
  const whole = (key: ColumnKey): string => columnRange(key);
  return [
    { range: whole("use"), look: "result", format: "0 %" },
    { range: whole("verdict"), look: "answer" },
    { range: whole("pressure"), look: "result", format: "0.00" },
    { range: whole("speed"), look: "result", format: smallFormat },
    { range: whole("pv"), look: "result", format: smallFormat },
    { range: whole("name"), look: "text" },
    { range: whole("note"), look: "quiet" },
    ...numberInputs.map((key) => ({ range: whole(key), look: "input" }) as const),
    ...wordInputs.map((key) => ({ range: whole(key), look: "words" }) as const),
    ...blocks.map(
      ({ top }) => ({ range: `A${top}:${letter(keys[keys.length - 1] ?? "note")}${top}`, look: "group" }) as const,
    ),
  ];
}

/** Rows whose name needs a second line. */
const longNames = (): Record<number, number> =>
  Object.fromEntries(
    blocks.flatMap(({ duties, top }) =>
      duties.flatMap(({ name }, i) => (name.length > columns.name.width ? [[top + 1 + i, 2]] : [])),
    ),
  );

const marks: readonly Mark[] = [
  {
    range: `${letter("verdict")}${firstRow}:${letter("use")}${lastRow}`,
    when: `=LEFT($${letter("verdict")}${firstRow},5)="fails"`,
    as: "fails",
  },
  {
    range: `${letter("verdict")}${firstRow}:${letter("use")}${lastRow}`,
    when: `=LEFT($${letter("verdict")}${firstRow},7)="no data"`,
    as: "unknown",
  },
  {
    range: `${letter("verdict")}${firstRow}:${letter("use")}${lastRow}`,
    when: `=ISERROR($${letter("verdict")}${firstRow})`,
    as: "fails",
  },
];

export const duties: BookSheet = {
  name: dutySheet,
  widths: keys.map((key) => columns[key].width),
  frozen: { rows: headingRow, columns: keys.indexOf("verdict") },
  heights: { 1: 1.3, [headingRow]: 2, ...longNames() },
  cells: Object.assign(titleCells(), ...blocks.map(blockCells)) as Record<string, BookCell>,
  areas: areas(),
  marks,
};
