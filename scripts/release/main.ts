/**
 * `npm run release`: adds to data/released.json the functions that are not yet in it, and what new functions, figures of a
 * grade and fields of a duty accept. What stands there is left as it is: saved workbooks rely on it.
 */
import { readFileSync, writeFileSync } from "node:fs";
import type releasedFile from "../../data/released.json";
import { catalogue } from "../../src/core";
import { signatureOf } from "../../src/core/describe";
import { accepted } from "./accepted";

const path = "data/released.json";
const { note, functions, accepts } = JSON.parse(readFileSync(path, "utf8")) as typeof releasedFile;
const isKnown = (id: string) => functions.some((signature) => signature.startsWith(`${id}(`));
const added = catalogue.filter(({ spec }) => !isKnown(spec.id)).map(({ spec }) => signatureOf(spec));
const now = accepted();
const released = {
  note,
  functions: [...functions, ...added],
  accepts: {
    functions: { ...now.functions, ...accepts.functions },
    properties: { ...now.properties, ...accepts.properties },
    fields: { ...now.fields, ...accepts.fields },
  },
};
writeFileSync(path, `${JSON.stringify(released, null, 2)}\n`);
