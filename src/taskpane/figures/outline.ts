import { boreSpan, rounding } from "../../core/duties";
import type { Duty, Face, NamedDuty, Step } from "../../core/duties";
import { pressureLimit, pvLimit, speedLimit } from "../../core/grades/model";
import type { Limit, Values } from "../../core/grades/model";
import { functions } from "../../core";

/** A point of the chart, in working units. */
export interface Point {
  readonly speed: number;
  readonly pressure: number;
}

/** A point with what it is called: "2", "1 flange"; nothing where it is the only one. */
export interface MarkedPoint extends Point {
  readonly mark: string;
}

/** The limits of a grade in this duty; `undefined` is no data, 0 that nothing is borne. */
export interface Bounds {
  readonly pressure?: number | undefined;
  readonly speed?: number | undefined;
  readonly pv?: number | undefined;
}

export const bearsNothing = ({ pressure, speed, pv }: Bounds): boolean => pressure === 0 || speed === 0 || pv === 0;

/** The corner of the duty's bands with the greatest PV, design factor included; of equals the one with the greatest pressure, impact included too. */
export const hardest = ({ corners }: NamedDuty): Duty =>
  corners.reduce((a, b) => {
    const [pv, other] = [a.pv * a.designFactor, b.pv * b.designFactor];
    const isEqual = Math.abs(other - pv) <= rounding * pv;
    return (isEqual ? pressureOf(b) > pressureOf(a) : other > pv) ? b : a;
  });
const pressureOf = ({ steps, impactFactor, designFactor }: Duty): number =>
  impactFactor * designFactor * Math.max(...steps.flatMap(facesOf).map(({ pressure }) => pressure));
const facesOf = ({ bore, face }: Step): Face[] => [bore, face].flatMap((one) => one ?? []);

/** Limits as the criteria have them: in these surroundings, at the bore's temperature, with the design factor. */
export function boundsOf(values: Values, duty: Duty): Bounds {
  const { designFactor, temperature, steps } = duty;
  const moving = steps.flatMap(({ motion }) => (motion === "static" ? [] : [motion]));
  const bore = values.pressureCurve ? boreSpan(values, duty) : temperature;
  return {
    pressure:
      typeof bore === "string" ? undefined : bound(pressureLimit(values, "runningPressure", bore), designFactor),
    speed: moving[0] && bound(speedLimit(values, moving[0])),
    pv: bound(pvLimit(values, temperature), designFactor),
  };
}

function bound(limit: Limit, factor = 1): number | undefined {
  if (limit.state === "known") return limit.value / factor;
  return limit.state === "missing" ? undefined : 0;
}

/** Where each step stands, a flanged bush with its bore and its flange: the pressure without the impact factor, which plays no part in PV. */
export const pointsOf = ({ steps }: Duty): MarkedPoint[] =>
  steps.flatMap(({ bore, face }, i) => {
    const step = steps.length > 1 ? String(i + 1) : "";
    const marked = (point: Face, of: string) => ({ ...point, mark: [step, of].filter(Boolean).join(" ") });
    const isBoth = bore !== undefined && face !== undefined;
    return [
      ...(bore ? [marked(bore, isBoth ? "bore" : "")] : []),
      ...(face ? [marked(face, isBoth ? "flange" : "")] : []),
    ];
  });

export const pvOf = ({ pressure, speed }: Point): number => functions.PVVALUE({ pressure, speed });

/** The part of the plane that a chart shows. */
export interface Frame {
  readonly speed: readonly [number, number];
  readonly pressure: readonly [number, number];
}

/** All points and limits, and the corners where a PV line meets the other limits, with a little room around them. */
export function frameOf(points: readonly Point[], bounds: readonly Bounds[]): Frame {
  const corner = (pv: number | undefined, other: number | undefined) =>
    pv !== undefined && other !== undefined ? [pv / other] : [];
  return {
    speed: around([
      ...points.map((p) => p.speed),
      ...bounds.flatMap(({ speed, pressure, pv }) => [
        ...(speed === undefined ? [] : [speed]),
        ...corner(pv, pressure),
      ]),
    ]),
    pressure: around([
      ...points.map((p) => p.pressure),
      ...bounds.flatMap(({ speed, pressure, pv }) => [
        ...(pressure === undefined ? [] : [pressure]),
        ...corner(pv, speed),
      ]),
    ]),
  };
}

const room = 1.8;
/** A logarithmic axis needs a power of ten to carry a number. */
const least = 10;

function around(values: readonly number[]): [number, number] {
  const known = values.filter((value) => value > 0 && Number.isFinite(value));
  if (known.length === 0) return [0.1, 10];
  const low = Math.min(...known) / room;
  const high = Math.max(...known) * room;
  const short = Math.sqrt(Math.max(1, (least * room) / (high / low)));
  return [low / short, high * short];
}

/**
 * The edge of what a grade bears, from the left of the frame to its foot: pressure limit, PV line, speed limit. A limit
 * without data leaves that side open, so the edge ends at the frame; where nothing is borne there is no edge.
 */
export function edgeOf({ pressure, speed, pv }: Bounds, frame: Frame): Point[] {
  if (bearsNothing({ pressure, speed, pv })) return [];
  const [v0, v1] = frame.speed;
  const [p0, p1] = frame.pressure;
  const right = Math.min(speed ?? Infinity, v1);
  const top = Math.min(pressure ?? Infinity, p1);
  if (pv === undefined) {
    const edge: Point[] = pressure === undefined ? [] : [at(v0, top), at(right, top)];
    return speed === undefined ? edge : [...edge, at(right, top), at(right, p0)];
  }
  const edge: Point[] = [];
  const start = Math.max(v0, Math.min(right, pv / top));
  const foot = Math.min(right, Math.max(v0, pv / p0));
  if (pressure !== undefined) edge.push(at(v0, top));
  edge.push(at(start, Math.min(top, pv / start)));
  if (foot > start) edge.push(at(foot, Math.max(p0, pv / foot)));
  if (speed !== undefined && right === speed) edge.push(at(right, p0));
  return edge;
}
const at = (speed: number, pressure: number): Point => ({ speed, pressure });
