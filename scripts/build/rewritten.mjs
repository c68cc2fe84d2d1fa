/** What esbuild reads in another form than it stands in its file. */
import { readFileSync } from "node:fs";

/**
 * esbuild's plugin that puts what `rewrite` makes of a file in the file's place.
 * @param {string} name
 * @param {RegExp} filter of the file's path
 * @param {import("esbuild").Loader} loader what is made
 * @param {(text: string, file: string) => string | Promise<string>} rewrite
 * @returns {import("esbuild").Plugin}
 */
export const rewritten = (name, filter, loader, rewrite) => ({
  name,
  setup: ({ onLoad }) =>
    onLoad({ filter }, async ({ path: file }) => ({
      contents: await rewrite(readFileSync(file, "utf8"), file),
      loader,
    })),
});

/** Of data/sources.json what is shown are the citations; what was read of them is for the docs and the tests. */
export const citationsOf = (/** @type {(key: string) => boolean} */ isCited) =>
  rewritten("citations", /[\\/]data[\\/]sources\.json$/, "json", (text) =>
    JSON.stringify(
      Object.fromEntries(
        Object.entries(JSON.parse(text))
          .filter(([key]) => isCited(key))
          .map(([key, { citation }]) => [key, { citation }]),
      ),
    ),
  );
export const citations = citationsOf(() => true);

/** Of a table of data what is computed with; where it was read, and how it is described, is for the docs and the tests too. */
const without = (/** @type {readonly string[]} */ names) => (/** @type {string} */ text) =>
  JSON.stringify(JSON.parse(text), (key, value) => (names.includes(key) ? undefined : value));
export const zones = rewritten("zones", /[\\/]data[\\/]iso286[\\/]\w+\.json$/, "json", without(["source"]));
export const metals = rewritten("metals", /[\\/]data[\\/]metals\.json$/, "json", without(["units", "description"]));
