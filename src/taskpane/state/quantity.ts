import { Band, splitTolerance } from "../../core/band";
import { field } from "../../core/duties";
import type { FieldKey, FieldValues } from "../../core/duties";
import { Deviations } from "../../core/fit/zones/zone";
import type { Span } from "../../core/formula";
import { isDimensional, kinds } from "../../core/kinds";
import { mapped } from "../../core/keyed";
import type { Kind, System } from "../../core/kinds";
import { measureText } from "../../core/measure";
import { fromWorking } from "../../core/units/scale";
import { kindOf } from "./fields";
import { eachOf } from "./form";
import type { Form } from "./form";

/** What the pane computes is shown to four digits. */
const digits = 4;
export const quantityText = (kind: Kind, value: number, system: System): string =>
  measureText(kind, value, system, digits);
export const bareNumber = (kind: Kind, value: number, system: System): string =>
  String(Number(fromWorking(kind, value, system).toPrecision(digits)));

/** What was read, with its unit in the sheet's system; short, for eyes only. */
export function readBack(key: FieldKey, value: NonNullable<FieldValues[FieldKey]>, system: System): string {
  if (value instanceof Deviations) return value.toString(system);
  if (Array.isArray(value)) return value.join(", ");
  const { kind: of } = field(key);
  if (typeof value === "string" || (of !== "span" && !(of in kinds))) return String(value);
  const kind = kindOf(key);
  const said = (x: number) => measureText(kind, x, system);
  if (typeof value === "number") return said(value);
  const { low, high } = value as Band | Span;
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
export const keepUnits = (form: Form, from: System): Form =>
  eachOf(form, (texts) => mapped(texts, (text, key) => keepUnit(key, text, from)));

function keepUnit(key: FieldKey, text: string, from: System): string {
  const { kind } = field(key);
  // a class of ISO 286 ends in a digit too
  if (kind === "zone") return /^[\d\s.,+\-\u2212/]+$/.test(text) ? withUnit(text, kinds.length[from]) : text;
  const isNumber = kind === "span" || kind in kinds;
  return isNumber && isDimensional(kindOf(key)) ? withUnit(text, kinds[kindOf(key)][from]) : text;
}
