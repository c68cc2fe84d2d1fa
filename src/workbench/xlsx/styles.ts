import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import type { IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";
import type { CellStyle } from "hucre/xlsx";

type BorderSide = NonNullable<NonNullable<CellStyle["border"]>["top"]>;
type BorderLineStyle = BorderSide["style"];

/** Styles of the grid in a file's terms and back; what both sides know is named here once. */
const horizontal = [
  [HorizontalAlign.LEFT, "left"],
  [HorizontalAlign.CENTER, "center"],
  [HorizontalAlign.RIGHT, "right"],
  [HorizontalAlign.JUSTIFIED, "justify"],
] as const;
const vertical = [
  [VerticalAlign.TOP, "top"],
  [VerticalAlign.MIDDLE, "center"],
  [VerticalAlign.BOTTOM, "bottom"],
] as const;
const lines: readonly (readonly [BorderStyleTypes, BorderLineStyle])[] = [
  [BorderStyleTypes.THIN, "thin"],
  [BorderStyleTypes.HAIR, "hair"],
  [BorderStyleTypes.DOTTED, "dotted"],
  [BorderStyleTypes.DASHED, "dashed"],
  [BorderStyleTypes.DOUBLE, "double"],
  [BorderStyleTypes.MEDIUM, "medium"],
  [BorderStyleTypes.THICK, "thick"],
];
const sides = [
  ["t", "top"],
  ["r", "right"],
  ["b", "bottom"],
  ["l", "left"],
] as const;

const named = <A, B>(pairs: readonly (readonly [A, B])[], wanted: A | null | undefined): B | undefined =>
  pairs.find(([one]) => one === wanted)?.[1];
const counted = <A, B>(pairs: readonly (readonly [A, B])[], wanted: B | undefined): A | undefined =>
  pairs.find(([, one]) => one === wanted)?.[0];

/** "#1f2b2d", "#fff" or "rgb(31, 43, 45)" as a file has it. */
function hex(colour: string): string | undefined {
  const short = /^#([\da-f])([\da-f])([\da-f])$/i.exec(colour);
  if (short)
    return short
      .slice(1)
      .map((c) => c + c)
      .join("")
      .toUpperCase();
  if (/^#[\da-f]{6}/i.test(colour)) return colour.slice(1, 7).toUpperCase();
  const parts = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/.exec(colour);
  return parts
    ?.slice(1)
    .map((part) => Number(part).toString(16).padStart(2, "0"))
    .join("")
    .toUpperCase();
}
const toColour = (colour: Nullable<{ rgb?: Nullable<string> }>): { rgb: string } | undefined => {
  const rgb = colour?.rgb ? hex(colour.rgb) : undefined;
  return rgb === undefined ? undefined : { rgb };
};
const fromColour = (colour: { rgb?: string } | undefined): { rgb: string } | undefined =>
  colour?.rgb ? { rgb: `#${colour.rgb.slice(-6).toLowerCase()}` } : undefined;

function toFont(style: IStyleData): NonNullable<CellStyle["font"]> {
  const ink = toColour(style.cl);
  return {
    ...(style.ff && { name: style.ff }),
    ...(style.fs && { size: style.fs }),
    ...(style.bl === BooleanNumber.TRUE && { bold: true }),
    ...(style.it === BooleanNumber.TRUE && { italic: true }),
    ...(style.ul?.s === BooleanNumber.TRUE && { underline: true }),
    ...(style.st?.s === BooleanNumber.TRUE && { strikethrough: true }),
    ...(ink && { color: ink }),
  };
}

export function toFileStyle(style: IStyleData): CellStyle {
  const fill = toColour(style.bg);
  const borders = sides.flatMap(([key, name]) => {
    const side = toSide(style.bd?.[key]);
    return side ? [[name, side] as const] : [];
  });
  return {
    font: toFont(style),
    ...(fill && { fill: { type: "pattern", pattern: "solid", fgColor: fill } }),
    ...(borders.length > 0 && { border: Object.fromEntries(borders) }),
    alignment: {
      ...given("horizontal", named(horizontal, style.ht)),
      ...given("vertical", named(vertical, style.vt)),
      ...(style.tb === WrapStrategy.WRAP && { wrapText: true }),
    },
    ...(style.n?.pattern && { numFmt: style.n.pattern }),
  };
}
const given = <K extends string, V>(key: K, value: V | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [P in K]?: V };

function toSide(side: Nullable<IBorderStyleData>): BorderSide | undefined {
  const style = named(lines, side?.s);
  if (!style) return undefined;
  const color = toColour(side?.cl);
  return { style, ...(color && { color }) };
}

function fromFont(font: NonNullable<CellStyle["font"]>): IStyleData {
  const ink = fromColour(font.color);
  return {
    ...given("ff", font.name),
    ...given("fs", font.size),
    ...(font.bold && { bl: BooleanNumber.TRUE }),
    ...(font.italic && { it: BooleanNumber.TRUE }),
    ...(font.underline && { ul: { s: BooleanNumber.TRUE } }),
    ...(font.strikethrough && { st: { s: BooleanNumber.TRUE } }),
    ...(ink && { cl: ink }),
  };
}

const groundOf = ({ fill }: CellStyle): { rgb: string } | undefined =>
  fill?.type === "pattern" && fill.pattern !== "none" ? fromColour(fill.fgColor ?? fill.bgColor) : undefined;

export function fromFileStyle(style: CellStyle): IStyleData {
  const { font = {}, border = {}, alignment = {}, numFmt } = style;
  const ground = groundOf(style);
  const borders = sides.flatMap(([key, name]) => {
    const line = counted(lines, border[name]?.style);
    return line === undefined ? [] : [[key, { s: line, cl: fromColour(border[name]?.color) ?? { rgb: "#000000" } }]];
  });
  return {
    ...fromFont(font),
    ...(ground && { bg: ground }),
    ...(borders.length > 0 && { bd: Object.fromEntries(borders) as IStyleData["bd"] }),
    ...given("ht", counted(horizontal, alignment.horizontal as "left" | undefined)),
    ...given("vt", counted(vertical, alignment.vertical as "top" | undefined)),
    tb: alignment.wrapText ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW,
    ...(numFmt && numFmt !== "General" && { n: { pattern: numFmt } }),
  };
}
