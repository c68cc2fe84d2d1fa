import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { present } from "../../core/present";
import type { Line } from "../figures/told";
import { dashes, tick, useChart } from "./chartStyles";

interface Props {
  readonly x: readonly number[];
  readonly xName: string;
  readonly lines: readonly Line[];
  readonly yName: string;
  readonly limit?: { readonly name: string; readonly at: number } | undefined;
  /** A value of x that is marked. */
  readonly mark?: { readonly name: string; readonly at: number } | undefined;
  /** Parts of x with a word for each. */
  readonly bands?: readonly { readonly from: number; readonly to: number; readonly word: string }[];
  readonly summaryId: string;
  readonly yText?: (value: number) => string;
}

const size = { width: 320, height: 230, left: 58, right: 12, top: 16, bottom: 40 };

/** Lines over x, told apart by dash and name, with a limit across and a mark. */
export function LineChart({ x: xs, xName, lines, yName, limit, mark, bands = [], summaryId, yText = tick }: Props) {
  const s = useChart();
  const ys = lines.flatMap(({ values }) => values.flatMap((value) => value ?? []));
  const most = Math.max(...ys, limit?.at ?? 0, 0);
  const x = scaleLinear([xs[0] ?? 0, xs.at(-1) ?? 1], [size.left, size.width - size.right]);
  const y = scaleLinear([0, most || 1], [size.height - size.bottom, size.top]).nice(4);
  const foot = size.height - size.bottom;
  const right = size.width - size.right;
  return (
    <svg className={s.chart} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-labelledby={summaryId}>
      {joined(bands).map(({ from, to, word }) => (
        <g key={from}>
          {word !== "fits" && (
            <rect className={s.band} x={x(from)} width={x(to) - x(from)} y={size.top} height={foot - size.top} />
          )}
          {x(to) - x(from) > 7 * word.length && (
            <text className={s.text} x={(x(from) + x(to)) / 2} y={size.top - 4} textAnchor="middle">
              {word}
            </text>
          )}
        </g>
      ))}
      {y.ticks(4).map((value) => (
        <g key={value}>
          <line className={s.grid} x1={size.left} x2={right} y1={y(value)} y2={y(value)} />
          <text className={s.text} x={size.left - 5} y={y(value) + 4} textAnchor="end">
            {yText(value)}
          </text>
        </g>
      ))}
      {x.ticks(4).map((value) => (
        <text key={value} className={s.text} x={x(value)} y={foot + 14} textAnchor="middle">
          {tick(value)}
        </text>
      ))}
      <line className={s.zero} x1={size.left} x2={right} y1={foot} y2={foot} />
      <text className={s.text} x={(size.left + right) / 2} y={size.height - 6} textAnchor="middle">
        {xName}
      </text>
      <text className={s.text} transform={`translate(11 ${foot / 2}) rotate(-90)`} textAnchor="middle">
        {yName}
      </text>
      {lines.map(({ name, values }, i) => {
        const points = values.map((value, k) => ({ at: present(xs[k]), value }));
        const path = line<(typeof points)[number]>()
          .defined(({ value }) => value !== undefined)
          .x(({ at }) => x(at))
          .y(({ value }) => y(present(value)));
        const last = points.flatMap(({ at, value }) => (value === undefined ? [] : [{ at, value }])).at(-1);
        return (
          <g key={name}>
            <path className={s.range} d={path(points) ?? ""} strokeDasharray={dashes[i]} />
            {last && lines.length > 1 && (
              <text className={s.name} x={x(last.at) - 4} y={y(last.value) - 5} textAnchor="end">
                {name}
              </text>
            )}
          </g>
        );
      })}
      {limit && (
        <g>
          <line className={s.limit} x1={size.left} x2={right} y1={y(limit.at)} y2={y(limit.at)} />
          <text className={s.name} x={size.left + 4} y={y(limit.at) - 4}>
            {limit.name}
          </text>
        </g>
      )}
      {mark && xs.some((at) => at <= mark.at) && xs.some((at) => at >= mark.at) && (
        <g>
          <line className={s.limit} x1={x(mark.at)} x2={x(mark.at)} y1={size.top} y2={foot} />
          <text className={s.name} {...beside(x(mark.at))} y={foot - 6}>
            {mark.name}
          </text>
        </g>
      )}
    </svg>
  );
}

/** Where words beside an upright line have room. */
const beside = (x: number) =>
  x > size.width / 2 ? ({ x: x - 4, textAnchor: "end" } as const) : ({ x: x + 4, textAnchor: "start" } as const);

/** Neighbouring parts of one word as one. */
function joined(bands: NonNullable<Props["bands"]>): NonNullable<Props["bands"]> {
  const parts: { from: number; to: number; word: string }[] = [];
  for (const band of bands) {
    const last = parts.at(-1);
    if (last?.word === band.word && last.to === band.from) last.to = band.to;
    else parts.push({ ...band });
  }
  return parts;
}
