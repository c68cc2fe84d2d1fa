/**
 * `npm run lint`, `npm run test:quick`, `npm test`: the steps of a round need nothing of each other and share the cores.
 * A round is run to its end, so that every fault is told at once; after one that failed no other begins.
 */
import { stop } from "../lib/command.mjs";
import { together } from "../lib/together.mjs";

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
  const failed = await together(steps, (step, { code, said }) => {
    console.log(`${code === 0 ? "ok    " : "FAILED"} ${step}`);
    if (said) console.log(said.trimEnd());
  });
  if (failed.length > 0) stop(`Failed: ${failed.join("; ")}`);
}
