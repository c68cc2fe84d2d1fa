import { criteria } from "../../src/core/duties";
import { kindText, properties, ratings } from "../../src/core/grades/model";
import type { Property } from "../../src/core/grades/model";
import { labels } from "../../src/core/grades/model/labels";
import { kinds } from "../../src/core/kinds";
import type { Kind } from "../../src/core/kinds";

const identity: ReadonlySet<string> = new Set(["grade", "kind", "family", "description"]);
const held = properties.filter((p) => !identity.has(p.key));
const named = (some: readonly Property[], schemaOf: (p: Property) => object | undefined) =>
  Object.fromEntries(some.flatMap((p) => (schemaOf(p) ? [[p.key, schemaOf(p)]] : [])));

const text = (minLength: number) => ({ type: "string", minLength });

const origin = {
  source: text(1),
  at: text(1),
  label: { enum: labels.filter((label) => label !== "own" && label !== "invented") },
};
/** What was read, recalled or derived stands somewhere; a band from memory and common practice do not. */
const placed = {
  if: { properties: { label: { enum: ["read", "memory", "derived"] } } },
  then: { required: ["at"] },
};
/** A figure or a word as its source prints it; without a unit in working units. */
const publishedValue = {
  type: "object",
  additionalProperties: false,
  required: ["value", "source", "label"],
  properties: {
    value: { type: ["number", "string"] },
    unit: { type: "string" },
    band: { type: "array", items: { type: "number" }, minItems: 2, maxItems: 2 },
    ...origin,
    condition: text(3),
  },
  ...placed,
};
const publishedMedia = {
  type: "array",
  minItems: 1,
  items: {
    type: "object",
    additionalProperties: false,
    required: ["ratings", "source", "label"],
    properties: { ratings: text(3), to: { type: "number" }, ...origin },
    ...placed,
  },
};

/** Media stand beside the values, since each has a source of its own. */
function published(p: Property): object | undefined {
  const of = (values: object, more = {}) => ({
    allOf: [{ $ref: "#/definitions/published" }, { properties: values, ...more }],
  });
  if (p.kind === "rating") return of({ value: { enum: ratings } });
  if (p.kind === "choice") return of({ value: { enum: p.words } });
  if (p.kind === "list") return of({ value: text(1) });
  if (!(p.kind in kinds)) return undefined;
  const kind = p.kind as Kind;
  const { metric, inch } = kinds[kind];
  // nothing but its unit tells a percentage from a ratio
  if (kind === "percent") return of({ value: { type: "number" }, unit: { const: "%" } }, { required: ["unit"] });
  return of({ value: { type: "number" }, unit: { enum: [...new Set([metric, inch])] } });
}

/** A number in working units, or the words of a cell. */
function invented(p: Property): object {
  if (p.key === "source") return { const: kindText.demo };
  if (p.kind === "rating") return { enum: ratings };
  if (p.kind === "choice") return { enum: p.words };
  return p.kind in kinds ? { type: "number" } : text(1);
}

const fileOf = (minItems: number, values: object, beside: Readonly<Record<string, object>> = {}) => ({
  properties: {
    grades: {
      type: "array",
      minItems,
      items: {
        type: "object",
        additionalProperties: false,
        required: ["grade", "family", "description", "values", ...Object.keys(beside)],
        properties: {
          grade: text(2),
          family: text(3),
          description: text(3),
          values: { type: "object", additionalProperties: false, ...values },
          ...beside,
        },
      },
    },
  },
});

/** What criteria look at, but for limits against temperature, which the judging does without and says so: demo grades show both ways. */
const judged = new Set<string>(criteria.flatMap((one) => one.properties));
const needed = held
  .filter(({ key, kind }) => key === "source" || (judged.has(key) && kind !== "curve"))
  .map(({ key }) => key);

/** data/grades.schema.json, from the list of properties. */
export const gradesSchema = {
  $schema: "http://json-schema.org/draft-07/schema#",
  title:
    "A file of built-in grades: every published value with its source, every invented grade marked, with every figure that a criterion looks at, but for curves",
  definitions: { published: publishedValue },
  type: "object",
  additionalProperties: false,
  required: ["kind", "grades"],
  properties: { kind: { enum: ["generic", "demo"] }, grades: {} },
  if: { properties: { kind: { const: "demo" } } },
  then: fileOf(6, { required: needed, properties: named(held, invented) }),
  else: fileOf(10, { properties: named(held, published) }, { media: publishedMedia }),
};
