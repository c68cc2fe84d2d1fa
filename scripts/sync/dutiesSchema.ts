import { field, fieldKeys } from "../../src/core/duties";
import type { FieldKey } from "../../src/core/duties";
import { kinds } from "../../src/core/kinds";

const text = { type: "string", minLength: 2 };

/** A number in metric units or a text with its own; one of a choice's words; the words of a cell. */
function valueOf(key: FieldKey): object {
  const { kind, words } = field(key);
  if (kind === "choice") return { enum: words };
  if (kind === "span" || kind in kinds) return { type: ["number", "string"] };
  return text;
}

/** data/duties.schema.json, from the list of fields. Which of them a part and a motion need, their reader says. */
export const dutiesSchema = {
  $schema: "http://json-schema.org/draft-07/schema#",
  title:
    "Duties of the greenhouse, invented; a plain number is metric, text carries its unit; a row without a name is a step",
  type: "array",
  minItems: 14,
  items: {
    type: "object",
    additionalProperties: false,
    properties: { id: text, note: text, ...Object.fromEntries(fieldKeys.map((key) => [key, valueOf(key)])) },
    if: { required: ["duty"] },
    then: { required: ["id", "note", "part", "motion", "grade"] },
    else: { required: ["time"], properties: { id: false, note: false } },
  },
};
