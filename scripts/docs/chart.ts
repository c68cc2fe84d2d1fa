import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";

export type Point = readonly [x: number, y: number];
/** How a line is drawn: dashes tell lines apart without colour; a limit is thin. */
export const looks = ["first", "second", "third", "limit"] as const;
export interface Series {
  readonly label: string;
  readonly look: (typeof looks)[number];
  readonly points: readonly Point[];
  /** Marks at the points, where there is nothing between them; alone without a line that leads the eye. */
  readonly marked?: "joined" | "alone";
}
export interface Axis {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  /** Words in place of the numbers 0, 1, 2 … */
  readonly words?: readonly string[];
}
/** What every picture is told by. */
export interface Told {
  /** Of the picture within its page. */
  readonly id: string;
  readonly title: string;
  /** What is to be seen, in words. */
  readonly text: string;
}
export interface Chart extends Told {
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
}

/** Of all pictures. */
export const width = 360;
const frame = { left: 54, right: 342, top: 12, bottom: 210 };
const legend = { top: frame.bottom + 50, row: 17 };

/** A picture as a figure of the page: SVG whose colours are those of the style sheet, with a name and a description. */
export function figureOf({ id, title, text }: Told, height: number, inside: readonly string[]): string {
  const told = `<title id="${id}-title">${title}</title><desc id="${id}-text">${text}</desc>`;
  const svg = `<svg viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-text">${told}${inside.join("")}</svg>`;
  return `<figure>${svg}<figcaption><strong>${title}.</strong> ${text}</figcaption></figure>`;
}

/** A picture of lines. */
export function chart({ x, y, series, ...told }: Chart): string {
  const across = scaleLinear([x.from, x.to], [frame.left, frame.right]);
  const up = scaleLinear([y.from, y.to], [frame.bottom, frame.top]);
  const path = line<Point>(
    ([at]) => across(at),
    ([, value]) => up(value),
  );
  const rows = up.ticks(5).map((value) => {
    const at = round(up(value));
    return `<path class="grid" d="M${frame.left} ${at}H${frame.right}"/><text x="${frame.left - 6}" y="${at + 4}" text-anchor="end">${signed(value)}</text>`;
  });
  const columns = (x.words?.map((_, i) => i) ?? across.ticks(6)).map((value, i) => {
    const at = round(across(value));
    return `<path class="grid" d="M${at} ${frame.top}V${frame.bottom}"/><text x="${at}" y="${frame.bottom + 16}" text-anchor="middle">${x.words?.[i] ?? signed(value)}</text>`;
  });
  const lines = series.map(({ look, points, marked }) => {
    const at = points.filter(([a, b]) => within(a, x) && within(b, y));
    const marks = marked ? at.map(([a, b]) => mark(round(across(a)), round(up(b)))) : [];
    return `${marked === "alone" ? "" : `<path class="line ${look}" d="${path.digits(1)(at)}"/>`}${marks.join("")}`;
  });
  const named = series.map(({ label, look, marked }, i) => {
    const at = legend.top + i * legend.row;
    const stroke = marked === "alone" ? "" : `<path class="line ${look}" d="M${frame.left} ${at - 4}h30"/>`;
    return `${stroke}${marked ? mark(frame.left + 15, at - 4) : ""}<text x="${frame.left + 38}" y="${at}">${label}</text>`;
  });
  const height = legend.top + series.length * legend.row - 6;
  return figureOf(told, height, [
    ...rows,
    ...columns,
    `<path class="axis" d="M${frame.left} ${frame.top}V${frame.bottom}H${frame.right}"/>`,
    ...lines,
    `<text x="${(frame.left + frame.right) / 2}" y="${frame.bottom + 33}" text-anchor="middle">${x.label}</text>`,
    `<text transform="translate(12 ${(frame.top + frame.bottom) / 2}) rotate(-90)" text-anchor="middle">${y.label}</text>`,
    ...named,
  ]);
}

export const mark = (x: number, y: number): string => `<circle class="mark" cx="${x}" cy="${y}" r="3"/>`;
const within = (value: number, { from, to }: Axis): boolean => value >= from && value <= to;
export const round = (value: number): number => Math.round(value * 10) / 10;

export const signed = (value: number): string => String(value).replace("-", "−");

/** The line of a limit, or of another figure that is the same all along. */
export const level = (label: string, value: number, from: number, to: number): Series => ({
  label,
  look: "limit",
  points: [
    [from, value],
    [to, value],
  ],
});

/** A line through `count` points of a curve. */
export const curve = (of: (x: number) => number, from: number, to: number, count = 80): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / count;
    return [x, of(x)];
  });
