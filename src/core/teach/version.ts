import manifest from "../../../package.json";
import { formula } from "../formula";

/** Edition of the grade library: year and month of its last change. */
export const libraryEdition = "2026-11";

export const VERSION = formula(
  {
    id: "VERSION",
    text: "Version of the add-in and edition of its grade library: a self-test that needs no argument",
    args: {},
    units: false,
    result: { kind: "text", text: "Version and edition" },
    source: { key: "own" },
    example: [],
  },
  () => `Bushcell ${manifest.version}, library ${libraryEdition}`,
);
