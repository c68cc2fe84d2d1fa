/**
 * `node scripts/build/pages.mjs --out=folder [--only=workbench,taskpane --office=office/office.js]`: the pages that are applications,
 * the add-in's pane and the local sheet with that pane beside it. Both are modules, so that what they share is built and loaded once.
 */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";
import { options } from "../lib/command.mjs";
import { withPolicy } from "../lib/policy.mjs";
import { reading } from "../lib/reading.mjs";
import { root } from "../lib/root.mjs";
import { packagesIn } from "../licences/shipped.mjs";
import { citations, metals, zones } from "./rewritten.mjs";

const string = /** @type {const} */ ({ type: "string" });
const { out = "dist", only = "workbench,taskpane", office } = options({ out: string, only: string, office: string });
const microsoft = "https://appsforoffice.microsoft.com";

/** Of each part its page, and what that loads, by the name that it is loaded by. */
const parts = {
  workbench: {
    page: "src/workbench/index.html",
    entries: { workbench: "src/workbench/main.ts", grid: "src/workbench/grid/grid.css" },
  },
  taskpane: { page: "src/taskpane/taskpane.html", entries: { taskpane: "src/taskpane/main.tsx" } },
};
const names = /** @type {(keyof typeof parts)[]} */ (only.split(","));

/** The grid library's hyphenation patterns, for sixty languages and many megabytes: a sheet hyphenates nothing. */
const withoutPatterns = {
  name: "without hyphenation patterns",
  setup: (/** @type {import("esbuild").PluginBuild} */ { onResolve }) =>
    onResolve({ filter: /^\.\/[a-z-]+(-\d{4})?-[\w-]{8}\.js$/ }, ({ importer }) =>
      importer.includes("engine-render") ? { path: path.join(root, "src/workbench/grid/noPattern.ts") } : undefined,
    ),
};
const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: Object.assign({}, ...names.map((name) => parts[name].entries)),
  outdir: path.resolve(out),
  // kept by browsers for ever, which megabytes are worth
  chunkNames: "[name].[hash]",
  bundle: true,
  splitting: true,
  format: "esm",
  minify: true,
  metafile: true,
  legalComments: "none",
  define: { "process.env.NODE_ENV": '"production"' },
  // the web views of older Macs lack static blocks, as they lack lookbehind
  target: [reading("main.tsx").target, "safari15"],
  jsx: reading("main.tsx").jsx,
  plugins: [withoutPatterns, citations, zones, metals],
});

for (const name of names) {
  const { page, entries } = parts[name];
  const html = readFileSync(path.join(root, page), "utf8");
  const isMicrosofts = name === "taskpane" && !office;
  writeFileSync(
    path.join(out, path.basename(page)),
    withPolicy(
      html.replace("{office}", office ?? `${microsoft}/lib/1/hosted/office.js`),
      ...(isMicrosofts ? [microsoft] : []),
    ),
  );
  writeFileSync(
    path.join(out, `packages-in-${name}.json`),
    JSON.stringify(packagesIn(metafile, Object.values(entries))),
  );
}
