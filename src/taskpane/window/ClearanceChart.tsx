import { makeStyles, tokens } from "@fluentui/react-components";
import { scaleLinear } from "d3-scale";
import type { FitRow } from "../../core/duties";
import type { Limits } from "../../core/fit/iso286";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { fromWorking } from "../../core/units";
import { bareNumber } from "../state/quantity";
import { nameOf } from "./fit";

interface Props {
  readonly rows: readonly FitRow[];
  /** All rows that share the scale. */
  readonly among: readonly FitRow[];
  readonly system: System;
  readonly summaryId: string;
}

const width = 320;
const rowHeight = 44;
const left = 8;
const right = 8;
const foot = 34;

const useStyles = makeStyles({
  chart: { width: "100%", maxWidth: "520px", height: "auto", display: "block", flexShrink: 0 },
  text: { fill: tokens.colorNeutralForeground2, fontSize: "11px" },
  // an outline in the ground's colour keeps the words clear of the grid
  name: {
    fill: tokens.colorNeutralForeground1,
    fontSize: "12px",
    paintOrder: "stroke",
    stroke: tokens.colorNeutralBackground1,
    strokeWidth: "4px",
  },
  grid: { stroke: tokens.colorNeutralStroke2 },
  zero: { stroke: tokens.colorNeutralForeground1, strokeWidth: 2 },
  range: { fill: "none", stroke: tokens.colorBrandForeground1, strokeWidth: 2 },
  likely: { fill: tokens.colorBrandForeground1 },
});

/** One bar per state from least to greatest clearance; the filled part is the root-sum-square band. Left of zero it binds. */
export function ClearanceChart({ rows, among, system, summaryId }: Props) {
  const s = useStyles();
  const inUnits = ({ least, greatest }: Limits) =>
    [fromWorking("length", least, system), fromWorking("length", greatest, system)] as const;
  const ends = among.flatMap(({ clearance, band }) => [...inUnits(clearance), ...inUnits(band)]);
  const x = scaleLinear([Math.min(0, ...ends), Math.max(0, ...ends)], [left, width - right]).nice(4);
  const height = rows.length * rowHeight + foot;
  return (
    <svg className={s.chart} viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={summaryId}>
      {x.ticks(4).map((value) => (
        <g key={value}>
          <line className={value === 0 ? s.zero : s.grid} x1={x(value)} x2={x(value)} y1={0} y2={height - foot} />
          <text className={s.text} x={x(value)} y={height - foot + 14} textAnchor={anchor(x(value))}>
            {Number(value.toPrecision(6))}
          </text>
        </g>
      ))}
      <text className={s.text} x={width / 2} y={height - 4} textAnchor="middle">
        running clearance, {kinds.length[system]}
      </text>
      {rows.map((row, i) => {
        const y = i * rowHeight;
        const [least, greatest] = inUnits(row.clearance);
        const [low, high] = inUnits(row.band);
        return (
          <g key={nameOf(row)}>
            <text className={s.name} x={left + 6} y={y + 15}>
              {nameOf(row)}, {bareNumber("temperature", row.bush, system)} {kinds.temperature[system]}: {row.word}
            </text>
            <rect className={s.likely} x={x(low)} width={x(high) - x(low)} y={y + 23} height={10} />
            <path className={s.range} d={`M${x(least)} ${y + 21}v14m0 -7H${x(greatest)}m0 -7v14`} />
          </g>
        );
      })}
    </svg>
  );
}

const anchor = (x: number): "start" | "middle" | "end" => (x < 24 ? "start" : x > width - 24 ? "end" : "middle");
