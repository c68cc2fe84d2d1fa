import type { Span } from "../../formula";
import { leastPoint } from "../../grades/model/curve";
import type { Limit } from "../../grades/model/limits";
import { property } from "../../grades/model/properties";
import type { Values } from "../../grades/model/properties";
import { kinds } from "../../kinds";
import { figure } from "./criterion";
import type { Working } from "./criterion";

/** A limit of pressure or PV over a span of temperature of the bore or the surroundings, under its symbol: as the grade states it, or read between two points of its curve. */
export function limitWorking(
  symbol: string,
  kind: "pressure" | "pv",
  what: string,
  { value, key }: Extract<Limit, { state: "known" }>,
  values: Values,
  span: Span,
  of: "bore temperature" | "surroundings",
): Working {
  const curve = key === "pressureCurve" || key === "pvCurve" ? values[key] : undefined;
  const text = `Limit of ${what}`;
  if (!curve) {
    const notBelow = kind === "pv" ? values.pvCurve : values.pressureCurve;
    const words = notBelow ? `${text}, its curve not below it` : text;
    return { lines: [], known: { [symbol]: figure(value, kind, words, key) } };
  }
  const { at, before, after } = leastPoint(curve, span);
  const { heading } = property(key);
  if (before === after)
    return { lines: [], known: { [symbol]: figure(value, kind, `${text}, a point of "${heading}"`, key) } };
  return {
    lines: [`${symbol} = y_1 + (y_2 - y_1) * (T_c - T_1) / (T_2 - T_1)`],
    known: {
      y_1: figure(before.value, kind, `${text} at the point before`, key),
      y_2: figure(after.value, kind, `${text} at the point behind`, key),
      T_c: { ...figure(at, "temperature", `Temperature at which "${heading}" is read`), origin: of },
      T_1: figure(before.at, "temperature", "Temperature of the point before"),
      T_2: figure(after.at, "temperature", "Temperature of the point behind"),
    },
    between: { [symbol]: { unit: kinds[kind].metric, text: `${text}, between two points of "${heading}"` } },
  };
}
