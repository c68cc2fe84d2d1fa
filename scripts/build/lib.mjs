/**
 * `npm run build:lib`: the core and the command line as plain modules of Node with their types, in lib/.
 * The sources import without extensions and take JSON; Node wants extensions and modules, so both are written out.
 * Beside them the core in one CommonJS file, for programs that `require` it.
 */
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";
import { root } from "../lib/root.mjs";

const lib = path.join(root, "lib");
rmSync(lib, { recursive: true, force: true });
const tsc = path.join(root, "node_modules/typescript-native/bin/tsc");
const { status } = spawnSync(process.execPath, [tsc, "-p", "tsconfig.lib.json"], { cwd: root, stdio: "inherit" });
if (status !== 0) process.exit(status ?? 1);

const files = readdirSync(lib, { recursive: true }).map((name) => path.join(lib, name));
for (const file of files.filter((name) => name.endsWith(".json"))) {
  writeFileSync(`${file}.js`, `export default ${JSON.stringify(JSON.parse(readFileSync(file, "utf8")))};\n`);
  rmSync(file);
}
for (const file of files.filter((name) => /(\.js|\.d\.ts)$/.test(name))) {
  const text = readFileSync(file, "utf8");
  const written = text.replace(
    /(\b(?:from|import)\s*\(?\s*")(\.{1,2}\/[^"]*|\.{1,2})(")/g,
    (_, before, target, after) => `${before}${fileOf(path.dirname(file), target)}${after}`,
  );
  writeFileSync(file, written);
}

const cjs = path.join(lib, "cjs");
await build({
  entryPoints: [path.join(root, "src/core/index.ts")],
  outfile: path.join(cjs, "index.js"),
  bundle: true,
  format: "cjs",
  platform: "node",
  target: "node20",
  packages: "external",
});
// the same types, which a folder of CommonJS makes those of CommonJS
cpSync(path.join(lib, "src/core"), path.join(cjs, "core"), {
  recursive: true,
  filter: (file) => statSync(file).isDirectory() || file.endsWith(".d.ts"),
});
writeFileSync(path.join(cjs, "index.d.ts"), 'export * from "./core/index.js";\n');
writeFileSync(path.join(cjs, "package.json"), '{ "type": "commonjs" }\n');

/** What Node loads for an import without an extension: a file, else the index of a folder, as TypeScript looks for them. */
function fileOf(from, target) {
  const found = [`${target}.js`, `${target}/index.js`].find((name) => existsSync(path.resolve(from, name)));
  if (!found) throw new Error(`${from}: no file for "${target}"`);
  return found;
}
