import { Band } from "../../band";
import { Measure, UnitLabel } from "../../formula";
import type { Answer, Span } from "../../formula";
import { Deviations } from "../../fit/zones/zone";
import { isDimensional, kinds } from "../../kinds";
import type { Kind, System } from "../../kinds";
import { present } from "../../present";
import { labelOf } from "../../teach/worksheet";
import { fromWorking } from "../../units/scale";
import type { Check, Criterion } from "../judging/criterion";
import { field, fieldKeys, isAskedFor } from "../model/fields";
import type { FieldKey, FieldValues } from "../model/fields";
import { placeOf } from "../model/movable";
import type { NamedDuty } from "../model/namedDuty";
import { heldValues } from "../model/withField";
import { wordLine } from "./rows";
import type { Line } from "./rows";

export type Value = NonNullable<FieldValues[FieldKey]>;

/** Every field that the duty gives, as read; then what an empty one was taken as, where a criterion that was asked looks at it. */
export function inputLines(duty: NamedDuty, checks: readonly Check[], system: System): Line[] {
  const given = fieldKeys
    .filter((key) => key !== "duty" && key !== "grade")
    .flatMap((key) =>
      heldValues(duty, key).map(({ value, steps }) => inputLine(key, placeOf(steps, duty.steps.length), value, system)),
    );
  return [...given, ...motionLines(duty), ...defaultLines(duty, checks)];
}

const inputLine = (key: FieldKey, place: string, value: Value, system: System): Line => {
  const [result, unit] = valueAndUnit(key, value, system);
  return [field(key).heading + place, "", labelOf(field(key).text), result, unit, "as read"];
};

/** A value of a field and its unit, in the sheet's units. */
export function valueAndUnit(key: FieldKey, value: Value, system: System): [Answer, Answer] {
  const { kind } = field(key);
  if (typeof value === "number") return [new Measure(value, kind as Kind), new UnitLabel(kind as Kind)];
  if (value instanceof Band) return [bandText(value, kind as Kind, system), new UnitLabel(kind as Kind)];
  if (value instanceof Deviations) return [value.toString(system), ""];
  if (kind === "span") return [spanValue(value as Span, system), new UnitLabel("temperature")];
  return [Array.isArray(value) ? value.join(", ") : String(value), ""];
}

const spanValue = (span: Span, system: System): Answer =>
  span.low === span.high ? new Measure(span.low, "temperature") : ends(span, "temperature", system);

const plain = (value: number, kind: Kind, system: System): number =>
  Number((isDimensional(kind) ? fromWorking(kind, value, system) : value).toPrecision(7));

function ends({ low, high }: Span, kind: Kind, system: System): string {
  const [from, to] = [low, high].map((end) => plain(end, kind, system));
  return from === to ? String(from) : `${from} to ${to}`;
}

const bandText = (band: Band, kind: Kind, system: System): string =>
  ends(band, kind, system) + (band.likely === undefined ? "" : `, likely ${plain(band.likely, kind, system)}`);

/** The motion that follows from a figure of it. */
function motionLines({ steps }: NamedDuty): Line[] {
  const derived = steps.flatMap(({ values, motion }, i) => (values.motion === undefined ? [{ motion, i }] : []));
  return derived.map(({ motion, i }) =>
    wordLine(`motion${placeOf([i], steps.length)}`, motion, "follows from its figures"),
  );
}

function defaultLines({ values, part, steps }: NamedDuty, checks: readonly Check[]): Line[] {
  const looked = new Set<FieldKey>(["part", ...checks.flatMap(({ criterion }) => criterion.fields)]);
  const { motion } = steps.find((step) => step.motion !== "static") ?? present(steps[0]);
  const byValue = new Map<string | number, string[]>();
  for (const key of fieldKeys) {
    const { heading, default: taken } = field(key);
    if (taken === undefined || values[key] !== undefined || !looked.has(key) || !isAskedFor(key, part, motion))
      continue;
    byValue.set(taken, [...(byValue.get(taken) ?? []), heading]);
  }
  return [...byValue].map(([taken, headings]) => wordLine(headings.join(", "), taken, "not given: the default"));
}

/** The ends of its bands at which a criterion was judged: "load 960 N, bore 20 mm"; nothing where there is no band. */
export function cornerText(duty: NamedDuty, number: number, system: System): string {
  const pick = present(duty.picks[number]);
  return fieldKeys
    .flatMap((key) =>
      heldValues(duty, key).flatMap(({ value, steps }) => {
        if (!(value instanceof Band)) return [];
        const kind = field(key).kind as Kind;
        return [
          `${field(key).heading}${placeOf(steps, duty.steps.length)} ${plain(pick(value), kind, system)} ${kinds[kind][system]}`.trim(),
        ];
      }),
    )
    .join(", ");
}

/** What the duty says to a criterion, where that reads words. */
export const askedLines = ({ askedBy = [] }: Criterion, duty: NamedDuty, system: System): Line[] =>
  askedBy.flatMap((key) => {
    const value = duty.values[key];
    if (value === undefined) return [];
    const [result, unit] = valueAndUnit(key, value, system);
    return [[field(key).heading, "", "", result, unit, "input"] as const];
  });
