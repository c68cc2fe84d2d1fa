/** One worker of `npm run mutants`: told a mutation, it answers which test noticed it, or that no test runs its place. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { runner } from "./bench.mjs";
import { markAt, markedText, marksSet } from "./marks.mjs";
import { root } from "../lib/root.mjs";

/** Per test file, how many faults it noticed and how long it takes: what notices most in the least time is run first. */
const known = new Map();
/** Per mark of a place in the core, the test files that run it: a fault there changes nothing for the others. */
const runs = new Map();
/** Per source file, the test file that noticed its last fault: it likely notices the next. */
const lastNoticer = new Map();

const worth = (file) => (1 + known.get(file).faults) / known.get(file).duration;
const firstFailure = runner();

/** Where each fault is to be noticed, and how long that may take, is known from a run without one, or from another worker's. */
process.on("message", async (/** @type {any} */ { baseline, mutation }) => {
  if (mutation) return meet(mutation);
  const { files, marks, broken } = baseline ?? (await runWithoutFault());
  for (const [file, duration] of files) known.set(file, { faults: 0, duration });
  for (const [mark, running] of marks) runs.set(mark, running);
  process.send?.({ ready: true, broken, baseline: { files, marks } });
});

async function meet(mutation) {
  const topic = path.basename(path.dirname(mutation.file));
  const isNear = (file) => file.includes(`/core/${topic}/`);
  const running = runs.get(markAt(mutation.file, mutation.from)) ?? [];
  process.send?.({ within: running.reduce((sum, file) => sum + known.get(file).duration, 0) });
  const byWorth = running.sort((a, b) => worth(b) - worth(a));
  const last = running.filter((file) => file === lastNoticer.get(mutation.file));
  const failure = await firstFailure(new Set([...last, ...byWorth.filter(isNear), ...byWorth]), mutation);
  if (failure) {
    known.get(failure.file).faults++;
    lastNoticer.set(mutation.file, failure.file);
  }
  process.send?.({ noticed: failure?.name, isRun: running.length > 0 });
}

async function runWithoutFault() {
  const core = path.join(root, "src/core/");
  const marking = runner((file) => (file.startsWith(core) ? markedText(file) : readFileSync(file, "utf8")));
  const files = [];
  const marks = new Map();
  let broken;
  for (const file of JSON.parse(process.argv[2])) {
    const began = performance.now();
    broken ??= (await marking([file]))?.name;
    files.push([file, performance.now() - began]);
    for (const mark of marksSet()) marks.set(mark, [...(marks.get(mark) ?? []), file]);
  }
  return { files, marks: [...marks], broken };
}
