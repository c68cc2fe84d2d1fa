/** One worker of `npm run mutants`: told a mutation, it answers which test noticed it. */
import path from "node:path";
import { firstFailure } from "./bench.mjs";

/** Per test file, how many faults it noticed and how long it takes: what notices most in the least time is run first. */
const known = new Map();
/** Per source file, the test file that noticed its last fault: it likely notices the next. */
const lastNoticer = new Map();

const worth = (file) => (1 + known.get(file).faults) / known.get(file).duration;

process.on("message", async (/** @type {any} */ mutation) => {
  const topic = path.basename(path.dirname(mutation.file));
  const isNear = (file) => file.includes(`/core/${topic}/`);
  const byWorth = [...known.keys()].sort((a, b) => worth(b) - worth(a));
  const last = lastNoticer.get(mutation.file);
  const failure = await firstFailure(
    new Set([...(last ? [last] : []), ...byWorth.filter(isNear), ...byWorth]),
    mutation,
  );
  if (failure) {
    known.get(failure.file).faults++;
    lastNoticer.set(mutation.file, failure.file);
  }
  process.send?.({ noticed: failure?.name });
});

let broken;
for (const file of JSON.parse(process.argv[2])) {
  const began = performance.now();
  broken ??= await firstFailure([file]);
  known.set(file, { faults: 0, duration: performance.now() - began });
}
process.send?.({ ready: true, broken: broken?.name });
