/**
 * `npm run typecheck`, `npm run lint`, `npm run test:quick`, `npm test`: the steps of a round need nothing of each other and share the cores.
 * A round is run to its end, so that every fault is told at once; after one that failed no other begins.
 */
import { stop } from "../lib/command.mjs";
import { together } from "../lib/together.mjs";

/** The compiler written in Go; `typescript` itself stays at 6 for those who use its interface. */
const tsc = "node node_modules/typescript-native/bin/tsc --noEmit";
const types = ["tsconfig.json", "tsconfig.hosts.json", "tsconfig.node.json"].map((config) => `${tsc} -p ${config}`);
const lint = [
  ...types,
  "oxlint --type-aware --report-unused-disable-directives",
  "prettier --check --log-level warn --cache --cache-strategy content src test scripts bench",
  "jiti scripts/sync/main.ts --check",
  "jiti scripts/check/metadata.ts",
];
/** The tests of one part at a time: without the laws over all parts, the references, hostile calls, and the faces put together. */
const units = "jest test/core test/data test/edge test/files test/sync test/taskpane test/types";
// the longest of a round first
const rounds = {
  types: [types],
  lint: [lint],
  quick: [[units, ...lint]],
  all: [["node scripts/build/main.mjs", ...lint], ["jest"]],
};
const asked = process.argv[2] ?? "all";
if (!Object.hasOwn(rounds, asked)) stop(`What to run must be types, lint, quick or all, got "${asked}"`);

for (const steps of rounds[asked]) {
  const failed = await together(steps, (step, { code, said }) => {
    console.log(`${code === 0 ? "ok    " : "FAILED"} ${step}`);
    if (said) console.log(said.trimEnd());
  });
  if (failed.length > 0) stop(`Failed: ${failed.join("; ")}`);
}
