/** third-party-notices.txt for a built folder: name, version, licence and licence text of every package in its bundles. */
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describePackage, refusalOf } from "./shipped.mjs";

const listed = /^packages-in-(.*)\.json$/;

/** Reads and removes the lists that the bundles left; throws where a licence does not let us ship. */
export function writeNotices(folder) {
  const lists = readdirSync(folder).filter((name) => listed.test(name));
  const parts = new Map();
  for (const list of lists) {
    const file = path.join(folder, list);
    for (const place of JSON.parse(readFileSync(file, "utf8")))
      parts.set(place, [...(parts.get(place) ?? []), listed.exec(list)?.[1]]);
    rmSync(file);
  }
  const packages = [...parts].map(([place, where]) => ({ ...describePackage(place), where })).sort(byName);
  const refusal = refusalOf(packages);
  if (refusal) throw new Error(refusal);
  writeFileSync(path.join(folder, "third-party-notices.txt"), noticesOf(packages));
  return packages;
}

const byName = (a, b) => (a.name < b.name ? -1 : 1);

/** A package that names its licence without its text: the same licence's text from another package, under its own author. */
function lacking({ name, author, licence }, packages) {
  const text = packages.find((p) => p.licence === licence && p.texts.length > 0)?.texts[0] ?? "";
  const terms = /^(Permission|Redistribution) [^]*/m.exec(text)?.[0] ?? text;
  return `Copyright ${author || `the authors of ${name}`}\n\n${terms}`;
}

/** Packages with the same text share it. */
function noticesOf(packages) {
  const texts = new Map();
  for (const one of packages) {
    const text = one.texts.length > 0 ? one.texts.join("\n\n") : lacking(one, packages);
    texts.set(text, [...(texts.get(text) ?? []), one]);
  }
  const line = "-".repeat(78);
  const blocks = [...texts].map(
    ([text, owners]) =>
      `${line}\n${owners.map((p) => `${p.name} ${p.version} (${p.licence}), in ${p.where.join(", ")}`).join("\n")}\n${line}\n\n${text}\n`,
  );
  return `Bushcell is under the MIT licence. Its built files hold parts of the packages below, under their own licences.\n\n${blocks.join("\n")}`;
}
