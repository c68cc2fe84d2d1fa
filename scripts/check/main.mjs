/**
 * `npm run lint`, `npm run test:quick`, `npm test`: the steps of a round need nothing of each other and share the cores.
 * A round is run to its end, so that every fault is told at once; after one that failed no other begins.
 */
import { spawn } from "node:child_process";
import os from "node:os";
import { stop } from "../lib/command.mjs";
import { root } from "../lib/root.mjs";

const lint = [
  "tsc --noEmit",
  "tsc --noEmit -p tsconfig.node.json",
  "tsc -p tsconfig.hosts.json",
  "eslint .",
  "prettier --check --log-level warn src test scripts bench",
  "jiti scripts/sync/main.ts --check",
  "jiti scripts/check/metadata.ts",
];
/** The tests that need neither a build nor a browser, without the long runs of hostile calls. */
const units =
  'jest --testPathIgnorePatterns "/test/(browser|docs|functions|hosts|package|sheets)/|/fuzz/(fuzz|tall)[.]"';
// the longest of a round first
const rounds = {
  lint: [lint],
  quick: [[`${units} --maxWorkers=1`, ...lint]],
  all: [["node scripts/build/main.mjs", ...lint], ["jest"]],
};
const asked = process.argv[2] ?? "all";
if (!Object.hasOwn(rounds, asked)) stop(`What to run must be lint, quick or all, got "${asked}"`);

for (const steps of rounds[asked]) {
  const failed = await together(steps);
  if (failed.length > 0) stop(`Failed: ${failed.join("; ")}`);
}

/** Runs the steps, one on each core at a time; answers those that failed. */
async function together(steps) {
  const waiting = [...steps];
  const failed = [];
  const work = async () => {
    for (let step = waiting.shift(); step; step = waiting.shift()) {
      const { code, said } = await run(step, steps.length === 1);
      if (code !== 0) failed.push(step);
      console.log(`${code === 0 ? "ok    " : "FAILED"} ${step}`);
      if (said) console.log(said.trimEnd());
    }
  };
  await Promise.all(Array.from({ length: os.availableParallelism() }, work));
  return failed;
}

/** What runs alone is heard as it speaks, what runs beside others in one piece at its end. */
function run(step, alone) {
  // by the shell, which finds the packages' commands on the path that npm gives
  const child = spawn(step, {
    cwd: root,
    shell: true,
    stdio: ["ignore", ...Array(2).fill(alone ? "inherit" : "pipe")],
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (text) => (said += text));
  return new Promise((resolve) => child.on("close", (code) => resolve({ code, said })));
}
