import Ajv from "ajv";
import generic from "../../data/grades/generic.json";
import demo from "../../data/grades/demo.json";
import gradesSchema from "../../data/grades.schema.json";
import duties from "../../data/greenhouse/duties.json";
import dutiesSchema from "../../data/duties.schema.json";
import plausibleSchema from "../../data/plausible.schema.json";
import propertyList from "../../data/properties.json";
import propertiesSchema from "../../data/properties.schema.json";
import sources from "../../data/sources.json";
import sourcesSchema from "../../data/sources.schema.json";
import { kindOf, properties, standardLibrary } from "../../src/core/grade";
import { kinds } from "../../src/core/kinds";
import { isInside } from "../../src/core/domain";

const ajv = new Ajv({ allErrors: true, strictTypes: false });
const faults = (schema: object, data: unknown) => {
  const validate = ajv.compile(schema);
  validate(data);
  return validate.errors ?? [];
};
const copy = <T>(data: T): T => JSON.parse(JSON.stringify(data)) as T;

test.each([
  ["properties", propertiesSchema, propertyList],
  ["sources", sourcesSchema, sources],
  ["generic grades", gradesSchema, generic],
  ["demo grades", gradesSchema, demo],
  ["greenhouse duties", dutiesSchema, duties],
])("%s match their schema", (_, schema, data) => expect(faults(schema, data)).toEqual([]));

test("a published value without its source, or in an unknown unit, is refused", () => {
  const unsourced = copy(generic);
  delete (unsourced.grades[0]!.values.pvLimit as { source?: string }).source;
  expect(faults(gradesSchema, unsourced)).not.toEqual([]);
  const wrongUnit = copy(generic);
  wrongUnit.grades[0]!.values.pvLimit!.unit = "MPa";
  expect(faults(gradesSchema, wrongUnit)).not.toEqual([]);
});

test("an invented grade that lacks a field or its mark is refused", () => {
  const lacking = copy(demo);
  delete (lacking.grades[0]!.values as { poisson?: number }).poisson;
  expect(faults(gradesSchema, lacking)).not.toEqual([]);
  const unmarked = copy(demo);
  unmarked.grades[0]!.values.source = "a supplier";
  expect(faults(gradesSchema, unmarked)).not.toEqual([]);
});

test.each(standardLibrary().grades.map((grade) => [grade.name, grade] as const))("%s is plausible", (_, grade) => {
  expect(faults(plausibleSchema, grade.values)).toEqual([]);
});

test("a slipped decimal is caught", () => {
  const { values } = standardLibrary().grades[0]!;
  for (const factor of [0.01, 100]) {
    expect(faults(plausibleSchema, { ...values, density: values.density! * factor })).toHaveLength(1);
    expect(faults(plausibleSchema, { ...values, pvLimit: values.pvLimit! * factor })).toHaveLength(1);
  }
});

test("every number of the library lies inside the bounds that a user's table is held to", () => {
  for (const p of properties) {
    const kind = kindOf(p);
    if (!kind || p.kind === "curve") continue;
    for (const { values } of standardLibrary().grades) {
      const value = values[p.key as keyof typeof values] as number | undefined;
      if (value !== undefined) expect([p.key, isInside({ ...p, kind }, value)]).toEqual([p.key, true]);
    }
  }
});

test("kinds of the property list are kinds of the core", () => {
  for (const p of properties) if (kindOf(p)) expect(Object.keys(kinds)).toContain(kindOf(p));
});

test("every source that a grade names has an entry", () => {
  const named = standardLibrary().grades.flatMap((grade) => Object.values(grade.origins).map((o) => o.source));
  expect(named.length).toBeGreaterThan(50);
  for (const key of new Set(named)) expect(Object.keys(sources)).toContain(key);
});

test("duties name grades of the library, in metric and with inch units typed as text", () => {
  const names = standardLibrary().grades.map((g) => g.name);
  for (const duty of duties) expect(names).toContain(duty.grade);
  expect(duties.filter((d) => /lbf/.test(String(d.load)))).toHaveLength(2);
  expect(new Set(duties.map((d) => d.motion))).toEqual(new Set(["turning", "swinging", "linear", "static"]));
  expect(new Set(duties.map((d) => d.part))).toEqual(new Set(["sleeve", "washer"]));
});
