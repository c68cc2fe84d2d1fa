import { faults, generate, wrapperFiles } from "../lib/metadata";

const found = faults(await generate(wrapperFiles()));
if (found.length > 0) {
  console.error(found.join("\n"));
  process.exit(1);
}
