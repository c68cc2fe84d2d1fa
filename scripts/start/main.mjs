/**
 * `npm start [-- --no-open]`: build, print the greenhouse duties with their verdicts, serve the local sheet and, where a desktop
 * is there and not told otherwise, open it.
 */
import path from "node:path";
import { options, stop } from "../lib/command.mjs";
import { serve } from "../lib/serve.mjs";
import { root } from "../lib/root.mjs";
import { together } from "../lib/together.mjs";
import { openAddress } from "./open.mjs";

const { "no-open": isLeft } = options({ "no-open": { type: "boolean" } });
const port = process.env.PORT ?? "8420";
if (!/^\d{1,5}$/.test(port) || Number(port) > 65535) stop(`PORT must be a whole number from 0 to 65535, got "${port}"`);
console.log("Building …");
const jiti = path.join(root, "node_modules/jiti/lib/jiti-cli.mjs");
const build = [path.join(root, "scripts/build/main.mjs")];
const table = [jiti, "scripts/start/duties.ts"];
/** @type {Map<string[], string>} */
const words = new Map();
const failed = await together([build, table], (command, { said }) => words.set(command, said));
for (const command of [build, table])
  (failed.includes(command) ? process.stderr : process.stdout).write(words.get(command) ?? "");
if (failed.length > 0) process.exit(1);
console.log("\nAn invented example. Preliminary sizing from typical figures: test in the application.");
const { url } = await serve(path.join(root, "dist"), Number(port));
console.log(`\nThe local sheet: ${url}   (Ctrl+C ends it)`);
if (!isLeft) openAddress(url);
