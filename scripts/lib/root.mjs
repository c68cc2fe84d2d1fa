import path from "node:path";

/** The project's folder. */
export const root = path.join(import.meta.dirname, "../..");
