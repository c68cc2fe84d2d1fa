import { scaleLog } from "d3-scale";
import { figureOf, round } from "./chart";
import type { Told } from "./chart";

export interface ScatterPoint {
  readonly measured: number;
  readonly predicted: number;
  /** Half-width of the measurement's scatter. */
  readonly scatter?: number | undefined;
  readonly isUnsafe: boolean;
}
export interface Scatter extends Told {
  readonly unit: string;
  readonly points: readonly ScatterPoint[];
}

const frame = { left: 62, right: 342, top: 12, bottom: 292 };
const legend = { top: frame.bottom + 52, row: 18 };

/** Predicted against measured on logarithmic axes of the same length, with the line of equality; unsafe points differ by their shape. */
export function scatter({ unit, points, ...told }: Scatter): string {
  const values = points.flatMap(({ measured, predicted, scatter: half = 0 }) => [
    predicted,
    measured + half,
    measured > half ? measured - half : measured,
  ]);
  const [from, to] = [Math.min(...values) / 1.3, Math.max(...values) * 1.3];
  const across = scaleLog([from, to], [frame.left, frame.right]);
  const up = scaleLog([from, to], [frame.bottom, frame.top]);
  const grid = ticksOf(from, to).map((value) => {
    const [x, y] = [round(across(value)), round(up(value))];
    return [
      `<path class="grid" d="M${x} ${frame.top}V${frame.bottom}M${frame.left} ${y}H${frame.right}"/>`,
      `<text x="${x}" y="${frame.bottom + 16}" text-anchor="middle">${written(value)}</text>`,
      `<text x="${frame.left - 6}" y="${y + 4}" text-anchor="end">${written(value)}</text>`,
    ].join("");
  });
  const marks = points.map(({ measured, predicted, scatter: half, isUnsafe }) => {
    const [x, y] = [round(across(measured)), round(up(predicted))];
    const least = half === undefined ? measured : Math.max(measured - half, from);
    const bar =
      half === undefined
        ? ""
        : `<path class="spread" d="M${round(across(least))} ${y}H${round(across(measured + half))}"/>`;
    return bar + (isUnsafe ? unsafeMark(x, y) : safeMark(x, y));
  });
  const axis = unit === "" ? "" : `, ${unit}`;
  const named = [
    `<path class="line limit" d="M${frame.left} ${legend.top - 4}h30"/>`,
    safeMark(frame.left + 15, legend.top + legend.row - 4),
    unsafeMark(frame.left + 15, legend.top + 2 * legend.row - 4),
    `<path class="spread" d="M${frame.left} ${legend.top + 3 * legend.row - 4}h30"/>`,
    ...["predicted as measured", "on the safe side, or equal", "on the unsafe side", "scatter of the measurement"].map(
      (label, i) => `<text x="${frame.left + 38}" y="${legend.top + i * legend.row}">${label}</text>`,
    ),
  ];
  return figureOf(told, legend.top + 4 * legend.row - 8, [
    ...grid,
    `<path class="axis" d="M${frame.left} ${frame.top}V${frame.bottom}H${frame.right}"/>`,
    `<path class="line limit" d="M${frame.left} ${frame.bottom}L${frame.right} ${frame.top}"/>`,
    ...marks,
    `<text x="${(frame.left + frame.right) / 2}" y="${frame.bottom + 34}" text-anchor="middle">measured${axis}</text>`,
    `<text transform="translate(12 ${(frame.top + frame.bottom) / 2}) rotate(-90)" text-anchor="middle">predicted${axis}</text>`,
    ...named,
  ]);
}

const safeMark = (x: number, y: number): string => `<circle class="mark safe" cx="${x}" cy="${y}" r="3.5"/>`;
const unsafeMark = (x: number, y: number): string =>
  `<path class="mark" d="M${x} ${round(y - 5)}L${round(x + 4.5)} ${round(y + 4)}H${round(x - 4.5)}Z"/>`;

/** Powers of ten; their halves and fifths too where the axis spans less than two of them. */
function ticksOf(from: number, to: number): number[] {
  const powers = range(Math.floor(Math.log10(from)), Math.ceil(Math.log10(to)));
  const apart = to / from < 100 ? [1, 2, 5] : [1];
  const step = Math.ceil(powers.length / 8);
  return powers
    .filter((power) => power % step === 0)
    .flatMap((power) => apart.map((times) => times * 10 ** power))
    .filter((value) => value >= from && value <= to);
}
const range = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, i) => from + i);

const written = (value: number): string =>
  value >= 1e5 || value < 1e-3
    ? value.toExponential(0).replace("+", "").replace("-", "−")
    : String(Number(value.toPrecision(3))).replace(/\B(?=(\d{3})+$)/g, " ");
