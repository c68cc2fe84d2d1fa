/** `npm run manifest [-- file …]`: holds manifests, the project's own unless others are named, against the rules that Excel applies. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { stop } from "../lib/command.mjs";
import { manifestFaults, manifestFile } from "../lib/manifest.mjs";

const files = process.argv.length > 2 ? process.argv.slice(2) : [manifestFile];
const faults = files.flatMap((file) => manifestFaults(readFileSync(file, "utf8")).map((fault) => `${file}: ${fault}`));
if (faults.length > 0) stop(faults.join("\n"));
console.log(`${files.map((file) => path.relative(process.cwd(), file)).join(", ")}: sound`);
