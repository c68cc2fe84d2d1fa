import { checkDomain } from "../domain";
import type { Bounds } from "../domain";
import { mustBe } from "../errors";
import type { Span } from "../formula";
import type { System } from "../kinds";
import { fromWorking } from "../units";
import { readIn } from "./readIn";

/** A limit against temperature: straight lines between points of rising temperature, nothing beyond the ends. */
export type Curve = readonly { readonly at: number; readonly value: number }[];

/** Reads "23: 40; 80: 25"; `unit` is the heading's, "°F: psi" or that of the values alone. Numbers may carry their own units. */
export function readCurve(name: string, bounds: Bounds, text: string, unit: string | undefined, system: System): Curve {
  const [second, first] = (unit ?? "")
    .split(":")
    .reverse()
    .map((part) => part.trim());
  const points = text
    .split(";")
    .filter((part) => part.trim() !== "")
    .map((part) => {
      const [at, value, ...more] = part.split(":");
      if (value === undefined || more.length > 0) throw mustBe(name, notation, text);
      const point = {
        at: readIn(name, "temperature", at!.trim(), first || undefined, system),
        value: readIn(name, bounds.kind, value.trim(), second || undefined, system),
      };
      checkDomain(name, { kind: "temperature" }, point.at, system, part.trim());
      checkDomain(name, bounds, point.value, system, part.trim());
      return point;
    });
  if (points.length < 2) throw mustBe(name, notation, text);
  if (points.some((p, i) => i > 0 && p.at <= points[i - 1]!.at)) throw mustBe(name, "in order of temperature", text);
  return points;
}
const notation = 'two or more points as "23: 40; 80: 25"';

export const curveText = (curve: Curve, kind: Bounds["kind"], system: System): string =>
  curve
    .map(
      ({ at, value }) => `${tidy(fromWorking("temperature", at, system))}: ${tidy(fromWorking(kind, value, system))}`,
    )
    .join("; ");
const tidy = (x: number): number => Number(x.toPrecision(10));

export const endsOf = (curve: Curve): Span => ({ low: curve[0]!.at, high: curve[curve.length - 1]!.at });

/** The value at one temperature; `undefined` beyond the ends. */
export function valueAt(curve: Curve, at: number): number | undefined {
  const next = curve.findIndex((p) => p.at >= at);
  const b = curve[next];
  if (!b) return undefined;
  if (b.at === at) return b.value;
  const a = curve[next - 1];
  return a && a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at);
}

/** The least value over a span, its inner points included; `undefined` where the span leaves the curve. */
export function leastOver(curve: Curve, { low, high }: Span): number | undefined {
  const ends = [valueAt(curve, low), valueAt(curve, high)];
  if (ends.includes(undefined)) return undefined;
  const inner = curve.filter((p) => p.at > low && p.at < high).map((p) => p.value);
  return Math.min(...(ends as number[]), ...inner);
}
