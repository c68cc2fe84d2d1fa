import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import os from "node:os";
import path from "node:path";

export const root = path.join(__dirname, "../..");
export const temporaryFolder = (): string => mkdtempSync(path.join(os.tmpdir(), "bushcell-"));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a program in the project's folder, as a person would from the command line. */
export function run(
  command: string,
  args: readonly string[],
  options: { input?: string; cwd?: string; env?: NodeJS.ProcessEnv } = {},
): Ran {
  const done = spawnSync(command, args, { cwd: root, encoding: "utf8", ...options });
  return { code: done.status, out: done.stdout, err: done.stderr };
}
export const node = (script: string, ...args: string[]): Ran =>
  run(process.execPath, [path.join(root, script), ...args]);

/** The Chromium of the tests; jest cannot import the module that knows. */
export const browserPath = (): string =>
  run(process.execPath, [
    "--input-type=module",
    "-e",
    'import { browserPath } from "./scripts/lib/browser.mjs"; console.log(browserPath())',
  ]).out.trim();
