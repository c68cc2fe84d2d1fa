import { parts } from "./entry";
import type { FieldEntry } from "./entry";

/** What a duty is called and what it is. */
export const named = {
  duty: {
    heading: "duty",
    also: ["name"],
    kind: "text",
    group: "name",
    text: "Name of the duty; rows of one name below each other are its steps",
  },
  part: {
    heading: "part",
    also: ["kind of part"],
    kind: "choice",
    words: parts,
    default: "sleeve",
    group: "name",
    text: "Kind of bush",
    spellings: { "sleeve bush": "sleeve", bush: "sleeve", "flanged bush": "flanged", "thrust washer": "washer" },
  },
  grade: {
    heading: "grade",
    also: ["material"],
    kind: "text",
    group: "name",
    text: "Grade chosen for the duty; without one the best is looked for",
  },
} as const satisfies Record<string, FieldEntry>;
