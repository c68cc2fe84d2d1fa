/** One worker of `npm run mutants`: told a mutation, it answers which test noticed it. */
import path from "node:path";
import { firstFailure } from "./bench.mjs";

const [quick, thorough] = JSON.parse(process.argv[2]);
process.on("message", async (/** @type {any} */ mutation) => {
  const topic = path.basename(path.dirname(mutation.file));
  const isNear = (file) => file.includes(`/core/${topic}/`);
  const nearFirst = [...quick.filter(isNear), ...quick.filter((file) => !isNear(file))];
  const noticed = (await firstFailure(nearFirst, mutation)) ?? (await firstFailure(thorough, mutation));
  process.send?.({ noticed });
});
const broken = (await firstFailure(quick)) ?? (await firstFailure(thorough));
process.send?.({ ready: true, broken });
