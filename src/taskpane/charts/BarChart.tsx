import { scaleLinear } from "d3-scale";
import type { Bar } from "../figures/told";
import { anchorAt, tick, useChart } from "./chartStyles";
import { wrapped } from "./wrapped";

interface Props {
  readonly bars: readonly Bar[];
  readonly axis: string;
  /** A line across all bars. */
  readonly limit?: number | undefined;
  readonly summaryId: string;
  readonly tickText?: (value: number) => string;
}

const width = 320;
const side = 8;
const lineHeight = 14;
const foot = 34;
/** Characters of a name that one line holds. */
const longest = 44;

/** Bars below each other, each under its name. */
export function BarChart({ bars, axis, limit, summaryId, tickText = tick }: Props) {
  const s = useChart();
  const ends = bars.flatMap(({ from, to, faint = [] }) => [from, to, ...faint]);
  const all = limit === undefined ? ends : [...ends, limit];
  const x = scaleLinear([Math.min(...all), Math.max(...all)], [side, width - side]).nice(4);
  const { placed, bottom } = belowEachOther(bars);
  const height = bottom + foot;
  return (
    <svg className={s.chart} viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={summaryId}>
      {x.ticks(4).map((value) => (
        <g key={value}>
          <line className={value === 0 ? s.zero : s.grid} x1={x(value)} x2={x(value)} y1={0} y2={height - foot} />
          <text className={s.text} x={x(value)} y={height - foot + 14} textAnchor={anchorAt(x(value), width)}>
            {tickText(value)}
          </text>
        </g>
      ))}
      {limit !== undefined && <line className={s.limit} x1={x(limit)} x2={x(limit)} y1={0} y2={height - foot} />}
      <text className={s.text} x={width / 2} y={height - 4} textAnchor="middle">
        {axis}
      </text>
      {placed.map(({ bar: { from, to, faint }, name, top }, i) => {
        const below = top + name.length * lineHeight;
        return (
          <g key={i}>
            {name.map((line, k) => (
              <text key={k} className={s.name} x={side + 6} y={top + 12 + k * lineHeight}>
                {line}
              </text>
            ))}
            <rect className={s.solid} x={x(from)} width={Math.max(2, x(to) - x(from))} y={below + 5} height={10} />
            {faint && faint[1] > faint[0] && (
              <rect className={s.faint} x={x(faint[0])} width={x(faint[1]) - x(faint[0])} y={below + 6} height={8} />
            )}
          </g>
        );
      })}
    </svg>
  );
}

/** Each bar with the lines of its name and where they begin, and where the last one ends. */
function belowEachOther(bars: readonly Bar[]) {
  let bottom = 0;
  const placed = bars.map((bar) => {
    const name = wrapped(bar.name, longest);
    const top = bottom;
    bottom += name.length * lineHeight + 24;
    return { bar, name, top };
  });
  return { placed, bottom };
}
