import type { PropertyEntry } from "../propertyEntry";

/** What a grade is. */
export const identity = {
  grade: { heading: "grade", also: [], kind: "text", group: "identity", text: "Name of the material as offered" },
  kind: {
    heading: "kind",
    also: [],
    kind: "text",
    group: "identity",
    text: "Generic family, invented for the demo, or own row",
  },
  family: { heading: "family", also: [], kind: "text", group: "identity", text: "Polymer family and filler" },
  description: {
    heading: "description",
    also: [],
    kind: "text",
    group: "identity",
    text: "What the material is and where it serves",
  },
} as const satisfies Record<string, PropertyEntry>;

/** Where its row comes from, and what else is to say. */
export const remarks = {
  source: { heading: "source", also: [], kind: "text", group: "identity", text: "Where the row comes from" },
  notes: {
    heading: "notes",
    also: ["note", "remarks", "comment", "comments"],
    kind: "text",
    group: "identity",
    text: "Remarks",
  },
} as const satisfies Record<string, PropertyEntry>;
