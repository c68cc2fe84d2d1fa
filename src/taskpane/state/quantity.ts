import { Band, splitTolerance } from "../../core/band";
import type { FieldKey } from "../../core/duties";
import type { Span } from "../../core/formula";
import { isDimensional, kinds } from "../../core/kinds";
import type { Kind, System } from "../../core/kinds";
import { measure } from "../../core/measure";
import { fromWorking } from "../../core/units";
import { isChoice, kindOf } from "./fields";
import type { FormKey, Texts } from "./fields";

/** What the pane computes is shown to four digits. */
const digits = 4;
export const quantityText = (kind: Kind, value: number, system: System): string => measure(kind, value, system, digits);
export const bareNumber = (kind: Kind, value: number, system: System): string =>
  String(Number(fromWorking(kind, value, system).toPrecision(digits)));

/** What was read, with its unit in the sheet's system; short, for eyes only. */
export function readBack(key: FieldKey, value: number | Band | Span, system: System): string {
  const kind = kindOf(key);
  const said = (x: number) => measure(kind, x, system);
  if (typeof value === "number") return said(value);
  const { low, high } = value;
  const ends = low === high ? said(low) : `${said(low)} to ${said(high)}`;
  return value instanceof Band && value.likely !== undefined ? `${ends}, most likely ${said(value.likely)}` : ends;
}

/** The same text with a unit, where it names none: "5 to 45" as "5 to 45 °C", "800 ± 20 %" as "800 N ± 20 %". */
export function withUnit(text: string, unit: string): string {
  const about = splitTolerance(text);
  if (about) return `${withUnit(about[0], unit)} ± ${about[1]}`;
  return unit !== "" && /[\d.,]\s*$/.test(text) ? `${text.trim()} ${unit}` : text;
}

/** The same duty in the other unit system: a plain number gets the unit that it had. */
export function keepUnits(texts: Texts, from: System): Texts {
  const kept = Object.entries(texts).map(([name, text]) => {
    const key = name as FormKey;
    return [key, isChoice(key) ? text : keepUnit(kindOf(key), text, from)];
  });
  return Object.fromEntries(kept) as Texts;
}

export const keepUnit = (kind: Kind, text: string, from: System): string =>
  isDimensional(kind) ? withUnit(text, kinds[kind][from]) : text;
