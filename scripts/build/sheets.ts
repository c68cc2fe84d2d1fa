/** `npm run build:sheets [-- --out=folder]`: the Google Sheets add-on, Code.gs and appsscript.json, into dist/sheets/. */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";
import { options } from "../lib/command.mjs";
import { catalogue } from "../../src/core";
import { functionText, parametersOf, resultText } from "../../src/core/describe";
import type { Formula } from "../../src/core/formula";
import { version } from "../../package.json";
import { writeNotices } from "../licences/notices.mjs";
import { packagesIn } from "../licences/shipped.mjs";
import { root } from "../lib/root.mjs";

const values = options({ out: { type: "string", default: "dist/sheets" } });
const out = path.resolve(root, values.out);

/** A form of the language that Apps Script has long read. */
const target = "es2020";

/** The core and its edge as one script that leaves one global; its packages are listed beside it. */
async function bundle(): Promise<string> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: ["src/sheets/main.ts"],
    outfile: path.join(out, "core.js"),
    write: false,
    bundle: true,
    format: "iife",
    globalName: "Bushcell",
    charset: "utf8",
    minify: true,
    target,
    metafile: true,
    // the licence comments that a part asks to be shown stay where they are
    legalComments: "inline",
  });
  writeFileSync(path.join(out, "packages-in-Code.gs.json"), JSON.stringify(packagesIn(metafile)));
  return outputFiles.map(({ text }) => text).join("");
}

/** A global function with the comment from which Sheets makes its hints. */
function globalFunction({ spec }: Formula): string {
  const parameters = parametersOf(spec);
  const isRest = (name: string) => spec.args[name]?.kind === "rest";
  const doc = [
    `${functionText(spec)}.`,
    "",
    ...parameters.map((p) => `@param {any} ${p.name} ${p.text}${p.optional ? " (optional)" : ""}`),
    `@return ${resultText(spec) || "The answer"}`,
    "@customfunction",
  ];
  const list = parameters.map((p) => `${isRest(p.name) ? "..." : ""}${p.name}`).join(", ");
  return `/**
${doc.map((line) => ` * ${line}`.trimEnd()).join("\n")}
 */
function BUSH_${spec.id}(${list}) {
  return Bushcell.call("${spec.id}", [${parameters.map((p) => p.name).join(", ")}]);
}`;
}

const head = `/**
 * Bushcell ${version}, functions for sizing self-lubricating polymer plain bearings. MIT licence.
 * Written by the project's build: paste it whole into Extensions > Apps Script.
 * Preliminary figures: test in the application, follow local codes, and where a failure can hurt someone have a
 * licensed engineer decide.
 */`;
const settings = { timeZone: "Etc/UTC", dependencies: {}, exceptionLogging: "NONE", runtimeVersion: "V8" };

mkdirSync(out, { recursive: true });
const code = await bundle();
writeFileSync(path.join(out, "Code.gs"), [head, code, ...catalogue.map(globalFunction), ""].join("\n\n"));
writeFileSync(path.join(out, "appsscript.json"), `${JSON.stringify(settings, null, 2)}\n`);
writeNotices(out);
console.log(`${catalogue.length} functions for Google Sheets in ${path.relative(process.cwd(), out)}`);
