/** Which packages stand in a bundle, as esbuild tells it: each has to be named with its licence. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { root } from "../lib/root.mjs";

/**
 * Folders of the packages whose code stands in what esbuild made: of all, or of what is loaded from these entries, at once or later.
 * @param {import("esbuild").Metafile} metafile of a build with the root as its working directory
 * @param {string[]} [entries]
 */
export function packagesIn({ outputs }, entries) {
  const wanted = (/** @type {string} */ file) => entries?.includes(outputs[file].entryPoint ?? "") ?? true;
  const files = new Set(Object.keys(outputs).filter(wanted));
  for (const file of files) for (const { path: place } of outputs[file].imports) files.add(place);
  const inputs = [...files].flatMap((file) => Object.entries(outputs[file].inputs));
  const folders = inputs.flatMap(([file, { bytesInOutput }]) =>
    bytesInOutput > 0 ? (folderOf(path.join(root, file)) ?? []) : [],
  );
  return [...new Set(folders)].sort();
}

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
export function installedWith(checkout) {
  const { packages } = JSON.parse(readFileSync(path.join(checkout, "package-lock.json"), "utf8"));
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
    .map((place) => path.join(checkout, place))
    .filter((folder) => existsSync(folder));
}

/** "node_modules/a/node_modules/b" lies in itself and in "node_modules/a". */
function ancestors(place) {
  const parts = place.split("/node_modules/");
  return parts.map((_, i) => parts.slice(0, parts.length - i).join("/node_modules/")).filter(Boolean);
}
