import { kindText, properties, ratings } from "../../src/core/grades/model";
import type { Property } from "../../src/core/grades/model";
import { labels } from "../../src/core/grades/model/labels";
import { kinds } from "../../src/core/kinds";
import type { Kind } from "../../src/core/kinds";

/** Units that sources print, beside those of the two unit systems. */
const printedUnits: Partial<Record<Kind, readonly string[]>> = { density: ["kg/m³"], percent: ["%"] };

const identity: ReadonlySet<string> = new Set(["grade", "kind", "family", "description"]);
const held = properties.filter((p) => !identity.has(p.key));
const named = (some: readonly Property[], schemaOf: (p: Property) => object | undefined) =>
  Object.fromEntries(some.flatMap((p) => (schemaOf(p) ? [[p.key, schemaOf(p)]] : [])));

const text = (minLength: number) => ({ type: "string", minLength });

/** A number as its source prints it. */
const publishedNumber = {
  type: "object",
  additionalProperties: false,
  required: ["value", "unit", "source", "at", "label"],
  properties: {
    value: { type: "number" },
    unit: { type: "string" },
    source: text(1),
    at: text(1),
    label: { enum: labels.filter((label) => label !== "own" && label !== "invented") },
    condition: text(3),
  },
};

/** What is no number has no place in the generic file. */
function published(p: Property): object | undefined {
  if (!(p.kind in kinds)) return undefined;
  const kind = p.kind as Kind;
  const { metric, inch } = kinds[kind];
  const units = [...new Set([metric, inch, ...(printedUnits[kind] ?? [])])];
  return { allOf: [{ $ref: "#/definitions/published" }, { properties: { unit: { enum: units } } }] };
}

/** A number in working units, or the words of a cell. */
function invented(p: Property): object {
  if (p.key === "source") return { const: kindText.demo };
  if (p.kind === "rating") return { enum: ratings };
  if (p.kind === "choice") return { enum: p.words };
  return p.kind in kinds ? { type: "number" } : text(1);
}

const fileOf = (minItems: number, values: object) => ({
  properties: {
    grades: {
      type: "array",
      minItems,
      items: {
        type: "object",
        additionalProperties: false,
        required: ["grade", "family", "description", "values"],
        properties: {
          grade: text(2),
          family: text(3),
          description: text(3),
          values: { type: "object", additionalProperties: false, ...values },
        },
      },
    },
  },
});

/** Limits against temperature, which the judging does without and says so: demo grades show both ways. */
const maybe: ReadonlySet<string> = new Set(["pressureCurve", "pvCurve"]);
const needed = held.filter(({ key }) => !maybe.has(key)).map(({ key }) => key);

/** data/grades.schema.json, from the list of properties. */
export const gradesSchema = {
  $schema: "http://json-schema.org/draft-07/schema#",
  title:
    "A file of built-in grades: every published value with its source, every invented grade marked and complete, but for curves",
  definitions: { published: publishedNumber },
  type: "object",
  additionalProperties: false,
  required: ["kind", "grades"],
  properties: { kind: { enum: ["generic", "demo"] }, grades: {} },
  if: { properties: { kind: { const: "demo" } } },
  then: fileOf(6, { required: needed, properties: named(held, invented) }),
  else: fileOf(10, { properties: named(held, published) }),
};
