/**
 * Writes what repeats the specs and the list of properties for readers that cannot import them: the wrappers with their
 * literal JSDoc (src/functions/*.ts), docs/functions.md, the tables of docs/guide/own-data.md and of docs/guide/duties.md, the units of docs/guide/trainer.md, the schemas of grades and duties; and what the models miss of the measurements (data/misses.json), which the texts of
 * specs tell and docs/guide/limits.md. `--check` compares and changes nothing.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { misses } from "../../test/reference/measured/misses";
import { between } from "../lib/between";
import { withFigures } from "../lib/figures";
import { dutiesSchema } from "./dutiesSchema";
import { criterionTable, fieldTable } from "./dutyTables";
import { functionReference } from "../lib/functionPages";
import { gradesSchema } from "./gradesSchema";
import { propertyTable } from "./propertyTable";
import { halfAdded } from "./halfAdded";
import { unitList } from "./unitList";
import { wrappers } from "./wrappers";
import { stop } from "../lib/command.mjs";

const missing = halfAdded();
if (missing.length > 0) stop(missing.join("\n"));
const check = process.argv.includes("--check");
const stale: string[] = [];

async function put(path: string, text: string): Promise<void> {
  const pretty = path.endsWith(".ts") ? await format(text, { parser: "typescript", printWidth: 120 }) : text;
  if (existsSync(path) && readFileSync(path, "utf8") === pretty) return;
  stale.push(path);
  if (!check) writeFileSync(path, pretty);
}

const missed = misses();
await put("data/misses.json", `${JSON.stringify(missed, null, 2)}\n`);
if (stale.length > 0 && !check) {
  // the texts of the specs loaded here still tell the old figures
  console.log("Written: data/misses.json; once more with its figures.");
  process.exit(spawnSync("npx", ["jiti", import.meta.filename], { stdio: "inherit" }).status ?? 1);
}
for (const [file, text] of wrappers()) await put(`src/functions/${file}.ts`, text);
await put("docs/functions.md", functionReference());
const parts: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "docs/guide/own-data.md": { properties: propertyTable() },
  "docs/guide/trainer.md": { units: unitList() },
  "docs/guide/duties.md": { fields: fieldTable(), criteria: criterionTable() },
};
for (const [path, named] of Object.entries(parts))
  await put(
    path,
    Object.entries(named).reduce((text, [name, part]) => between(text, name, part), readFileSync(path, "utf8")),
  );
const limits = "docs/guide/limits.md";
await put(limits, withFigures(readFileSync(limits, "utf8"), missed));
for (const [name, schema] of Object.entries({ grades: gradesSchema, duties: dutiesSchema }))
  await put(`data/${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);

if (stale.length > 0) {
  console.log(
    check ? `Out of step with the specs, run "npm run sync": ${stale.join(", ")}` : `Written: ${stale.join(", ")}`,
  );
  if (check) process.exit(1);
}
