import { catalogue } from "../../src/core";
import { field, fieldKeys } from "../../src/core/duties";
import { isNumberArg } from "../../src/core/formula";
import type { Arg } from "../../src/core/formula";
import { properties } from "../../src/core/grades/model";
import type { Property } from "../../src/core/grades/model";

type Told = Readonly<Record<string, string>>;

/**
 * What functions, figures of a grade and fields of a duty accept, and what they take where nothing is given, in working units:
 * "load >= 0; friction >= 0 <= 2 = 0.3". What has neither bounds nor a default is left out.
 */
export const accepted = (): { readonly functions: Told; readonly properties: Told; readonly fields: Told } => ({
  functions: told(catalogue, ({ spec }) => [spec.id, argumentsOf(spec.args)]),
  properties: told(properties, (p) => [p.key, [...bounds(p), ...plausible(p)].join(" ")]),
  fields: told(fieldKeys, (key) => [key, [...bounds(field(key)), ...blank(field(key))].join(" ")]),
});

const told = <T>(list: readonly T[], entryOf: (one: T) => readonly [key: string, text: string]): Told =>
  Object.fromEntries(list.map(entryOf).filter(([, text]) => text));

function bounds(entry: object): string[] {
  const { above, from, below, to, default: preset } = entry as Partial<Record<string, number | string>>;
  const marks = { ">": above, ">=": from, "<": below, "<=": to, "=": preset };
  return Object.entries(marks).flatMap(([mark, value]) => (value === undefined ? [] : [`${mark} ${value}`]));
}

const argumentsOf = (args: Readonly<Record<string, Arg>>): string =>
  Object.entries(args)
    .map(([name, arg]) => ({ name, arg, parts: bounds(arg) }))
    .filter(({ arg, parts }) => isNumberArg(arg) || parts.length > 0)
    .map(({ name, parts }) => [name, ...parts].join(" "))
    .join("; ");

const plausible = (p: Property): string[] =>
  "plausible" in p && p.plausible ? [`plausibly ${p.plausible[0]} to ${p.plausible[1]}`] : [];
const blank = (entry: object): string[] => ("blankZero" in entry ? ["0 is blank"] : []);
