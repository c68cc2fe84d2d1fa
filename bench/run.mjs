/**
 * `npm run bench`: ratios within one run, so that the machine's speed cancels out; written to dist/docs/performance.md.
 * `--print` writes nothing and leaves the table of every function out.
 */
import os from "node:os";
import { writeFileSync } from "node:fs";
import { options } from "../scripts/lib/command.mjs";
import { benches } from "./benches.mjs";
import { libreOffice, localGrid } from "./native.mjs";
import { localPage } from "./page.mjs";

const { print } = options({ print: { type: "boolean", default: false } });
const results = [];
for (const bench of [...benches, localGrid, libreOffice]) {
  const result = await measure(bench);
  if (!result) continue; // its program is not here
  report(result);
}
for (const result of await localPage()) report(result);

function report(result) {
  const { name, ratio, note } = result;
  const [figure, limit] = [ratio, result.limit].map((value) => Number(value.toPrecision(3)));
  console.log(
    `${ratio <= result.limit ? "ok  " : "SLOW"} ${name}: ${figure} (at most ${limit})${note ? `  ${note}` : ""}`,
  );
  results.push({ name, figure, limit, note: note ?? "" });
}

/** Noise only ever adds: what exceeds its limit is measured again, twice at most. */
async function measure(bench, triesLeft = 2) {
  const result = await bench();
  return !result || result.ratio <= result.limit || triesLeft === 0 ? result : measure(bench, triesLeft - 1);
}

if (!print) {
  const { everyFunction } = await import("./catalogue.mjs");
  const table = everyFunction();
  writeFileSync(new URL("../dist/docs/performance.md", import.meta.url), page(results, table));
  console.log("Written: dist/docs/performance.md");
}

function page(rows, functions) {
  const sizes = [1, 100, 1000, 10_000, 100_000];
  const ms = (times, count) => times.find((t) => t.count === count)?.ms.toPrecision(2) ?? "";
  return `<!-- Written by \`npm run bench\`. -->

# Performance

Measured on ${new Date().toISOString().slice(0, 10)} with Node ${process.versions.node} on ${os.cpus().length} cores. Ratios within one run count; milliseconds are there for scale. What exceeds its limit is measured
again, twice at most: noise only ever adds.

| what | figure | at most | |
|---|---|---|---|
${rows.map(({ name, figure, limit, note }) => `| ${name} | ${figure} | ${limit} | ${note} |`).join("\n")}

"Rows over rows" is the time for ten times the rows over the time for the rows. A table of 100 000 rows no longer fits the
processor's cache, and a hand-written loop too takes far more than ten times as long for it; so a growth may be 11, or the
loop's own where that is more.

## Every function, ms a call

Its example, with the first of its own arguments made a column of so many rows. Spilled tables are asked for fewer.

| function | ${sizes.map((n) => `${n} row${n > 1 ? "s" : ""}`).join(" | ")} |
|---|${sizes.map(() => "---|").join("")}
${functions.map(({ id, times }) => `| ${id} | ${sizes.map((n) => ms(times, n)).join(" | ")} |`).join("\n")}
`;
}
