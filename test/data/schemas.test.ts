import Ajv from "ajv";
import generic from "../../data/grades/generic.json";
import demo from "../../data/grades/demo.json";
import gradesSchema from "../../data/grades.schema.json";
import dutiesSchema from "../../data/duties.schema.json";
import sources from "../../data/sources.json";
import sourcesSchema from "../../data/sources.schema.json";
import { dutyRows as duties } from "../../src/book/greenhouse/dutyRows";
import { mediaClasses, properties, standardLibrary } from "../../src/core/grades/model";
import type { Values } from "../../src/core/grades/model";
import { isInside } from "../../src/core/domain";

const ajv = new Ajv({ allErrors: true, strictTypes: false });
/** The first few faults, a line each. */
const faults = (schema: object, data: unknown) => {
  const validate = ajv.compile(schema);
  validate(data);
  return (validate.errors ?? [])
    .slice(0, 5)
    .map(({ instancePath, message, params }) => `${instancePath} ${message}: ${Object.values(params).join()}`);
};
const copy = <T>(data: T): T => JSON.parse(JSON.stringify(data)) as T;

test.each([
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
  wrongUnit.grades[0]!.values.pvLimit.unit = "MPa";
  expect(faults(gradesSchema, wrongUnit)).not.toEqual([]);
});

test("an invented grade that lacks a field or its mark is refused", () => {
  const lacking = copy(demo);
  delete (lacking.grades[0]!.values as { poisson?: number }).poisson;
  expect(faults(gradesSchema, lacking)[0]).toMatch(/^\/grades\/0\/values must have required property 'poisson'/);
  const unmarked = copy(demo);
  unmarked.grades[0]!.values.source = "a supplier";
  expect(faults(gradesSchema, unmarked)).not.toEqual([]);
});

/** Each number of a grade against the bounds of its property, those of a user's table or the tighter plausible ones. */
function outside(values: Values, bounds: "physical" | "plausible"): string[] {
  return properties.flatMap((p) => {
    const value = p.key === "grade" || p.key === "kind" ? undefined : values[p.key];
    if (typeof value !== "number" || !("to" in p) || p.kind === "curve") return [];
    const [from, to] = p.plausible ?? [-Infinity, Infinity];
    const held = bounds === "physical" ? isInside(p, value) : value >= from && value <= to;
    return held ? [] : [`${p.key} ${value}`];
  });
}

test.each(standardLibrary().grades.map((grade) => [grade.name, grade.values] as const))("%s is plausible", (_, values) => {
  expect(outside(values, "plausible")).toEqual([]);
  expect(outside(values, "physical")).toEqual([]);
});

test("a slipped decimal is caught", () => {
  const { values } = standardLibrary().grades[0]!;
  for (const factor of [0.01, 100]) {
    const slipped = { density: values.density! * factor, pvLimit: values.pvLimit! * factor };
    expect(outside({ ...values, ...slipped }, "plausible")).toHaveLength(2);
  }
});

test("plausible bounds are sound and lie inside the physical ones", () => {
  const bounded = properties.filter((p) => "plausible" in p);
  expect(bounded.length).toBeGreaterThanOrEqual(25);
  for (const p of bounded) {
    if (!("plausible" in p) || !p.plausible) continue;
    const [least, greatest] = p.plausible;
    expect([p.key, least < greatest, isInside(p, least), isInside(p, greatest)]).toEqual([p.key, true, true, true]);
  }
});

test("classes of media are named once each, and each is rated by every demo grade but food contact, which asks for a declaration", () => {
  expect(new Set(mediaClasses).size).toBe(mediaClasses.length);
  for (const { values } of standardLibrary().grades.filter((g) => g.kind === "demo"))
    expect(values.media!.map(({ medium }) => medium)).toEqual(mediaClasses.filter((medium) => medium !== "food contact"));
});

test("every source that a grade names has an entry", () => {
  const named = standardLibrary().grades.flatMap((grade) => Object.values(grade.origins).map((o) => o.source));
  expect(named.length).toBeGreaterThan(50);
  for (const key of new Set(named)) expect(Object.keys(sources)).toContain(key);
});

test("a duty in an unknown field, a step without its time, and a word out of no list are refused", () => {
  const [first] = duties;
  for (const wrong of [{ ...first, colour: "red" }, { load: 1 }, { ...first, part: "ball" }])
    expect(faults(dutiesSchema, [...duties, wrong])).not.toEqual([]);
});

test("duties name grades of the library, in metric and with inch units typed as text", () => {
  const names = standardLibrary().grades.map((g) => g.name);
  const named = duties.filter((d) => d.duty !== undefined);
  for (const duty of named) expect(names).toContain(duty.grade);
  expect(duties.filter((d) => /lbf/.test(String(d.load)))).toHaveLength(2);
  expect(new Set(named.map((d) => d.motion))).toEqual(new Set(["turning", "swinging", "linear", "static"]));
  expect(new Set(named.map((d) => d.part))).toEqual(new Set(["sleeve", "flanged", "washer"]));
});
