import { scaleLinear } from "d3-scale";
import type { Bar } from "../figures/told";
import { anchorAt, tick, useChart } from "./chartStyles";

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
  const names = bars.map(({ name }) => wrapped(name));
  const tops = names.map((_, i) => names.slice(0, i).reduce((sum, lines) => sum + lines.length * lineHeight + 24, 0));
  const height = names.reduce((sum, lines) => sum + lines.length * lineHeight + 24, foot);
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
      {bars.map(({ from, to, faint }, i) => {
        const below = tops[i]! + names[i]!.length * lineHeight;
        return (
          <g key={i}>
            {names[i]!.map((line, k) => (
              <text key={k} className={s.name} x={side + 6} y={tops[i]! + 12 + k * lineHeight}>
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

/** Lines of a name that fit the picture. */
function wrapped(name: string): string[] {
  const lines = [""];
  for (const word of name.split(" ")) {
    const last = lines.at(-1)!;
    if (last !== "" && last.length + word.length >= longest) lines.push(word);
    else lines[lines.length - 1] = last === "" ? word : `${last} ${word}`;
  }
  return lines;
}
