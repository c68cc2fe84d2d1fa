import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

/**
 * A command's options; one that it does not know ends it with a sentence.
 * @template {Record<string, { type: "string" | "boolean", default?: string | boolean }>} T
 * @param {T} known
 * @returns {{ [K in keyof T]: (T[K]["type"] extends "boolean" ? boolean : string) | (T[K] extends { default: unknown } ? never : undefined) }}
 */
export function options(known) {
  try {
    return /** @type {any} */ (parseArgs({ options: known }).values);
  } catch (error) {
    stop(error.message);
  }
}

/**
 * The folder of --out, which the command empties before it writes: a new or empty one, or one that it wrote before,
 * by the file that each of its outputs holds. Anything else would be lost.
 */
export function outFolder(root, given, mark) {
  const out = path.resolve(root, given);
  const mayGo = !existsSync(out) || readdirSync(out).length === 0 || existsSync(path.join(out, mark));
  if (given === "" || !mayGo)
    stop(`--out must be a new or empty folder, or one that this command wrote, got "${given}"`);
  return out;
}

/** @type {(message: string) => never} */
export function stop(message) {
  console.error(message);
  process.exit(1);
}
