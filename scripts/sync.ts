/**
 * Writes what repeats the specs for readers that cannot import them: the wrappers with their literal JSDoc
 * (src/functions/*.ts), docs/functions.md and the function table of the README. `--check` compares and changes nothing.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import * as core from "../src/core";
import { functionReference } from "./functionPages";
import { functionTable, nameFormulas, wrappers } from "./wrappers";

nameFormulas(core);
const { catalogue } = core;
const check = process.argv.includes("--check");
const stale: string[] = [];

async function put(path: string, text: string): Promise<void> {
  const pretty = path.endsWith(".ts") ? await format(text, { parser: "typescript", printWidth: 120 }) : text;
  if (existsSync(path) && readFileSync(path, "utf8") === pretty) return;
  stale.push(path);
  if (!check) writeFileSync(path, pretty);
}

for (const [file, text] of wrappers(catalogue)) await put(`src/functions/${file}.ts`, text);
await put("docs/functions.md", functionReference(catalogue));
if (existsSync("README.md")) await put("README.md", functionTable(readFileSync("README.md", "utf8"), catalogue));

if (stale.length > 0) {
  console.log(
    check ? `Out of step with the specs, run "npm run sync": ${stale.join(", ")}` : `Written: ${stale.join(", ")}`,
  );
  if (check) process.exit(1);
}
