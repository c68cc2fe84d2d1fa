/**
 * `npm run mutants [-- --only=src/core/heat --every=10 --workers=2]`: plants one small fault after the other in the core's
 * formulas and limits and runs the core's tests on each. A fault that no test notices is a survivor. --every takes a sample,
 * every tenth fault. A whole run writes the score and the survivors to dist/docs/mutation.md.
 */
import { fork } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { options, stop } from "../lib/command.mjs";
import { faultsOf, files, judged, under } from "./files.mjs";
import { report, score } from "./report.mjs";
import { root } from "../lib/root.mjs";

const string = /** @type {const} */ ({ type: "string" });
const { only, ...counts } = options({
  only: string,
  every: { ...string, default: "1" },
  workers: { ...string, default: "2" },
});
for (const [name, count] of Object.entries(counts))
  if (!/^[1-9]\d*$/.test(count)) stop(`--${name} must be a whole number from 1, got "${count}"`);
const [every, workers] = [Number(counts.every), Number(counts.workers)];
/** A fault is given thrice the time that the tests which run its place took without one, and a start: until then they may yet end. */
const patience = 3;
const start = 15_000;

const chosen = files.filter((file) => path.relative(root, file).startsWith(only ?? ""));
if (chosen.length === 0) stop(`--only must begin the path of a file of formulas, such as src/core/heat, got "${only}"`);
const mutations = chosen.flatMap(faultsOf).filter((_, i) => i % every === 0);

const suites = [
  path.join(root, "test/fuzz/found.test.ts"),
  ...under("test/core", ".test.ts"),
  ...under("test/edge", ".test.ts"),
  path.join(root, "test/reference/cases.test.ts"),
  ...under("test/laws", ".test.ts"),
];

const outcomes = [];
let next = 0;
/** What the first worker found without a fault; one that takes another's place need not run all again. */
let baseline;

/** Gives one worker mutations until none is left; one that does not come back counts as noticed and is replaced. */
function runWorker() {
  return new Promise((/** @type {(last?: any) => void} */ resolve) => {
    const worker = fork(path.join(root, "scripts/mutants/worker.mjs"), [JSON.stringify(suites)], { cwd: root });
    let mutation;
    let timer;
    const give = () => {
      mutation = mutations[next++];
      if (!mutation) {
        worker.kill();
        return resolve();
      }
      worker.send({ mutation });
    };
    const giveUp = () => {
      worker.kill("SIGKILL");
      outcomes.push({ mutation, noticed: "it does not end" });
      resolve(runWorker());
    };
    worker.on("message", (/** @type {any} */ { within, ready, broken, noticed, isRun, ...found }) => {
      if (within !== undefined) {
        timer = setTimeout(giveUp, start + patience * within);
        return;
      }
      clearTimeout(timer);
      if (broken) {
        console.error(`The tests fail without a fault: ${broken}`);
        process.exit(1);
      }
      if (ready) baseline ??= found.baseline;
      else record(mutation, noticed, isRun);
      give();
    });
    worker.send({ baseline });
  });
}

function record(mutation, noticed, isRun) {
  outcomes.push({ mutation, noticed });
  if (noticed) return;
  const { key, line } = mutation;
  const why = judged[key] ?? (isRun ? "open" : "open, no test runs it");
  console.log(`survives in line ${line}, ${key}: ${why}`);
}

await Promise.all(Array.from({ length: workers }, runWorker));
const survivors = outcomes.filter(({ noticed }) => !noticed);
console.log(`${outcomes.length} faults planted, ${survivors.length} not noticed: ${score(outcomes)} %.`);
if (only === undefined && every === 1) {
  mkdirSync(path.join(root, "dist/docs"), { recursive: true });
  writeFileSync(path.join(root, "dist/docs/mutation.md"), report(outcomes, judged, root));
}
process.exit(0);
