/** Adds the functions that are not yet in data/released.json; `npm run release`, before a release. */
import { readFileSync, writeFileSync } from "node:fs";
import { catalogue } from "../../src/core";
import { signatureOf } from "../../src/core/describe";

const path = "data/released.json";
const released = JSON.parse(readFileSync(path, "utf8")) as { note: string; functions: string[] };
const isKnown = (id: string) => released.functions.some((signature) => signature.startsWith(`${id}(`));
for (const { spec } of catalogue) if (!isKnown(spec.id)) released.functions.push(signatureOf(spec));
writeFileSync(path, `${JSON.stringify(released, null, 2)}\n`);
