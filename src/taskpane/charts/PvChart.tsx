import { makeStyles, tokens } from "@fluentui/react-components";
import { scaleLog } from "d3-scale";
import { line } from "d3-shape";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { fromWorking } from "../../core/units/scale";
import { edgeOf, frameOf } from "../figures/outline";
import { letters } from "../figures/pv";
import type { Bounds, Frame, MarkedPoint, Point } from "../figures/outline";

export interface Curve {
  readonly name: string;
  readonly bounds: Bounds;
}

interface Props {
  readonly curves: readonly Curve[];
  /** One filled mark, or the marks of steps and faces. */
  readonly points: readonly MarkedPoint[];
  readonly system: System;
  readonly summaryId: string;
}

const size = { width: 320, height: 270, left: 50, right: 10, top: 10, bottom: 40 };
/** Told apart by dash and letter, not by colour. */
const dashes = ["none", "7 4", "2 3"];

const useStyles = makeStyles({
  chart: {
    width: "100%",
    maxWidth: "520px",
    height: "auto",
    display: "block",
    color: tokens.colorNeutralForeground1,
    flexShrink: 0,
    forcedColorAdjust: "auto",
  },
  grid: { stroke: tokens.colorNeutralStroke2, strokeWidth: 1 },
  frame: { stroke: tokens.colorNeutralStroke1, fill: "none" },
  text: { fill: tokens.colorNeutralForeground2, fontSize: "11px" },
  letter: { fill: tokens.colorNeutralForeground1, fontSize: "12px", fontWeight: tokens.fontWeightSemibold },
  edge: { stroke: tokens.colorBrandForeground1, fill: "none", strokeWidth: 2 },
  duty: { fill: tokens.colorNeutralForeground1 },
  step: { fill: tokens.colorNeutralBackground1, stroke: tokens.colorNeutralForeground1, strokeWidth: 1.5 },
});

/** Pressure over speed, both logarithmic: a PV limit is a straight line. */
export function PvChart({ curves, points, system, summaryId }: Props) {
  const s = useStyles();
  const frame = frameOf(
    points,
    curves.map((c) => c.bounds),
  );
  const shown = inSystem(frame, system);
  const x = scaleLog(shown.speed, [size.left, size.width - size.right]).clamp(true);
  const y = scaleLog(shown.pressure, [size.height - size.bottom, size.top]).clamp(true);
  const put = ({ speed, pressure }: Point): [number, number] => [
    x(fromWorking("speed", Math.max(speed, Number.MIN_VALUE), system)),
    y(fromWorking("pressure", Math.max(pressure, Number.MIN_VALUE), system)),
  ];
  const path = line();
  return (
    <svg className={s.chart} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-labelledby={summaryId}>
      {powers(x.domain()).map((v) => (
        <g key={v}>
          <line className={s.grid} x1={x(v)} x2={x(v)} y1={size.top} y2={size.height - size.bottom} />
          <text className={s.text} x={x(v)} y={size.height - size.bottom + 14} textAnchor="middle">
            {tick(v)}
          </text>
        </g>
      ))}
      {powers(y.domain()).map((p) => (
        <g key={p}>
          <line className={s.grid} x1={size.left} x2={size.width - size.right} y1={y(p)} y2={y(p)} />
          <text className={s.text} x={size.left - 6} y={y(p) + 4} textAnchor="end">
            {tick(p)}
          </text>
        </g>
      ))}
      <rect
        className={s.frame}
        x={size.left}
        y={size.top}
        width={size.width - size.left - size.right}
        height={size.height - size.top - size.bottom}
      />
      <text className={s.text} x={(size.left + size.width) / 2} y={size.height - 6} textAnchor="middle">
        sliding speed, {kinds.speed[system]}
      </text>
      <text
        className={s.text}
        transform={`translate(11 ${(size.height - size.bottom) / 2}) rotate(-90)`}
        textAnchor="middle"
      >
        pressure, {kinds.pressure[system]}
      </text>
      {curves.map(({ name, bounds }, i) => {
        const edge = edgeOf(bounds, frame).map(put);
        const label = edge[Math.floor((edge.length - 1) / 2)];
        return (
          <g key={name}>
            <path className={s.edge} d={path(edge) ?? ""} strokeDasharray={dashes[i]} />
            {label && (
              <text className={s.letter} x={label[0] + 5} y={label[1] - 5 + i * 2}>
                {letters[i]}
              </text>
            )}
          </g>
        );
      })}
      {points.map((point, i) => {
        const [cx, cy] = put(point);
        if (points.length === 1) return <Cross key={i} at={[cx, cy]} />;
        return (
          <g key={i}>
            <circle className={s.step} cx={cx} cy={cy} r={4} />
            <text className={s.text} x={cx + 6} y={cy + 12}>
              {point.mark}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function Cross({ at: [x, y] }: { at: [number, number] }) {
  const s = useStyles();
  return <path className={s.duty} d={`M${x} ${y - 7}L${x + 7} ${y}L${x} ${y + 7}L${x - 7} ${y}Z`} />;
}

const inSystem = ({ speed, pressure }: Frame, system: System): Frame => ({
  speed: [fromWorking("speed", speed[0], system), fromWorking("speed", speed[1], system)],
  pressure: [fromWorking("pressure", pressure[0], system), fromWorking("pressure", pressure[1], system)],
});

function powers([low = 1, high = 10]: number[]): number[] {
  const first = Math.ceil(Math.log10(low) - 1e-9);
  const last = Math.floor(Math.log10(high) + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => 10 ** (first + i));
}

const tick = (value: number): string =>
  value >= 0.001 && value < 1e6 ? String(Number(value.toPrecision(1))) : value.toExponential(0);
