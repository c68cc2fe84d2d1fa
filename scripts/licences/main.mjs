/**
 * `npm run licences`: every package whose code stands in dist/ or is installed with the npm package, with its licence, printed
 * and written to docs/third-party.md. Fails on a licence that does not let us ship, and on a dist/ without its notices.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { stop } from "../lib/command.mjs";
import { describePackage, installedWith, refusalOf } from "./shipped.mjs";
import { root } from "../lib/root.mjs";

const notices = path.join(root, "dist/third-party-notices.txt");
if (!existsSync(notices)) stop("dist/third-party-notices.txt is not there: run npm run build first.");

const shipped = [...readFileSync(notices, "utf8").matchAll(/^(\S+) (\d\S*) \(([^\n]+)\), in (.+)$/gm)].map(
  ([, name, version, licence, where]) => ({ name, version, licence, where }),
);
const installed = installedWith(root).map((folder) => ({ ...describePackage(folder), where: "npm package" }));
const all = new Map();
for (const { name, version, licence, where } of [...shipped, ...installed]) {
  const key = `${name} ${version}`;
  all.set(key, { name, version, licence, where: [all.get(key)?.where, where].filter(Boolean).join(", ") });
}
const packages = [...all.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
for (const { name, version, licence, where } of packages) console.log(`${name} ${version}: ${licence}; ${where}`);
const refusal = refusalOf(packages);
if (refusal) stop(refusal);

const counts = new Map();
for (const { licence } of packages) counts.set(licence, (counts.get(licence) ?? 0) + 1);
console.log(`${packages.length} packages: ${[...counts].map(([licence, count]) => `${count} ${licence}`).join(", ")}`);
writeFileSync(path.join(root, "docs/third-party.md"), page(packages));

function page(rows) {
  return `<!-- Written by \`npm run licences\`; edits here are lost. -->

# Packages in what is shipped

Code of these packages stands in the built files of \`dist/\` (functions, pane, local sheet), or is installed with the npm
package. Their licence texts are in \`dist/third-party-notices.txt\`, which every build writes. A build stops where a
package has a licence other than MIT, Apache-2.0, BSD or ISC, or none. What its \`package.json\` names counts; where that
names none, the opening words of the licence text that comes with it.

| package | version | licence | in |
|---|---|---|---|
${rows.map((p) => `| ${p.name} | ${p.version} | ${p.licence} | ${p.where} |`).join("\n")}
`;
}
