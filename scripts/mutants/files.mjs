/** The files that faults are planted in, and what was judged of faults that change no answer. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { mutationsOf } from "./mutations.mjs";
import { root } from "../lib/root.mjs";

export const under = (folder, ending) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => path.join(root, folder, name))
    .sort();

/** Wording and the order of a catalogue are held by other tests; here stand formulas, limits and the reading of numbers. */
const folders = ["loading", "heat", "wear", "cost", "fit", "grades", "table", "duties", "units"].map(
  (name) => `src/core/${name}`,
);
const singles = ["domain", "span", "band", "numbers", "measure"].map((name) => path.join(root, `src/core/${name}.ts`));
export const files = [...folders.flatMap((folder) => under(folder, ".ts")), ...singles];

export const faultsOf = (file) => mutationsOf(file, readFileSync(file, "utf8"));

/** Why a fault may stay, by its key. */
export const judged = JSON.parse(readFileSync(path.join(root, "scripts/mutants/judged.json"), "utf8"));

/** What was judged of faults that are planted nowhere: their code has changed. */
export function stale() {
  const planted = new Set(files.flatMap(faultsOf).map(({ key }) => key));
  return Object.keys(judged).filter((key) => !planted.has(key));
}
