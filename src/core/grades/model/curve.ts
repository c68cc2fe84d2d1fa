import { checkDomain } from "../../domain";
import type { Bounds } from "../../domain";
import { mustBe } from "../../errors";
import type { Span } from "../../formula";
import type { System } from "../../kinds";
import { present } from "../../present";
import { fromWorking } from "../../units/scale";
import { readIn } from "../../table/readValue";

/** A limit against temperature: straight lines between points of rising temperature. Colder than the first its value holds; beyond the last there is none. */
export type Curve = readonly [Point, ...Point[]];
interface Point {
  readonly at: number;
  readonly value: number;
}

/** Reads "23: 40; 80: 25"; `unit` is the heading's, "°F: psi" or that of the values alone. Numbers may carry their own units. */
export function readCurve(name: string, bounds: Bounds, text: string, unit: string | undefined, system: System): Curve {
  const [second, first] = (unit ?? "")
    .split(":")
    .reverse()
    .map((part) => part.trim());
  const points = text
    .split(";")
    .filter((part) => part.trim() !== "")
    .map((part): Point => {
      const [at = "", value, ...more] = part.split(":");
      if (value === undefined || more.length > 0) throw mustBe(name, notation, text);
      const point = {
        at: readIn(name, "temperature", at.trim(), first || undefined, system),
        value: readIn(name, bounds.kind, value.trim(), second || undefined, system),
      };
      checkDomain(name, { kind: "temperature" }, point.at, system, part.trim());
      checkDomain(name, bounds, point.value, system, part.trim());
      return point;
    });
  const [start, ...rest] = points;
  if (start === undefined || rest.length === 0) throw mustBe(name, notation, text);
  let before = start;
  for (const point of rest) {
    if (point.at <= before.at) throw mustBe(name, "in order of temperature", text);
    before = point;
  }
  return [start, ...rest];
}
const notation = 'two or more points as "23: 40; 80: 25"';

export const curveText = (curve: Curve, kind: Bounds["kind"], system: System): string =>
  curve
    .map(
      ({ at, value }) =>
        `${rounded(fromWorking("temperature", at, system))}: ${rounded(fromWorking(kind, value, system))}`,
    )
    .join("; ");
const rounded = (x: number): number => Number(x.toPrecision(10));

export const endsOf = (curve: Curve): Span => ({ low: curve[0].at, high: present(curve[curve.length - 1]).at });

/** By how much a temperature that was computed may lie beyond the last point, K: a PV used to 100 % puts the bore there but for a rounding. */
const computed = 1e-6;

/** The value at one temperature; below the first point the first value holds, beyond the last there is none: `undefined`. */
export function valueAt(curve: Curve, at: number): number | undefined {
  let before = curve[0];
  if (at <= before.at) return before.value;
  for (const point of curve) {
    if (at < point.at) return before.value + ((point.value - before.value) * (at - before.at)) / (point.at - before.at);
    before = point;
  }
  return at <= before.at + computed ? before.value : undefined;
}

/** The least value over a span, its inner points included; `undefined` where the span leaves the curve. */
export function leastOver(curve: Curve, { low, high }: Span): number | undefined {
  const last = valueAt(curve, high);
  const first = low === high ? last : valueAt(curve, low);
  if (first === undefined || last === undefined) return undefined;
  let least = Math.min(first, last);
  for (const { at, value } of curve) if (at > low && at < high && value < least) least = value;
  return least;
}

/** Where a curve that covers a span is least over it, and the points on either side: one and the same where it stands on a point or before the first. */
export function leastPoint(curve: Curve, { low, high }: Span) {
  const inside = [low, high, ...curve.map(({ at }) => at)].filter((at) => at >= low && at <= high);
  const { at } = inside
    .map((t): Point => ({ at: t, value: present(valueAt(curve, t)) }))
    .reduce((a, b) => (b.value < a.value ? b : a));
  const before = curve.filter((point) => point.at <= at).pop() ?? curve[0];
  const after = at <= before.at ? before : (curve.find((point) => point.at > at) ?? before);
  return { at, before, after };
}
