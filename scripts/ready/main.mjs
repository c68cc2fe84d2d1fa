/**
 * Runs before `npm start` and `npm test` with nothing but Node: brings node_modules up to the lockfile and,
 * asked for "browser", finds a Chromium or installs Debian's where it may. `npm run` hands over what it needs.
 */
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import path from "node:path";
import { browserPath } from "../lib/browser.mjs";
import { stop } from "../lib/command.mjs";
import { root } from "../lib/root.mjs";

const run = (command, args) => spawnSync(command, args, { cwd: root, stdio: "inherit" }).status === 0;

const [major] = process.versions.node.split(".").map(Number);
if (major < 20) stop(`Node 20 or newer is needed, this is ${process.versions.node}.`);

const installed = path.join(root, "node_modules/.package-lock.json");
const isCurrent =
  existsSync(installed) && statSync(installed).mtimeMs >= statSync(path.join(root, "package-lock.json")).mtimeMs;
if (!isCurrent && !run("npm", ["ci", "--ignore-scripts", "--no-audit", "--no-fund"]))
  stop("npm ci failed; see its message above.");

if (process.argv.includes("browser")) findBrowser();

function findBrowser() {
  const named = process.env.CHROMIUM;
  if (named && !existsSync(named)) stop(`The variable CHROMIUM names a file that is not there: ${named}`);
  if (!browserPath()) installBrowser();
}

function installBrowser() {
  const mayInstall = existsSync("/etc/debian_version") && process.getuid?.() === 0;
  const how =
    "Install Chromium (Debian: sudo apt-get install chromium-headless-shell) or name one in the variable CHROMIUM.";
  if (!mayInstall) stop(`The browser tests need a Chromium and none was found. ${how}`);
  console.log(`The browser tests need a Chromium and none was found, so apt-get now installs Debian's package chromium-headless-shell on this system.
To avoid that, stop it here (Ctrl+C) and name a browser: CHROMIUM=/path/to/chromium npm test`);
  const done =
    run("apt-get", ["update", "-qq"]) &&
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium-headless-shell"]);
  if (!done || !browserPath()) stop(`Debian's chromium-headless-shell could not be installed. ${how}`);
}
