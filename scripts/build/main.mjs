/**
 * `npm run build [-- --base=https://… --office=folder --contact=… --only=names --out=folder]`: all that is served, into dist/.
 * --base   the address at which it will stand; the manifest there names it
 * --office a folder with office.js, served beside the pages instead of Microsoft's address
 * --contact an e-mail or https address for the help page
 * --only   some of functions, taskpane and workbench, such as functions,taskpane for Excel without the local sheet
 * --out    another folder than dist
 */
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from "node:fs";
import path from "node:path";
import { options, outFolder, stop } from "../lib/command.mjs";
import { writeNotices } from "../licences/notices.mjs";
import { checkedAddress, contactAddress, manifestFaults } from "../lib/manifest.mjs";
import { root } from "../lib/root.mjs";
import { together } from "../lib/together.mjs";

const string = /** @type {const} */ ({ type: "string" });
const values = options({ base: string, office: string, contact: string, only: string, out: string });
const all = ["workbench", "taskpane", "functions"];
try {
  if (values.base !== undefined) checkedAddress(values.base);
  if (values.contact !== undefined) contactAddress(values.contact);
  if (values.office !== undefined && !existsSync(path.join(values.office, "office.js")))
    throw new Error(`--office must be a folder that holds office.js, got ${values.office}`);
  if (values.only?.split(",").some((part) => !all.includes(part)))
    throw new Error(`--only must name some of ${all.join(", ")}, got ${values.only}`);
} catch (error) {
  stop(error.message);
}

const out = values.out === undefined ? path.join(root, "dist") : outFolder(root, values.out, "third-party-notices.txt");

// built beside the old folder, under a name that nobody has, and then put in its place: a build that fails leaves the old one whole
mkdirSync(path.dirname(out), { recursive: true });
const fresh = mkdtempSync(`${out}.new-`);
chmodSync(fresh, 0o755); // a server may run as another user
process.on("exit", () => rmSync(fresh, { recursive: true, force: true }));
const parts = values.only?.split(",") ?? all;
const pages = parts.filter((part) => part !== "functions");
const jiti = path.join(root, "node_modules/jiti/lib/jiti-cli.mjs");
const failed = await together(
  // side by side, the longest first
  [
    ...(parts.includes("functions")
      ? [[path.join(root, "scripts/build/functions.mjs"), `--out=${fresh}`, ...given("base", "contact")]]
      : []),
    ...(pages.length > 0
      ? [[path.join(root, "scripts/build/pages.mjs"), `--only=${pages}`, `--out=${fresh}`, ...office()]]
      : []),
    [jiti, "scripts/docs/main.ts", `--out=${path.join(fresh, "docs")}`],
  ],
  (_, { code, said }) => (code === 0 ? process.stdout : process.stderr).write(said),
);
if (failed.length > 0) process.exit(1);

// as it is: its licence lets it be passed on in its original form, so no minimizer may see it
if (values.office) cpSync(values.office, path.join(fresh, "office"), { recursive: true, dereference: true });

const manifest = path.join(fresh, "manifest.xml");
const faults = existsSync(manifest) ? manifestFaults(readFileSync(manifest, "utf8")) : [];
if (faults.length > 0) stop(faults.join("\n"));

try {
  writeNotices(fresh);
} catch (error) {
  stop(error.message);
}

// what `npm run build:sheets` wrote is another command's
const sheets = path.join(out, "sheets");
if (existsSync(sheets)) renameSync(sheets, path.join(fresh, "sheets"));
rmSync(out, { recursive: true, force: true });
renameSync(fresh, out);

/** Options that are handed on as they were given. */
function given(/** @type {("base" | "contact")[]} */ ...names) {
  return names.flatMap((name) => (values[name] ? [`--${name}=${values[name]}`] : []));
}

function office() {
  return values.office ? ["--office=office/office.js"] : [];
}
