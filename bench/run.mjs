/** `npm run bench`: ratios within one run, so that the machine's speed cancels out. */
import { benches } from "./benches.mjs";

for (const bench of benches) {
  const { name, ratio, limit, note } = bench();
  console.log(
    `${ratio <= limit ? "ok  " : "SLOW"} ${name}: ${ratio.toFixed(2)} (at most ${limit})${note ? `  ${note}` : ""}`,
  );
}
