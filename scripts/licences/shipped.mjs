/** Which packages stand in a bundle, as webpack tells it of its own: each has to be named with its licence. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

export class ListPackages {
  constructor(file) {
    this.file = file;
  }
  apply(compiler) {
    const { webpack } = compiler;
    compiler.hooks.thisCompilation.tap("ListPackages", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "ListPackages", stage }, () => {
        const text = JSON.stringify(packagesIn(compilation.modules));
        compilation.emitAsset(this.file, new webpack.sources.RawSource(text));
      });
    });
  }
}

/** Folders of the packages whose modules stand in a compilation, joined modules included. */
function packagesIn(modules) {
  return foldersOf([...modules].flatMap((module) => [module, ...(module.modules ?? [])].map((one) => one.resource)));
}

/**
 * Folders of the packages that files belong to, in order; a file may have a query behind it, as webpack writes it.
 * @type {(files: (string | undefined)[]) => string[]}
 */
export const foldersOf = (files) => [...new Set(files.flatMap((file) => folderOf(file?.split("?")[0]) ?? []))].sort();

/** "…/node_modules/@scope/name"; nothing for a file of our own. */
export function folderOf(file) {
  const found = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(file ?? "");
  return found?.[0];
}

/** Name, version, licence and the texts that the licence asks to be passed on. */
export function describePackage(folder) {
  const { name, version, license, licenses, author } = JSON.parse(
    readFileSync(path.join(folder, "package.json"), "utf8"),
  );
  const texts = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)([.-].*)?$/i.test(file))
    .sort()
    .map((file) => readFileSync(path.join(folder, file), "utf8").trim());
  return {
    name,
    version,
    licence:
      typeof license === "string"
        ? license
        : (license?.type ?? licenses?.map((l) => l.type).join(" OR ") ?? licenceIn(texts)),
    author: typeof author === "string" ? author : (author?.name ?? ""),
    texts,
  };
}

/** A package that names no licence may still hold one: by the opening words of its text. */
function licenceIn(/** @type {string[]} */ [text = ""]) {
  const opening = text.slice(0, 200);
  if (/Apache License\s+Version 2\.0/.test(opening)) return "Apache-2.0";
  return /^(The )?MIT License/.test(opening) ? "MIT" : "";
}

const allowed = new Set(["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "ISC", "0BSD"]);

/** Whether an SPDX expression lets us ship: one of its choices is on the list, and all that it joins. */
export const mayShip = (licence) =>
  licence
    .replace(/[()]/g, "")
    .split(/\s+OR\s+/)
    .some((choice) => choice.split(/\s+AND\s+/).every((one) => allowed.has(one.trim())));

/** Why some packages may not be shipped; nothing where all may. */
export function refusalOf(packages) {
  const refused = packages.filter(({ licence }) => !mayShip(licence));
  if (refused.length === 0) return undefined;
  return `no licence to ship: ${refused.map((p) => `${p.name} (${p.licence || "none named"})`).join(", ")}`;
}

/** The packages of `dependencies` and all that they bring, from the lockfile: what the npm package has installed with it. */
export function installedWith(root) {
  const { packages } = JSON.parse(readFileSync(path.join(root, "package-lock.json"), "utf8"));
  const found = new Set();
  const visit = (from, name) => {
    const place = [...ancestors(from), ""]
      .map((at) => `${at ? `${at}/` : ""}node_modules/${name}`)
      .find((at) => packages[at]);
    if (!place || found.has(place)) return;
    found.add(place);
    for (const next of Object.keys(packages[place].dependencies ?? {})) visit(place, next);
  };
  for (const name of Object.keys(packages[""].dependencies)) visit("", name);
  return [...found]
    .sort()
    .map((place) => path.join(root, place))
    .filter((folder) => existsSync(folder));
}

/** "node_modules/a/node_modules/b" lies in itself and in "node_modules/a". */
function ancestors(place) {
  const parts = place.split("/node_modules/");
  return parts.map((_, i) => parts.slice(0, parts.length - i).join("/node_modules/")).filter(Boolean);
}
