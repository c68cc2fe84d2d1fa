/**
 * `node scripts/build/functions.mjs --out=folder [--base=https://… --contact=…]`: functions.js with its metadata, and what stands
 * beside it for Excel: manifest, icons, licence and help page. Read whole before the first cell answers, so it is made as small
 * as it can be: what only documentation and pane show is left out, and terser's output compresses better than esbuild's.
 */
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { build, transform } from "esbuild";
import { minify } from "terser";
import { packagesIn } from "../licences/shipped.mjs";
import { options, stop } from "../lib/command.mjs";
import { checkedAddress, contactAddress, localAddress, manifestAt, manifestFile } from "../lib/manifest.mjs";
import { withPolicy } from "../lib/policy.mjs";
import { reading } from "../lib/reading.mjs";
import { root } from "../lib/root.mjs";
import { byColumn, byKey } from "./lean/byColumn.mjs";
import { bySteps } from "./lean/steps.mjs";
import { withoutDocs } from "./lean/withoutDocs.mjs";
import { citationsOf, metals, rewritten } from "./rewritten.mjs";

const string = /** @type {const} */ ({ type: "string" });
const { out = "dist", base: address = localAddress, contact } = options({ out: string, base: string, contact: string });
const base = checkedAddress(address);

const folder = path.join(root, "src/functions");
const wrappers = readdirSync(folder)
  .map((name) => path.join(folder, name))
  .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));
const { metadataJson, associate, errors } = await generateCustomFunctionsMetadata(wrappers);
if (errors.length > 0) stop(errors.join("\n"));

/** Each function under its name in the sheet. */
const associated = (text, file) =>
  [
    text,
    ...associate
      .filter(({ sourceFileName }) => sourceFileName === file)
      .map(({ id, functionName }) => `CustomFunctions.associate("${id}", ${functionName});`),
  ].join("\n");

/** Whether anything in functions.js names a source. */
const naming = ["src/core", "data/grades"]
  .flatMap((place) =>
    readdirSync(path.join(root, place), { recursive: true }).map((name) => path.join(place, String(name))),
  )
  .concat("data/metals.json")
  .filter((file) => /\.(ts|json)$/.test(file))
  .map((file) => readFileSync(path.join(root, file), "utf8"));
const isCited = (/** @type {string} */ key) => naming.some((text) => text.includes(`"${key}"`));

/** withoutDocs reads JavaScript. */
async function lean(text, file) {
  const { code } = await transform(text, reading(file));
  return withoutDocs(code, file);
}

const { outputFiles, metafile } = await build({
  absWorkingDir: root,
  entryPoints: ["src/functions/index.ts"],
  outfile: path.resolve(out, "functions.js"),
  write: false,
  bundle: true,
  format: "iife",
  charset: "utf8",
  metafile: true,
  legalComments: "none",
  target: reading("index.ts").target,
  plugins: [
    citationsOf(isCited),
    rewritten("by steps", /data.iso286.\w+\.json$/, "js", bySteps),
    metals,
    rewritten("associated", /src.functions.\w+\.ts$/, "ts", associated),
    rewritten("lean", /src.core.*\.ts$/, "js", lean),
    rewritten("by column", /grades.generic\.json$/, "js", byColumn),
    rewritten("by key", /grades.demo\.json$/, "js", byKey),
  ],
});
// signs beyond ASCII compress better as escapes
const { code = "" } = await minify(outputFiles[0].text, {
  ecma: 2020,
  compress: { passes: 3 },
  format: { ascii_only: true },
});

const write = (name, text) => writeFileSync(path.join(out, name), text);
write("functions.js", code);
write("functions.json", completed(JSON.parse(metadataJson)));
write("packages-in-functions.json", JSON.stringify(packagesIn(metafile)));
write("manifest.xml", manifestAt(readFileSync(manifestFile, "utf8"), base));
write("help.html", withPolicy(helpPage(readFileSync(path.join(root, "src/help/help.html"), "utf8"))));
cpSync(path.join(root, "LICENSE"), path.join(out, "licence.txt"));
for (const icon of readdirSync(path.join(root, "assets")).filter((name) => name.endsWith(".png")))
  cpSync(path.join(root, "assets", icon), path.join(out, "assets", icon));

/**
 * With what the generator has no tag for: the flag without which a cell error would never reach a function,
 * and each function's page at the address where the add-in stands.
 */
function completed(metadata) {
  const functions = metadata.functions.map((f) => ({
    ...f,
    helpUrl: `${base}/docs/functions/${f.id.toLowerCase()}.html`,
  }));
  return JSON.stringify({ allowErrorForDataTypeAny: true, ...metadata, functions }, null, 1);
}

/** The page with one of its two ways to get help: whom to write to, or that somebody near is to be asked. */
function helpPage(/** @type {string} */ html) {
  const other = contact ? "without-contact" : "with-contact";
  const kept = html.replace(new RegExp(`\\s*<p class="${other}">[^]*?</p>`), "");
  if (!contact) return kept;
  const shown = contact.replaceAll("&", "&amp;");
  return kept
    .replace("{address}", () => contactAddress(contact).replaceAll("&", "&amp;"))
    .replace("{contact}", () => shown);
}
