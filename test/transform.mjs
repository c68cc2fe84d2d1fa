/** jest's reader of TypeScript, and of the packages that are ES modules. */
import { transformSync } from "esbuild";
import { reading } from "../scripts/lib/reading.mjs";

export default {
  process: (text, file) =>
    transformSync(text, {
      ...reading(file),
      format: "cjs",
      supported: { "dynamic-import": false },
      sourcefile: file,
      sourcemap: true,
    }),
};
