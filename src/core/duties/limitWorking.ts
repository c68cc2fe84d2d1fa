import type { Span } from "../formula";
import { leastPoint } from "../grade/curve";
import type { Limit } from "../grade/limits";
import { property } from "../grade/properties";
import type { Values } from "../grade/properties";
import { kinds } from "../kinds";
import { figure } from "./criterion";
import type { Working } from "./criterion";

/** A limit of pressure or PV, under its symbol: as the grade states it, or read between two points of its curve. */
export function limitWorking(
  symbol: string,
  kind: "pressure" | "pv",
  what: string,
  { value, key, how }: Extract<Limit, { state: "known" }>,
  values: Values,
  span: Span,
): Working {
  const curve = key === "pressureCurve" || key === "pvCurve" ? values[key] : undefined;
  const stated = { lines: [], known: { [symbol]: figure(value, kind, `Limit of ${what}`, key) } };
  if (how !== "curve" || !curve) return stated;
  const { at, before, after } = leastPoint(curve, span);
  const { heading } = property(key);
  if (before === after)
    return { lines: [], known: { [symbol]: figure(value, kind, `Limit of ${what}, a point of "${heading}"`, key) } };
  const [y1, y2] = [`${symbol}_1`, `${symbol}_2`];
  return {
    lines: [`${symbol} = ${y1} + (${y2} - ${y1}) * (T_c - T_1) / (T_2 - T_1)`],
    known: {
      [y1]: figure(before.value, kind, `Limit of ${what} at the point before`, key),
      [y2]: figure(after.value, kind, `Limit of ${what} at the point behind`, key),
      T_c: figure(at, "temperature", `Temperature at which "${heading}" is read`),
      T_1: figure(before.at, "temperature", "Temperature of the point before"),
      T_2: figure(after.at, "temperature", "Temperature of the point behind"),
    },
    between: { [symbol]: { unit: kinds[kind].metric, text: `Limit of ${what}, between two points of "${heading}"` } },
  };
}
